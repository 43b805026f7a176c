package floorcalc.movement;

import floorcalc.measure.Length;
import floorcalc.outline.Direction;
import floorcalc.outline.Outline;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;

/**
 * A piece of floor that runs on without a break through one room or several, and moves as one. Its width is the extent
 * of all of it across the boards, whatever lies between. Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class ContinuousBay {
  private final List<JoinedRoom> rooms;
  private final List<JoinedOpening> openings;
  private final List<JoinedOpening> breaks;
  private final Direction boards;
  /** In the frame of the boards, x along them and y across: lowest and highest. */
  private final Point low;
  private final Point high;

  ContinuousBay(List<JoinedRoom> rooms, List<JoinedOpening> openings, List<JoinedOpening> breaks, Direction boards) {
    this.rooms = List.copyOf(rooms);
    this.openings = List.copyOf(openings);
    this.breaks = List.copyOf(breaks);
    this.boards = boards;
    List<Outline> parts = new ArrayList<>();
    rooms.forEach(room -> parts.add(boards.toFrame(room.outline())));
    openings.forEach(opening -> parts.add(boards.toFrame(opening.floor())));
    breaks.forEach(opening -> parts.add(boards.toFrame(opening.floor())));
    long lowX = Long.MAX_VALUE;
    long lowY = Long.MAX_VALUE;
    long highX = Long.MIN_VALUE;
    long highY = Long.MIN_VALUE;
    for (Outline part : parts) {
      lowX = Math.min(lowX, part.extent().low().xNanometres());
      lowY = Math.min(lowY, part.extent().low().yNanometres());
      highX = Math.max(highX, part.extent().high().xNanometres());
      highY = Math.max(highY, part.extent().high().yNanometres());
    }
    low = Point.ofNanometres(lowX, lowY);
    high = Point.ofNanometres(highX, highY);
  }

  /**
   * Returns the width of the bay.
   *
   * @return across the boards, through all openings, in total from edge to edge; not null
   */
  public Length across() {
    return high.y().minus(low.y());
  }

  /**
   * Returns the length of the bay.
   *
   * @return along the boards, through all openings, in total from edge to edge; not null
   */
  public Length along() {
    return high.x().minus(low.x());
  }

  /**
   * Returns the rooms that it runs through.
   *
   * @return an unmodifiable list, at least one, not null
   */
  public List<JoinedRoom> rooms() {
    return rooms;
  }

  /**
   * Returns the openings that it runs through without a break.
   *
   * @return an unmodifiable list, may be empty, not null
   */
  public List<JoinedOpening> openings() {
    return openings;
  }

  /**
   * Returns the openings at which it ends at a break.
   *
   * @return an unmodifiable list, may be empty, not null
   */
  public List<JoinedOpening> breaks() {
    return breaks;
  }

  /**
   * Tells whether a point is in the bay or on its edge, within 1 mm.
   *
   * @param point a point in the coordinates of the rooms, not null
   * @return true if it is in one of the rooms or in an opening without a break
   */
  public boolean contains(Point point) {
    return rooms.stream().anyMatch(room -> ContinuousFloor.isIn(room.outline(), point.xNanometres(), point.yNanometres()))
        || openings.stream().anyMatch(opening ->
            ContinuousFloor.isIn(opening.floor(), point.xNanometres(), point.yNanometres()));
  }

  /**
   * Returns the places where the gap of the bay has to be judged if it stays put in the middle of its extent.
   *
   * @param gap the gap at all of them, square to the wall, on each side, not negative, not null
   * @return both ends of each wall of rooms and openings, such as {@code "hall, wall 3 at corner 4"}, each with its distance
   *     across and along the boards from the middle; not null
   * @throws IllegalArgumentException if the gap is negative
   */
  public List<GapPoint> points(Length gap) {
    return points(gap, Point.ofNanometres(Math.floorDiv(low.xNanometres() + high.xNanometres(), 2),
        Math.floorDiv(low.yNanometres() + high.yNanometres(), 2)));
  }

  /**
   * Returns the places where the gap of the bay has to be judged if it is held at a point.
   *
   * @param gap the gap at all of them, square to the wall, on each side, not negative, not null
   * @param held where it is held, in the coordinates of the rooms, not null
   * @return as {@link #points(Length)}, with distances from the line along the boards through that point; not null
   * @throws IllegalArgumentException if the gap is negative
   */
  public List<GapPoint> pointsHeldAt(Length gap, Point held) {
    Objects.requireNonNull(held, "held");
    return points(gap, inFrame(held));
  }

  private List<GapPoint> points(Length gap, Point still) {
    Objects.requireNonNull(gap, "gap");
    List<GapPoint> points = new ArrayList<>();
    for (JoinedRoom room : rooms) {
      points.addAll(WallPoints.of(boards.toFrame(room.outline()), still, gap, room.name() + ", ", wall -> true));
    }
    for (JoinedOpening opening : openings) {
      Ring strip = opening.floor().shell();
      points.addAll(WallPoints.of(boards.toFrame(opening.floor()), still, gap, opening.name() + ", ",
          wall -> !isOpenEnd(strip, wall)));
    }
    return List.copyOf(points);
  }

  /** Whether a side of an opening's floor lies in a room or along its wall, so that the floor runs on there. */
  private boolean isOpenEnd(Ring strip, int side) {
    int next = (side + 1) % strip.size();
    double x = strip.x(side) / 2.0 + strip.x(next) / 2.0;
    double y = strip.y(side) / 2.0 + strip.y(next) / 2.0;
    return rooms.stream().anyMatch(room -> ContinuousFloor.isIn(room.outline(), x, y));
  }

  /** A point in the frame of the boards. */
  private Point inFrame(Point point) {
    Ring there = boards.toFrame(Ring.of(point, point, point));
    return Point.ofNanometres(there.x(0), there.y(0));
  }

  /** How far a point is from the low edge, across the boards. */
  Length acrossFromLowEdge(Point point) {
    return inFrame(point).y().minus(low.y());
  }

  /** How far a point is from the low end, along the boards. */
  Length alongFromLowEnd(Point point) {
    return inFrame(point).x().minus(low.x());
  }

  /** The rooms by name. */
  String name() {
    return rooms.stream().map(JoinedRoom::name).collect(Collectors.joining(" + "));
  }

  /**
   * Returns the bay as text.
   *
   * @return such as {@code "hall + kitchen, 7980 mm across the boards, 4000 mm along them"}, not null
   */
  @Override
  public String toString() {
    return name() + ", " + across() + " across the boards, " + along() + " along them";
  }
}
