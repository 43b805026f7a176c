package floorcalc.differential;

import floorcalc.flatness.FNumber;
import floorcalc.flatness.FNumbers;
import floorcalc.flatness.HeightProfile;
import floorcalc.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.hipparchus.stat.descriptive.DescriptiveStatistics;

/** F-numbers of lines made by chance, from the mean and the standard deviation of another library. */
final class FNumberDifferential extends Comparison {
  private static final double INCH = 25.4;

  FNumberDifferential(int cases) {
    super("F-numbers", Library.HIPPARCHUS, cases, FNumbers.class, FNumber.class);
  }

  @Override
  public String unit() {
    return "FF or FL";
  }

  @Override
  public double tolerance() {
    return 1e-4;
  }

  @Override
  public String argument() {
    return "the core rounds F to four decimals, and before it mean and deviation to the nanometre, which turns an F of up to 50 by another 0.00005";
  }

  @Override
  void compare(int upTo, Answers answers, Worst worst) {
    SplittableRandom random = new SplittableRandom(251);
    for (int k = 0; k < upTo; k++) {
      int n = random.nextInt(14, 80);
      List<Length> heights = new ArrayList<>();
      double slope = random.nextDouble(-2, 2);
      for (int i = 0; i < n; i++) {
        heights.add(Length.ofNanometres(Math.round(1e6 * (slope * i + random.nextDouble(-4, 4)))));
      }
      Length spacing = random.nextBoolean() ? Length.ofMillimetres(300) : Length.ofInches(12, 0, 1);
      FNumbers numbers = FNumbers.of(HeightProfile.ofEqualSpacing(spacing, heights)).value();
      DescriptiveStatistics q = new DescriptiveStatistics();
      DescriptiveStatistics z = new DescriptiveStatistics();
      for (int i = 2; i < n; i++) {
        q.addValue(mm(heights, i) - 2 * mm(heights, i - 1) + mm(heights, i - 2));
      }
      for (int i = 10; i < n; i++) {
        z.addValue(mm(heights, i) - mm(heights, i - 10));
      }
      worst.nextCase();
      double share = answers == Answers.AS_GIVEN ? 1 : Math.sqrt((n - 3.0) / (n - 2.0)); // divisor n in place of n - 1
      worst.see(numbers.flatness().value() - 4.57 * INCH / (3 * q.getStandardDeviation() * share + Math.abs(q.getMean())),
          () -> "FF of " + heights);
      worst.see(numbers.levelness().value() - 12.5 * INCH / (3 * z.getStandardDeviation() + Math.abs(z.getMean())),
          () -> "FL of " + heights);
    }
  }

  private static double mm(List<Length> heights, int i) {
    return heights.get(i).toMillimetres();
  }
}
