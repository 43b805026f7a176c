package floorcalc.outline.survey;

import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.outline.Outline;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import floorcalc.outline.network.Adjustment;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * A room as its measurements make it, and how sure it is. Corner 1 is the origin and wall 1 runs along x. Immutable and
 * thread-safe.
 *
 * @since 0.1
 */
public final class SurveyedRoom {
  /** How far the straight pieces that stand for an arc are from it at most. */
  public static final Length ARC_WITHIN = Length.ofNanometres(500_000);

  /** A corner within this many degrees of a right angle is meant to be one. */
  private static final double MEANT_SQUARE = 10;

  private final Survey survey;
  private final List<Point> corners;
  private final Outline outline;
  private final List<Measured> measurements;
  private final Adjustment fixed;
  private final Adjustment free;

  SurveyedRoom(Survey survey, List<Point> corners, Outline outline, List<Measured> measurements, Adjustment fixed,
      Adjustment free) {
    this.survey = survey;
    this.corners = List.copyOf(corners);
    this.outline = outline;
    this.measurements = List.copyOf(measurements);
    this.fixed = fixed;
    this.free = free;
  }

  /**
   * Returns what was measured.
   *
   * @return the survey, not null
   */
  public Survey survey() {
    return survey;
  }

  /**
   * Returns the corners where they most likely are, rounded to whole nanometres.
   *
   * @return an unmodifiable list in the order of the survey, not null
   */
  public List<Point> corners() {
    return corners;
  }

  /**
   * Returns the outline: straight from corner to corner, but for offsets, and for arcs, which are chains of straight pieces
   * within {@link #ARC_WITHIN}.
   *
   * @return the outline, not null; it is not checked, see {@link floorcalc.outline.OutlineCheck}
   */
  public Outline outline() {
    return outline;
  }

  /**
   * Returns all measurements with what came of them: walls, ties, turns. Offsets and rises are taken as they were read.
   *
   * @return an unmodifiable list, not null
   */
  public List<Measured> measurements() {
    return measurements;
  }

  /**
   * Returns the adjustment with corner 1 held and wall 1 along x; millimetres, points named by the number of their corner.
   *
   * @return the adjustment, not null
   */
  public Adjustment fixed() {
    return fixed;
  }

  /**
   * Returns the adjustment with nothing held: how sure each corner is against the middle of all. Right angles taken for
   * granted are kept.
   *
   * @return the adjustment, not null
   */
  public Adjustment free() {
    return free;
  }

  /**
   * Returns how many measurements there are beyond those that the shape needs: each is a check.
   *
   * @return not negative
   */
  public int redundancy() {
    return fixed.redundancy();
  }

  /**
   * Returns by what the standard deviations would have to be multiplied to fit what the measurements are off.
   *
   * @return near 1 for a sound survey; 1 if nothing is redundant
   */
  public double factor() {
    return fixed.factor();
  }

  /**
   * Returns the area of the outline.
   *
   * @return the area, not null
   */
  public Area area() {
    return outline.area();
  }

  /**
   * Returns the standard deviation of the area. Each offset counts over half of the way to its neighbours, a rise over two
   * thirds of its chord, as far as one of a length may be off.
   *
   * @return square metres, not negative
   */
  public double areaDeviation() {
    double corner = fixed.deviation(Slopes.ofArea(SurveyNetwork.layout(fixed)));
    double sum = corner * corner;
    for (double reach : FaceReach.of(survey)) {
      double off = reach * survey.uncertainty().length().toMillimetres();
      sum += off * off;
    }
    return StrictMath.sqrt(sum) / 1e6;
  }

  /**
   * Returns how the walls turn at a corner.
   *
   * @param corner the corner, from 1
   * @return degrees to the left, between -180 and 180; 90 at a square corner, -90 at a square one that juts into the room
   * @throws IndexOutOfBoundsException if there is no such corner
   */
  public double turn(int corner) {
    return SurveyNetwork.layout(fixed).turn(Objects.checkIndex(corner - 1, survey.size()));
  }

  /**
   * Returns how much the room is wider at a corner than a square corner is: 90 degrees, or 270 where the corner juts into the
   * room.
   *
   * @param corner the corner, from 1
   * @return degrees, negative if it is narrower; empty if it is more than 10 degrees off and so not meant to be square
   * @throws IndexOutOfBoundsException if there is no such corner
   */
  public OptionalDouble offSquare(int corner) {
    double turn = turn(corner);
    double off = StrictMath.copySign(90, turn) - turn;
    return StrictMath.abs(off) > MEANT_SQUARE ? OptionalDouble.empty() : OptionalDouble.of(off);
  }

  /**
   * Returns the standard deviation of how the walls turn at a corner.
   *
   * @param corner the corner, from 1
   * @return degrees, not negative; next to zero where a right angle is taken for granted
   * @throws IndexOutOfBoundsException if there is no such corner
   */
  public double turnDeviation(int corner) {
    return fixed.deviation(Slopes.ofTurn(SurveyNetwork.layout(fixed), Objects.checkIndex(corner - 1, survey.size())));
  }

  /**
   * Returns the standard deviation of how far a corner is from the straight line of a wall.
   *
   * @param wall the wall, from 1
   * @param corner the corner, from 1
   * @return millimetres, not negative; zero for a corner of the wall itself
   * @throws IndexOutOfBoundsException if there is no such wall or corner
   */
  public double deviationFromWall(int wall, int corner) {
    int a = Objects.checkIndex(wall - 1, survey.size());
    int c = Objects.checkIndex(corner - 1, survey.size());
    int b = (a + 1) % survey.size();
    return c == a || c == b ? 0 : fixed.deviation(Slopes.ofDistanceFromLine(SurveyNetwork.layout(fixed), a, b, c));
  }

  /**
   * Returns the standard deviation of how far apart two corners are in one direction, across boards that run along a bearing.
   *
   * @param degrees the way the boards run, anticlockwise from wall 1, finite
   * @param from one corner, from 1
   * @param to the other corner, from 1
   * @return millimetres, not negative
   * @throws IndexOutOfBoundsException if there is no such corner
   */
  public double deviationAcross(double degrees, int from, int to) {
    double[] slopes = new double[2 * survey.size()];
    int a = Objects.checkIndex(from - 1, survey.size());
    int b = Objects.checkIndex(to - 1, survey.size());
    slopes[2 * b] -= Walk.sin(degrees);
    slopes[2 * b + 1] += Walk.cos(degrees);
    slopes[2 * a] += Walk.sin(degrees);
    slopes[2 * a + 1] -= Walk.cos(degrees);
    return fixed.deviation(slopes);
  }

  /** The room of straight walls. */
  static Outline straight(List<Point> corners) {
    return Outline.of(Ring.of(corners));
  }

  /** The room with the faces of its walls as they were measured. */
  static Outline shaped(Survey survey, List<Point> corners) {
    List<Point> all = new ArrayList<>();
    for (int wall = 1; wall <= survey.size(); wall++) {
      all.add(corners.get(wall - 1));
      all.addAll(face(survey, corners, wall));
    }
    return Outline.of(Ring.of(all));
  }

  /** The points of a wall's face between its corners. */
  private static List<Point> face(Survey survey, List<Point> corners, int wall) {
    Point from = corners.get(wall - 1);
    Point to = corners.get(wall % survey.size());
    SurveyWall measured = survey.walls().get(wall - 1);
    if (!measured.rise().isZero()) {
      return WallShape.arc(from, to, measured.rise(), ARC_WITHIN);
    }
    List<WallOffset> offsets = survey.offsets().stream().filter(offset -> offset.wall() == wall).toList();
    return offsets.isEmpty() ? List.of() : WallShape.offsets(from, to, measured.length(), offsets);
  }

  /**
   * Returns which wall of the survey each straight piece of the outline belongs to.
   *
   * @return the number of the wall, from 1, for each side of the outline's shell in order; unmodifiable, not null
   */
  public List<Integer> wallNumbers() {
    List<Integer> numbers = new ArrayList<>();
    for (int wall = 1; wall <= survey.size(); wall++) {
      numbers.addAll(Collections.nCopies(face(survey, corners, wall).size() + 1, wall));
    }
    return List.copyOf(numbers);
  }
}
