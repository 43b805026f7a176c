package floorcalc.moisture;

import floorcalc.measure.Area;
import floorcalc.working.Calculated;
import floorcalc.working.Judgement;
import floorcalc.working.Outcome;
import floorcalc.working.Source;
import floorcalc.working.Standing;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.io.Serializable;
import java.math.BigInteger;
import java.util.List;
import java.util.Objects;

/**
 * How many readings are asked for: a number for each area, rounded up. Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class ReadingCount implements Serializable {
  private static final long serialVersionUID = 1L;

  /** NWFA: 20 readings of the subfloor for each 1000 square feet. */
  public static final ReadingCount NWFA_SUBFLOOR = nwfa("subfloor", 20);

  /** NWFA: 40 readings of the boards for each 1000 square feet. */
  public static final ReadingCount NWFA_BOARDS = nwfa("boards", 40);

  private final String what;
  private final transient int number;
  private final transient Area each;
  private final transient Source source;

  private ReadingCount(String what, int number, Area each, Source source) {
    this.what = what;
    this.number = number;
    this.each = each;
    this.source = source;
  }

  private static ReadingCount nwfa(String what, int number) {
    return new ReadingCount(what, number, Area.ofSquareMetres("92.90304"), new Source("Acclimation", "NWFA", 2019,
        "magazine, 26 February 2019", Standing.READ));
  }

  /**
   * Returns the number of readings asked for on an area.
   *
   * @param area the area of the floor, more than zero, not null
   * @return the number with the step {@code readings-wanted}, not null
   * @throws IllegalArgumentException if the area is not more than zero
   */
  public Calculated<Long> wanted(Area area) {
    Objects.requireNonNull(area, "area");
    if (!area.isPositive()) {
      throw new IllegalArgumentException("the area of the floor must be more than 0 m², but was " + area);
    }
    BigInteger[] parts = area.toHalfSquareNanometres().multiply(BigInteger.valueOf(number))
        .divideAndRemainder(each.toHalfSquareNanometres());
    long wanted = parts[0].longValueExact() + (parts[1].signum() > 0 ? 1 : 0);
    Step step = new Step("readings-wanted", "How many readings of the " + what + " are asked for?", "n = ceil(k * A / a)",
        List.of(Term.of("A", "area of the floor", area), new Term("k", "readings for each such area", number, source),
            new Term("a", "1000 square feet", each, source)), wanted, source);
    return Calculated.of(wanted, List.of(step));
  }

  /**
   * Judges the number of readings that were taken.
   *
   * @param taken how many, not negative
   * @param area the area of the floor, more than zero, not null
   * @return the judgement {@code moisture-readings} with the step {@code readings-wanted}, not null
   * @throws IllegalArgumentException if a value is out of bounds
   */
  public Calculated<Judgement> judge(int taken, Area area) {
    if (taken < 0) {
      throw new IllegalArgumentException("the number of readings must not be negative, but was " + taken);
    }
    Calculated<Long> wanted = wanted(area);
    boolean enough = taken >= wanted.value();
    Outcome outcome = enough ? Outcome.MET : taken == 0 ? Outcome.NOT_MEASURED : Outcome.NOT_MET;
    return Calculated.of(new Judgement("moisture-readings", "number of moisture readings of the " + what, "",
        taken == 0 ? "" : Integer.toString(taken), "at least " + wanted.value(), outcome, source,
        enough ? "" : "take " + (wanted.value() - taken) + " more, spread over the floor"), wanted.steps());
  }

  /**
   * Returns whose number it is.
   *
   * @return the source, not null
   */
  public Source source() {
    return source;
  }

  /** What was read is made anew, so that it keeps every check. */
  private Object readResolve() {
    return what.equals(NWFA_BOARDS.what) ? NWFA_BOARDS : NWFA_SUBFLOOR;
  }
}
