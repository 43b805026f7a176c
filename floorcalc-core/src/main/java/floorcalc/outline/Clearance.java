package floorcalc.outline;

import java.util.List;
import java.util.stream.Stream;

/** Checks a laid area against the room from first principles: within it, and a gap away from every wall. */
final class Clearance {
  /** Corners are rounded to whole nanometres, so the gap may be short by this many. */
  static final long ROUNDING = 2;

  private Clearance() {}

  /** Tells whether all pieces lie in the room and no point of them is nearer to a wall than the gap less rounding. */
  static boolean isKept(List<Ring> room, List<Outline> laid, long gap) {
    List<Ring> edges = laid.stream().flatMap(piece -> piece.rings().stream()).toList();
    Walls walls = Walls.of(Stream.concat(room.stream(), edges.stream()).toList());
    int rings = room.size();
    boolean[] near = new boolean[1];
    walls.sweep(gap, (first, second) -> {
      boolean both = walls.ring[first] < rings && walls.ring[second] >= rings;
      near[0] = both && (distance(walls, first, second) < gap - ROUNDING || cross(walls, first, second));
      return !near[0];
    });
    return !near[0] && laid.stream().allMatch(piece -> isWithin(room, piece));
  }

  /** Tells whether a piece that meets no wall lies on the floor of the room, and none of the room's walls on the piece. */
  private static boolean isWithin(List<Ring> room, Outline piece) {
    Outline floor = Outline.of(room.get(0), room.subList(1, room.size()));
    return floor.locate(piece.shell().corners().get(0)) != Containment.OUTSIDE
        && room.stream().allMatch(ring -> piece.locate(ring.corners().get(0)) != Containment.INSIDE);
  }

  private static boolean cross(Walls walls, int first, int second) {
    Meeting meeting = Meeting.of(walls, first, second);
    return meeting != null && meeting.kind() == Meeting.Kind.CROSS;
  }

  /** Returns the distance of two walls in nanometres, if they do not cross. */
  private static double distance(Walls walls, int first, int second) {
    return Math.min(
        Math.min(distance(walls, first, walls.ax[second], walls.ay[second]),
            distance(walls, first, walls.bx[second], walls.by[second])),
        Math.min(distance(walls, second, walls.ax[first], walls.ay[first]),
            distance(walls, second, walls.bx[first], walls.by[first])));
  }

  /** Returns the distance of a place from a wall in nanometres. */
  static double distance(Walls walls, int wall, long x, long y) {
    long dx = walls.bx[wall] - walls.ax[wall];
    long dy = walls.by[wall] - walls.ay[wall];
    long px = x - walls.ax[wall];
    long py = y - walls.ay[wall];
    double along = Exact.differenceOfProducts(dx, px, -dy, py);
    double square = Exact.differenceOfProducts(dx, dx, -dy, dy);
    if (along <= 0) {
      return length(px, py);
    }
    if (along >= square) {
      return length(x - walls.bx[wall], y - walls.by[wall]);
    }
    return Math.abs(Exact.differenceOfProducts(dx, py, dy, px)) / Math.sqrt(square);
  }

  private static double length(double x, double y) {
    return Math.sqrt(x * x + y * y);
  }
}
