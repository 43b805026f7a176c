package floorcalc.bays;

import floorcalc.measure.Length;
import floorcalc.outline.Line;
import floorcalc.outline.Point;
import java.io.Serializable;
import java.util.Objects;

/**
 * A straight gap between two bays, covered by a profile, by its middle line. Immutable and thread-safe.
 *
 * @param from one end of its middle line: on a wall, on a void or on another break; not null
 * @param to the other end, not the same as the first; not null
 * @param reason what asks for it, not null
 * @param because what asks for it, in a sentence with the corner or limit and what it measures; not null
 * @since 0.1
 */
public record ExpansionBreak(Point from, Point to, Reason reason, String because) implements Serializable {
  /**
   * What asks for a break.
   *
   * @since 0.1
   */
  public enum Reason {
    /** A doorway, where the rules ask for a break. */
    DOORWAY,
    /** An inner corner of the room, round which the floor could not move. */
    INNER_CORNER,
    /** A column, hearth or island that is too wide for the floor to lie round it. */
    VOID,
    /** The longest bay along the boards. */
    RUN_ALONG,
    /** The widest bay across the boards. */
    RUN_ACROSS,
    /** The job says so. */
    GIVEN
  }

  /** Checks that no part is null and that the ends differ. */
  public ExpansionBreak {
    Objects.requireNonNull(from, "from");
    Objects.requireNonNull(to, "to");
    Objects.requireNonNull(reason, "reason");
    Objects.requireNonNull(because, "because");
    if (from.equals(to)) {
      throw new IllegalArgumentException("an expansion break must be longer than 0 mm, but both its ends lie at " + from
          + "; give two ends that differ");
    }
  }

  /**
   * Returns a break that the job asks for.
   *
   * @param from one end of its middle line, not null
   * @param to the other end, not null
   * @return the break, not null
   * @throws IllegalArgumentException if the ends are the same
   */
  public static ExpansionBreak given(Point from, Point to) {
    return new ExpansionBreak(from, to, Reason.GIVEN, "given in the job");
  }

  /**
   * Returns its middle line.
   *
   * @return the line, not null
   */
  public Line middle() {
    return new Line(from, to);
  }

  /**
   * Returns the length of its middle line, which is that of its profile.
   *
   * @return the length, rounded to the nearest nanometre; more than zero
   */
  public Length length() {
    return from.distanceTo(to);
  }
}
