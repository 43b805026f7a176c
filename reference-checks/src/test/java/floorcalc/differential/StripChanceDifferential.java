package floorcalc.differential;

import floorcalc.rows.StripRisk;
import java.util.SplittableRandom;
import org.hipparchus.random.Well19937c;

/** The same likelihood by chance: walls placed by another library's random numbers, and strips measured one by one. */
final class StripChanceDifferential extends Comparison {
  private static final int TRIES = 20_000;

  StripChanceDifferential(int cases) {
    super("likelihood that a strip is too narrow, by tries", Library.HIPPARCHUS, cases, StripRisk.class);
  }

  @Override
  public String unit() {
    return "standard errors of 20 000 tries";
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
    SplittableRandom random = new SplittableRandom(611);
    for (int k = 0; k < upTo; k++) {
      long pitch = random.nextLong(50, 260) * 1_000_000;
      long strip = random.nextLong(1, pitch + 1);
      long minimum = random.nextLong(pitch);
      long deviation = (long) (pitch * StrictMath.pow(10, random.nextDouble(-2, 0.2)));
      double mine = StripRisk.of(StripRiskDifferential.nm(strip), StripRiskDifferential.nm(pitch),
          StripRiskDifferential.nm(minimum), StripRiskDifferential.nm(deviation)).value().probability();
      Well19937c chance = new Well19937c(7000 + k);
      int narrow = 0;
      for (int i = 0; i < TRIES; i++) {
        double at = strip + deviation * chance.nextGaussian();
        double width = at - Math.floor(at / pitch) * pitch;
        narrow += width < minimum ? 1 : 0;
      }
      double expected = TRIES * (answers == Answers.AS_GIVEN ? mine : mine + 0.03);
      worst.nextCase();
      worst.see((narrow - expected) / Math.sqrt(Math.max(1, Math.abs(expected * (1 - mine)))),
          () -> "strip " + strip + " pitch " + pitch + " minimum " + minimum + " deviation " + deviation);
    }
  }
}
