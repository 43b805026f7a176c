package floorcalc.outline.survey;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class LayoutTest {
  private static Layout layout(double... place) {
    return new Layout(place, 0);
  }

  /** The wall with a niche runs on behind it in one line with itself, and so does a wall of three parts. */
  @Test
  void wallsOnOneLineThatDoNotOverlapDoNotMeet() {
    assertThat(layout(0, 0, 1000, 0, 1000, -60, 1500, -60, 1500, 0, 4000, 0, 4000, 3000, 0, 3000).isSimple()).isTrue();
    assertThat(layout(0, 0, 1500, 0, 2500, 0, 4000, 0, 4000, 3000, 0, 3000).isSimple()).isTrue();
  }

  @Test
  void wallsThatCrossTouchOrOverlapMeet() {
    assertThat(layout(0, 0, 4000, 0, 0, 3000, 4000, 3000).isSimple()).isFalse();
    // corner 4 stands on wall 1
    assertThat(layout(0, 0, 4000, 0, 4000, 3000, 2000, 0, 0, 3000).isSimple()).isFalse();
    // wall 4 runs back over wall 1 from 3000 to 1000
    assertThat(layout(0, 0, 4000, 0, 4000, 1000, 3000, 0, 1000, 0, 500, 2000, 0, 3000).isSimple()).isFalse();
  }
}
