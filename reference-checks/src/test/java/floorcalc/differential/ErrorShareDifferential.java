package floorcalc.differential;

import floorcalc.measure.Length;
import floorcalc.rows.ErrorBudget;
import floorcalc.rows.ErrorPart;
import java.util.List;
import java.util.SplittableRandom;
import org.hipparchus.analysis.integration.SimpsonIntegrator;
import org.hipparchus.distribution.continuous.NormalDistribution;

/** Shares of sums by the core's tries against the exact share: a normal part and one within limits, integrated by another library. */
final class ErrorShareDifferential extends Comparison {
  private static final int TRIES = 4000;

  ErrorShareDifferential(int cases) {
    super("share of sums of errors below a value, by tries", Library.HIPPARCHUS, cases, ErrorBudget.class);
  }

  @Override
  public String unit() {
    return "standard errors of 4000 tries";
  }

  @Override
  public double tolerance() {
    return 5;
  }

  @Override
  public String argument() {
    return "five standard errors are passed once in two million cases";
  }

  @Override
  void compare(int upTo, Answers answers, Worst worst) {
    SplittableRandom random = new SplittableRandom(631);
    for (int k = 0; k < upTo; k++) {
      long deviation = random.nextLong(100_000, 3_000_000);
      long limit = random.nextLong(100_000, 6_000_000);
      long value = random.nextLong(-limit, limit);
      ErrorBudget budget = ErrorBudget.of(List.of(
          new ErrorPart("tape", ErrorPart.Shape.NORMAL, Length.ofNanometres(deviation), 1),
          new ErrorPart("board", ErrorPart.Shape.WITHIN_LIMITS, Length.ofNanometres(limit), 1))).value();
      double mine = budget.shareBelow(Length.ofNanometres(value), TRIES, 900 + k).doubleValue();
      NormalDistribution normal = new NormalDistribution(0, answers == Answers.AS_GIVEN ? deviation : 3.0 * deviation);
      double exact = new SimpsonIntegrator(1e-9, 1e-9, 3, 20)
          .integrate(100_000, x -> normal.cumulativeProbability(value - x * limit), -1, 1) / 2;
      worst.nextCase();
      worst.see((mine - exact) * TRIES / Math.sqrt(Math.max(1, TRIES * exact * (1 - exact))),
          () -> deviation + " and " + limit + " below " + value);
    }
  }
}
