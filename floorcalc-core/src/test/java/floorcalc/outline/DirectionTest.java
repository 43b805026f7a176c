package floorcalc.outline;

import static floorcalc.outline.RingTest.ring;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DirectionTest {
  @ParameterizedTest
  @CsvSource({"0, 0", "37.5, 37.5", "360, 0", "-90, 270", "450, 90", "-0.0000000004, 0", "719.9999999996, 0",
      "0.1, 0.1", "-1000000, 80", "359.9999999994, 359.999999999"})
  void fromDegrees(double degrees, BigDecimal expected) {
    assertThat(Direction.fromDegrees(degrees).toDecimal()).isEqualByComparingTo(expected);
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, 1_000_000.1, -1e300})
  void fromDegreesRefuses(double degrees) {
    assertThatThrownBy(() -> Direction.fromDegrees(degrees))
        .isInstanceOf(IllegalArgumentException.class).hasMessageContaining("but was " + degrees);
  }

  @ParameterizedTest
  @CsvSource({"1, 0, 0", "1, 1, 45", "0, 2, 90", "-3, 0, 180", "0, -1, 270", "1, -1, 315"})
  void fromPoints(long x, long y, double degrees) {
    Point from = Point.ofMillimetres(7, 8);
    assertThat(Direction.fromPoints(from, Point.ofMillimetres(7 + x, 8 + y)).degrees()).isEqualTo(degrees);
  }

  @Test
  void fromPointsRefusesOnePlace() {
    assertThatThrownBy(() -> Direction.fromPoints(Point.ofMillimetres(7, 8), Point.ofMillimetres(7, 8)))
        .isInstanceOf(IllegalArgumentException.class).hasMessageContaining("(7 mm, 8 mm)");
  }

  @Test
  void plusQuarterTurns() {
    assertThat(Direction.fromDegrees(300).plusQuarterTurns(1)).isEqualTo(Direction.fromDegrees(30));
    assertThat(Direction.fromDegrees(30).plusQuarterTurns(-7)).isEqualTo(Direction.fromDegrees(120));
    assertThat(Direction.fromDegrees(90).isAlongAxis()).isTrue();
    assertThat(Direction.fromDegrees(90.000000001).isAlongAxis()).isFalse();
  }

  @Test
  void turnsByQuartersExactly() {
    Ring ring = ring(0, 0, 4000, 0, 4000, 3000);
    assertThat(Direction.fromDegrees(90).toRoom(ring)).isEqualTo(ring(0, 0, 0, 4000, -3000, 4000));
    assertThat(Direction.fromDegrees(90).toFrame(ring)).isEqualTo(ring(0, 0, 0, -4000, 3000, -4000));
    assertThat(Direction.fromDegrees(180).toRoom(ring)).isEqualTo(ring(0, 0, -4000, 0, -4000, -3000));
    assertThat(Direction.fromDegrees(270).toRoom(ring)).isEqualTo(Direction.fromDegrees(90).toFrame(ring));
    assertThat(Direction.ALONG_X.toRoom(ring)).isEqualTo(ring);
  }

  @Test
  void turnsAnOutlineWithItsVoids() {
    Outline room = Outline.of(ring(0, 0, 4000, 0, 4000, 3000, 0, 3000), List.of(ring(1, 1, 1, 2, 2, 2)));
    assertThat(Direction.fromDegrees(90).toRoom(room))
        .isEqualTo(Outline.of(ring(0, 0, 0, 4000, -3000, 4000, -3000, 0), List.of(ring(-1, 1, -2, 1, -2, 2))));
    assertThat(Direction.fromDegrees(90).toFrame(Direction.fromDegrees(90).toRoom(room))).isEqualTo(room);
  }

  @Test
  void turnsByAThirdOfARightAngle() {
    // cos 30° = 0.866 025 403 784…, sin 30° = 1/2: (1 m, 0) comes to (866 025 404 nm, 500 000 000 nm)
    assertThat(Direction.fromDegrees(30).toRoom(ring(1000, 0)))
        .isEqualTo(Ring.ofNanometres(new long[] {866_025_404}, new long[] {500_000_000}));
  }

  @Test
  void valueAndText() {
    assertThat(Direction.fromDegrees(37.5)).isEqualTo(Direction.fromDegrees(397.5))
        .hasSameHashCodeAs(Direction.fromDegrees(397.5)).hasToString("37.5°")
        .isLessThan(Direction.fromDegrees(37.500000001)).isNotEqualTo(Direction.ALONG_X);
    assertThat(Direction.fromDegrees(90)).hasToString("90°");
  }
}
