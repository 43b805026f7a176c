package floorcalc.outline.survey;

import floorcalc.measure.Length;
import floorcalc.outline.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * The face of a wall that is not straight from corner to corner: the points between the two corners.
 * <p>
 * The wall is walked from its first corner to its second with the room on the left. Points are rounded to the nearest
 * nanometre; along an axis they are exact. Whether the face meets another wall is for {@link floorcalc.outline.OutlineCheck}.
 *
 * @since 0.1
 */
public final class WallShape {
  /** The most points that an arc is divided into. */
  public static final int MOST_POINTS = 1000;

  private WallShape() {}

  /**
   * Returns an arc over its chord as a chain of straight walls, none of which is further from the arc than a bound.
   * <p>
   * The corners lie on the arc and divide it into equal parts, as few as the bound allows, {@code n = ceil(w / (2
   * arccos(1 - s / R)))}. So a room with an arc to the outside comes out smaller than it is, never larger: by at most
   * two thirds of the bound times the length of the arc; one with an arc to the inside larger by as much.
   *
   * @param from the first corner, not null
   * @param to the second corner, not null, another point
   * @param rise how far the middle of the arc stands off the chord, to the outside (right) positive, not null, not zero,
   *     from a millionth of the chord to a thousand times it
   * @param within how far the chain may be from the arc, not null, more than zero
   * @return the points between the two corners in order; none if the chord itself is within the bound; not null
   * @throws IllegalArgumentException if a value is out of range, or more than {@value #MOST_POINTS} points were needed
   */
  public static List<Point> arc(Point from, Point to, Length rise, Length within) {
    Objects.requireNonNull(rise, "rise");
    if (!within.isPositive()) {
      throw new IllegalArgumentException("how far a chain of walls may be from its arc must be more than 0 mm, but was "
          + within + "; half a millimetre is less than a saw cut is sure to");
    }
    WallLine line = WallLine.of(from, to);
    Arc.require(line.length(), rise.abs());
    double height = rise.abs().toNanometres();
    double angle = 4 * StrictMath.atan2(2 * height, line.nanometres());
    double radius = (line.nanometres() * line.nanometres() / 4 + height * height) / (2 * height);
    double share = Math.min(2, within.toNanometres() / radius);
    // The sagitta of a part is 2 R sin²(part / 4).
    double parts = Math.ceil(angle / (4 * StrictMath.asin(Math.sqrt(share / 2))) - 1e-9);
    if (parts > MOST_POINTS + 1) {
      throw new IllegalArgumentException("an arc with a rise of " + rise + " on a chord of " + line.length() + " within "
          + within + " needs " + (long) parts + " straight walls, but at most " + (MOST_POINTS + 1)
          + " are made; allow it to be further off");
    }
    List<Point> points = new ArrayList<>();
    for (int i = 1; i < parts; i++) {
      double turned = angle * (i / parts - 0.5);
      double along = radius * StrictMath.sin(turned);
      double off = 2 * radius * StrictMath.sin((angle / 2 + turned) / 2) * StrictMath.sin((angle / 2 - turned) / 2);
      points.add(line.place(line.nanometres() / 2 + along, rise.isPositive() ? -off : off));
    }
    return List.copyOf(points);
  }

  /**
   * Returns the points of a wall's face that were measured off its straight line, in the order given. Two at one place
   * make a step square to the wall.
   *
   * @param from the first corner, not null
   * @param to the second corner, not null, another point
   * @param offsets the measured points, not null; none lies before the one before it or beyond the wall's end
   * @return the points between the two corners, without those that repeat the one before or a corner; not null
   * @throws IllegalArgumentException if an offset lies beyond the wall, goes back, or is the third at one place
   */
  public static List<Point> offsets(Point from, Point to, List<WallOffset> offsets) {
    Objects.requireNonNull(offsets, "offsets");
    return offsets(from, to, WallLine.of(from, to).length(), offsets);
  }

  /**
   * Returns the points of a wall's face where the wall itself was measured a little longer or shorter than it came out:
   * the places along it are stretched alike.
   *
   * @param from the first corner, not null
   * @param to the second corner, not null, another point
   * @param measured the length of the wall that the places were measured along, not null, more than zero
   * @param offsets the measured points, not null; none lies before the one before it or beyond the measured length
   * @return the points between the two corners, without those that repeat the one before or a corner; not null
   * @throws IllegalArgumentException if an offset lies beyond the wall, goes back, or is the third at one place
   */
  public static List<Point> offsets(Point from, Point to, Length measured, List<WallOffset> offsets) {
    Objects.requireNonNull(measured, "measured");
    Objects.requireNonNull(offsets, "offsets");
    WallLine line = WallLine.of(from, to);
    requireOrder(measured, offsets);
    double stretch = line.nanometres() / measured.toNanometres();
    boolean same = line.length().equals(measured);
    List<Point> points = new ArrayList<>(List.of(from));
    for (WallOffset offset : offsets) {
      double at = offset.at().toNanometres();
      Point point = line.place(same ? at : at * stretch, offset.distance().toNanometres());
      if (!point.equals(points.get(points.size() - 1))) {
        points.add(point);
      }
    }
    if (points.size() > 1 && points.get(points.size() - 1).equals(to)) {
      points.remove(points.size() - 1);
    }
    return List.copyOf(points.subList(1, points.size()));
  }

  private static void requireOrder(Length measured, List<WallOffset> offsets) {
    if (!measured.isPositive()) {
      throw new IllegalArgumentException("a wall must be longer than 0 mm, but was measured " + measured);
    }
    for (int i = 0; i < offsets.size(); i++) {
      WallOffset offset = offsets.get(i);
      if (offset.at().compareTo(measured) > 0) {
        throw new IllegalArgumentException("an offset lies " + offset.at() + " along wall " + offset.wall() + ", which is "
            + measured + " long; measure from the wall's first corner");
      }
      if (i > 0 && offset.at().compareTo(offsets.get(i - 1).at()) < 0) {
        throw new IllegalArgumentException("offsets of wall " + offset.wall() + " go back from " + offsets.get(i - 1).at()
            + " to " + offset.at() + "; give them in the order in which the wall is walked");
      }
      if (i > 1 && offset.at().equals(offsets.get(i - 2).at())) {
        throw new IllegalArgumentException("wall " + offset.wall() + " has three offsets at " + offset.at()
            + "; a step has two: where the face was, and where it goes on");
      }
    }
  }

  /**
   * Returns the two inner corners of a bay of three straight walls over an opening, the same on either side: the middle
   * one parallel to the opening.
   *
   * @param from where the opening starts, not null
   * @param to where it ends, not null, another point
   * @param depth from the opening to the middle wall, to the outside (right) positive, not null, not zero
   * @param front how long the middle wall is, not null, more than zero, not longer than the opening
   * @return the two corners in order, not null
   * @throws IllegalArgumentException if depth or front is out of range
   */
  public static List<Point> bay(Point from, Point to, Length depth, Length front) {
    Objects.requireNonNull(depth, "depth");
    Objects.requireNonNull(front, "front");
    WallLine line = WallLine.of(from, to);
    if (depth.isZero()) {
      throw new IllegalArgumentException("the depth of a bay must not be 0 mm; a bay without depth is a straight wall");
    }
    if (!front.isPositive() || front.compareTo(line.length()) > 0) {
      throw new IllegalArgumentException("the middle wall of a bay must be longer than 0 mm and not longer than its opening of "
          + line.length() + ", but was " + front + "; give the shorter one as the middle wall");
    }
    double side = (line.nanometres() - front.toNanometres()) / 2;
    double off = depth.negated().toNanometres();
    return List.of(line.place(side, off), line.place(line.nanometres() - side, off));
  }
}
