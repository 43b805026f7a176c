package floorcalc.differential;

import floorcalc.measure.Length;
import floorcalc.outline.Ring;
import floorcalc.outline.survey.Angle;
import floorcalc.outline.survey.ClosingLimit;
import floorcalc.outline.survey.Course;
import floorcalc.outline.survey.Traverse;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** Walks round rooms by azimuth and length, closed by the compass rule: decimal numbers in the core, vectors of doubles here. */
final class TraverseDifferential extends Comparison {
  TraverseDifferential(int cases) {
    super("traverses: courses, closing error, corners by the compass rule, area", Library.COMMONS_GEOMETRY, cases,
        Traverse.class, Course.class, Angle.class);
  }

  @Override
  public String unit() {
    return "nm for each rounding that enters";
  }

  @Override
  public double tolerance() {
    return 0.71;
  }

  @Override
  public String argument() {
    return "each latitude and departure, and each place, is rounded by half a nanometre along x and y; a place holds those of the way to it, its share of those of the whole way, and its own";
  }

  @Override
  void compare(int upTo, Answers answers, Worst worst) {
    SplittableRandom random = new SplittableRandom(501);
    for (int k = 0; k < upTo; k++) {
      List<Course> courses = walk(random);
      int n = courses.size();
      Traverse traverse = Traverse.of(courses, ClosingLimit.FLOOR).value();
      worst.nextCase();
      List<Vector2D> ends = new ArrayList<>();
      Vector2D at = Vector2D.ZERO;
      double way = 0;
      for (int i = 0; i < n; i++) {
        double azimuth = Math.toRadians(courses.get(i).azimuth().degrees());
        double length = courses.get(i).length().toNanometres();
        Vector2D course = Vector2D.of(length * StrictMath.sin(azimuth), length * StrictMath.cos(azimuth));
        int index = i;
        worst.see(course.distance(Vector2D.of(traverse.departures().get(i).toNanometres(), traverse.latitudes().get(i).toNanometres())),
            () -> "course " + index + " of " + courses);
        at = at.add(course);
        way += length;
        ends.add(at);
      }
      worst.see((traverse.closingError().toNanometres() - at.norm()) / (n + 1), () -> "closing error of " + courses);
      Ring outline = traverse.outline();
      double walked = 0;
      List<Vector2D> corners = new ArrayList<>(List.of(Vector2D.ZERO));
      for (int i = 0; i + 1 < n; i++) {
        walked += courses.get(i).length().toNanometres();
        double share = answers == Answers.AS_GIVEN ? walked / way : (i + 1.0) / n; // fault: shared out evenly
        corners.add(ends.get(i).subtract(at.multiply(share)));
        int corner = i + 1;
        worst.see(corners.get(i + 1).distance(Vector2D.of(outline.x(i + 1), outline.y(i + 1))) / (i + 2 + n * share),
            () -> "corner " + corner + " of " + courses);
      }
      double twice = 0;
      for (int i = 0; i < n; i++) {
        twice += corners.get(i).signedArea(corners.get((i + 1) % n));
      }
      worst.see(OutlineSizeDifferential.difference(Math.abs(twice) / 2, traverse.area()) / way / n, () -> "area of " + courses);
    }
  }

  /** Round a polygon about a circle, each course a little wrong. */
  private static List<Course> walk(SplittableRandom random) {
    int n = random.nextInt(3, 25);
    double[] bearings = random.doubles(n, 0, 2 * Math.PI).sorted().toArray();
    double size = random.nextDouble(1000, 15_000);
    List<Vector2D> corners = new ArrayList<>();
    for (double bearing : bearings) {
      double radius = size * random.nextDouble(0.5, 1);
      corners.add(Vector2D.of(radius * StrictMath.cos(bearing), radius * StrictMath.sin(bearing)));
    }
    List<Course> courses = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      Vector2D course = corners.get((i + 1) % n).subtract(corners.get(i));
      double azimuth = StrictMath.toDegrees(StrictMath.atan2(course.getX(), course.getY())) + random.nextDouble(-0.05, 0.05);
      long length = Math.round((course.norm() + 1 + random.nextDouble(-3, 3)) * 1000);
      courses.add(new Course(Angle.fromDegrees(BigDecimal.valueOf(Math.round((azimuth + 360) % 360 * 3600), 0)
          .divide(BigDecimal.valueOf(3600), 20, RoundingMode.HALF_EVEN)), Length.ofNanometres(Math.max(1, length) * 1000)));
    }
    return courses;
  }
}
