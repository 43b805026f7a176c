package floorcalc.outline.survey;

import floorcalc.measure.Length;
import floorcalc.outline.Outline;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/** Surveys without an error but the rounding of each length to the nanometre. */
final class PerfectSurveys {
  private PerfectSurveys() {}

  /** Walls alone, their turns said to be left or right. */
  static Survey sided(Outline room) {
    Ring ring = room.shell();
    List<SurveyWall> walls = new ArrayList<>();
    for (int i = 0; i < ring.size(); i++) {
      walls.add(SurveyWall.of(length(ring, i, i + 1)).then(turn(ring, i + 1) > 0 ? Turn.LEFT : Turn.RIGHT));
    }
    return Survey.of(walls);
  }

  /** A tie between each pair of corners that are no neighbours. */
  static List<Tie> allTies(Outline room) {
    Ring ring = room.shell();
    List<Tie> ties = new ArrayList<>();
    for (int a = 0; a < ring.size(); a++) {
      for (int b = a + 2; b < ring.size(); b++) {
        if (b - a < ring.size() - 1) {
          ties.add(new Tie(a + 1, b + 1, length(ring, a, b)));
        }
      }
    }
    return ties;
  }

  static Length length(Ring ring, int a, int b) {
    int to = b % ring.size();
    BigDecimal dx = BigDecimal.valueOf(ring.x(to) - ring.x(a));
    BigDecimal dy = BigDecimal.valueOf(ring.y(to) - ring.y(a));
    BigDecimal square = dx.multiply(dx).add(dy.multiply(dy));
    return Length.ofNanometres(square.sqrt(new MathContext(40)).setScale(0, RoundingMode.HALF_EVEN).longValueExact());
  }

  private static double turn(Ring ring, int corner) {
    int n = ring.size();
    int a = Math.floorMod(corner - 1, n);
    int b = corner % n;
    int c = (corner + 1) % n;
    return (double) (ring.x(b) - ring.x(a)) * (ring.y(c) - ring.y(b))
        - (double) (ring.y(b) - ring.y(a)) * (ring.x(c) - ring.x(b));
  }

  /** A room with its first corner at the origin and its first wall along x: what a survey should give back. */
  static List<Point> laidDown(Outline room) {
    Ring ring = room.shell();
    double dx = ring.x(1) - ring.x(0);
    double dy = ring.y(1) - ring.y(0);
    double length = StrictMath.hypot(dx, dy);
    List<Point> corners = new ArrayList<>();
    for (int i = 0; i < ring.size(); i++) {
      double x = ring.x(i) - ring.x(0);
      double y = ring.y(i) - ring.y(0);
      corners.add(Point.ofNanometres(StrictMath.round((x * dx + y * dy) / length), StrictMath.round((y * dx - x * dy) / length)));
    }
    return corners;
  }
}
