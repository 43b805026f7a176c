package floorcalc.outline.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;

class WallShapeTest {
  private static final Point ORIGIN = Point.ofMillimetres(0, 0);

  private static Length mm(long millimetres) {
    return Length.ofMillimetres(millimetres);
  }

  private static WallOffset offset(long at, long distance) {
    return new WallOffset(2, mm(at), mm(distance));
  }

  /**
   * Chord 8 m, rise 2 m, R = 5 m: two parts stand 5 (1 - cos(arctan 0.5)) = 0.52786 m off the arc, so 528 mm allow one
   * point, the middle of the arc, below the chord: to the right of one who walks along x.
   */
  @Test
  void arcOfTwoParts() {
    Point to = Point.ofMillimetres(8000, 0);
    assertThat(WallShape.arc(ORIGIN, to, mm(2000), mm(528))).containsExactly(Point.ofMillimetres(4000, -2000));
    assertThat(WallShape.arc(ORIGIN, to, mm(-2000), mm(528))).containsExactly(Point.ofMillimetres(4000, 2000));
    assertThat(WallShape.arc(ORIGIN, to, mm(2000), mm(527))).hasSize(2);
    assertThat(WallShape.arc(ORIGIN, to, mm(2000), mm(2000))).isEmpty();
  }

  /** A half circle of 3 m in six parts of 30 degrees: 3 (1 - cos 15°) = 0.10222 m off. Corners at 3 cos and 3 sin of 30, 60... */
  @Test
  void halfCircleOfSixParts() {
    List<Point> points = WallShape.arc(Point.ofMillimetres(-3000, 0), Point.ofMillimetres(3000, 0), mm(3000), mm(103));
    assertThat(points).hasSize(5);
    assertThat(points.get(0).x().toMillimetres()).isCloseTo(-3000 * Math.sqrt(3) / 2, within(1e-6));
    assertThat(points.get(0).y()).isEqualTo(mm(-1500));
    assertThat(points.get(1).x()).isEqualTo(mm(-1500));
    assertThat(points.get(2)).isEqualTo(Point.ofMillimetres(0, -3000));
    assertThat(points.get(4).x()).isEqualTo(points.get(0).x().negated());
  }

  @Test
  void arcThatIsTooFine() {
    assertThatThrownBy(() -> WallShape.arc(ORIGIN, Point.ofMillimetres(8000, 0), mm(2000), Length.ofNanometres(1)))
        .isInstanceOf(IllegalArgumentException.class).hasMessage("an arc with a rise of 2000 mm on a chord of 8000 mm within"
            + " 0.000001 mm needs 46365 straight walls, but at most 1001 are made; allow it to be further off");
    assertThatThrownBy(() -> WallShape.arc(ORIGIN, ORIGIN, mm(2000), mm(1)))
        .hasMessage("a wall needs two different corners, but both are (0 mm, 0 mm)");
    assertThatThrownBy(() -> WallShape.arc(ORIGIN, Point.ofMillimetres(8000, 0), mm(2000), mm(0)))
        .hasMessageStartingWith("how far a chain of walls may be from its arc must be more than 0 mm, but was 0 mm");
  }

  /** No part is further from the arc than allowed, one part fewer would be, and all corners are on the circle. */
  @Property(tries = 500)
  void chainIsWithinTheBound(@ForAll @LongRange(min = 200_000_000, max = 12_000_000_000L) long chord,
      @ForAll @DoubleRange(min = 0.01, max = 3) double share, @ForAll @DoubleRange(min = 0.1, max = 50) double within,
      @ForAll @IntRange(min = 0, max = 359) int degrees) {
    double turned = StrictMath.toRadians(degrees);
    Point to = Point.ofNanometres(Math.round(chord * StrictMath.cos(turned)), Math.round(chord * StrictMath.sin(turned)));
    Length c = Ring.of(ORIGIN, to).wallLength(0);
    Length rise = Length.ofNanometres(Math.round(chord * share));
    Arc arc = Arc.of(c, rise).value();
    double r = arc.radius().toMillimetres();
    List<Point> chain = new ArrayList<>(List.of(ORIGIN));
    chain.addAll(WallShape.arc(ORIGIN, to, rise, Length.ofNanometres(Math.round(within * 1e6))));
    chain.add(to);
    // The centre: on the left of the middle of the chord by R less the rise.
    double cx = to.x().toMillimetres() / 2 - (r - rise.toMillimetres()) * to.y().toMillimetres() / c.toMillimetres();
    double cy = to.y().toMillimetres() / 2 + (r - rise.toMillimetres()) * to.x().toMillimetres() / c.toMillimetres();
    int parts = chain.size() - 1;
    double part = StrictMath.toRadians(arc.degrees()) / parts;
    for (int i = 0; i < chain.size(); i++) {
      Point p = chain.get(i);
      assertThat(Math.hypot(p.x().toMillimetres() - cx, p.y().toMillimetres() - cy)).isCloseTo(r, within(1e-5));
      if (i > 0) {
        assertThat(Ring.of(chain.get(i - 1), p).wallLength(0).toMillimetres())
            .isCloseTo(2 * r * StrictMath.sin(part / 2), within(1e-5));
      }
    }
    assertThat(r * (1 - StrictMath.cos(part / 2))).isLessThanOrEqualTo(within + 1e-4);
    if (parts > 1) {
      double fewer = StrictMath.toRadians(arc.degrees()) / (parts - 1);
      assertThat(r * (1 - StrictMath.cos(fewer / 2))).isGreaterThan(within - 1e-4);
    }
    // What the chain loses of the segment: R² (w - n sin(w / n)) / 2, at most 2 / 3 of the bound times the arc.
    double area = Ring.of(chain).signedArea().toSquareMillimetres();
    double lost = arc.segment().toSquareMillimetres() - area;
    assertThat(lost).isCloseTo(r * r * parts * (part - StrictMath.sin(part)) / 2, within(r * r * 1e-9 + 1));
    assertThat(lost).isLessThanOrEqualTo(2.0 / 3 * within * arc.length().toMillimetres() + 1);
  }

  /** A niche of 600 by 100 mm in a wall along x, the room above it: the face steps down and up again. */
  @Test
  void niche() {
    assertThat(WallShape.offsets(ORIGIN, Point.ofMillimetres(4000, 0),
        List.of(offset(1000, 0), offset(1000, -100), offset(1600, -100), offset(1600, 0))))
        .containsExactly(Point.ofMillimetres(1000, 0), Point.ofMillimetres(1000, -100), Point.ofMillimetres(1600, -100),
            Point.ofMillimetres(1600, 0));
  }

  /** A chimney breast on a wall that runs up, the room to its left: it stands into the room by 350 mm. */
  @Test
  void chimneyBreast() {
    assertThat(WallShape.offsets(Point.ofMillimetres(5000, 0), Point.ofMillimetres(5000, 4000),
        List.of(offset(1200, 0), offset(1200, 350), offset(2700, 350), offset(2700, 0))))
        .containsExactly(Point.ofMillimetres(5000, 1200), Point.ofMillimetres(4650, 1200), Point.ofMillimetres(4650, 2700),
            Point.ofMillimetres(5000, 2700));
  }

  /** A wall along the slope of 3, 4, 5: 2.5 m along it is (1.5, 2), 10 mm to its left is (-8, 6). */
  @Test
  void bowOfASlantedWall() {
    assertThat(WallShape.offsets(ORIGIN, Point.ofMillimetres(3000, 4000), List.of(offset(2500, 10))))
        .containsExactly(Point.ofMillimetres(1492, 2006));
  }

  /** A bow given from end to end: the ends are the corners themselves, and are not said twice. */
  @Test
  void offsetsAtTheCorners() {
    Point to = Point.ofMillimetres(4000, 0);
    assertThat(WallShape.offsets(ORIGIN, to, List.of(offset(0, 0), offset(2000, 9), offset(2000, 9), offset(4000, 0))))
        .containsExactly(Point.ofMillimetres(2000, 9));
    assertThat(WallShape.offsets(ORIGIN, to, List.of(offset(0, 30), offset(4000, 30))))
        .containsExactly(Point.ofMillimetres(0, 30), Point.ofMillimetres(4000, 30));
    assertThat(WallShape.offsets(ORIGIN, to, List.of(offset(0, 0)))).isEmpty();
    assertThat(WallShape.offsets(ORIGIN, to, List.of())).isEmpty();
    assertThat(WallShape.offsets(ORIGIN, to, List.of(offset(4000, 0)))).isEmpty();
  }

  /** Measured as 4 m, come out as 4.004 m: places along it grow by one in a thousand, distances do not. */
  @Test
  void stretchedToTheWallAsItCameOut() {
    assertThat(WallShape.offsets(ORIGIN, Point.ofMillimetres(4004, 0), mm(4000), List.of(offset(1000, 20), offset(4000, 20))))
        .containsExactly(Point.ofMillimetres(1001, 20), Point.ofMillimetres(4004, 20));
    assertThatThrownBy(() -> WallShape.offsets(ORIGIN, Point.ofMillimetres(4004, 0), mm(0), List.of()))
        .hasMessage("a wall must be longer than 0 mm, but was measured 0 mm");
  }

  @Test
  void offsetsThatCannotBe() {
    Point to = Point.ofMillimetres(4000, 0);
    assertThatThrownBy(() -> WallShape.offsets(ORIGIN, to, List.of(offset(4001, 0))))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("an offset lies 4001 mm along wall 2, which is 4000 mm long; measure from the wall's first corner");
    assertThatThrownBy(() -> WallShape.offsets(ORIGIN, to, List.of(offset(900, 0), offset(800, 0))))
        .hasMessage("offsets of wall 2 go back from 900 mm to 800 mm; give them in the order in which the wall is walked");
    assertThatThrownBy(() -> WallShape.offsets(ORIGIN, to, List.of(offset(900, 0), offset(900, 5), offset(900, 0))))
        .hasMessage("wall 2 has three offsets at 900 mm; a step has two: where the face was, and where it goes on");
  }

  /** An opening of 3 m, 0.6 m deep, 1.8 m in front: the sides start 0.6 m in, so they stand at 45 degrees. */
  @Test
  void bayOfThreeWalls() {
    Point to = Point.ofMillimetres(3000, 0);
    List<Point> bay = WallShape.bay(ORIGIN, to, mm(600), mm(1800));
    assertThat(bay).containsExactly(Point.ofMillimetres(600, -600), Point.ofMillimetres(2400, -600));
    // a trapezium of 3 and 1.8 m, 0.6 m deep: 2.4 x 0.6 = 1.44 m²
    assertThat(Ring.of(ORIGIN, bay.get(0), bay.get(1), to).area()).isEqualTo(Area.ofSquareMetres("1.44"));
    assertThat(WallShape.bay(ORIGIN, to, mm(600), mm(3000)))
        .containsExactly(Point.ofMillimetres(0, -600), Point.ofMillimetres(3000, -600));
    assertThatThrownBy(() -> WallShape.bay(ORIGIN, to, mm(600), mm(3001))).hasMessage("the middle wall of a bay must be longer"
        + " than 0 mm and not longer than its opening of 3000 mm, but was 3001 mm; give the shorter one as the middle wall");
    assertThatThrownBy(() -> WallShape.bay(ORIGIN, to, mm(0), mm(300)))
        .hasMessage("the depth of a bay must not be 0 mm; a bay without depth is a straight wall");
  }
}
