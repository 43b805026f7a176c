package floorcalc.outline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import floorcalc.measure.Length;
import org.junit.jupiter.api.Test;

class PointTest {
  @Test
  void of() {
    Point point = Point.of(Length.ofMillimetres("3100.5"), Length.ofMillimetres(-840));
    assertThat(point).isEqualTo(Point.ofNanometres(3_100_500_000L, -840_000_000L))
        .hasSameHashCodeAs(Point.ofNanometres(3_100_500_000L, -840_000_000L))
        .isNotEqualTo(Point.ofNanometres(-840_000_000L, 3_100_500_000L))
        .hasToString("(3100.5 mm, -840 mm)");
    assertThat(point.x()).isEqualTo(Length.ofMillimetres("3100.5"));
    assertThat(point.y()).isEqualTo(Length.ofMillimetres(-840));
    assertThat(Point.ofMillimetres(7, -8)).isEqualTo(Point.ofNanometres(7_000_000, -8_000_000));
    assertThatThrownBy(() -> Point.ofMillimetres(Long.MAX_VALUE, 0)).isInstanceOf(ArithmeticException.class);
  }

  @Test
  void compareToOrdersByXThenY() {
    assertThat(Point.ofMillimetres(1, 9)).isLessThan(Point.ofMillimetres(2, 0)).isLessThan(Point.ofMillimetres(1, 10))
        .isEqualByComparingTo(Point.ofMillimetres(1, 9));
  }
}
