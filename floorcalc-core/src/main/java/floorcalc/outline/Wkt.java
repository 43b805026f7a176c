package floorcalc.outline;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Objects;

/**
 * Outlines in the well-known text of OGC Simple Features (ISO 19125-1): {@code POLYGON ((0 0, 4000 0, 4000 3000, 0 0))},
 * the first ring the walls, each further ring a void.
 * <p>
 * The text itself has no unit. Millimetres are meant unless metres are asked for. As the standard has it, the last point
 * of each ring repeats the first; it is dropped on reading and added on writing.
 *
 * @since 0.1
 */
public final class Wkt {

  /**
   * The unit of the numbers in a text.
   *
   * @since 0.1
   */
  public enum Unit {
    /** Millimetres: at most six decimals are exact. */
    MILLIMETRES(6),
    /** Metres: at most nine decimals are exact. */
    METRES(9);

    /** The decimals that a whole nanometre has in this unit. */
    final int decimals;

    Unit(int decimals) {
      this.decimals = decimals;
    }
  }

  private Wkt() {}

  /**
   * Reads an outline in millimetres, exactly.
   *
   * @param text a polygon, not null
   * @return the outline, not checked for faults; not null
   * @throws WktException if the text is not a polygon or has a number finer than a nanometre
   */
  public static Outline parse(CharSequence text) {
    return parse(text, Unit.MILLIMETRES);
  }

  /**
   * Reads an outline, exactly.
   *
   * @param text a polygon, not null
   * @param unit the unit of its numbers, not null
   * @return the outline, not checked for faults; not null
   * @throws WktException if the text is not a polygon or has a number finer than a nanometre
   */
  public static Outline parse(CharSequence text, Unit unit) {
    return outline(parseRings(text, unit));
  }

  /**
   * Reads an outline, rounding numbers that are finer than a nanometre.
   *
   * @param text a polygon, not null
   * @param unit the unit of its numbers, not null
   * @param mode how to round to whole nanometres, not null
   * @return the outline, not checked for faults; not null
   * @throws WktException if the text is not a polygon
   */
  public static Outline parse(CharSequence text, Unit unit, RoundingMode mode) {
    return outline(new WktReader(text, unit, mode).rings());
  }

  /**
   * Reads the rings of an outline as they are listed, exactly: the shell, then the voids, each in its own order. For
   * {@link OutlineCheck#faultsOf(Ring, List)}, so that faults bear the numbers of the text.
   *
   * @param text a polygon, not null
   * @param unit the unit of its numbers, not null
   * @return at least one ring, not null
   * @throws WktException if the text is not a polygon or has a number finer than a nanometre
   */
  public static List<Ring> parseRings(CharSequence text, Unit unit) {
    return new WktReader(text, unit, RoundingMode.UNNECESSARY).rings();
  }

  /**
   * Writes an outline in millimetres, exactly.
   *
   * @param outline the outline, not null
   * @return a polygon, its shell counter-clockwise and its voids clockwise; {@link #parse(CharSequence)} reads it back
   */
  public static String write(Outline outline) {
    return write(outline, Unit.MILLIMETRES);
  }

  /**
   * Writes an outline, exactly.
   *
   * @param outline the outline, not null
   * @param unit the unit of the numbers to write, not null
   * @return a polygon, its shell counter-clockwise and its voids clockwise; not null
   */
  public static String write(Outline outline, Unit unit) {
    Objects.requireNonNull(unit, "unit");
    StringBuilder text = new StringBuilder("POLYGON (");
    for (Ring ring : outline.rings()) {
      text.append(text.charAt(text.length() - 1) == ')' ? ", (" : "(");
      for (int i = 0; i <= ring.size(); i++) {
        int corner = i == ring.size() ? 0 : i;
        text.append(i == 0 ? "" : ", ");
        append(text, ring.x(corner), unit);
        append(text.append(' '), ring.y(corner), unit);
      }
      text.append(')');
    }
    return text.append(')').toString();
  }

  private static void append(StringBuilder text, long nanometres, Unit unit) {
    text.append(nanometres == 0
        ? "0" : BigDecimal.valueOf(nanometres, unit.decimals).stripTrailingZeros().toPlainString());
  }

  private static Outline outline(List<Ring> rings) {
    return Outline.of(rings.get(0), rings.subList(1, rings.size()));
  }
}
