package floorcalc.differential;

import floorcalc.differential.RandomNetwork.Datum;
import floorcalc.differential.RandomNetwork.Exact;
import floorcalc.differential.RandomNetwork.Measured;
import floorcalc.differential.RandomNetwork.Shape;
import floorcalc.outline.network.AdjustedObservation;
import floorcalc.outline.network.AdjustedPoint;
import floorcalc.outline.network.Adjustment;
import floorcalc.outline.network.Network;
import java.util.SplittableRandom;
import java.util.function.Supplier;

/**
 * Networks made by chance, of every shape, datum and kind of observation, adjusted by another library with nothing in common but the
 * observations. Places and residuals count in their standard deviations; variances follow from slopes, which near a fold change
 * fast with the places, and count as a part of themselves.
 * <p>
 * Where points lie nearly in line, errors can leave a fold there, at which the slopes tell nothing: there the other library may
 * end elsewhere, in one network of a hundred at most, and always at a larger sum of squares. Close to a fold it may also rest a
 * little short: 1.6 millionths of a standard deviation in the worst of 1080 networks, where its sum is larger by 7e-12.
 */
final class NetworkDifferential extends Comparison {
  private static final double MILLIONTH = 1e-6;
  private static final double SHARE = 1e-4;

  NetworkDifferential(int cases) {
    super("networks adjusted by least squares", Library.HIPPARCHUS, cases, Network.class, Adjustment.class);
  }

  @Override
  public String unit() {
    return "of a millionth of a standard deviation for places and residuals, of a ten-thousandth part for variances";
  }

  @Override
  public double tolerance() {
    return 5;
  }

  @Override
  public String argument() {
    return "sums of squares that differ by 10^-11, where their rounding begins to show, leave places free by a few millionths of their standard deviations";
  }

  @Override
  void compare(int upTo, Answers answers, Worst worst) {
    int kinds = Shape.values().length * Datum.values().length * Measured.values().length;
    int elsewhere = 0;
    for (int k = 0; k < upTo; k++) {
      Shape shape = Shape.values()[k % Shape.values().length];
      Datum datum = Datum.values()[k / Shape.values().length % Datum.values().length];
      Measured measured = Measured.values()[k / Shape.values().length / Datum.values().length % Measured.values().length];
      String name = shape + " " + datum + " " + measured + " " + k / kinds;
      RandomNetwork network = RandomNetwork.of(new SplittableRandom(2000 + k), shape, datum, measured, Exact.NONE);
      Adjustment adjusted = Network.of(network.points(), network.observations()).adjust();
      OtherLeastSquares again = new OtherLeastSquares(network.points(), network.observations());
      worst.nextCase();
      if (Math.abs(again.squares() - adjusted.squares()) > MILLIONTH * Math.max(1, again.squares())) {
        elsewhere++;
        worst.see(adjusted.squares() < again.squares() ? 0 : Double.POSITIVE_INFINITY, () -> "squares of " + name);
      } else {
        compare(name, adjusted, again, answers, worst);
      }
    }
    worst.see(elsewhere > Math.max(1, upTo / 100) ? Double.POSITIVE_INFINITY : 0, () -> "too many end elsewhere");
    worst.note(elsewhere + " ended elsewhere in the other library, at a larger sum of squares");
  }

  private static void compare(String name, Adjustment adjusted, OtherLeastSquares again, Answers answers, Worst worst) {
    worst.see(adjusted.isAtRest() && adjusted.looseness() == 0 && adjusted.redundancy() == again.redundancy() ? 0
        : Double.POSITIVE_INFINITY, () -> "rest or redundancy of " + name);
    double[] place = again.place();
    double fault = answers == Answers.AS_GIVEN ? 0 : 1e-4;
    for (int i = 0; i < adjusted.points().size(); i++) {
      AdjustedPoint point = adjusted.points().get(i);
      double sx = again.deviation(2 * i);
      double sy = again.deviation(2 * i + 1);
      Supplier<String> what = what(name, "point", i);
      worst.see(of(point.x() + fault * sx - place[2 * i], sx * MILLIONTH), what);
      worst.see(of(point.y() - place[2 * i + 1], sy * MILLIONTH), what);
      worst.see(of(point.deviationX() - sx, sx * SHARE), what);
      worst.see(of(point.deviationY() - sy, sy * SHARE), what);
      worst.see(of(point.covariance() - again.covariance(2 * i, 2 * i + 1), sx * sy * SHARE), what);
    }
    double[] residuals = again.residuals();
    for (int k = 0; k < residuals.length; k++) {
      AdjustedObservation observed = adjusted.observations().get(k);
      double own = observed.observation().deviation();
      Supplier<String> what = what(name, "observation", k);
      worst.see((observed.residual() / own - residuals[k]) / MILLIONTH, what);
      worst.see((observed.redundancy() - (1 - again.ownShare(k))) / SHARE, what);
      worst.see((observed.deviation() / own - Math.sqrt(again.ownShare(k))) / SHARE, what);
    }
  }

  static Supplier<String> what(String name, String part, int index) {
    return () -> part + " " + index + " of " + name;
  }

  /** What is held is where it is on both sides. */
  static double of(double difference, double allowed) {
    return difference == 0 ? 0 : difference / allowed;
  }
}
