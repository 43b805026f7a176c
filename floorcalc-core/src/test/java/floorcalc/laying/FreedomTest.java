package floorcalc.laying;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.outline.Outline;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Depths by hand, in millimetres. */
class FreedomTest {
  private static Outline outline(long... xy) {
    List<Point> corners = new ArrayList<>();
    for (int i = 0; i < xy.length; i += 2) {
      corners.add(Point.ofMillimetres(xy[i], xy[i + 1]));
    }
    return Outline.of(Ring.of(corners));
  }

  @Test
  void aPlainRoomIsFree() {
    assertThat(Freedom.of("bay", outline(0, 0, 4000, 0, 4000, 3000, 0, 3000))).isEmpty();
  }

  @Test
  void theDepthIsMeasuredToTheLineAcross() {
    // The line across goes from (6000, 3000) to (3000, 7000), 5000 long; the corner (3000, 3000) is
    // 3000 * 4000 / 5000 = 2400 behind it, although a wall is only 3000 away.
    String message = Freedom.of("bay", outline(0, 0, 6000, 0, 6000, 3000, 3000, 3000, 3000, 7000, 0, 7000)).orElseThrow()
        .message();
    assertThat(message).contains("1 inner corner, the deepest 2400 mm");
  }

  @Test
  void aNarrowArmDoesNotHideTheRecess() {
    // The arm is 200 wide: its inner corner is near to the outer wall, but far behind the line across.
    assertThat(Freedom.of("bay", outline(0, 0, 6000, 0, 6000, 200, 3000, 200, 3000, 4000, 0, 4000))).isPresent();
  }

  @Test
  void aShallowRecessIsLetPass() {
    // A recess 250 deep and 1000 wide in the upper wall: both inner corners are 250 behind the line across.
    assertThat(Freedom.of("bay",
        outline(0, 0, 4000, 0, 4000, 3000, 2500, 3000, 2500, 2750, 1500, 2750, 1500, 3000, 0, 3000))).isEmpty();
  }
}
