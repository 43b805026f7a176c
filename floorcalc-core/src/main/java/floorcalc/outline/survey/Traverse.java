package floorcalc.outline.survey;

import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import floorcalc.working.Calculated;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.OptionalLong;

/**
 * A traverse: a walk round a room by directions and lengths that should end where it began.
 * <p>
 * Each course is a latitude (up) and a departure (to the right). What they come to is the closing error. The compass rule
 * shares it out along the way, to each course by its length, and so closes the outline. It spreads errors and finds none:
 * a walk that closes badly is to be measured again.
 * <pre>{@code
 * Traverse walk = Traverse.ofTurns(lengths, turns, ClosingLimit.FLOOR).value();
 * walk.closingError();  // 7.1 mm
 * walk.outline();       // closed by the compass rule
 * }</pre>
 * Latitudes, departures and places are rounded to the nearest nanometre; adjusted courses are differences of places, so they
 * close exactly. Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class Traverse {
  private final List<Course> courses;
  private final List<Length> latitudes;
  private final List<Length> departures;
  private final Length latitudeError;
  private final Length departureError;
  private final List<Point> places;

  Traverse(List<Course> courses, List<Length> latitudes, List<Length> departures, Length latitudeError,
      Length departureError, List<Point> places) {
    this.courses = List.copyOf(courses);
    this.latitudes = List.copyOf(latitudes);
    this.departures = List.copyOf(departures);
    this.latitudeError = latitudeError;
    this.departureError = departureError;
    this.places = List.copyOf(places);
  }

  /**
   * Returns a traverse by the azimuth and the length of each course.
   *
   * @param courses the courses in order, not null, 3 to 1000
   * @param limit how well it must close, not null
   * @return the traverse with its working, and the finding {@code closes-badly} if the closing error is more than the limit;
   *     not null
   * @throws IllegalArgumentException if there are too few or too many courses
   */
  public static Calculated<Traverse> of(List<Course> courses, ClosingLimit limit) {
    Objects.requireNonNull(limit, "limit");
    return new TraverseWorking(courses, limit).calculated();
  }

  /**
   * Returns a traverse by walls and the turns between them; the first wall runs along x.
   *
   * @param lengths the lengths of the walls in order, not null, 3 to 1000
   * @param turns degrees to the left at the end of each wall, negative to the right, not null; that of the last wall may be
   *     left out: it is not needed
   * @param limit how well it must close, not null
   * @return the traverse with its working, and the finding {@code closes-badly} if the closing error is more than the limit;
   *     not null
   * @throws IllegalArgumentException if there are too few or too many walls, or not as many turns as walls or one fewer
   */
  public static Calculated<Traverse> ofTurns(List<Length> lengths, List<Angle> turns, ClosingLimit limit) {
    Objects.requireNonNull(limit, "limit");
    if (turns.size() != lengths.size() && turns.size() != lengths.size() - 1) {
      throw new IllegalArgumentException(lengths.size() + " walls have " + lengths.size() + " turns, or one fewer if the last is left"
          + " out, but " + turns.size() + " were given");
    }
    List<Course> courses = new ArrayList<>();
    Angle azimuth = Angle.ofDegrees(90);
    for (int i = 0; i < lengths.size(); i++) {
      courses.add(new Course(azimuth.withinATurn(), lengths.get(i)));
      azimuth = i < turns.size() ? azimuth.minus(turns.get(i)) : azimuth;
    }
    return of(courses, limit);
  }

  /**
   * Returns a traverse by walls and the angles of the floor at its corners, as {@link AngleBalance} gives them.
   *
   * @param first the azimuth of the first wall, not null
   * @param angles the angle on the floor's side at each corner, the floor on the left: the first is that where wall 1 starts;
   *     not null
   * @param lengths the lengths of the walls in order, not null, 3 to 1000
   * @param limit how well it must close, not null
   * @return the traverse with its working, and the finding {@code closes-badly} if the closing error is more than the limit;
   *     not null
   * @throws IllegalArgumentException if there are too few or too many walls, or not as many angles as walls
   */
  public static Calculated<Traverse> ofAngles(Angle first, List<Angle> angles, List<Length> lengths, ClosingLimit limit) {
    Objects.requireNonNull(limit, "limit");
    if (angles.size() != lengths.size()) {
      throw new IllegalArgumentException(lengths.size() + " walls have " + lengths.size() + " angles, but " + angles.size()
          + " were given");
    }
    List<Course> courses = new ArrayList<>();
    Angle azimuth = first.withinATurn();
    for (int i = 0; i < lengths.size(); i++) {
      azimuth = i == 0 ? azimuth : azimuth.plus(Angle.HALF).plus(angles.get(i)).withinATurn();
      courses.add(new Course(azimuth, lengths.get(i)));
    }
    return of(courses, limit);
  }

  /**
   * Returns the courses as they were walked.
   *
   * @return an unmodifiable list, not null
   */
  public List<Course> courses() {
    return courses;
  }

  /**
   * Returns how far each course goes up.
   *
   * @return an unmodifiable list, not null
   */
  public List<Length> latitudes() {
    return latitudes;
  }

  /**
   * Returns how far each course goes to the right.
   *
   * @return an unmodifiable list, not null
   */
  public List<Length> departures() {
    return departures;
  }

  /**
   * Returns how far up the walk ends of where it began.
   *
   * @return the sum of the latitudes, not null
   */
  public Length latitudeError() {
    return latitudeError;
  }

  /**
   * Returns how far to the right the walk ends of where it began.
   *
   * @return the sum of the departures, not null
   */
  public Length departureError() {
    return departureError;
  }

  /**
   * Returns how far the walk ends from where it began.
   *
   * @return not negative, not null
   */
  public Length closingError() {
    return Ring.of(Point.of(Length.ZERO, Length.ZERO), Point.of(departureError, latitudeError)).wallLength(0);
  }

  /**
   * Returns the whole way.
   *
   * @return the sum of the lengths, not null
   */
  public Length perimeter() {
    return courses.stream().map(Course::length).reduce(Length.ZERO, Length::plus);
  }

  /**
   * Returns one part of how many of the way the closing error is.
   *
   * @return rounded down; empty if the walk closes to the nanometre
   */
  public OptionalLong ratio() {
    return closingError().isZero() ? OptionalLong.empty() : OptionalLong.of(perimeter().dividedBy(closingError()));
  }

  /**
   * Returns the corners after the compass rule, the first at the origin.
   *
   * @return the ring as it was walked, not null
   */
  public Ring outline() {
    return Ring.of(places);
  }

  /**
   * Returns the courses after the compass rule.
   *
   * @return lengths to the nearest nanometre, azimuths to what a floating-point number holds; not null
   * @throws IllegalArgumentException if two corners came to one place
   */
  public List<Course> adjustedCourses() {
    Ring ring = outline();
    List<Course> adjusted = new ArrayList<>();
    for (int i = 0; i < ring.size(); i++) {
      int next = (i + 1) % ring.size();
      double degrees = StrictMath.toDegrees(StrictMath.atan2((double) (ring.x(next) - ring.x(i)), (double) (ring.y(next) - ring.y(i))));
      adjusted.add(new Course(Angle.fromDegrees(new BigDecimal(degrees).setScale(12, RoundingMode.HALF_EVEN)).withinATurn(),
          ring.wallLength(i)));
    }
    return List.copyOf(adjusted);
  }

  /**
   * Returns the area after the compass rule.
   *
   * @return exact for the corners as they are, not negative for a walk that does not cross itself; not null
   */
  public Area area() {
    return outline().area();
  }
}
