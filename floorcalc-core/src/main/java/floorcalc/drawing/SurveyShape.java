package floorcalc.drawing;

import floorcalc.outline.Outline;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import floorcalc.outline.survey.SurveyReport;
import floorcalc.outline.survey.SurveyedRoom;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A shape of a survey, where it is drawn: beside others it is moved to the right.
 *
 * @param corners the corners that were measured
 * @param outline the walls, with arcs and offsets
 */
record SurveyShape(List<Point> corners, Outline outline) {
  /** Shapes that are drawn beside each other. */
  static final int MOST_SHAPES = 4;
  /** Between two shapes, of the width of the first. */
  private static final double BETWEEN = 0.45;

  /** Returns the shapes of a report, each in its place: one, several, or none. */
  static List<SurveyShape> of(SurveyReport report) {
    Optional<SurveyedRoom> room = report.room();
    if (room.isPresent()) {
      return List.of(new SurveyShape(room.get().corners(), room.get().outline()));
    }
    List<Outline> outlines = report.sketch().map(List::of).orElseGet(report::possible);
    List<SurveyShape> shapes = new ArrayList<>();
    long right = 0;
    for (Outline outline : outlines.subList(0, Math.min(outlines.size(), MOST_SHAPES))) {
      Ring ring = outline.shell();
      long least = Long.MAX_VALUE;
      long most = Long.MIN_VALUE;
      for (int i = 0; i < ring.size(); i++) {
        least = Math.min(least, ring.x(i));
        most = Math.max(most, ring.x(i));
      }
      long shift = shapes.isEmpty() ? 0 : right - least;
      List<Point> moved = new ArrayList<>();
      for (int i = 0; i < ring.size(); i++) {
        moved.add(Point.ofNanometres(ring.x(i) + shift, ring.y(i)));
      }
      shapes.add(new SurveyShape(moved, Outline.of(Ring.of(moved))));
      right = most + shift + (long) (BETWEEN * (most - least));
    }
    return shapes;
  }

  /** Returns the rectangle round all shapes. */
  static Outline extent(List<SurveyShape> shapes) {
    long left = Long.MAX_VALUE;
    long low = Long.MAX_VALUE;
    long right = Long.MIN_VALUE;
    long high = Long.MIN_VALUE;
    for (SurveyShape shape : shapes) {
      Ring ring = shape.outline.shell();
      for (int i = 0; i < ring.size(); i++) {
        left = Math.min(left, ring.x(i));
        right = Math.max(right, ring.x(i));
        low = Math.min(low, ring.y(i));
        high = Math.max(high, ring.y(i));
      }
    }
    return Outline.of(Ring.of(Point.ofNanometres(left, low), Point.ofNanometres(right, low), Point.ofNanometres(right, high),
        Point.ofNanometres(left, high)));
  }
}
