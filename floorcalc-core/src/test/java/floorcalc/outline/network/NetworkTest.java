package floorcalc.outline.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;

class NetworkTest {

  /** Three points in line, 3000 and 2000 apart, 5001 in all, alike: each is a third of the millimetre off. */
  @Test
  void pointsInLineThatAreTooFarApartStayInLine() {
    Adjustment adjusted = line(5001);
    assertThat(adjusted.isAtRest()).isTrue();
    assertThat(adjusted.observations().get(0).adjusted()).isCloseTo(3000 + 1 / 3.0, within(1e-6));
    assertThat(adjusted.observations().get(1).adjusted()).isCloseTo(2000 + 1 / 3.0, within(1e-6));
    assertThat(adjusted.observations().get(2).adjusted()).isCloseTo(5001 - 1 / 3.0, within(1e-6));
    assertThat(adjusted.squares()).isCloseTo(1 / 3.0, within(1e-6)); // 3 (1/3)^2
  }

  /** 4999 in all: the middle point lies off the line, by the height of the triangle, 49.0 mm. */
  @Test
  void pointsInLineThatAreTooNearGiveATriangle() {
    Adjustment adjusted = line(4999);
    // s = 4999.5: area^2 = s (s - 3000)(s - 2000)(s - 4999) = 4999.5 x 1999.5 x 2999.5 x 0.5; height = 2 area / 4999
    double height = 2 * Math.sqrt(4999.5 * 1999.5 * 2999.5 * 0.5) / 4999;
    assertThat(height).isCloseTo(49.0, within(0.05));
    assertThat(adjusted.isAtRest()).isTrue();
    assertThat(adjusted.looseness()).isZero();
    assertThat(adjusted.redundancy()).isZero();
    assertThat(adjusted.factor()).isEqualTo(1);
    assertThat(adjusted.squares()).isCloseTo(0, within(1e-9));
    assertThat(Math.abs(adjusted.point("2").y())).isCloseTo(height, within(1e-6));
    assertThat(adjusted.observations()).allSatisfy(o -> {
      assertThat(o.isControlled()).isFalse();
      assertThat(o.normalisedResidual()).isEmpty();
      assertThat(o.expected()).isEmpty();
      assertThat(o.expectedDeviation()).isEmpty();
    });
  }

  private static Adjustment line(double whole) {
    return Network.of(
        List.of(NetworkPoint.held("1", 0, 0), NetworkPoint.about("2", 3000, 5), new NetworkPoint("3", 5000, 0, Held.Y)),
        List.of(Observation.distance("1", "2", 3000, 1), Observation.distance("2", "3", 2000, 1),
            Observation.distance("1", "3", whole, 1))).adjust();
  }

  /** A third of a turn, measured twice with 1 and 2 degrees: weights 4 to 1. */
  @Test
  void anAngleMeasuredTwice() {
    Adjustment adjusted = Network.of(
        List.of(NetworkPoint.held("at", 0, 0), NetworkPoint.held("from", 1000, 0), NetworkPoint.about("to", -500, 800)),
        List.of(Observation.distance("at", "to", 1000, 1), Observation.angle("at", "from", "to", 120, 1),
            Observation.angle("at", "from", "to", -235, 2))).adjust(); // 125 less a whole turn
    AdjustedObservation one = adjusted.observations().get(1);
    AdjustedObservation other = adjusted.observations().get(2);
    assertThat(one.adjusted()).isCloseTo(121, within(1e-9)); // (4 x 120 + 1 x 125) / 5
    assertThat(one.residual()).isCloseTo(1, within(1e-9));
    assertThat(other.residual()).isCloseTo(-4, within(1e-9));
    assertThat(other.adjusted()).isCloseTo(-239, within(1e-9));
    assertThat(one.redundancy()).isCloseTo(0.2, within(1e-9));
    assertThat(other.redundancy()).isCloseTo(0.8, within(1e-9));
    assertThat(one.deviation()).isCloseTo(Math.sqrt(0.8), within(1e-9)); // 1 / sqrt(1 + 1/4)
    assertThat(one.expected().orElseThrow()).isCloseTo(125, within(1e-9));
    assertThat(one.expectedDeviation().orElseThrow()).isCloseTo(2, within(1e-9));
    assertThat(one.normalisedResidual().orElseThrow()).isCloseTo(5 / Math.sqrt(5), within(1e-9)); // 5 off, sqrt(1 + 4)
    assertThat(adjusted.squares()).isCloseTo(5, within(1e-9)); // 1 + (4/2)^2
    assertThat(adjusted.redundancy()).isEqualTo(1);
    assertThat(adjusted.point("to").x()).isCloseTo(1000 * Math.cos(Math.toRadians(121)), within(1e-9));
  }

  @Test
  void withoutObservationsEverythingIsLoose() {
    Adjustment adjusted = Network.of(List.of(NetworkPoint.about("1", 1, 2), NetworkPoint.about("2", 5, 2),
        NetworkPoint.about("3", 4, 7)), List.of()).adjust();
    assertThat(adjusted.point("3")).isEqualTo(new AdjustedPoint("3", 4, 7, 0, 0, 0));
    assertThat(adjusted.redundancy()).isZero();
    assertThat(adjusted.squares()).isZero();
    assertThat(adjusted.isAtRest()).isTrue();
    assertThat(adjusted.looseness()).isEqualTo(3); // six coordinates, less along x, along y, round
    assertThat(adjusted.looseWay(0)).hasSize(6);
    assertThatThrownBy(() -> adjusted.looseWay(3)).isInstanceOf(IndexOutOfBoundsException.class);
  }

  /** Four walls of equal length and no diagonal: one way to lean. */
  @Test
  void aFrameWithoutDiagonalLeans() {
    Adjustment adjusted = Network.of(
        List.of(NetworkPoint.held("1", 0, 0), new NetworkPoint("2", 100, 0, Held.Y), NetworkPoint.about("3", 100, 100),
            NetworkPoint.about("4", 0, 100)),
        List.of(Observation.distance("1", "2", 100, 1), Observation.distance("2", "3", 100, 1),
            Observation.distance("3", "4", 100, 1), Observation.distance("4", "1", 100, 1))).adjust();
    assertThat(adjusted.looseness()).isEqualTo(1);
    double[] way = adjusted.looseWay(0);
    // The lower wall is turned back by a quarter of the lean, so that the frame as a whole does not turn.
    assertThat(way[4] - way[2]).isCloseTo(way[6] - way[0], within(1e-9));
    assertThat(Math.abs(way[4] - way[2])).isGreaterThan(0.1);
    double length = 0;
    for (double part : way) {
      length += part * part;
    }
    assertThat(length).isCloseTo(1, within(1e-9));
  }

  @Test
  void allPointsHeldLeaveResidualsAlone() {
    Adjustment adjusted = Network.of(List.of(NetworkPoint.held("1", 0, 0), NetworkPoint.held("2", 300, 400)),
        List.of(Observation.distance("1", "2", 501, 0.5), Observation.bearing("1", "2", 53, 1))).adjust();
    assertThat(adjusted.observations().get(0).residual()).isCloseTo(-1, within(1e-9));
    assertThat(adjusted.observations().get(0).redundancy()).isEqualTo(1);
    assertThat(adjusted.observations().get(1).residual()).isCloseTo(Math.toDegrees(Math.atan2(4, 3)) - 53, within(1e-9));
    assertThat(adjusted.redundancy()).isEqualTo(2);
    assertThat(adjusted.point("2").greatestDeviation()).isZero();
  }

  @Test
  void exactObservationsThatContradictEachOtherAreSaid() {
    Adjustment adjusted = Network.of(List.of(NetworkPoint.held("1", 0, 0), new NetworkPoint("2", 100, 0, Held.Y)),
        List.of(Observation.distance("1", "2", 100, 0), Observation.distance("2", "1", 101, 0))).adjust();
    assertThat(adjusted.isAtRest()).isFalse();
  }

  @Test
  void exactObservationsAreKept() {
    Adjustment adjusted = Network.of(
        List.of(NetworkPoint.held("1", 0, 0), new NetworkPoint("2", 100, 0, Held.Y), NetworkPoint.about("3", 90, 110)),
        List.of(Observation.distance("1", "2", 100, 1), Observation.angle("2", "3", "1", 90, 0),
            Observation.distance("2", "3", 100, 1), Observation.distance("1", "3", 142, 1))).adjust();
    assertThat(adjusted.isAtRest()).isTrue();
    assertThat(adjusted.observations().get(1).residual()).isCloseTo(0, within(1e-9));
    assertThat(adjusted.observations().get(1).isControlled()).isFalse();
    assertThat(adjusted.point("3").x()).isCloseTo(adjusted.point("2").x(), within(1e-9));
    assertThat(adjusted.redundancy()).isEqualTo(1);
    // Both legs alike, a each: 2 (a - 100)^2 + (a sqrt(2) - 142)^2 is least where 8 a = 400 + 284 sqrt(2).
    assertThat(adjusted.observations().get(0).adjusted()).isCloseTo((200 + 142 * Math.sqrt(2)) / 4, within(1e-9));
  }

  /** Variances 9 and 16 unrelated; then 5, 5 and covariance 3: 5 + 3 along the diagonal, 5 - 3 across it. */
  @Test
  void errorEllipses() {
    AdjustedPoint plain = new AdjustedPoint("1", 0, 0, 3, 4, 0);
    assertThat(plain.greatestDeviation()).isCloseTo(4, within(1e-12));
    assertThat(plain.leastDeviation()).isCloseTo(3, within(1e-12));
    assertThat(Math.abs(plain.leastSureDegrees())).isCloseTo(90, within(1e-12));
    AdjustedPoint leaning = new AdjustedPoint("1", 0, 0, Math.sqrt(5), Math.sqrt(5), 3);
    assertThat(leaning.greatestDeviation()).isCloseTo(Math.sqrt(8), within(1e-12));
    assertThat(leaning.leastDeviation()).isCloseTo(Math.sqrt(2), within(1e-12));
    assertThat(leaning.leastSureDegrees()).isCloseTo(45, within(1e-12));
  }

  /** Deviation of the distance between two points: along x, the far end's x alone counts. */
  @Test
  void deviationOfWhatDependsOnTheCoordinates() {
    Adjustment adjusted = Network.of(
        List.of(NetworkPoint.held("1", 0, 0), new NetworkPoint("2", 100, 0, Held.Y)),
        List.of(Observation.distance("1", "2", 100, 3), Observation.distance("1", "2", 102, 3))).adjust();
    assertThat(adjusted.deviation(new double[] {-1, 0, 1, 0})).isCloseTo(3 / Math.sqrt(2), within(1e-12));
    assertThat(adjusted.covariance(new double[] {0, 0, 1, 0}, new double[] {0, 0, 2, 5})).isCloseTo(9, within(1e-9));
    assertThatIllegalArgumentException().isThrownBy(() -> adjusted.deviation(new double[] {1, 2, 3}))
        .withMessage("two slopes are needed for each of 2 points, but were 3 and 3");
  }

  /** The published network with two planted blunders: the greatest normalised residual finds one, then the other. */
  @Test
  void theTwoBlundersOfThePublishedNetworkStandOut() {
    PublishedNetwork published = PublishedNetwork.mixed("M4");
    List<Observation> left = new ArrayList<>(published.observations());
    List<String> found = new ArrayList<>();
    for (int k = 0; k < 2; k++) {
      Observation worst = Network.of(published.points(), left).adjust().observations().stream()
          .max(Comparator.comparingDouble(o -> Math.abs(o.normalisedResidual().orElse(0)))).orElseThrow().observation();
      found.add(worst.name());
      left.remove(worst);
    }
    assertThat(found).containsExactly("the distance from 3 to 4", "the angle at 103 from 1 to 102");
    Adjustment sound = Network.of(published.points(), left).adjust();
    assertThat(sound.observations())
        .allSatisfy(o -> assertThat(Math.abs(o.normalisedResidual().orElse(0))).isLessThan(3.29));
  }

  @Test
  void whatANetworkCannotBe() {
    NetworkPoint one = NetworkPoint.about("1", 0, 0);
    NetworkPoint two = NetworkPoint.about("2", 5, 0);
    assertThatIllegalArgumentException().isThrownBy(() -> Network.of(List.of(), List.of()))
        .withMessage("a network needs from 1 to 200 points, but has 0");
    assertThatIllegalArgumentException().isThrownBy(() -> Network.of(List.of(one, one), List.of()))
        .withMessage("there are two points named 1; give each a name of its own");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Network.of(List.of(one, two), List.of(Observation.distance("1", "3", 5, 1))))
        .withMessage("the distance from 1 to 3 names point 3, which the network does not have; add the point or mend the name");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Network.of(List.of(one, NetworkPoint.about("2", 0, 0)), List.of(Observation.bearing("1", "2", 5, 1))))
        .withMessage("the bearing from 1 to 2 is between points that are said to be at one place; say about where each of"
            + " them is");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Network.of(List.of(one, two, NetworkPoint.about("3", 0, 0)),
            List.of(Observation.angle("1", "3", "2", 5, 1))))
        .withMessageStartingWith("the angle at 1 from 3 to 2 is between points that are said to be at one place");
  }

  @Test
  void whatAnObservationCannotBe() {
    assertThatIllegalArgumentException().isThrownBy(() -> Observation.distance("1", "2", 0, 1))
        .withMessage("the distance from 1 to 2 must be more than 0, but was 0.0");
    assertThatIllegalArgumentException().isThrownBy(() -> Observation.distance("1", "1", 5, 1))
        .withMessage("the distance from 1 to 1 must be between different points");
    assertThatIllegalArgumentException().isThrownBy(() -> Observation.angle("1", "2", "1", 5, 1))
        .withMessage("the angle at 1 from 2 to 1 must be between different points");
    assertThatIllegalArgumentException().isThrownBy(() -> Observation.bearing("1", "2", Double.NaN, 1))
        .withMessage("the value of the bearing from 1 to 2 must be finite, but was NaN");
    assertThatIllegalArgumentException().isThrownBy(() -> Observation.bearing("1", "2", 5, -1))
        .withMessage("the standard deviation of the bearing from 1 to 2 must be 0 (exact) or more, but was -1.0");
    assertThatIllegalArgumentException().isThrownBy(() -> NetworkPoint.about(" ", 0, 0))
        .withMessage("a point of a network needs a name that is not blank");
    assertThatIllegalArgumentException().isThrownBy(() -> NetworkPoint.held("A", 0, Double.POSITIVE_INFINITY))
        .withMessage("point A must have finite coordinates, but was at (0.0, Infinity)");
    Network network = Network.of(List.of(NetworkPoint.held("A", 0, 0)), List.of());
    assertThatIllegalArgumentException().isThrownBy(() -> network.adjust().point("B"))
        .withMessage("the network has no point named B");
  }
}
