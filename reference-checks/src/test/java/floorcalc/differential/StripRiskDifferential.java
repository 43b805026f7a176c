package floorcalc.differential;

import floorcalc.measure.Length;
import floorcalc.rows.StripRisk;
import java.util.SplittableRandom;
import org.hipparchus.distribution.continuous.NormalDistribution;

/** How likely a strip comes out too narrow: a sum of shares of the normal distribution, over as many boards as it takes. */
final class StripRiskDifferential extends Comparison {
  private static final int BOARDS = 60;

  StripRiskDifferential(int cases) {
    super("likelihood that a strip is too narrow", Library.HIPPARCHUS, cases, StripRisk.class);
  }

  @Override
  public String unit() {
    return "of certainty";
  }

  @Override
  public double tolerance() {
    return 2e-9;
  }

  @Override
  public String argument() {
    return "from a standard deviation of a pitch on the core takes m / p, within 2e-9";
  }

  @Override
  void compare(int upTo, Answers answers, Worst worst) {
    SplittableRandom random = new SplittableRandom(601);
    for (int k = 0; k < upTo; k++) {
      long pitch = random.nextLong(50, 260) * 1_000_000;
      long strip = random.nextLong(1, pitch + 1);
      long minimum = random.nextLong(pitch * 11 / 10);
      long deviation = (long) (pitch * StrictMath.pow(10, random.nextDouble(-3, 0.2)));
      double mine = StripRisk.of(nm(strip), nm(pitch), nm(minimum), nm(deviation)).value().probability();
      NormalDistribution place = new NormalDistribution(answers == Answers.AS_GIVEN ? strip : strip + deviation / 100.0, deviation);
      double theirs = 0;
      for (int board = -BOARDS; board <= BOARDS; board++) {
        double from = (double) board * pitch;
        theirs += place.probability(from, from + Math.min(minimum, pitch));
      }
      worst.nextCase();
      worst.see(mine - theirs, () -> "strip " + strip + " pitch " + pitch + " minimum " + minimum + " deviation " + deviation);
    }
  }

  static Length nm(long nanometres) {
    return Length.ofNanometres(nanometres);
  }
}
