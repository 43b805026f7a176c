package floorcalc.rows;

import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Severity;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/**
 * Rows laid both ways from a line that is no wall: from the middle of a room, or from a line through it.
 * <p>
 * Either two rows meet on the line, or a row lies with its middle on it. Moving by half a board changes both outer strips by as
 * much: where the one leaves slivers the other leaves half a board more or less. Rows laid both ways turn groove to groove along one
 * row line, which takes a loose tongue (double tongue, spline) over its whole length. Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class RowsBothWays {
  private final Joint joint;
  private final long rowsBefore;
  private final long rowsBeyond;
  private final Length stripBefore;
  private final Length stripBeyond;

  /**
   * What lies on the line.
   *
   * @since 0.1
   */
  public enum Joint {
    /** Two rows meet on the line. */
    ROW_LINE_ON_LINE,
    /** A row lies with its middle on the line. */
    ROW_ON_LINE
  }

  private RowsBothWays(Joint joint, long rowsBefore, long rowsBeyond, Length stripBefore, Length stripBeyond) {
    this.joint = joint;
    this.rowsBefore = rowsBefore;
    this.rowsBeyond = rowsBeyond;
    this.stripBefore = stripBefore;
    this.stripBeyond = stripBeyond;
  }

  /**
   * Returns rows from the middle of a width: with a row line on it if both outer strips are then as wide as asked, else whichever
   * leaves the wider strips.
   *
   * @param width the laid width, not null, more than zero; a nanometre that cannot be halved goes beyond the line
   * @param pitch the laid pitch, not null, more than zero
   * @param minimum the narrowest outer strip asked for, not null, not negative
   * @return the rows, as {@link #from(Length, Length, Length, Length)}; not null
   * @throws IllegalArgumentException if a length is out of range
   */
  public static Calculated<RowsBothWays> fromMiddle(Length width, Length pitch, Length minimum) {
    Widths.requirePositive(width, "laid width", "give the room less a gap on each side");
    Length half = width.dividedBy(2, RoundingMode.FLOOR);
    return from(half, width.minus(half), pitch, minimum);
  }

  /**
   * Returns rows from a line: with a row line on it if both outer strips are then as wide as asked, else whichever leaves the wider
   * narrowest strip, the row line if both leave the same. A row is laid on the line only where half a board has room on both sides.
   *
   * @param before from the line to the edge of the floor on one side, not null, not negative
   * @param beyond from the line to the edge of the floor on the other, not null, not negative
   * @param pitch the laid pitch, not null, more than zero
   * @param minimum the narrowest outer strip asked for, not null, not negative
   * @return the rows with the steps {@code strip-before} and {@code strip-beyond} of both ways that were compared, those of the one
   *     chosen last, and {@code rows-in-all}; with the finding {@code strip-narrower-than-minimum} where neither keeps it; not null
   * @throws IllegalArgumentException if a length is out of range, or the floor is nowhere
   */
  public static Calculated<RowsBothWays> from(Length before, Length beyond, Length pitch, Length minimum) {
    Widths.requireNotNegative(before, "width before the line", "take a line in the room");
    Widths.requireNotNegative(beyond, "width beyond the line", "take a line in the room");
    Widths.requirePositive(before.plus(beyond), "laid width", "give the room less a gap on each side");
    Widths.requirePositive(pitch, "laid pitch", "give the width that a laid board covers");
    Widths.requireNotNegative(minimum, "minimum row width", "give 0 mm for no minimum");
    List<Step> steps = new ArrayList<>();
    List<Finding> findings = new ArrayList<>();
    Length least = Widths.inForce(minimum, pitch, Source.GIVEN, steps, findings);
    Length half = pitch.dividedBy(2, RoundingMode.FLOOR);
    List<Step> lineSteps = new ArrayList<>();
    RowsBothWays chosen = rows(Joint.ROW_LINE_ON_LINE, before, beyond, Length.ZERO, Length.ZERO, pitch, lineSteps);
    List<Step> rowSteps = new ArrayList<>();
    boolean roomForARow = before.compareTo(half) >= 0 && beyond.compareTo(pitch.minus(half)) >= 0;
    if (chosen.narrowest(pitch).compareTo(least) < 0 && roomForARow) {
      RowsBothWays row = rows(Joint.ROW_ON_LINE, before, beyond, half, pitch.minus(half), pitch, rowSteps);
      boolean better = row.narrowest(pitch).compareTo(chosen.narrowest(pitch)) > 0;
      steps.addAll(better ? lineSteps : rowSteps);
      steps.addAll(better ? rowSteps : lineSteps);
      chosen = better ? row : chosen;
    } else {
      steps.addAll(lineSteps);
    }
    steps.add(new Step("rows-in-all", "How many rows are laid in all, the outer ones counted?", "n = n1 + n2 + n0",
        List.of(Term.of("n1", "rows before the line", chosen.rowsBefore), Term.of("n2", "rows beyond it", chosen.rowsBeyond),
            Term.of("n0", "row on it", chosen.onLine())), chosen.rows(), Source.DEFINITION));
    if (chosen.narrowest(pitch).compareTo(least) < 0) {
      findings.add(new Finding("strip-narrower-than-minimum", Severity.WARNING, "", "the narrower of the two outer strips is "
          + chosen.narrowest(pitch) + ", at least " + least + " is asked for; move the line", Source.GIVEN));
    }
    return Calculated.of(chosen, steps, findings);
  }

  private static RowsBothWays rows(Joint joint, Length before, Length beyond, Length shiftBefore, Length shiftBeyond, Length pitch,
      List<Step> steps) {
    long n1 = count(before.minus(shiftBefore), pitch);
    long n2 = count(beyond.minus(shiftBeyond), pitch);
    Length strip1 = strip(before.minus(shiftBefore), pitch, n1);
    Length strip2 = strip(beyond.minus(shiftBeyond), pitch, n2);
    String on = joint == Joint.ROW_ON_LINE ? " with a row on the line" : " with a row line on the line";
    steps.add(step("strip-before", "before the line" + on, before, shiftBefore, n1, pitch, strip1));
    steps.add(step("strip-beyond", "beyond the line" + on, beyond, shiftBeyond, n2, pitch, strip2));
    return new RowsBothWays(joint, n1, n2, strip1, strip2);
  }

  private static long count(Length width, Length pitch) {
    return width.isZero() ? 0 : width.minus(Length.ofNanometres(1)).dividedBy(pitch) + 1;
  }

  private static Length strip(Length width, Length pitch, long rows) {
    return width.minus(pitch.multipliedBy(Math.max(0, rows - 1)));
  }

  private static Step step(String id, String where, Length width, Length shift, long rows, Length pitch, Length strip) {
    List<Term> terms = new ArrayList<>(List.of(Term.of("W", "width on that side", width)));
    if (shift.isPositive()) {
      terms.add(Term.of("h", "what the row on the line takes of it, half a board", shift));
    }
    terms.add(Term.of("k", "full rows", Math.max(0, rows - 1)));
    terms.add(Term.of("p", "laid pitch", pitch));
    return new Step(id, "How wide is the outer strip " + where + "?", shift.isPositive() ? "s = W - h - k * p" : "s = W - k * p",
        terms, strip, Source.DEFINITION);
  }

  /** The narrower of the outer strips; a side without rows has none. */
  private Length narrowest(Length pitch) {
    Length narrowest = pitch;
    narrowest = rowsBefore == 0 ? narrowest : narrowest.min(stripBefore);
    return rowsBeyond == 0 ? narrowest : narrowest.min(stripBeyond);
  }

  private long onLine() {
    return joint == Joint.ROW_ON_LINE ? 1 : 0;
  }

  /**
   * Returns what lies on the line.
   *
   * @return a row line or the middle of a row, not null
   */
  public Joint joint() {
    return joint;
  }

  /**
   * Returns how many rows lie before the line, the outer strip counted, a row on the line not.
   *
   * @return not negative
   */
  public long rowsBefore() {
    return rowsBefore;
  }

  /**
   * Returns how many rows lie beyond the line, the outer strip counted, a row on the line not.
   *
   * @return not negative
   */
  public long rowsBeyond() {
    return rowsBeyond;
  }

  /**
   * Returns how many rows there are in all.
   *
   * @return more than zero
   */
  public long rows() {
    return rowsBefore + rowsBeyond + onLine();
  }

  /**
   * Returns the outer strip before the line.
   *
   * @return the width, zero if there is no row; not null
   */
  public Length stripBefore() {
    return stripBefore;
  }

  /**
   * Returns the outer strip beyond the line.
   *
   * @return the width, zero if there is no row; not null
   */
  public Length stripBeyond() {
    return stripBeyond;
  }
}
