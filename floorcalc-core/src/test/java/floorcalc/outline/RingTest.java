package floorcalc.outline;

import static floorcalc.outline.Containment.INSIDE;
import static floorcalc.outline.Containment.ON_EDGE;
import static floorcalc.outline.Containment.OUTSIDE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import floorcalc.measure.Area;
import floorcalc.measure.Length;
import java.util.List;
import org.junit.jupiter.api.Test;

class RingTest {
  /** An L: 4 m by 3 m less the quarter of 2 m by 1 m at the upper right. */
  private static final Ring L = ring(0, 0, 4000, 0, 4000, 2000, 2000, 2000, 2000, 3000, 0, 3000);

  static Ring ring(long... millimetres) {
    long[] xs = new long[millimetres.length / 2];
    long[] ys = new long[xs.length];
    for (int i = 0; i < xs.length; i++) {
      xs[i] = millimetres[2 * i] * 1_000_000;
      ys[i] = millimetres[2 * i + 1] * 1_000_000;
    }
    return Ring.ofNanometres(xs, ys);
  }

  private static Point at(long x, long y) {
    return Point.ofMillimetres(x, y);
  }

  @Test
  void of() {
    assertThat(Ring.of(at(0, 0), at(4000, 0), at(4000, 3000)))
        .isEqualTo(Ring.of(List.of(at(0, 0), at(4000, 0), at(4000, 3000))))
        .isEqualTo(ring(0, 0, 4000, 0, 4000, 3000))
        .hasSameHashCodeAs(ring(0, 0, 4000, 0, 4000, 3000))
        .isNotEqualTo(ring(4000, 0, 4000, 3000, 0, 0))
        .hasToString("(0 mm, 0 mm), (4000 mm, 0 mm), (4000 mm, 3000 mm)");
  }

  @Test
  void ofNanometresKeepsACopy() {
    long[] xs = {0, 4, 4};
    Ring ring = Ring.ofNanometres(xs, new long[] {0, 0, 3});
    xs[0] = 9;
    assertThat(ring.x(0)).isZero();
    assertThatThrownBy(() -> Ring.ofNanometres(new long[3], new long[4]))
        .isInstanceOf(IllegalArgumentException.class).hasMessageContaining("3 and 4");
  }

  @Test
  void corners() {
    assertThat(L.size()).isEqualTo(6);
    assertThat(L.corners()).hasSize(6).startsWith(at(0, 0), at(4000, 0)).endsWith(at(0, 3000));
    assertThat(L.x(2)).isEqualTo(4_000_000_000L);
    assertThat(L.y(2)).isEqualTo(2_000_000_000L);
  }

  @Test
  void areaIsSignedByTheWayRound() {
    // 4 × 3 − 2 × 1 = 10
    assertThat(L.signedArea()).isEqualTo(Area.ofSquareMetres("10"));
    assertThat(L.reversed().signedArea()).isEqualTo(Area.ofSquareMetres("-10"));
    assertThat(L.reversed().area()).isEqualTo(Area.ofSquareMetres("10"));
    assertThat(Ring.of().signedArea()).isEqualTo(Area.ZERO);
  }

  @Test
  void wallLengthAndPerimeter() {
    assertThat(L.wallLength(0)).isEqualTo(Length.ofMillimetres(4000));
    assertThat(L.wallLength(5)).isEqualTo(Length.ofMillimetres(3000));
    assertThat(L.perimeter()).isEqualTo(Length.ofMillimetres(14_000)); // 4 + 2 + 2 + 1 + 2 + 3
    // A square of 1 mm, halved along its diagonal: the diagonal is 1.414 213 562 3… mm, so 1 414 214 nm.
    assertThat(ring(0, 0, 1, 0, 1, 1).wallLength(2)).isEqualTo(Length.ofMillimetres("1.414214"));
    assertThat(ring(0, 0, 1, 0, 1, 1).perimeter()).isEqualTo(Length.ofMillimetres("3.414214"));
    assertThat(Ring.of().perimeter()).isEqualTo(Length.ZERO);
  }

  @Test
  void longestWallIsTheFirstOfEqualOnes() {
    assertThat(L.longestWall()).isZero();
    assertThat(ring(0, 0, 2, 0, 2, 3, 0, 3).longestWall()).isEqualTo(1);
    // 3 to 4 to 5: the slanted wall is as long as the wall of 5, and comes later
    assertThat(ring(0, 0, 5, 0, 2, 4, 0, 4).longestWall()).isZero();
    // longer by one nanometre in ten metres: told apart although both round to the same double in metres
    assertThat(Ring.ofNanometres(new long[] {0, 10_000_000_000L, 10_000_000_000L, 0},
        new long[] {0, 0, 10_000_000_001L, 10_000_000_001L}).longestWall()).isEqualTo(1);
    assertThatThrownBy(() -> Ring.of().longestWall()).isInstanceOf(IllegalStateException.class);
  }

  @Test
  void angleDegrees() {
    assertThat(L.angleDegrees(0)).isEqualTo(90);
    assertThat(L.angleDegrees(3)).isEqualTo(270);
    assertThat(ring(0, 0, 2, 0, 5, 0, 5, 5).angleDegrees(1)).isEqualTo(180);
    assertThat(ring(0, 0, 1, 0, 1, 1).angleDegrees(0)).isCloseTo(45, within(1e-12));
    // the sharp corner of a 3-4-5 triangle: arctan 3/4 = 36.869 897 645 844 02°
    assertThat(ring(0, 0, 4, 0, 4, 3).angleDegrees(0)).isCloseTo(36.86989764584402, within(1e-12));
    assertThat(ring(0, 0, 4, 0, 1, 0).angleDegrees(1)).isZero(); // folds back
  }

  @Test
  void locate() {
    assertThat(L.locate(at(1000, 1000))).isEqualTo(INSIDE);
    assertThat(L.locate(at(3000, 2500))).isEqualTo(OUTSIDE);
    assertThat(L.locate(at(3000, 2000))).isEqualTo(ON_EDGE);
    assertThat(L.locate(at(2000, 2000))).isEqualTo(ON_EDGE);
    assertThat(L.locate(at(4000, 0))).isEqualTo(ON_EDGE);
    assertThat(L.locate(at(-1, 2000))).isEqualTo(OUTSIDE);
    assertThat(L.locate(at(1000, 2000))).isEqualTo(INSIDE); // a ray to the right runs along a wall
    assertThat(L.locate(at(5000, 2000))).isEqualTo(OUTSIDE);
    assertThat(L.reversed().locate(at(1000, 2000))).isEqualTo(INSIDE);
    // one nanometre off a slanted wall 5 m long
    Ring slanted = ring(0, 0, 4000, 3000, 0, 3000);
    assertThat(slanted.locate(Point.ofNanometres(2_000_000_000L, 1_500_000_000L))).isEqualTo(ON_EDGE);
    assertThat(slanted.locate(Point.ofNanometres(2_000_000_000L, 1_500_000_001L))).isEqualTo(INSIDE);
    assertThat(slanted.locate(Point.ofNanometres(2_000_000_001L, 1_500_000_000L))).isEqualTo(OUTSIDE);
  }

  @Test
  void extent() {
    Extent extent = L.moved(Length.ofMillimetres(-500), Length.ofMillimetres(20)).extent();
    assertThat(extent).isEqualTo(new Extent(at(-500, 20), at(3500, 3020)));
    assertThat(extent.width()).isEqualTo(Length.ofMillimetres(4000));
    assertThat(extent.height()).isEqualTo(Length.ofMillimetres(3000));
    assertThatThrownBy(() -> new Extent(at(1, 0), at(0, 1)))
        .isInstanceOf(IllegalArgumentException.class).hasMessageContaining("(1 mm, 0 mm) and (0 mm, 1 mm)");
    assertThatThrownBy(() -> Ring.of().extent()).isInstanceOf(IllegalStateException.class);
  }

  @Test
  void reversedStartsAtTheSameCorner() {
    assertThat(ring(0, 0, 4, 0, 4, 3).reversed()).isEqualTo(ring(0, 0, 4, 3, 4, 0));
  }

  @Test
  void mirroredKeepsTheOrder() {
    assertThat(ring(0, 0, 4, 0, 4, 3).mirrored()).isEqualTo(ring(0, 0, -4, 0, -4, 3));
  }

  @Test
  void startingAt() {
    assertThat(ring(0, 0, 4, 0, 4, 3).startingAt(2)).isEqualTo(ring(4, 3, 0, 0, 4, 0));
    assertThatThrownBy(() -> L.startingAt(6)).isInstanceOf(IndexOutOfBoundsException.class);
  }

  @Test
  void movedRefusesWhatIsOutOfRange() {
    assertThatThrownBy(() -> L.moved(Length.ofNanometres(Long.MAX_VALUE), Length.ZERO))
        .isInstanceOf(ArithmeticException.class);
  }
}
