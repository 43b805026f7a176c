package floorcalc.rows;

import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import floorcalc.working.Source;
import floorcalc.working.Standing;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/**
 * How far a sum of lengths may be off when each part is off by itself: a width measured with a tape, less twenty boards each
 * within its tolerance.
 * <p>
 * Three answers, kept apart: the worst case, where all parts are off the same way as far as they may; the standard deviation,
 * {@code u = sqrt(sum n * u_i^2)}, with {@code u_i = a / sqrt(3)} for a part that is only known to lie within {@code a}; and the
 * range that holds 95 of 100 cases, {@code 1.96 u} if the sum is nearly normal, or read off many tries by chance. Immutable and
 * thread-safe.
 *
 * @since 0.1
 */
public final class ErrorBudget {
  /** The most tries. */
  public static final int MOST_TRIES = 10_000_000;

  private static final double NORMAL_95 = 1.959963984540054;
  private static final Source GUIDE = new Source("JCGM 100", "Joint Committee for Guides in Metrology", 2008,
      "4.3.7 and 5.1.2", Standing.FROM_MEMORY);

  private final List<ErrorPart> parts;
  private final double deviation;

  private ErrorBudget(List<ErrorPart> parts, double deviation) {
    this.parts = parts;
    this.deviation = deviation;
  }

  /**
   * Adds up parts that do not depend on each other.
   *
   * @param parts the parts, not empty
   * @return the budget with the step {@code standard-deviation} and, if every part has a limit, {@code worst-case}; not null
   * @throws IllegalArgumentException if there is no part
   */
  public static Calculated<ErrorBudget> of(List<ErrorPart> parts) {
    if (parts.isEmpty()) {
      throw new IllegalArgumentException("a budget of errors needs at least one part");
    }
    List<ErrorPart> all = List.copyOf(parts);
    List<Term> terms = new ArrayList<>();
    StringBuilder sum = new StringBuilder();
    StringBuilder most = new StringBuilder();
    double variance = 0;
    for (int i = 0; i < all.size(); i++) {
      ErrorPart part = all.get(i);
      String third = part.shape() == ErrorPart.Shape.NORMAL ? "" : " / 3";
      String of = (part.shape() == ErrorPart.Shape.NORMAL ? "u" : "a") + (i + 1);
      sum.append(i == 0 ? "" : " + ").append("n").append(i + 1).append(" * ").append(of).append(" * ").append(of).append(third);
      most.append(i == 0 ? "" : " + ").append("n").append(i + 1).append(" * ").append(of);
      terms.add(Term.of("n" + (i + 1), part.name() + ": how many", part.times()));
      terms.add(Term.of(of, part.name() + (part.shape() == ErrorPart.Shape.NORMAL ? ": standard deviation" : ": limit both ways"),
          part.size()));
      variance += part.times() * part.variance();
    }
    ErrorBudget budget = new ErrorBudget(all, StrictMath.sqrt(variance));
    List<Step> steps = new ArrayList<>();
    steps.add(new Step("standard-deviation", "How far is the sum off as a rule?", "u = sqrt(" + sum + ")", terms,
        rounded(budget.deviation), GUIDE));
    budget.worstCase().ifPresent(worst -> steps.add(new Step("worst-case",
        "How far is the sum off if every part is off the same way as far as it may?", "w = " + most, terms, worst,
        Source.DEFINITION)));
    return Calculated.of(budget, steps);
  }

  private static Length rounded(double millimetres) {
    return Length.fromMillimetres(millimetres, RoundingMode.HALF_EVEN);
  }

  /**
   * Returns how far the sum is off at most, if each part has a limit.
   *
   * @return the sum of the limits, exact; empty if a part is normal, which has none
   */
  public Optional<Length> worstCase() {
    if (parts.stream().anyMatch(part -> part.shape() == ErrorPart.Shape.NORMAL)) {
      return Optional.empty();
    }
    return Optional.of(parts.stream().map(part -> part.size().multipliedBy(part.times())).reduce(Length.ZERO, Length::plus));
  }

  /**
   * Returns the standard deviation of the sum.
   *
   * @return rounded to the nearest nanometre, not null
   */
  public Length standardDeviation() {
    return rounded(deviation);
  }

  /**
   * Returns the root of the sum of the squares of the sizes themselves, limits taken as they are: what engineers call the
   * statistical stack of tolerances.
   *
   * @return {@code sqrt(sum n * a^2)}, rounded to the nearest nanometre, not null
   */
  public Length rootSumSquare() {
    return rounded(StrictMath.sqrt(parts.stream()
        .mapToDouble(part -> part.times() * part.size().toMillimetres() * part.size().toMillimetres()).sum()));
  }

  /**
   * Returns the half of the range about the middle that holds 95 of 100 sums, if the sum is nearly normal: as it is with many
   * parts of about one size, and not with one large part within limits.
   *
   * @return {@code 1.96 u}, rounded to the nearest nanometre, not null
   */
  public Length normalRange() {
    return rounded(NORMAL_95 * deviation);
  }

  /**
   * Returns the half of the range about the middle that holds 95 of 100 sums, read off sums by chance. The same seed gives the
   * same range on every machine.
   *
   * @param tries how many sums, from 100 to {@value #MOST_TRIES}; the result is sure to about one part in the root of them
   * @param seed where chance begins
   * @return the size that 95 of 100 sums do not exceed, rounded to the nearest nanometre, not null
   * @throws IllegalArgumentException if the number of tries is out of range
   */
  public Length rangeByTries(int tries, long seed) {
    double[] sizes = sums(tries, seed);
    for (int i = 0; i < sizes.length; i++) {
      sizes[i] = StrictMath.abs(sizes[i]);
    }
    Arrays.sort(sizes);
    return rounded(sizes[(int) Math.ceil(0.95 * tries) - 1]);
  }

  /**
   * Returns the share of sums by chance that are less than a value.
   *
   * @param value the value, not null, may be negative
   * @param tries how many sums, from 100 to {@value #MOST_TRIES}
   * @param seed where chance begins
   * @return from 0 to 1, a whole number of tries divided by all; not null
   * @throws IllegalArgumentException if the number of tries is out of range
   */
  public BigDecimal shareBelow(Length value, int tries, long seed) {
    double limit = value.toMillimetres();
    long below = Arrays.stream(sums(tries, seed)).filter(sum -> sum < limit).count();
    return new BigDecimal(below).divide(new BigDecimal(tries), 9, RoundingMode.HALF_EVEN);
  }

  private double[] sums(int tries, long seed) {
    if (tries < 100 || tries > MOST_TRIES) {
      throw new IllegalArgumentException("the number of tries must be from 100 to " + MOST_TRIES + ", but was " + tries);
    }
    Random random = new Random(seed);
    double[] sums = new double[tries];
    for (int i = 0; i < tries; i++) {
      for (ErrorPart part : parts) {
        double size = part.size().toMillimetres();
        for (long k = 0; k < part.times(); k++) {
          sums[i] += size * (part.shape() == ErrorPart.Shape.NORMAL ? random.nextGaussian() : 2 * random.nextDouble() - 1);
        }
      }
    }
    return sums;
  }
}
