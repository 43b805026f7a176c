package floorcalc.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class BoxTest {
  private static final Box SQUARE = Box.upright(0, 0, 2, 2);
  private static final double HALF = Math.sqrt(0.5);

  @Test
  void uprightBoxesOverlapOrOnlyTouch() {
    assertThat(SQUARE.overlaps(Box.upright(1, 1, 3, 3))).isTrue();
    assertThat(SQUARE.overlaps(Box.upright(2, 0, 3, 2))).isFalse();
    assertThat(SQUARE.overlaps(Box.upright(0, 2.01, 2, 3))).isFalse();
    assertThat(SQUARE.overlaps(Box.upright(-9, 0.9, 9, 1.1))).isTrue();
  }

  /** Of a square turned by 45 degrees with its middle at (3, 3), one side lies where x + y = 6 - h / cos 45. */
  @Test
  void turnedBoxesAreHeldApartByTheirOwnSides() {
    // With h = 1.41 that is where x + y = 4.006, so (2, 2) is outside.
    assertThat(SQUARE.overlaps(new Box(3, 3, 1.41, 1.41, HALF, HALF))).isFalse();
    // With h = 1.42 it is where x + y = 3.992, so (2, 2) is inside.
    assertThat(SQUARE.overlaps(new Box(3, 3, 1.42, 1.42, HALF, HALF))).isTrue();
  }

  @Test
  void linesMeetABoxOrPassIt() {
    assertThat(SQUARE.meetsLine(-1, 1, 3, 1)).isTrue();
    assertThat(SQUARE.meetsLine(0.5, 0.5, 1, 1)).isTrue();
    assertThat(SQUARE.meetsLine(-1, 2, 3, 2)).isFalse();
    assertThat(SQUARE.meetsLine(-1, 1, -0.1, 1)).isFalse();
    assertThat(SQUARE.meetsLine(3, 1.1, 1.1, 3)).isFalse();
    assertThat(SQUARE.meetsLine(3, 0.9, 0.9, 3)).isTrue();
    assertThat(SQUARE.meetsLine(3, 1, 3, 1)).isFalse();
  }

  @Test
  void aBoxAlongALineIsAsLongAsTheLine() {
    // From (0, 0) to (3, 4) are 5 mm.
    Box box = Box.along(0, 0, 3, 4, 0.2);
    assertThat(box.halfWidth()).isEqualTo(2.5);
    assertThat(box.halfHeight()).isEqualTo(0.1);
    assertThat(box.ux()).isEqualTo(0.6);
    assertThat(box.uy()).isEqualTo(0.8);
    assertThat(Box.along(1, 1, 1, 1, 0.2).halfWidth()).isZero();
  }

  @Test
  void liesWithinASheet() {
    assertThat(SQUARE.within(0, 0, 2, 2)).isTrue();
    assertThat(new Box(1, 1, 1, 1, HALF, HALF).within(0, 0, 2, 2)).isFalse();
  }
}
