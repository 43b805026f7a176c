package floorcalc.rows;

import floorcalc.measure.Length;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleValue;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Severity;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * A laid width divided into rows: how many, and how wide the first and the last one are.
 * <p>
 * With {@code W} the laid width and {@code p} the laid pitch there are {@code n = ceil(W / p)} rows. A full first row
 * leaves {@code r = W - (n - 1) * p} for the last one, more than zero and at most {@code p}. If that is less than the
 * minimum {@code m}, the first row is ripped too; what the two outer rows share is {@code p + r}, whatever the split.
 * Always {@code w1 + (n - 2) * p + wn = W}, to the nanometre.
 * <pre>{@code
 * RowDivision rows = RowDivision.of(Length.parse("3480 mm"), Length.parse("185 mm"), Length.parse("70 mm"),
 *     RowWay.LEAST_CUT).value();   // 19 rows, first and last 150 mm and full
 * }</pre>
 * Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class RowDivision {
  private final Length laidWidth;
  private final Length pitch;
  private final Length minimum;
  private final Source minimumSource;
  private final long rows;
  private final Length firstRow;
  private final Length lastRow;

  private RowDivision(Length laidWidth, Length pitch, Length minimum, Source minimumSource, long rows, Length firstRow,
      Length lastRow) {
    this.laidWidth = laidWidth;
    this.pitch = pitch;
    this.minimum = minimum;
    this.minimumSource = minimumSource;
    this.rows = rows;
    this.firstRow = firstRow;
    this.lastRow = lastRow;
  }

  /**
   * Divides a width into rows, with a minimum of the caller's own.
   *
   * @param laidWidth the width to be covered across the rows, the gaps taken off; not null, more than zero
   * @param pitch the laid pitch, from row to row; not null, more than zero
   * @param minimum the narrowest first or last row wanted, not null, not negative
   * @param way how the first row is chosen, not null
   * @return the division with the steps {@code number-of-rows}, {@code rest}, {@code first-row}, {@code last-row}, and
   *     findings {@code one-row}, {@code boards-narrower-than-minimum}, {@code row-narrower-than-minimum}; not null
   * @throws IllegalArgumentException if a length is out of range
   */
  public static Calculated<RowDivision> of(Length laidWidth, Length pitch, Length minimum, RowWay way) {
    Objects.requireNonNull(laidWidth, "laidWidth");
    return of(laidWidth, pitch, minimum, Source.GIVEN, way);
  }

  /**
   * Divides a width into rows, with the minimum of a rule.
   *
   * @param laidWidth the width to be covered across the rows, the gaps taken off; not null, more than zero
   * @param pitch the laid pitch, from row to row; not null, more than zero
   * @param minimum the rule on the narrowest first or last row, see {@link LayingRules#MINIMUM_ROW_WIDTH}; not null
   * @param way how the first row is chosen, not null
   * @return the division, as {@link #of(Length, Length, Length, RowWay)}; not null
   * @throws IllegalArgumentException if a length is out of range
   */
  public static Calculated<RowDivision> of(Length laidWidth, Length pitch, RuleValue<Length> minimum, RowWay way) {
    Objects.requireNonNull(laidWidth, "laidWidth");
    return of(laidWidth, pitch, minimum.value(), minimum.source(), way);
  }

  private static Calculated<RowDivision> of(Length laidWidth, Length pitch, Length minimum, Source source,
      RowWay way) {
    Widths.requirePositive(laidWidth, "laid width", "check the room's width and the expansion gap");
    Widths.requirePositive(pitch, "laid pitch", "give the width that a laid board covers");
    Widths.requireNotNegative(minimum, "minimum row width", "give 0 mm for no minimum");
    Objects.requireNonNull(way, "way");
    List<Step> steps = new ArrayList<>();
    List<Finding> findings = new ArrayList<>();
    long n = -laidWidth.negated().dividedBy(pitch);
    steps.add(new Step("number-of-rows", "How many rows does the width take?", "n = ceil(W / p)",
        List.of(Term.of("W", "laid width", laidWidth), Term.of("p", "laid pitch", pitch)), n, Source.DEFINITION));
    Length rest = laidWidth.minus(pitch.multipliedBy(n - 1));
    steps.add(new Step("rest", "How wide is the last row if all before it are full?", "r = W - (n - 1) * p",
        List.of(Term.of("W", "laid width", laidWidth), Term.of("n", "number of rows", n),
            Term.of("p", "laid pitch", pitch)), rest, Source.DEFINITION));
    Length least = Widths.inForce(minimum, pitch, source, steps, findings);
    Length first = n == 1 ? oneRow(rest, steps) : firstRow(pitch, rest, least, source, way, steps);
    Length last = n == 1 ? first : laidWidth.minus(first).minus(pitch.multipliedBy(n - 2));
    steps.add(n == 1
        ? new Step("last-row", "How wide is the last row? It is the first one.", "wn = w1",
            List.of(Term.of("w1", "first row", first)), last, Source.DEFINITION)
        : new Step("last-row", "How wide is the last row?", "wn = W - w1 - (n - 2) * p",
            List.of(Term.of("W", "laid width", laidWidth), Term.of("w1", "first row", first),
                Term.of("n", "number of rows", n), Term.of("p", "laid pitch", pitch)), last, Source.DEFINITION));
    RowDivision division = new RowDivision(laidWidth, pitch, least, source, n, first, last);
    division.addFindings(findings);
    return Calculated.of(division, steps, findings);
  }

  private static Length oneRow(Length rest, List<Step> steps) {
    steps.add(new Step("first-row", "How wide is the first row? The only row is as wide as the floor.", "w1 = r",
        List.of(Term.of("r", "the rest", rest)), rest, Source.DEFINITION));
    return rest;
  }

  private static Length firstRow(Length pitch, Length rest, Length least, Source source, RowWay way,
      List<Step> steps) {
    Term p = Term.of("p", "laid pitch", pitch);
    Term r = Term.of("r", "last row if the first is full", rest);
    boolean choosesFull = way != RowWay.BALANCED && way != RowWay.WIDEST_STRIP;
    if (choosesFull && rest.compareTo(least) >= 0) {
      steps.add(new Step("first-row",
          "How wide is the first row? Full, as the last row, " + rest + ", is at least " + least + ".",
          "w1 = p", List.of(p), pitch, Source.DEFINITION));
      return pitch;
    }
    Length shared = pitch.plus(rest);
    if (way == RowWay.LEAST_CUT && shared.compareTo(least.multipliedBy(2)) >= 0) {
      Length first = shared.minus(least);
      steps.add(new Step("first-row",
          "How wide is the first row? Ripped by as much as the last row needs to reach the minimum.",
          "w1 = p + r - m", List.of(p, r, new Term("m", "narrowest row", least, source)), first, Source.DEFINITION));
      return first;
    }
    Length first = shared.dividedBy(2, RoundingMode.CEILING);
    steps.add(new Step("first-row",
        "How wide is the first row? As wide as the last, so that the narrower of the two is as wide as it can be.",
        "w1 = (p + r) / 2, rounded up to a whole nanometre", List.of(p, r), first, Source.DEFINITION));
    return first;
  }

  private void addFindings(List<Finding> findings) {
    if (rows == 1) {
      findings.add(new Finding("one-row", Severity.NOTE, "", "the floor is one row of " + firstRow
          + ": a gap lies along both its edges, so each board needs no more than one rip", Source.DEFINITION));
    }
    Length narrower = firstRow.min(lastRow);
    if (narrower.compareTo(minimum) < 0) {
      String why = rows == 1
          ? "the floor is no wider; nothing can be done but to turn the boards"
          : "first and last row share " + firstRow.plus(lastRow) + " however they are split;"
              + " take boards of another width or turn them";
      findings.add(new Finding("row-narrower-than-minimum", Severity.WARNING, rows == 1 ? "row 1" : "row 1 and row "
          + rows, "the narrowest row is " + narrower + ", at least " + minimum + " is asked for; " + why, minimumSource));
    }
  }

  /**
   * Says what a measuring error does to the last row: the laid width may in truth be so much more or less than it was
   * measured, while the first row is ripped as worked out.
   *
   * @param plusMinus the most that the laid width is off, not null, not negative
   * @return the strips at the starting wall and, second, at the finishing wall, with the findings of
   *     {@link StartLine#withError(Length)}; not null
   * @throws IllegalArgumentException if the error is negative
   */
  public Calculated<MeasuringError> withError(Length plusMinus) {
    Objects.requireNonNull(plusMinus, "plusMinus");
    List<Stop> walls = List.of(Stop.floorAbove("starting wall", Length.ZERO),
        Stop.floorBelow("finishing wall", laidWidth));
    Length line = rows == 1 ? pitch : firstRow;
    return new StartLine(walls, Length.ZERO, pitch, minimum, minimumSource, line).withError(plusMinus);
  }

  /**
   * Returns the width that was divided.
   *
   * @return the laid width, not null
   */
  public Length laidWidth() {
    return laidWidth;
  }

  /**
   * Returns the distance from row to row.
   *
   * @return the laid pitch, not null
   */
  public Length pitch() {
    return pitch;
  }

  /**
   * Returns the narrowest row asked for, as it could be in force: never more than a full board.
   *
   * @return the minimum in force, not null
   */
  public Length minimum() {
    return minimum;
  }

  /**
   * Returns the number of rows, the outer ones included.
   *
   * @return at least 1
   */
  public long rows() {
    return rows;
  }

  /**
   * Returns the width of the first row.
   *
   * @return more than zero and at most the pitch, not null
   */
  public Length firstRow() {
    return firstRow;
  }

  /**
   * Returns the width of the last row; of a single row the same as {@link #firstRow()}.
   *
   * @return more than zero and at most the pitch, not null
   */
  public Length lastRow() {
    return lastRow;
  }

  /**
   * Returns the number of rows that are not ripped.
   *
   * @return from zero to {@link #rows()}
   */
  public long fullRows() {
    long outer = rows == 1 ? 1 : 2;
    long fullOuter = (firstRow.equals(pitch) ? 1 : 0) + (rows > 1 && lastRow.equals(pitch) ? 1 : 0);
    return rows - outer + fullOuter;
  }
}
