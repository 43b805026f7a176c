package floorcalc.outline.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import floorcalc.outline.network.MadeNetwork.Datum;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

/** What holds for any network. Lengths are millimetres in a room of 10 m. */
class NetworkPropertyTest {
  /** A nanometre in networks of ten metres. */
  private static final double ROUNDING = 1e-6;

  @Property(tries = 100)
  void perfectMeasurementsGiveThePointsBack(@ForAll long seed) {
    MadeNetwork made = MadeNetwork.of(seed, Datum.HELD, 0, 300);
    Adjustment adjusted = made.adjust();
    assertThat(adjusted.isAtRest()).isTrue();
    assertThat(adjusted.looseness()).isZero();
    for (int i = 0; i < made.points().size(); i++) {
      assertThat(adjusted.points().get(i).x()).isCloseTo(made.truth()[2 * i], within(ROUNDING));
      assertThat(adjusted.points().get(i).y()).isCloseTo(made.truth()[2 * i + 1], within(ROUNDING));
    }
    assertThat(adjusted.squares()).isCloseTo(0, within(1e-12));
  }

  /** All pairs of points are as far from each other as they are in truth, and on the whole as near the approximate places as can be. */
  @Property(tries = 100)
  void perfectMeasurementsOfAFreeNetworkGiveItsShapeBack(@ForAll long seed) {
    MadeNetwork made = MadeNetwork.of(seed, Datum.FREE, 0, 300);
    Adjustment adjusted = made.adjust();
    double turning = 0;
    double size = 0;
    for (int i = 0; i < made.points().size(); i++) {
      AdjustedPoint one = adjusted.points().get(i);
      for (int j = 0; j < i; j++) {
        AdjustedPoint other = adjusted.points().get(j);
        assertThat(Math.hypot(one.x() - other.x(), one.y() - other.y())).isCloseTo(Math.hypot(
            made.truth()[2 * i] - made.truth()[2 * j], made.truth()[2 * i + 1] - made.truth()[2 * j + 1]), within(ROUNDING));
      }
      NetworkPoint about = made.points().get(i);
      turning += (one.x() - about.x()) * about.y() - (one.y() - about.y()) * about.x();
      size += 10_000;
    }
    // The moment of all moves about any point is zero, as their sum is: no turn of the whole brings the points nearer.
    assertThat(turning).isCloseTo(0, within(size * 1e-5));
    assertThat(sum(adjusted, made, 0)).isCloseTo(0, within(1e-7));
    assertThat(sum(adjusted, made, 1)).isCloseTo(0, within(1e-7));
  }

  private static double sum(Adjustment adjusted, MadeNetwork made, int axis) {
    double sum = 0;
    for (int i = 0; i < made.points().size(); i++) {
      sum += axis == 0 ? adjusted.points().get(i).x() - made.points().get(i).x()
          : adjusted.points().get(i).y() - made.points().get(i).y();
    }
    return sum;
  }

  @Property(tries = 100)
  void theOrderDoesNotMatter(@ForAll long seed, @ForAll Datum datum) {
    MadeNetwork made = MadeNetwork.of(seed, datum, 1, 10);
    List<NetworkPoint> points = new ArrayList<>(made.points());
    List<Observation> observations = new ArrayList<>(made.observations());
    Collections.shuffle(points, new Random(seed));
    Collections.shuffle(observations, new Random(seed + 1));
    Adjustment one = made.adjust();
    Adjustment other = Network.of(points, observations).adjust();
    for (AdjustedPoint point : one.points()) {
      assertSame(other.point(point.name()), point);
    }
    for (int k = 0; k < observations.size(); k++) {
      int at = made.observations().indexOf(observations.get(k));
      assertThat(other.observations().get(k).residual())
          .isCloseTo(one.observations().get(at).residual(), within(ROUNDING));
      assertThat(other.observations().get(k).redundancy())
          .isCloseTo(one.observations().get(at).redundancy(), within(ROUNDING));
    }
  }

  private static void assertSame(AdjustedPoint actual, AdjustedPoint expected) {
    assertThat(actual.x()).isCloseTo(expected.x(), within(ROUNDING));
    assertThat(actual.y()).isCloseTo(expected.y(), within(ROUNDING));
    assertThat(actual.deviationX()).isCloseTo(expected.deviationX(), within(ROUNDING));
    assertThat(actual.deviationY()).isCloseTo(expected.deviationY(), within(ROUNDING));
    assertThat(actual.covariance()).isCloseTo(expected.covariance(), within(ROUNDING));
  }

  @Property(tries = 100)
  void aNetworkMovedAndTurnedGivesTheResultMovedAndTurned(@ForAll long seed, @ForAll Datum datum,
      @ForAll @DoubleRange(min = -180, max = 180) double degrees, @ForAll @DoubleRange(min = -1e5, max = 1e5) double shift) {
    MadeNetwork made = MadeNetwork.of(seed, datum, 1, 10);
    double cos = Math.cos(Math.toRadians(degrees));
    double sin = Math.sin(Math.toRadians(degrees));
    List<NetworkPoint> points = made.points().stream().map(p -> new NetworkPoint(p.name(),
        p.x() * cos - p.y() * sin + shift, p.x() * sin + p.y() * cos - 2 * shift, p.held())).toList();
    List<Observation> observations = made.observations().stream().map(o -> o.kind() == Observation.Kind.BEARING
        ? Observation.bearing(o.from(), o.to(), o.value() + degrees, o.deviation()) : o).toList();
    Adjustment here = made.adjust();
    Adjustment there = Network.of(points, observations).adjust();
    for (AdjustedPoint point : here.points()) {
      AdjustedPoint moved = there.point(point.name());
      assertThat(moved.x()).isCloseTo(point.x() * cos - point.y() * sin + shift, within(ROUNDING));
      assertThat(moved.y()).isCloseTo(point.x() * sin + point.y() * cos - 2 * shift, within(ROUNDING));
      assertThat(moved.greatestDeviation()).isCloseTo(point.greatestDeviation(), within(ROUNDING));
      assertThat(moved.leastDeviation()).isCloseTo(point.leastDeviation(), within(ROUNDING));
    }
    for (int k = 0; k < observations.size(); k++) {
      assertThat(there.observations().get(k).residual()).isCloseTo(here.observations().get(k).residual(), within(ROUNDING));
    }
  }

  @Property(tries = 100)
  void allStandardDeviationsLargerScaleTheDeviationsAndNothingElse(@ForAll long seed, @ForAll Datum datum,
      @ForAll @DoubleRange(min = 0.1, max = 10) double times) {
    MadeNetwork made = MadeNetwork.of(seed, datum, 1, 10);
    List<Observation> observations = made.observations().stream().map(o -> again(o, o.deviation() * times)).toList();
    Adjustment one = made.adjust();
    Adjustment other = Network.of(made.points(), observations).adjust();
    for (AdjustedPoint point : one.points()) {
      AdjustedPoint scaled = other.point(point.name());
      assertThat(scaled.x()).isCloseTo(point.x(), within(ROUNDING));
      assertThat(scaled.y()).isCloseTo(point.y(), within(ROUNDING));
      assertThat(scaled.deviationX()).isCloseTo(point.deviationX() * times, within(ROUNDING));
      assertThat(scaled.deviationY()).isCloseTo(point.deviationY() * times, within(ROUNDING));
    }
    assertThat(other.squares() * times * times).isCloseTo(one.squares(), within(ROUNDING));
    for (int k = 0; k < observations.size(); k++) {
      assertThat(other.observations().get(k).redundancy()).isCloseTo(one.observations().get(k).redundancy(), within(ROUNDING));
    }
  }

  private static Observation again(Observation o, double deviation) {
    return switch (o.kind()) {
      case DISTANCE -> Observation.distance(o.from(), o.to(), o.value(), deviation);
      case ANGLE -> Observation.angle(o.at(), o.from(), o.to(), o.value(), deviation);
      case BEARING -> Observation.bearing(o.from(), o.to(), o.value(), deviation);
    };
  }

  @Property(tries = 100)
  void theSharesOfRedundancyAddUp(@ForAll long seed, @ForAll Datum datum) {
    Adjustment adjusted = MadeNetwork.of(seed, datum, 1, 10).adjust();
    assertThat(adjusted.observations().stream().mapToDouble(AdjustedObservation::redundancy).sum())
        .isCloseTo(adjusted.redundancy(), within(1e-9));
    assertThat(adjusted.observations()).allSatisfy(o -> assertThat(o.redundancy()).isBetween(0.0, 1.0));
  }

  /** The second way: adjusted once more without it. Errors are small, so that the slopes hardly change on the way. */
  @Property(tries = 100)
  void whatTheOthersExpectIsWhatTheyGiveWithoutIt(@ForAll long seed) {
    MadeNetwork made = MadeNetwork.of(seed, Datum.HELD, 0.02, 10);
    Adjustment all = made.adjust();
    for (int k = 0; k < made.observations().size(); k++) {
      AdjustedObservation one = all.observations().get(k);
      if (one.observation().kind() == Observation.Kind.DISTANCE && one.redundancy() > 0.1) {
        List<Observation> others = new ArrayList<>(made.observations());
        others.remove(k);
        Adjustment without = Network.of(made.points(), others).adjust();
        AdjustedPoint from = without.point(one.observation().from());
        AdjustedPoint to = without.point(one.observation().to());
        assertThat(one.expected().orElseThrow()).isCloseTo(Math.hypot(to.x() - from.x(), to.y() - from.y()),
            within(0.001 * one.observation().deviation()));
      }
    }
  }

  @Property(tries = 100)
  void theSameBitsTwice(@ForAll long seed, @ForAll Datum datum) {
    Adjustment one = MadeNetwork.of(seed, datum, 1, 10).adjust();
    Adjustment other = MadeNetwork.of(seed, datum, 1, 10).adjust();
    assertThat(other.points()).isEqualTo(one.points());
    assertThat(other.observations()).isEqualTo(one.observations());
    assertThat(Double.doubleToLongBits(other.squares())).isEqualTo(Double.doubleToLongBits(one.squares()));
  }
}
