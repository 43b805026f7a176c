package floorcalc.drawing;

import floorcalc.outline.Containment;
import floorcalc.outline.Extent;
import floorcalc.outline.Ring;
import floorcalc.plan.Room;
import java.util.List;

/** Tells whether rooms are measured in one frame: side by side as they stand, and not each in a frame of its own. */
final class OneFrame {
  private static final int MOST_CORNERS = 2000;
  private static final double LEAST_FILLED = 0.25;

  private OneFrame() {
  }

  static boolean isShared(List<Room> rooms) {
    if (rooms.size() < 2 || rooms.stream().mapToInt(room -> room.outline().size()).sum() > MOST_CORNERS) {
      return false;
    }
    double filled = 0;
    double lowX = Double.POSITIVE_INFINITY;
    double lowY = Double.POSITIVE_INFINITY;
    double highX = Double.NEGATIVE_INFINITY;
    double highY = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < rooms.size(); i++) {
      Ring shell = rooms.get(i).outline().shell();
      for (int j = 0; j < i; j++) {
        if (overlap(shell, rooms.get(j).outline().shell())) {
          return false;
        }
      }
      Extent extent = shell.extent();
      filled += shell.area().toSquareMillimetres();
      lowX = Math.min(lowX, extent.low().x().toMillimetres());
      lowY = Math.min(lowY, extent.low().y().toMillimetres());
      highX = Math.max(highX, extent.high().x().toMillimetres());
      highY = Math.max(highY, extent.high().y().toMillimetres());
    }
    return filled >= LEAST_FILLED * (highX - lowX) * (highY - lowY);
  }

  /** Rooms overlap if their walls cross, or if a corner of one lies inside the other, or if they are the same. */
  private static boolean overlap(Ring one, Ring other) {
    if (holdsCorner(one, other) || holdsCorner(other, one)) {
      return true;
    }
    for (int i = 0; i < one.size(); i++) {
      for (int j = 0; j < other.size(); j++) {
        if (cross(one, i, other, j)) {
          return true;
        }
      }
    }
    return one.area().equals(other.area()) && one.extent().equals(other.extent());
  }

  private static boolean holdsCorner(Ring ring, Ring other) {
    return other.corners().stream().anyMatch(corner -> ring.locate(corner) == Containment.INSIDE);
  }

  private static boolean cross(Ring one, int i, Ring other, int j) {
    int nextI = (i + 1) % one.size();
    int nextJ = (j + 1) % other.size();
    double a = side(one, i, nextI, other, j);
    double b = side(one, i, nextI, other, nextJ);
    double c = side(other, j, nextJ, one, i);
    double d = side(other, j, nextJ, one, nextI);
    return a * b < 0 && c * d < 0;
  }

  private static double side(Ring line, int from, int to, Ring point, int at) {
    double dx = (double) line.x(to) - line.x(from);
    double dy = (double) line.y(to) - line.y(from);
    return StrictMath.signum(dx * ((double) point.y(at) - line.y(from)) - dy * ((double) point.x(at) - line.x(from)));
  }
}
