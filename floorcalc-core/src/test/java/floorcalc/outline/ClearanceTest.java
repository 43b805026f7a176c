package floorcalc.outline;

import static floorcalc.outline.RingTest.ring;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class ClearanceTest {
  private static final long TEN = 10_000_000;
  private static final List<Ring> ROOM = List.of(ring(0, 0, 4000, 0, 4000, 3000, 0, 3000),
      ring(1000, 1000, 1000, 1500, 1400, 1500, 1400, 1000));
  private static final List<Ring> AROUND = List.of(ring(990, 990, 990, 1510, 1410, 1510, 1410, 990));

  private static boolean isKept(Ring shell, List<Ring> voids) {
    return Clearance.isKept(ROOM, List.of(Outline.of(shell, voids)), TEN);
  }

  @Test
  void kept() {
    assertThat(isKept(ring(10, 10, 3990, 10, 3990, 2990, 10, 2990), AROUND)).isTrue();
    assertThat(isKept(ring(10, 10, 3990, 10, 3990, 900, 10, 900), List.of())).isTrue();
    assertThat(Clearance.isKept(ROOM, List.of(), TEN)).isTrue();
  }

  @Test
  void tooNearToAWall() {
    assertThat(isKept(ring(9, 10, 3990, 10, 3990, 900, 10, 900), List.of())).isFalse();
    assertThat(isKept(ring(10, 10, 3990, 10, 3990, 991, 10, 991), List.of())).isFalse();
    // by three nanometres, where two are allowed for rounding
    assertThat(isKept(Ring.ofNanometres(new long[] {TEN - 2, 2 * TEN, 2 * TEN}, new long[] {TEN, TEN, 2 * TEN}), List.of()))
        .isTrue();
    assertThat(isKept(Ring.ofNanometres(new long[] {TEN - 3, 2 * TEN, 2 * TEN}, new long[] {TEN, TEN, 2 * TEN}), List.of()))
        .isFalse();
  }

  @Test
  void tooNearToACornerOfAVoid() {
    // an edge that runs past the column's corner at (1400, 1500) slantwise: x + y = 2915 is 15 / √2 = 10.6 mm away
    assertThat(isKept(ring(1410, 1505, 1405, 1510, 2000, 2000), List.of())).isTrue();
    assertThat(isKept(ring(1407, 1505, 1402, 1510, 2000, 2000), List.of())).isFalse(); // x + y = 2912: 8.5 mm
  }

  @Test
  void acrossAWallOrWithoutTheRoom() {
    assertThat(isKept(ring(2000, 100, 6000, 100, 6000, 200, 2000, 200), List.of())).isFalse();
    assertThat(isKept(ring(5000, 100, 6000, 100, 6000, 200, 5000, 200), List.of())).isFalse();
    assertThat(isKept(ring(1100, 1100, 1300, 1100, 1300, 1300), List.of())).isFalse(); // within the column
    assertThat(isKept(ring(10, 10, 3990, 10, 3990, 2990, 10, 2990), List.of())).as("over the column").isFalse();
  }
}
