package floorcalc.rows;

import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Severity;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * Both arms of a floor that goes round an obstacle, meeting again: they must arrive in phase, a row line on a row line, and at the
 * same angle.
 * <p>
 * An arm of {@code n} rows that starts at {@code a} arrives at {@code a + n * p}. How far two arms miss each other is their
 * difference to the nearest whole row. An arm whose rows run off by {@code r} over a length {@code l} arrives turned by that much:
 * over the row that joins both arms, {@code L} long, the lines part by {@code L * (r1 / l1 - r2 / l2)}. Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class Closure {
  private final Length mismatch;
  private final Length plusMinus;
  private final Length parting;

  /**
   * One way round the obstacle.
   *
   * @param name what people call it, such as {@code "left of the column"}, not null
   * @param start the level of the row line that its rows are laid from, not null
   * @param rows the number of rows up to where the arms meet, not negative
   * @param pitch its laid pitch, not null, more than zero
   * @param pitchPlusMinus the most that its mean pitch is off, both ways, not null, not negative
   * @param runOff how far its rows run off, up positive, over {@code over}; not null
   * @param over the length that {@code runOff} was measured over, not null, more than zero
   * @since 0.1
   */
  public record Arm(String name, Length start, long rows, Length pitch, Length pitchPlusMinus, Length runOff, Length over) {
    /**
     * Checks that no part is null or out of range.
     *
     * @throws IllegalArgumentException if a part is out of range
     */
    public Arm {
      Objects.requireNonNull(pitchPlusMinus, "pitchPlusMinus");
      Objects.requireNonNull(name, "name");
      Objects.requireNonNull(start, "start");
      Widths.requirePositive(pitch, "laid pitch of '" + name + "'", "measure over ten boards pushed together");
      Widths.requireNotNegative(pitchPlusMinus, "error of the pitch of '" + name + "'", "give its size, it counts both ways");
      Objects.requireNonNull(runOff, "runOff");
      Widths.requirePositive(over, "length that the run-off of '" + name + "' was measured over", "give the length of the rows");
      if (rows < 0) {
        throw new IllegalArgumentException("the number of rows of '" + name + "' must not be negative, but was " + rows);
      }
    }

    /**
     * Returns an arm whose rows run true.
     *
     * @param name what people call it, not null
     * @param start the level of the row line that its rows are laid from, not null
     * @param rows the number of rows, not negative
     * @param pitch its laid pitch, not null, more than zero
     * @return the arm, its pitch taken as exact; not null
     * @throws IllegalArgumentException if a part is out of range
     */
    public static Arm straight(String name, Length start, long rows, Length pitch) {
      return new Arm(name, start, rows, pitch, Length.ZERO, Length.ZERO, Length.ofMillimetres(1000));
    }

    /**
     * Returns the level at which its last row line arrives.
     *
     * @return {@code start + rows * pitch}, not null
     */
    public Length arrival() {
      return start.plus(pitch.multipliedBy(rows));
    }
  }

  private Closure(Length mismatch, Length plusMinus, Length parting) {
    this.mismatch = mismatch;
    this.plusMinus = plusMinus;
    this.parting = parting;
  }

  /**
   * Checks whether two arms close.
   *
   * @param one the first arm, not null
   * @param other the second arm, not null
   * @param joined the length of the row that joins both, not null, more than zero
   * @param allowed the most that row lines may miss each other by, as the boards' joint takes it, not null, not negative
   * @return the closure with the steps {@code arrival-one}, {@code arrival-other}, {@code mismatch}, {@code mismatch-plus-minus} and
   *     {@code parting}, and the findings {@code arms-out-of-phase}, {@code arms-may-be-out-of-phase} and {@code arms-at-an-angle};
   *     not null
   * @throws IllegalArgumentException if a length is out of range
   */
  public static Calculated<Closure> of(Arm one, Arm other, Length joined, Length allowed) {
    Objects.requireNonNull(joined, "joined");
    Widths.requirePositive(joined, "length of the row that joins both arms", "measure it along the row");
    Widths.requireNotNegative(allowed, "mismatch allowed", "give what the boards' joint takes");
    Length difference = one.arrival().minus(other.arrival());
    Length pitch = one.pitch();
    long rows = difference.plus(pitch.dividedBy(2, RoundingMode.FLOOR)).dividedBy(pitch);
    Length mismatch = difference.minus(pitch.multipliedBy(rows));
    Length plusMinus = one.pitchPlusMinus().multipliedBy(one.rows()).plus(other.pitchPlusMinus().multipliedBy(other.rows()));
    Length parting = ControlLine.nearest(BigDecimal.valueOf(joined.toNanometres())
        .multiply(ratio(one).subtract(ratio(other)), ControlLine.ENOUGH));
    List<Step> steps = new ArrayList<>();
    steps.add(arrival("arrival-one", one));
    steps.add(arrival("arrival-other", other));
    steps.add(new Step("mismatch", "By how much do the row lines miss each other, to the nearest row?", "e = y1 - y2 - k * p",
        List.of(Term.of("y1", "arrival " + one.name(), one.arrival()), Term.of("y2", "arrival " + other.name(), other.arrival()),
            Term.of("k", "whole rows between them", rows), Term.of("p", "laid pitch", pitch)), mismatch, Source.DEFINITION));
    steps.add(new Step("mismatch-plus-minus", "By how much more or less, if the pitches are off as far as they may be?",
        "u = n1 * u1 + n2 * u2", List.of(Term.of("n1", "rows " + one.name(), one.rows()),
            Term.of("u1", "error of the pitch there", one.pitchPlusMinus()), Term.of("n2", "rows " + other.name(), other.rows()),
            Term.of("u2", "error of the pitch there", other.pitchPlusMinus())), plusMinus, Source.DEFINITION));
    steps.add(new Step("parting", "By how much do the row lines part over the row that joins the arms?",
        "v = L * (r1 / l1 - r2 / l2), rounded to the nearest nanometre",
        List.of(Term.of("L", "length of that row", joined), Term.of("r1", "run-off " + one.name(), one.runOff()),
            Term.of("l1", "over", one.over()), Term.of("r2", "run-off " + other.name(), other.runOff()),
            Term.of("l2", "over", other.over())), parting, Source.DEFINITION));
    Closure closure = new Closure(mismatch, plusMinus, parting);
    return Calculated.of(closure, steps, closure.findings(one, other, allowed));
  }

  private static BigDecimal ratio(Arm arm) {
    return BigDecimal.valueOf(arm.runOff().toNanometres())
        .divide(BigDecimal.valueOf(arm.over().toNanometres()), ControlLine.ENOUGH);
  }

  private static Step arrival(String id, Arm arm) {
    return new Step(id, "At which level do the rows " + arm.name() + " arrive?", "y = a + n * p",
        List.of(Term.of("a", "row line that they are laid from", arm.start()), Term.of("n", "rows", arm.rows()),
            Term.of("p", "laid pitch", arm.pitch())), arm.arrival(), Source.DEFINITION);
  }

  private List<Finding> findings(Arm one, Arm other, Length allowed) {
    List<Finding> findings = new ArrayList<>();
    String where = one.name() + ", " + other.name();
    if (mismatch.abs().compareTo(allowed) > 0) {
      findings.add(new Finding("arms-out-of-phase", Severity.WARNING, where, "the row lines miss each other by " + mismatch.abs()
          + ", at most " + allowed + " is allowed; set out both arms from one line, and correct the rows before they meet",
          Source.GIVEN));
    } else if (mismatch.abs().plus(plusMinus).compareTo(allowed) > 0) {
      findings.add(new Finding("arms-may-be-out-of-phase", Severity.NOTE, where, "the row lines miss each other by "
          + mismatch.abs() + ", and by up to " + plusMinus + " more as the pitches are known; check both arms against a string line"
          + " every few rows", Source.GIVEN));
    }
    if (parting.abs().compareTo(allowed) > 0) {
      findings.add(new Finding("arms-at-an-angle", Severity.WARNING, where, "the row lines of the arms part by " + parting.abs()
          + " over the row that joins them, at most " + allowed + " is allowed; straighten the rows against a string line",
          Source.GIVEN));
    }
    return findings;
  }

  /**
   * Returns by how much the row lines miss each other.
   *
   * @return the arrival of the first arm less that of the second, to the nearest whole row of the first arm's pitch: from minus half
   *     of it to half of it; not null
   */
  public Length mismatch() {
    return mismatch;
  }

  /**
   * Returns by how much more or less it may be.
   *
   * @return what the errors of both pitches add up to over all rows, not negative, not null
   */
  public Length plusMinus() {
    return plusMinus;
  }

  /**
   * Returns by how much the row lines part over the row that joins both arms.
   *
   * @return positive if the first arm's run up more, rounded to the nearest nanometre; not null
   */
  public Length parting() {
    return parting;
  }
}
