package floorcalc.deviations;

import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import floorcalc.working.Source;
import floorcalc.working.Standing;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What a tape measure itself may be off, how fine to measure, and how to read between two graduations.
 * <p>
 * What the person who holds the tape adds is another matter, and as a rule more: see
 * {@code floorcalc.outline.survey.SurveyUncertainty}.
 *
 * @since 0.1
 */
public final class TapeRules {
  private static final String REPORT = "as given in a report of the US Access Board, Dimensional Tolerances in Construction and for Surface"
      + " Accessibility";
  private static final Source TAPES = new Source("Handbook 44", "NIST", 0, "section 5.52, " + REPORT, Standing.QUOTED);
  private static final Source READING = new Source("Handbook 44", "NIST", 0, "section 10.3, " + REPORT, Standing.QUOTED);
  private static final Source PRECISION = new Source("Precision of measuring", "Precast Concrete Institute", 0, REPORT, Standing.QUOTED);
  private static final int[] UP_TO_FEET = {6, 30, 55, 80, 100};
  private static final int[] THIRTY_SECONDS = {1, 2, 4, 6, 8};
  private static final List<Tolerance> TOLERANCES = rows();

  private TapeRules() {}

  /**
   * What metal tapes of some length may be off, too long or too short.
   *
   * @param over tapes longer than this, not null
   * @param upTo tapes up to this length, itself among them, not null
   * @param most what they may be off, itself allowed, not null
   * @param source whose tolerance it is, not null
   * @since 0.1
   */
  public record Tolerance(Length over, Length upTo, Length most, Source source) {
    /** Checks that no part is null. */
    public Tolerance {
      Objects.requireNonNull(over, "over");
      Objects.requireNonNull(upTo, "upTo");
      Objects.requireNonNull(most, "most");
      Objects.requireNonNull(source, "source");
    }
  }

  private static List<Tolerance> rows() {
    List<Tolerance> list = new ArrayList<>();
    for (int i = 0; i < UP_TO_FEET.length; i++) {
      list.add(new Tolerance(i == 0 ? Length.ZERO : Length.ofInches(12L * UP_TO_FEET[i - 1], 0, 1), Length.ofInches(12L * UP_TO_FEET[i], 0, 1),
          Length.ofInches(0, THIRTY_SECONDS[i], 32), TAPES));
    }
    return List.copyOf(list);
  }

  /**
   * Returns what metal tapes may be off, by their length: NIST Handbook 44, section 5.52, as quoted. The table is in whole feet, from 7 to 30 after
   * up to 6; a tape between two of its rows is counted to the longer ones.
   *
   * @return an unmodifiable list from the shortest tapes on, not null
   */
  public static List<Tolerance> tolerances() {
    return TOLERANCES;
  }

  /**
   * Returns what a metal tape may be off over a length.
   *
   * @param length the length of the tape, more than zero, not null
   * @return the tolerance, too long or too short; empty beyond 100 ft, on which the source is silent; not null
   * @throws IllegalArgumentException if the length is not more than zero
   */
  public static Optional<Tolerance> toleranceFor(Length length) {
    if (!length.isPositive()) {
      throw new IllegalArgumentException("the length of a tape must be more than 0 mm, but was " + length);
    }
    return TOLERANCES.stream().filter(row -> length.compareTo(row.upTo()) <= 0).findFirst();
  }

  /**
   * Returns how fine to measure what is held against a limit: to a third of it, by the Precast Concrete Institute as quoted.
   *
   * @param limit the limit, not negative, not null
   * @return the precision with the step {@code precision}, rounded down to a whole nanometre, not null
   * @throws IllegalArgumentException if the limit is negative
   */
  public static Calculated<Length> precisionFor(Length limit) {
    if (limit.isNegative()) {
      throw new IllegalArgumentException("a limit must not be negative, but was " + limit);
    }
    Length third = limit.dividedBy(3, RoundingMode.FLOOR);
    return Calculated.of(third, List.of(new Step("precision", "How fine is it measured?", "p = m / n, rounded down to a whole nanometre",
        List.of(Term.of("m", "the limit that it is held against", limit), new Term("n", "how many times finer than the limit", 3, PRECISION)),
        third, PRECISION)));
  }

  /**
   * Returns a reading to the nearest graduation; midway between two it is the even one: NIST Handbook 44, section 10.3, as quoted.
   *
   * @param reading what is read between graduations, not null
   * @param graduation the distance of the graduations, more than zero, not null
   * @return the reading with the step {@code graduation}, not null
   * @throws IllegalArgumentException if the graduation is not more than zero
   */
  public static Calculated<Length> toGraduation(Length reading, Length graduation) {
    if (!Objects.requireNonNull(graduation, "graduation").isPositive()) {
      throw new IllegalArgumentException("the distance of graduations must be more than 0 mm, but was " + graduation);
    }
    long below = reading.dividedBy(graduation);
    int half = reading.remainder(graduation).multipliedBy(2).compareTo(graduation);
    long nearest = half < 0 || half == 0 && below % 2 == 0 ? below : below + 1;
    Length read = graduation.multipliedBy(nearest);
    return Calculated.of(read, List.of(new Step("graduation", "Which graduation is read? The nearest, the even one of two as near.", "r = k * g",
        List.of(Term.of("k", "number of the graduation", nearest), Term.of("g", "distance of the graduations", graduation)), read, READING)));
  }
}
