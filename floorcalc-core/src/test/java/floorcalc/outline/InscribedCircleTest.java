package floorcalc.outline;

import static floorcalc.working.StepChecks.assertStepsHold;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import java.util.List;
import org.junit.jupiter.api.Test;

class InscribedCircleTest {
  private static Calculated<InscribedCircle> circle(String outline) {
    Calculated<InscribedCircle> calculated = InscribedCircle.of(Wkt.parse(outline));
    assertStepsHold(calculated);
    InscribedCircle circle = calculated.value();
    assertThat(circle.radiusAtMost().minus(circle.radius())).isBetween(Length.ZERO, Length.ofNanometres(2));
    return calculated;
  }

  /** Half the width of a corridor, in the middle of its length. */
  @Test
  void ofACorridorItTouchesBothLongWalls() {
    Calculated<InscribedCircle> calculated = circle("POLYGON ((0 0, 9000 0, 9000 1200, 0 1200, 0 0))");
    assertThat(calculated.value().radius()).isEqualTo(Length.ofMillimetres(600));
    assertThat(calculated.value().centre()).isEqualTo(Point.ofMillimetres(4500, 600));
    assertThat(calculated.explain()).contains("widest-circle: How wide is the circle that touches the nearest of all walls?",
        "d1 = 600 mm  (distance from wall 1)", "d2 = 600 mm  (distance from wall 3)", "= 1200 mm");
  }

  /**
   * In the L the circle touches both outer walls and the reflex corner (2000, 2000): its centre (r, r) is 2000 √2 − r √2 from the corner, so
   * r = 2000 √2 / (1 + √2) = 1171.5728753 mm, rounded down.
   */
  @Test
  void ofAnLItTouchesTheReflexCorner() {
    Calculated<InscribedCircle> calculated = circle("POLYGON ((0 0, 4000 0, 4000 2000, 2000 2000, 2000 3000, 0 3000, 0 0))");
    assertThat(calculated.value().radius()).isEqualTo(Length.parse("1171.572875 mm"));
    assertThat(calculated.explain()).contains("distance from corner 4");
  }

  /**
   * A column in the middle of a room of 6 m by 4 m. Beside it lie 2500 mm, so r is at least 1250. Towards a corner the circle grows: it touches both
   * walls and the column's corner (2500, 1500), so (2500 − r)² + (1500 − r)² = r², r² − 8000 r + 8 500 000 = 0, r = 4000 − √7 500 000 = 1261.387213 mm.
   */
  @Test
  void aColumnIsInTheWay() {
    String room = "POLYGON ((0 0, 6000 0, 6000 4000, 0 4000, 0 0)";
    Length clear = circle(room + ")").value().radius();
    Length beside = circle(room + ", (2500 1500, 3500 1500, 3500 2500, 2500 2500, 2500 1500))").value().radius();
    assertThat(clear).isEqualTo(Length.ofMillimetres(2000));
    assertThat(clear).isEqualTo(Length.ofMillimetres(2000));
    assertThat(beside.minus(Length.parse("1261.387212 mm")).abs()).isLessThanOrEqualTo(Length.ofNanometres(2));
  }

  @Test
  void movedMirroredAndTurnedItStaysAsWide() {
    Outline room = Wkt.parse("POLYGON ((0 0, 5200 300, 4900 2800, 3100 2700, 2900 4100, 200 3900, 0 0), (700 700, 900 700, 900 900, 700 900, 700 700))");
    InscribedCircle circle = InscribedCircle.of(room).value();
    Length dx = Length.parse("123.456789 mm");
    InscribedCircle moved = InscribedCircle.of(room.moved(dx, Length.ofMillimetres(-77))).value();
    assertThat(moved.centre().x()).isEqualTo(circle.centre().x().plus(dx));
    assertThat(moved.radius()).isEqualTo(circle.radius());
    for (Outline other : List.of(room.mirrored(), Direction.fromDegrees(90).toRoom(room), Direction.fromDegrees(37.5).toRoom(room))) {
      assertThat(InscribedCircle.of(other).value().radius().minus(circle.radius()).abs()).isLessThanOrEqualTo(Length.ofNanometres(4));
    }
  }

  /** Many places of a ring of 360 walls are almost as good; the search comes to an end and says how far it came. */
  @Test
  void aRoundCorridorOfManyWallsIsSearchedToTheEnd() {
    Ring outer = polygon(360, 10_000);
    Ring inner = polygon(360, 9_000);
    InscribedCircle circle = InscribedCircle.of(Outline.of(outer, List.of(inner))).value();
    // Half of what is left between the middles of facing walls: (10000 − 9000) · cos 0.5° / 2 = 499.981, a little more towards the corners.
    assertThat(circle.radius().toMillimetres()).isBetween(499.98, 500.0);
    assertThat(circle.radiusAtMost().minus(circle.radius())).isLessThanOrEqualTo(Length.ofNanometres(2));
  }

  private static Ring polygon(int n, double radius) {
    long[] xs = new long[n];
    long[] ys = new long[n];
    for (int i = 0; i < n; i++) {
      xs[i] = (long) StrictMath.rint(radius * 1e6 * StrictMath.cos(2 * StrictMath.PI * i / n));
      ys[i] = (long) StrictMath.rint(radius * 1e6 * StrictMath.sin(2 * StrictMath.PI * i / n));
    }
    return Ring.ofNanometres(xs, ys);
  }

  @Test
  void whatHoldsNoFloorIsRefused() {
    assertThatThrownBy(() -> InscribedCircle.of(Outline.of(Ring.of()))).isInstanceOf(IllegalArgumentException.class)
        .hasMessage("an outline without walls holds no floor; give at least three corners");
    assertThatThrownBy(() -> InscribedCircle.of(Wkt.parse("POLYGON ((0 0, 100 0, 0 0, 0 0))"))).isInstanceOf(IllegalArgumentException.class)
        .hasMessageStartingWith("the outline holds no floor: POLYGON");
  }
}
