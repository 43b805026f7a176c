package floorcalc.differential;

import floorcalc.differential.RandomNetwork.Datum;
import floorcalc.differential.RandomNetwork.Exact;
import floorcalc.differential.RandomNetwork.Measured;
import floorcalc.differential.RandomNetwork.Shape;
import floorcalc.outline.network.AdjustedObservation;
import floorcalc.outline.network.AdjustedPoint;
import floorcalc.outline.network.Adjustment;
import floorcalc.outline.network.Network;
import floorcalc.outline.network.Observation;
import java.util.SplittableRandom;
import java.util.function.Supplier;

/**
 * Networks in which some observations are exact. The other library knows no exact ones; it takes them with a heavy weight, which
 * stands for exactness only so far, and its steps along it are short.
 */
final class ExactNetworkDifferential extends Comparison {
  private static final double AS_GOOD_AS_EXACT = 1e-10;
  private static final double BY_WEIGHT = 1e-3;

  ExactNetworkDifferential(int cases) {
    super("networks with exact observations, adjusted by least squares", Library.HIPPARCHUS, cases, Network.class, Adjustment.class);
  }

  @Override
  public String unit() {
    return "of a standard deviation";
  }

  @Override
  public double tolerance() {
    return BY_WEIGHT;
  }

  @Override
  public String argument() {
    return "the other library takes an exact observation as one with a weight of 10^20, and stops short by so much";
  }

  @Override
  void compare(int upTo, Answers answers, Worst worst) {
    int elsewhere = 0;
    for (int k = 0; k < upTo; k++) {
      Datum datum = Datum.values()[k % Datum.values().length];
      Measured measured = Measured.values()[k / Datum.values().length % Measured.values().length];
      String name = datum + " " + measured + " " + k;
      RandomNetwork network = RandomNetwork.of(new SplittableRandom(3000 + k), Shape.SPREAD, datum, measured, Exact.SOME);
      Adjustment adjusted = Network.of(network.points(), network.observations()).adjust();
      double size = network.observations().stream().filter(o -> o.kind() == Observation.Kind.DISTANCE)
          .mapToDouble(Observation::value).max().orElseThrow();
      double exact = AS_GOOD_AS_EXACT * size;
      OtherLeastSquares again = new OtherLeastSquares(network.points(),
          network.observations().stream().map(o -> heavy(o, exact)).toList());
      worst.nextCase();
      if (Math.abs(again.squares() - adjusted.squares()) > BY_WEIGHT * Math.max(1, again.squares())) {
        elsewhere++;
        worst.see(adjusted.squares() < again.squares() ? 0 : Double.POSITIVE_INFINITY, () -> "squares of " + name);
      } else {
        compare(name, adjusted, again, exact, answers, worst);
      }
    }
    worst.see(elsewhere > Math.max(1, upTo / 100) ? Double.POSITIVE_INFINITY : 0, () -> "too many end elsewhere");
    worst.note(elsewhere + " ended elsewhere in the other library, at a larger sum of squares");
  }

  private static void compare(String name, Adjustment adjusted, OtherLeastSquares again, double exact, Answers answers, Worst worst) {
    double[] place = again.place();
    double fault = answers == Answers.AS_GIVEN ? 0 : 0.01;
    for (int i = 0; i < adjusted.points().size(); i++) {
      AdjustedPoint point = adjusted.points().get(i);
      double unit = Math.max(again.deviation(2 * i), again.deviation(2 * i + 1)) + 10 * exact / BY_WEIGHT;
      Supplier<String> what = NetworkDifferential.what(name, "point", i);
      worst.see(NetworkDifferential.of(point.x() + fault * unit - place[2 * i], unit), what);
      worst.see(NetworkDifferential.of(point.y() - place[2 * i + 1], unit), what);
      worst.see(NetworkDifferential.of(point.deviationX() - again.deviation(2 * i), unit), what);
      worst.see(NetworkDifferential.of(point.deviationY() - again.deviation(2 * i + 1), unit), what);
    }
    for (int k = 0; k < adjusted.observations().size(); k++) {
      AdjustedObservation observed = adjusted.observations().get(k);
      Supplier<String> what = NetworkDifferential.what(name, "observation", k);
      if (observed.observation().isExact()) {
        double kept = 1e-9 * Math.abs(observed.observation().value()) + 1e-9;
        worst.see(Math.abs(observed.residual()) <= kept ? 0 : Double.POSITIVE_INFINITY, what);
      } else {
        worst.see(observed.residual() / observed.observation().deviation() - again.residuals()[k], what);
        worst.see(observed.redundancy() - (1 - again.ownShare(k)), what);
      }
    }
  }

  private static Observation heavy(Observation o, double exact) {
    return o.isExact() ? RandomNetwork.withDeviation(o, o.kind() == Observation.Kind.DISTANCE ? exact : AS_GOOD_AS_EXACT) : o;
  }
}
