package floorcalc.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import floorcalc.outline.network.AdjustedObservation;
import floorcalc.outline.network.AdjustedPoint;
import floorcalc.outline.network.Adjustment;
import floorcalc.outline.network.Network;
import floorcalc.outline.network.Observation;
import floorcalc.survey.RandomNetwork.Datum;
import floorcalc.survey.RandomNetwork.Exact;
import floorcalc.survey.RandomNetwork.Measured;
import floorcalc.survey.RandomNetwork.Shape;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Networks made by chance, adjusted by the library and by another one, with nothing in common but the observations. The
 * unit is the standard deviation of what is compared: a place may differ by a millionth of how sure it is.
 */
class NetworkComparisonTest {
  private static final double MILLIONTH = 1e-6;
  /** Standard deviations follow from the slopes, which near a fold change fast with the places: as a part of themselves. */
  private static final double SHARE = 1e-4;
  /** What the other library takes for exact: a part of the network's size, degrees. */
  private static final double AS_GOOD_AS_EXACT = 1e-10;
  /** A weight stands for exactness only so far, and the other library's steps along it are short. */
  private static final double BY_WEIGHT = 1e-3;
  /** Of each shape, datum and set of observations; {@code -Dfloorcalc.tries=20} takes twenty times as many. */
  private static final int NETWORKS = (int) (30 * Double.parseDouble(System.getProperty("floorcalc.tries", "1")));

  /**
   * Where points lie nearly in line, errors can leave a fold there, at which the slopes tell nothing: there the other
   * library may end elsewhere, at a larger sum.
   */
  @ParameterizedTest
  @EnumSource(Shape.class)
  void measured(Shape shape) {
    SplittableRandom random = new SplittableRandom(20 + shape.ordinal());
    int other = 0;
    int all = 0;
    for (Datum datum : Datum.values()) {
      for (Measured measured : Measured.values()) {
        for (int k = 0; k < NETWORKS; k++) {
          String name = shape + " " + datum + " " + measured + " " + k;
          RandomNetwork network = RandomNetwork.of(random.split(), shape, datum, measured, Exact.NONE);
          Adjustment adjusted = Network.of(network.points(), network.observations()).adjust();
          OtherLeastSquares again = new OtherLeastSquares(network.points(), network.observations());
          all++;
          if (Math.abs(again.squares() - adjusted.squares()) > MILLIONTH * Math.max(1, again.squares())) {
            other++;
            assertThat(adjusted.squares()).as(name).isLessThan(again.squares());
          } else {
            compare(name, adjusted, again);
          }
        }
      }
    }
    assertThat(other).as("networks that end elsewhere, of " + all).isLessThanOrEqualTo(all / 100);
  }

  @Test
  void exactObservations() {
    SplittableRandom random = new SplittableRandom(30);
    int other = 0;
    int all = 0;
    for (Datum datum : Datum.values()) {
      for (Measured measured : Measured.values()) {
        for (int k = 0; k < NETWORKS; k++) {
          String name = datum + " " + measured + " " + k;
          RandomNetwork network = RandomNetwork.of(random.split(), Shape.SPREAD, datum, measured, Exact.SOME);
          Adjustment adjusted = Network.of(network.points(), network.observations()).adjust();
          double size = network.observations().stream().filter(o -> o.kind() == Observation.Kind.DISTANCE)
              .mapToDouble(Observation::value).max().orElseThrow();
          double exact = AS_GOOD_AS_EXACT * size;
          OtherLeastSquares again = new OtherLeastSquares(network.points(), network.observations().stream()
              .map(o -> heavy(o, exact)).toList());
          all++;
          if (Math.abs(again.squares() - adjusted.squares()) > BY_WEIGHT * Math.max(1, again.squares())) {
            other++;
            assertThat(adjusted.squares()).as(name).isLessThan(again.squares());
          } else {
            compareExact(name, adjusted, again, exact);
          }
        }
      }
    }
    assertThat(other).as("networks that end elsewhere, of " + all).isLessThanOrEqualTo(all / 100);
  }

  private static void compare(String name, Adjustment adjusted, OtherLeastSquares again) {
    assertThat(adjusted.isAtRest()).as(name).isTrue();
    assertThat(adjusted.looseness()).as(name).isZero();
    assertThat(adjusted.redundancy()).as(name).isEqualTo(again.redundancy());
    double[] place = again.place();
    for (int i = 0; i < adjusted.points().size(); i++) {
      AdjustedPoint point = adjusted.points().get(i);
      double sx = again.deviation(2 * i);
      double sy = again.deviation(2 * i + 1);
      assertThat(point.x()).as(name + " x " + i).isCloseTo(place[2 * i], within(sx * MILLIONTH));
      assertThat(point.y()).as(name + " y " + i).isCloseTo(place[2 * i + 1], within(sy * MILLIONTH));
      assertThat(point.deviationX()).as(name + " sx " + i).isCloseTo(sx, within(sx * SHARE));
      assertThat(point.deviationY()).as(name + " sy " + i).isCloseTo(sy, within(sy * SHARE));
      assertThat(point.covariance()).as(name + " sxy " + i)
          .isCloseTo(again.covariance(2 * i, 2 * i + 1), within(sx * sy * SHARE));
    }
    double[] residuals = again.residuals();
    for (int k = 0; k < residuals.length; k++) {
      AdjustedObservation observed = adjusted.observations().get(k);
      double own = observed.observation().deviation();
      assertThat(observed.residual() / own).as(name + " v " + k).isCloseTo(residuals[k], within(MILLIONTH));
      assertThat(observed.redundancy()).as(name + " r " + k).isCloseTo(1 - again.ownShare(k), within(SHARE));
      assertThat(observed.deviation() / own).as(name + " s " + k)
          .isCloseTo(Math.sqrt(again.ownShare(k)), within(SHARE));
    }
  }

  private static void compareExact(String name, Adjustment adjusted, OtherLeastSquares again, double exact) {
    assertThat(adjusted.isAtRest()).as(name).isTrue();
    assertThat(adjusted.squares()).as(name).isCloseTo(again.squares(), within(BY_WEIGHT * Math.max(1, again.squares())));
    double[] place = again.place();
    for (int i = 0; i < adjusted.points().size(); i++) {
      AdjustedPoint point = adjusted.points().get(i);
      double near = BY_WEIGHT * Math.max(again.deviation(2 * i), again.deviation(2 * i + 1)) + 10 * exact;
      assertThat(point.x()).as(name + " x " + i).isCloseTo(place[2 * i], within(near));
      assertThat(point.y()).as(name + " y " + i).isCloseTo(place[2 * i + 1], within(near));
      assertThat(point.deviationX()).as(name + " sx " + i).isCloseTo(again.deviation(2 * i), within(near));
      assertThat(point.deviationY()).as(name + " sy " + i).isCloseTo(again.deviation(2 * i + 1), within(near));
    }
    for (int k = 0; k < adjusted.observations().size(); k++) {
      AdjustedObservation observed = adjusted.observations().get(k);
      if (observed.observation().isExact()) {
        assertThat(observed.residual()).as(name + " v " + k)
            .isCloseTo(0, within(1e-9 * Math.abs(observed.observation().value()) + 1e-9));
      } else {
        assertThat(observed.residual() / observed.observation().deviation()).as(name + " v " + k)
            .isCloseTo(again.residuals()[k], within(BY_WEIGHT));
        assertThat(observed.redundancy()).as(name + " r " + k).isCloseTo(1 - again.ownShare(k), within(BY_WEIGHT));
      }
    }
  }

  private static Observation heavy(Observation o, double exact) {
    return o.isExact() ? RandomNetwork.withDeviation(o, o.kind() == Observation.Kind.DISTANCE ? exact : AS_GOOD_AS_EXACT) : o;
  }
}
