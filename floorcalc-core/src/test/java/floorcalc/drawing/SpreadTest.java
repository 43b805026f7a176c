package floorcalc.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class SpreadTest {
  private static double[] spread(double... wanted) {
    double[] widths = new double[wanted.length];
    java.util.Arrays.fill(widths, 4);
    return Spread.of(wanted, widths, 0, 100);
  }

  @Test
  void whatHasRoomStays() {
    assertThat(spread(10, 20, 24)).containsExactly(10, 20, 24);
  }

  /** Three of width 4 at 50, 51 and 52 want a mean of 51: they stand at 47, 51 and 55. */
  @Test
  void neighboursShareTheShift() {
    assertThat(spread(50, 51, 52)).containsExactly(new double[] {47, 51, 55}, within(1e-9));
  }

  /** At the lower limit the first keeps half its width off it. */
  @Test
  void limitsHold() {
    assertThat(spread(0, 1)).containsExactly(2, 6);
    assertThat(spread(99, 100)).containsExactly(94, 98);
  }
}
