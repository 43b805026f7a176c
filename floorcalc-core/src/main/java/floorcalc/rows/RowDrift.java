package floorcalc.rows;

import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Severity;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * How far rows drift when they are set out with a nominal pitch but boards lay otherwise.
 * <p>
 * Every row adds the difference between the pitch as laid and the nominal one: {@code d = k * (p - p0)} after
 * {@code k} rows. A tenth of a millimetre is nothing on a board and two millimetres over twenty rows. Measure over a
 * stack: push ten boards together and measure across all of them.
 * <p>
 * Positive: the rows run ahead and the last row gets narrower. Negative: they fall behind and it gets wider, or
 * another row is needed. Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class RowDrift {
  private final Length nominalPitch;
  private final Length laidPitch;
  private final long rows;
  private final Length drift;
  private final Length lastRowAsLaid;

  private RowDrift(Length nominalPitch, Length laidPitch, long rows, Length drift, Length lastRowAsLaid) {
    this.nominalPitch = nominalPitch;
    this.laidPitch = laidPitch;
    this.rows = rows;
    this.drift = drift;
    this.lastRowAsLaid = lastRowAsLaid;
  }

  /**
   * Returns the drift after a number of rows.
   *
   * @param nominalPitch the pitch that the rows were set out with, not null, more than zero
   * @param laidPitch the pitch as laid, not null, more than zero
   * @param rows the number of rows, not negative
   * @return the drift with the step {@code drift}, not null
   * @throws IllegalArgumentException if a value is out of range
   */
  public static Calculated<RowDrift> of(Length nominalPitch, Length laidPitch, long rows) {
    Objects.requireNonNull(nominalPitch, "nominalPitch");
    Objects.requireNonNull(laidPitch, "laidPitch");
    Widths.requirePositive(nominalPitch, "nominal pitch", "give the cover width of a board");
    Widths.requirePositive(laidPitch, "laid pitch", "measure over ten boards pushed together and divide by ten");
    if (rows < 0) {
      throw new IllegalArgumentException("the number of rows must not be negative, but was " + rows);
    }
    Length drift = laidPitch.minus(nominalPitch).multipliedBy(rows);
    Step step = new Step("drift", "How far do the rows run ahead of where they were set out?", "d = k * (p - p0)",
        List.of(Term.of("k", "rows", rows), Term.of("p", "pitch as laid", laidPitch),
            Term.of("p0", "nominal pitch", nominalPitch)), drift, Source.DEFINITION);
    return Calculated.of(new RowDrift(nominalPitch, laidPitch, rows, drift, null), List.of(step));
  }

  /**
   * Returns the drift of the last row of a division that was made with the nominal pitch: that of all rows before it.
   *
   * @param nominal the division with the nominal pitch, not null
   * @param laidPitch the pitch as laid, not null, more than zero
   * @return the drift with the steps {@code drift} and {@code last-row-as-laid}, and one of the findings
   *     {@code last-row-narrower-than-drift}, {@code drift-adds-row} and {@code drift-narrows-last-row} where the drift
   *     is more than the last row, leaves more than a board for it, or leaves less than the minimum; not null
   * @throws IllegalArgumentException if the pitch is out of range
   */
  public static Calculated<RowDrift> of(RowDivision nominal, Length laidPitch) {
    Objects.requireNonNull(laidPitch, "laidPitch");
    Calculated<RowDrift> plain = of(nominal.pitch(), laidPitch, nominal.rows() - 1);
    Length drift = plain.value().drift();
    Length last = nominal.lastRow().minus(drift);
    List<Step> steps = new ArrayList<>(plain.steps());
    steps.add(new Step("last-row-as-laid", "How wide is what is left for the last row?", "wn' = wn - d",
        List.of(Term.of("wn", "last row as set out", nominal.lastRow()), Term.of("d", "drift", drift)), last,
        Source.DEFINITION));
    return Calculated.of(new RowDrift(nominal.pitch(), laidPitch, nominal.rows() - 1, drift, last), steps,
        findings(nominal, laidPitch, drift, last));
  }

  private static List<Finding> findings(RowDivision nominal, Length laidPitch, Length drift, Length last) {
    if (nominal.lastRow().compareTo(drift.abs()) < 0) {
      return warning("last-row-narrower-than-drift", nominal,
          "the last row, " + nominal.lastRow() + ", is narrower than the drift of " + drift);
    }
    String leaves = "the drift of " + drift + " leaves " + last + " for the last row, ";
    if (last.compareTo(laidPitch) > 0) {
      return warning("drift-adds-row", nominal, leaves + "more than a board of " + laidPitch);
    }
    if (last.compareTo(nominal.minimum().min(laidPitch)) < 0) {
      return warning("drift-narrows-last-row", nominal, leaves + "less than the " + nominal.minimum() + " asked for");
    }
    return List.of();
  }

  private static List<Finding> warning(String code, RowDivision nominal, String what) {
    return List.of(new Finding(code, Severity.WARNING, "row " + nominal.rows(),
        what + "; divide the width again with the pitch as laid", Source.DEFINITION));
  }

  /**
   * Returns the pitch that the rows were set out with.
   *
   * @return the nominal pitch, not null
   */
  public Length nominalPitch() {
    return nominalPitch;
  }

  /**
   * Returns the pitch as laid.
   *
   * @return the laid pitch, not null
   */
  public Length laidPitch() {
    return laidPitch;
  }

  /**
   * Returns over how many rows the drift adds up.
   *
   * @return not negative
   */
  public long rows() {
    return rows;
  }

  /**
   * Returns how far the rows run ahead of where they were set out.
   *
   * @return the drift, negative if they fall behind; not null
   */
  public Length drift() {
    return drift;
  }

  /**
   * Returns what is left for the last row, if the drift was worked out for a division.
   *
   * @return the width, zero or less if the rows run past the wall, more than a board if another row is needed; may be
   *     empty, not null
   */
  public Optional<Length> lastRowAsLaid() {
    return Optional.ofNullable(lastRowAsLaid);
  }
}
