package floorcalc.examples.explain;

import floorcalc.measure.Length;
import floorcalc.movement.ContinuousFloor;
import floorcalc.movement.JoinedOpening;
import floorcalc.movement.JoinedRoom;
import floorcalc.outline.Direction;
import floorcalc.outline.Outline;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import floorcalc.plan.Door;
import floorcalc.plan.FloorJob;
import floorcalc.plan.Room;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * The rooms of a job that are joined by doors with the same floor on both sides: a door of one that leads to the other, and one of the
 * other that leads back, facing it.
 */
final class JoinedRooms {
  private static final Set<String> GOES_ON = Set.of("", "same floor");
  /** Walls are thinner than this; doors farther apart are no pair. */
  private static final double THICKEST_WALL = 1e9;

  private JoinedRooms() {
  }

  static ContinuousFloor of(FloorJob job, Direction boards) {
    List<JoinedOpening> openings = new ArrayList<>();
    List<Room> rooms = job.rooms();
    for (int i = 0; i < rooms.size(); i++) {
      for (int j = i + 1; j < rooms.size(); j++) {
        addOpenings(rooms.get(i), rooms.get(j), openings);
      }
    }
    return ContinuousFloor.of(rooms.stream().map(room -> new JoinedRoom(room.name(), room.outline())).toList(), openings, boards);
  }

  private static void addOpenings(Room one, Room other, List<JoinedOpening> openings) {
    List<Door> back = new ArrayList<>(between(other, one));
    for (Door door : between(one, other)) {
      Door facing = back.stream().min((a, b) -> Double.compare(apart(door, a), apart(door, b)))
          .orElseThrow(() -> new IllegalArgumentException("door '" + door.name() + "' leads from '" + one.name() + "' to '"
              + other.name() + "', but no door of '" + other.name() + "' is left that leads back; give it in both rooms"));
      if (apart(door, facing) > THICKEST_WALL) {
        throw new IllegalArgumentException("door '" + door.name() + "' of '" + one.name() + "' and door '" + facing.name() + "' of '"
            + other.name() + "' lead to each other, but are "
            + Length.ofMillimetres(BigDecimal.valueOf(Math.round(apart(door, facing) / 1e6)).toPlainString())
            + " apart; give both rooms in the same coordinates");
      }
      back.remove(facing);
      openings.add(new JoinedOpening(one.name() + ", " + door.name(), one.name(), other.name(), floor(door, facing)));
    }
  }

  private static List<Door> between(Room room, Room leadsTo) {
    return room.doors().stream()
        .filter(door -> door.leadsTo().equals(leadsTo.name()) && GOES_ON.contains(door.beyond().finish())).toList();
  }

  private static double apart(Door one, Door other) {
    return StrictMath.hypot(middle(one.from().xNanometres(), one.to().xNanometres())
        - middle(other.from().xNanometres(), other.to().xNanometres()),
        middle(one.from().yNanometres(), one.to().yNanometres()) - middle(other.from().yNanometres(), other.to().yNanometres()));
  }

  private static double middle(long a, long b) {
    return a / 2.0 + b / 2.0;
  }

  private static double distance(Point a, Point b) {
    return StrictMath.hypot(a.xNanometres() - b.xNanometres(), a.yNanometres() - b.yNanometres());
  }

  /** The floor from door to door; of doors in one line a strip of a millimetre along it. */
  private static Outline floor(Door door, Door facing) {
    boolean opposite = distance(door.to(), facing.from()) + distance(door.from(), facing.to())
        <= distance(door.to(), facing.to()) + distance(door.from(), facing.from());
    Point third = opposite ? facing.from() : facing.to();
    Point fourth = opposite ? facing.to() : facing.from();
    Ring ring = Ring.of(door.from(), door.to(), third, fourth);
    double wall = Math.abs(ring.signedArea().toSquareMetres()) * 1e18 / distance(door.from(), door.to());
    if (wall >= 1e6) {
      return Outline.of(ring);
    }
    double length = distance(door.from(), door.to());
    long dx = Math.round((door.to().yNanometres() - door.from().yNanometres()) / length * 1e6);
    long dy = Math.round((door.from().xNanometres() - door.to().xNanometres()) / length * 1e6);
    return Outline.of(Ring.of(moved(door.from(), -dx, -dy), moved(door.to(), -dx, -dy), moved(door.to(), dx, dy),
        moved(door.from(), dx, dy)));
  }

  private static Point moved(Point point, long dx, long dy) {
    return Point.ofNanometres(point.xNanometres() + dx, point.yNanometres() + dy);
  }
}
