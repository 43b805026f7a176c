package floorcalc.differential;

import floorcalc.moisture.AirClimate;
import floorcalc.moisture.EquilibriumMoisture;
import floorcalc.moisture.Percent;
import floorcalc.moisture.Temperature;
import floorcalc.moisture.Temperature.Scale;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.SplittableRandom;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * Wood in balance with air, and the air in which wood keeps a moisture content: the equation in doubles, with the printed coefficients,
 * and its root by another library. Wood Handbook, equation 4-5.
 */
final class MoistureBalanceDifferential extends Comparison {
  private static final double[][] CELSIUS = {{349, 1.29, 0.0135}, {0.805, 0.000736, -0.00000273}, {6.27, -0.00938, -0.000303},
      {1.91, 0.0407, -0.000293}};
  private static final double[][] FAHRENHEIT = {{330, 0.452, 0.00415}, {0.791, 0.000463, -0.000000844},
      {6.34, 0.000775, -0.0000935}, {1.09, 0.0284, -0.0000904}};

  MoistureBalanceDifferential(int cases) {
    super("humidity in which wood settles at a moisture content", Library.HIPPARCHUS, cases, EquilibriumMoisture.class);
  }

  @Override
  public String unit() {
    return "percentage points of humidity, or of moisture content";
  }

  @Override
  public double tolerance() {
    return 1e-4;
  }

  @Override
  public String argument() {
    return "the core gives the least humidity in steps of 0.0001 % that reaches the moisture content";
  }

  @Override
  void compare(int upTo, Answers answers, Worst worst) {
    SplittableRandom random = new SplittableRandom(641);
    BracketingNthOrderBrentSolver solver = new BracketingNthOrderBrentSolver(0, 1e-13, 1e-13, 5);
    for (int k = 0; k < upTo; k++) {
      boolean celsius = random.nextBoolean();
      BigDecimal degrees = BigDecimal.valueOf(celsius ? random.nextLong(-200, 1000) : random.nextLong(-39, 2120), 1);
      Temperature temperature = Temperature.of(degrees, celsius ? Scale.CELSIUS : Scale.FAHRENHEIT);
      double[][] printed = celsius ? CELSIUS : FAHRENHEIT;
      double t = degrees.doubleValue();
      BigDecimal humidity = BigDecimal.valueOf(random.nextLong(1, 1000), 1);
      double there = moisture(printed, t, humidity.doubleValue() / 100);
      worst.nextCase();
      worst.see(2 * (EquilibriumMoisture.of(AirClimate.of(temperature, Percent.of(humidity))).value().number().doubleValue() - there),
          () -> humidity + " % at " + temperature);
      BigDecimal asked = new BigDecimal(there).setScale(3, RoundingMode.DOWN);
      double back = EquilibriumMoisture.humidityFor(temperature, Percent.of(asked)).value().number().doubleValue();
      double wanted = answers == Answers.AS_GIVEN ? asked.doubleValue() : asked.doubleValue() + 0.001;
      double root = 100 * solver.solve(200, h -> moisture(printed, t, h) - wanted, 0, 1);
      worst.see(back - root, () -> asked + " % in wood at " + temperature);
    }
  }

  private static double moisture(double[][] printed, double t, double h) {
    double[] p = new double[printed.length];
    for (int i = 0; i < p.length; i++) {
      p[i] = printed[i][0] + printed[i][1] * t + printed[i][2] * t * t;
    }
    double kh = p[1] * h;
    return 1800 / p[0] * (kh / (1 - kh) + (p[2] * kh + 2 * p[2] * p[3] * kh * kh) / (1 + p[2] * kh + p[2] * p[3] * kh * kh));
  }
}
