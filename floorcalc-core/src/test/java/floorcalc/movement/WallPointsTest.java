package floorcalc.movement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import floorcalc.measure.Length;
import floorcalc.moisture.Percent;
import floorcalc.outline.Direction;
import floorcalc.outline.Outline;
import floorcalc.outline.Wkt;
import floorcalc.working.Source;
import java.math.BigDecimal;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class WallPointsTest {
  private static final Length GAP = Length.ofMillimetres(10);
  /** Swells 1 % and shrinks 1 % of the width. */
  private static final MovementForecast ONE = MovementForecast.of(Percent.of("8"), Percent.of("6"), Percent.of("10"),
      Coefficient.of(new BigDecimal("0.005"), "any", Source.GIVEN));

  private static List<String> closing(String wkt, Direction boards) {
    return GapChecks.judge(ONE, WallPoints.of(Wkt.parse(wkt), boards, GAP), Pinning.notLookedAt()).value().places().stream()
        .map(place -> place.point().name() + " " + place.closes()).toList();
  }

  /** A room of 4 m by 3 m, boards along the 4 m: 1.5 m either way swell 15 mm, and the ends do not move. */
  @Test
  void aRectangle() {
    assertThat(closing("POLYGON ((0 0, 4000 0, 4000 3000, 0 3000, 0 0))", Direction.ALONG_X)).containsExactly(
        "wall 1 at corner 1 15 mm", "wall 1 at corner 2 15 mm", "wall 2 at corner 2 0 mm", "wall 2 at corner 3 0 mm",
        "wall 3 at corner 3 15 mm", "wall 3 at corner 4 15 mm", "wall 4 at corner 4 0 mm", "wall 4 at corner 1 0 mm");
    // across the 4 m it is 20 mm at the other two
    assertThat(closing("POLYGON ((0 0, 4000 0, 4000 3000, 0 3000, 0 0))", Direction.fromDegrees(90)))
        .contains("wall 2 at corner 2 20 mm", "wall 1 at corner 1 0 mm");
  }

  /**
   * A column from 2000 to 2400 in a room 3 m wide, whose middle is at 1500: the near side closes by 1 % of 500 mm as the
   * floor swells, the far side by 1 % of 900 mm as it shrinks.
   */
  @Test
  void bothSidesOfAColumn() {
    assertThat(closing("POLYGON ((0 0, 4000 0, 4000 3000, 0 3000, 0 0), (1000 2000, 1400 2000, 1400 2400, 1000 2400,"
        + " 1000 2000))", Direction.ALONG_X).stream().filter(place -> place.contains("void")).toList())
        .containsExactlyInAnyOrder("wall 1 of void 1 at corner 1 0 mm", "wall 1 of void 1 at corner 2 0 mm",
            "wall 2 of void 1 at corner 2 9 mm", "wall 2 of void 1 at corner 3 9 mm", "wall 3 of void 1 at corner 3 0 mm",
            "wall 3 of void 1 at corner 4 0 mm", "wall 4 of void 1 at corner 4 5 mm", "wall 4 of void 1 at corner 1 5 mm");
    assertThatThrownBy(() -> WallPoints.of(Wkt.parse("POLYGON ((0 0, 4000 0, 4000 3000, 0 0))"), Direction.ALONG_X,
        Length.ofMillimetres(-1))).hasMessageContaining("-1 mm");
  }

  /** A wall at 45 degrees from (4000, 2000) to (3000, 3000): 500 mm and 1500 mm from the middle, times 1 % / 1.41421. */
  @Test
  void aSlantedWall() {
    List<GapPoint> points = WallPoints.of(Wkt.parse("POLYGON ((0 0, 4000 0, 4000 2000, 3000 3000, 0 3000, 0 0))"),
        Direction.ALONG_X, GAP);
    assertThat(points.get(4).angle()).isEqualTo(WallAngle.of(BigDecimal.valueOf(45)));
    List<GapChecks.Place> places = GapChecks.judge(ONE, points, Pinning.notLookedAt()).value().places();
    assertThat(places.get(4).closes().toMillimetres()).isBetween(3.5355, 3.5356);
    assertThat(places.get(5).closes().toMillimetres()).isBetween(10.6066, 10.6067);
  }

  /**
   * Another way: move each corner of the floor by what it swells, in vectors, and take the part square to the wall. Any
   * direction of the boards, any quarter of the room cut off.
   */
  @Property
  void asByVectors(@ForAll @DoubleRange(min = 0, max = 359.9) double degrees, @ForAll @IntRange(min = 100, max = 2900) int x,
      @ForAll @IntRange(min = 100, max = 3900) int y) {
    Outline room = Wkt.parse("POLYGON ((0 0, 3000 0, 3000 " + y + ", " + x + " 4000, 0 4000, 0 0))");
    Direction boards = Direction.fromDegrees(degrees);
    List<GapChecks.Place> places = GapChecks.judge(ONE, WallPoints.of(room, boards, GAP), Pinning.notLookedAt()).value()
        .places();
    double c = Math.cos(Math.toRadians(degrees));
    double s = Math.sin(Math.toRadians(degrees));
    double[][] corners = {{0, 0}, {3000, 0}, {3000, y}, {x, 4000}, {0, 4000}};
    double low = Double.MAX_VALUE;
    double high = -Double.MAX_VALUE;
    for (double[] corner : corners) {
      low = Math.min(low, corner[1] * c - corner[0] * s);
      high = Math.max(high, corner[1] * c - corner[0] * s);
    }
    for (int wall = 0; wall < 5; wall++) {
      double[] from = corners[wall];
      double[] to = corners[(wall + 1) % 5];
      double length = Math.hypot(to[0] - from[0], to[1] - from[1]);
      double outX = (to[1] - from[1]) / length;
      double outY = (from[0] - to[0]) / length;
      double[][] ends = {from, to};
      for (int end = 0; end < 2; end++) {
        double across = ends[end][1] * c - ends[end][0] * s - (low + high) / 2;
        double towards = 0.01 * across * (-s * outX + c * outY);
        GapChecks.Place place = places.get(2 * wall + end);
        // As much swelling as shrinkage: whichever it is, the gap closes and opens by the same.
        assertThat(place.closes().toMillimetres()).isCloseTo(Math.abs(towards), within(1e-5));
        assertThat(place.opens()).isEqualTo(place.closes());
        if (Math.abs(towards) > 1e-5) {
          assertThat(place.point().across().isNegative()).isEqualTo(towards < 0);
        }
      }
    }
  }
}
