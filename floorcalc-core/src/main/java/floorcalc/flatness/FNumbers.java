package floorcalc.flatness;

import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * The numbers for flatness, FF, and for levelness, FL, of one line after ASTM E1155.
 * <p>
 * Readings stand 12 in, or 300 mm, apart. With heights {@code h}, from the first reading, number 0:
 * <pre>{@code
 * q(i) = h(i) - 2 h(i-1) + h(i-2)      curvature: positive in a trough, negative on a crest
 * z(i) = h(i) - h(i-10)                difference over ten intervals
 * FF = 4.57 in / (3 Sq + |mean q|)      FL = 12.5 in / (3 Sz + |mean z|)
 * }</pre>
 * with {@code S} the sample's standard deviation (divisor one less than the number). The definitions of {@code q} and {@code z} and
 * the twelve readings asked for were read in excerpts of the standard; the two equations and their constants are from
 * memory. The metric standard prints constants that are rounded and differ by up to 0.3 %, also from memory; those of inches are
 * used for both spacings. Means and deviations are rounded to the nanometre, the numbers to four decimals.
 * <p>
 * FF tells of bumps and dips over 2 ft, not over the lengths of straightedges; FL of the fall over 10 ft. Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class FNumbers {
  private static final List<Length> SPACINGS = List.of(Length.ofInches(12, 0, 1), Length.ofMillimetres(300));
  private static final int LEAST_READINGS = 12;
  private static final int LEVEL_INTERVALS = 10;
  private static final Length FLATNESS = Length.ofMillimetres("116.078");
  private static final Length LEVELNESS = Length.ofMillimetres("317.5");

  private final List<Length> curvatures;
  private final List<Length> levelDifferences;
  private final FNumber flatness;
  private final FNumber levelness;

  private FNumbers(List<Length> curvatures, List<Length> levelDifferences, FNumber flatness, FNumber levelness) {
    this.curvatures = List.copyOf(curvatures);
    this.levelDifferences = List.copyOf(levelDifferences);
    this.flatness = flatness;
    this.levelness = levelness;
  }

  /**
   * Finds both numbers of a line.
   *
   * @param line at least 12 readings, all 12 in or all 300 mm apart; not null
   * @return the numbers with their working, and the doubts about the readings; not null
   * @throws IllegalArgumentException if there are fewer readings or they stand otherwise
   */
  public static Calculated<FNumbers> of(HeightProfile line) {
    requireSpacing(Objects.requireNonNull(line, "line"));
    List<Length> curvatures = new ArrayList<>();
    List<Length> differences = new ArrayList<>();
    for (int i = 2; i < line.size(); i++) {
      curvatures.add(Length.ofNanometres(line.height(i) - 2 * line.height(i - 1) + line.height(i - 2)));
    }
    for (int i = LEVEL_INTERVALS; i < line.size(); i++) {
      differences.add(Length.ofNanometres(line.height(i) - line.height(i - LEVEL_INTERVALS)));
    }
    Statistics q = Statistics.of(curvatures);
    Statistics z = Statistics.of(differences);
    FNumbers numbers = new FNumbers(curvatures, differences, FNumber.of(FLATNESS, q), FNumber.of(LEVELNESS, z));
    List<Step> steps = new ArrayList<>();
    show(steps, "q", "curvatures", q);
    steps.add(numbers.flatness.step("ff", "How flat is the line?", "FF = 4.57in / (3 * S + abs(m)), rounded to four decimals",
        terms("q", q)));
    show(steps, "z", "differences over ten intervals", z);
    steps.add(numbers.levelness.step("fl", "How level is the line?",
        "FL = 12.5in / (3 * S + abs(m)), rounded to four decimals", terms("z", z)));
    return Calculated.of(numbers, steps, line.doubts());
  }

  private static void requireSpacing(HeightProfile line) {
    if (line.size() < LEAST_READINGS) {
      throw new IllegalArgumentException("F-numbers need at least " + LEAST_READINGS + " readings on a line, but it has "
          + line.size());
    }
    Length spacing = line.reading(1).place().minus(line.first());
    if (!SPACINGS.contains(spacing)) {
      throw new IllegalArgumentException("readings for F-numbers must be " + SPACINGS.get(0) + " or " + SPACINGS.get(1)
          + " apart, but the first two are " + spacing + " apart");
    }
    for (int i = 2; i < line.size(); i++) {
      Length next = Length.ofNanometres(line.place(i) - line.place(i - 1));
      if (!next.equals(spacing)) {
        throw new IllegalArgumentException("readings for F-numbers must be equally spaced, but reading " + (i + 1) + " is "
            + next + " from the one before, the first two are " + spacing + " apart");
      }
    }
  }

  private static void show(List<Step> steps, String symbol, String what, Statistics values) {
    steps.add(new Step("mean-of-" + symbol, "What is the mean of the " + what + "?",
        "m = T / n, rounded to the nearest nanometre", List.of(Term.of("T", "sum of the " + what, values.sum()),
            Term.of("n", "their number", values.number())), values.mean(), Source.DEFINITION));
    steps.add(new Step("deviation-of-" + symbol, "What is the standard deviation of the " + what + "?",
        "S = sqrt((Q - T * T / n) / (n - 1)), rounded to the nearest nanometre",
        List.of(Term.of("Q", "sum of their squares", values.squares()), Term.of("T", "sum of the " + what, values.sum()),
            Term.of("n", "their number", values.number())), values.deviation(), Source.DEFINITION));
  }

  private static List<Term> terms(String symbol, Statistics values) {
    return List.of(Term.of("S", "standard deviation of " + symbol, values.deviation()),
        Term.of("m", "mean of " + symbol, values.mean()));
  }

  /**
   * Returns the curvatures {@code q(2), q(3), ...}, two fewer than readings.
   *
   * @return an unmodifiable list, exact; not null
   */
  public List<Length> curvatures() {
    return curvatures;
  }

  /**
   * Returns the differences over ten intervals {@code z(10), z(11), ...}, ten fewer than readings.
   *
   * @return an unmodifiable list, exact; not null
   */
  public List<Length> levelDifferences() {
    return levelDifferences;
  }

  /**
   * Returns FF.
   *
   * @return the number for flatness, from all curvatures; not null
   */
  public FNumber flatness() {
    return flatness;
  }

  /**
   * Returns FL.
   *
   * @return the number for levelness, from all differences; not null
   */
  public FNumber levelness() {
    return levelness;
  }

  @Override
  public String toString() {
    return "FF " + flatness + ", FL " + levelness;
  }
}
