package floorcalc.rows;

import floorcalc.measure.Length;
import floorcalc.outline.Outline;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import floorcalc.rules.RuleValue;
import floorcalc.working.Calculated;
import java.util.ArrayList;
import java.util.List;

/**
 * Every stop of a floor that is laid through several rooms with one start line, named by room and wall.
 * <p>
 * Levels are heights over a control line, to its left. A side that lies in another part or along its edge, within 1 mm, is open: the
 * floor goes on there. A wall with a doorway in it stays a stop beside the doorway. Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class FloorStops {
  private static final Length NEAR = Length.ofMillimetres(1);

  /** A stop, and from where to where along the line it goes. */
  record Bound(Stop stop, double from, double to) {
    /** Tells whether it bounds a cell on the side that the floor's side of the stop says. */
    boolean touches(FloorCells.Cell cell) {
      double low = stop.low().toNanometres();
      double high = stop.high().toNanometres();
      boolean reaches = stop.side() == Stop.Side.FLOOR_ABOVE
          ? low < cell.high() - FloorCells.NEAR && high >= cell.low() - FloorCells.NEAR
          : high > cell.low() + FloorCells.NEAR && low <= cell.high() + FloorCells.NEAR;
      return reaches && Math.min(to, Math.max(cell.rightLow(), cell.rightHigh()))
          - Math.max(from, Math.min(cell.leftLow(), cell.leftHigh())) > FloorCells.NEAR;
    }
  }

  private final List<Bound> bounds;
  private final List<Stop> stops;
  private final Length low;
  private final Length high;

  private FloorStops(List<Bound> bounds, Length low, Length high) {
    this.bounds = List.copyOf(bounds);
    this.stops = bounds.stream().map(Bound::stop).toList();
    this.low = low;
    this.high = high;
  }

  /**
   * Returns the stops of a floor.
   *
   * @param parts its rooms and openings in the same coordinates, not empty, not null
   * @param line the line that levels are counted from and boards run along, not null
   * @return the stops, not null
   * @throws IllegalArgumentException if there is no part
   */
  public static FloorStops of(List<FloorPart> parts, ControlLine line) {
    if (parts.isEmpty()) {
      throw new IllegalArgumentException("a floor needs at least one part");
    }
    List<Bound> stops = new ArrayList<>();
    Length low = line.height(parts.get(0).outline().shell().corners().get(0));
    Length high = low;
    for (FloorPart part : parts) {
      List<FloorPart> others = parts.stream().filter(other -> other != part).toList();
      addSides(part.name() + ", wall ", part.outline().shell(), others, line, stops);
      List<Ring> voids = part.outline().voids();
      for (int i = 0; i < voids.size(); i++) {
        addSides(part.name() + ", void " + (i + 1) + " side ", voids.get(i), others, line, stops);
      }
      for (Point corner : part.outline().shell().corners()) {
        low = low.min(line.height(corner));
        high = high.max(line.height(corner));
      }
    }
    return new FloorStops(stops, low, high);
  }

  private static void addSides(String name, Ring ring, List<FloorPart> others, ControlLine line,
      List<Bound> stops) {
    List<Point> corners = ring.corners();
    for (int i = 0; i < corners.size(); i++) {
      Point from = corners.get(i);
      Point to = corners.get((i + 1) % corners.size());
      if (others.stream().noneMatch(other -> isOpen(other.outline(), from, to))) {
        Point start = inFrame(line, from);
        Point end = inFrame(line, to);
        Stop.ofSide(name + (i + 1), start, end).ifPresent(stop -> stops.add(new Bound(stop,
            Math.min(start.xNanometres(), end.xNanometres()), Math.max(start.xNanometres(), end.xNanometres()))));
      }
    }
  }

  private static boolean isOpen(Outline other, Point from, Point to) {
    Point middle = Point.ofNanometres(from.xNanometres() / 2 + to.xNanometres() / 2, from.yNanometres() / 2 + to.yNanometres() / 2);
    return other.isNear(from, NEAR) && other.isNear(middle, NEAR) && other.isNear(to, NEAR);
  }

  static Point inFrame(ControlLine line, Point point) {
    return Point.of(line.along(point), line.height(point));
  }

  /**
   * Returns the strips if a row line lies on the control line itself.
   *
   * @param pitch the laid pitch, not null, more than zero
   * @param minimum the rule on the narrowest strip, not null
   * @return the start line, as {@link StartLine#at(List, Length, Length, RuleValue, Length)}; not null
   * @throws IllegalArgumentException if the pitch is out of range
   */
  public Calculated<StartLine> startAtLine(Length pitch, RuleValue<Length> minimum) {
    Widths.requirePositive(pitch, "laid pitch", "give the width that a laid board covers");
    Length nanometre = Length.ofNanometres(1);
    return StartLine.at(stops, low, pitch, minimum, low.negated().minus(nanometre).remainder(pitch).plus(nanometre));
  }

  /** Returns the stops with their places along the line. */
  List<Bound> bounds() {
    return bounds;
  }

  /**
   * Returns the stops.
   *
   * @return an unmodifiable list in the order of parts and walls, not null
   */
  public List<Stop> stops() {
    return stops;
  }

  /**
   * Returns the lowest level of the floor, from which a first row is measured.
   *
   * @return the level, not null
   */
  public Length low() {
    return low;
  }

  /**
   * Returns the highest level of the floor.
   *
   * @return the level, not null
   */
  public Length high() {
    return high;
  }
}
