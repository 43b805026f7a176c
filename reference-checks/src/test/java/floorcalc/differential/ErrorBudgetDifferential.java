package floorcalc.differential;

import floorcalc.measure.Length;
import floorcalc.rows.ErrorBudget;
import floorcalc.rows.ErrorPart;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.distribution.continuous.UniformRealDistribution;

/** Budgets of errors: variances and the range of 95 of 100 from the distributions of another library. */
final class ErrorBudgetDifferential extends Comparison {
  ErrorBudgetDifferential(int cases) {
    super("standard deviation and 95 % range of a sum of errors", Library.HIPPARCHUS, cases, ErrorBudget.class, ErrorPart.class);
  }

  @Override
  public String unit() {
    return "nm";
  }

  @Override
  public double tolerance() {
    return 0.51;
  }

  @Override
  public String argument() {
    return "the core rounds to the nearest nanometre";
  }

  @Override
  void compare(int upTo, Answers answers, Worst worst) {
    SplittableRandom random = new SplittableRandom(621);
    for (int k = 0; k < upTo; k++) {
      List<ErrorPart> parts = parts(random, random.nextInt(1, 6));
      ErrorBudget budget = ErrorBudget.of(parts).value();
      double variance = 0;
      for (ErrorPart part : parts) {
        double size = part.size().toNanometres();
        variance += part.times() * (part.shape() == ErrorPart.Shape.NORMAL && answers == Answers.AS_GIVEN
            ? new NormalDistribution(0, size).getNumericalVariance()
            : new UniformRealDistribution(-size, size).getNumericalVariance());
      }
      double deviation = Math.sqrt(variance);
      worst.nextCase();
      worst.see(budget.standardDeviation().toNanometres() - deviation, parts::toString);
      double range = new NormalDistribution(0, deviation).inverseCumulativeProbability(0.975);
      worst.see(budget.normalRange().toNanometres() - range, () -> "95 % of " + parts);
    }
  }

  static List<ErrorPart> parts(SplittableRandom random, int number) {
    List<ErrorPart> parts = new ArrayList<>();
    for (int i = 0; i < number; i++) {
      parts.add(new ErrorPart("part " + i, random.nextBoolean() ? ErrorPart.Shape.NORMAL : ErrorPart.Shape.WITHIN_LIMITS,
          Length.ofNanometres(random.nextLong(10_000, 5_000_000)), random.nextLong(1, 40)));
    }
    return parts;
  }
}
