package floorcalc.bays;

import floorcalc.outline.Direction;
import floorcalc.outline.Outline;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import java.util.ArrayList;
import java.util.List;

/**
 * A room as walls with the floor on their left, in nanometres from its first corner, so that a room that was moved gives the same
 * numbers. Directions are unit vectors: (ux, uy) along the boards, (-uy, ux) square to them.
 */
final class RoomShape {
  /** A point as near to a wall is on it. */
  static final double TOUCH = 2_000;
  /** A line that leaves a corner at a smaller angle to one of its walls, as a sine, runs along the wall: 5 degrees. */
  private static final double ALONG_WALL = StrictMath.sin(StrictMath.toRadians(5));

  final Outline room;
  final double ux;
  final double uy;
  final double[] xs;
  final double[] ys;
  final int[] next;
  final int[] before;
  final int[] ring;
  final Recesses[] recesses;
  final int[] first;

  RoomShape(Outline room, Direction boards) {
    this.room = room;
    double[] unit = unit(boards);
    ux = unit[0];
    uy = unit[1];
    List<Ring> rings = new ArrayList<>();
    rings.add(room.shell());
    rings.addAll(room.voids());
    int n = room.size();
    xs = new double[n];
    ys = new double[n];
    next = new int[n];
    before = new int[n];
    ring = new int[n];
    recesses = new Recesses[rings.size()];
    first = new int[rings.size() + 1];
    int at = 0;
    for (int r = 0; r < rings.size(); r++) {
      int size = rings.get(r).size();
      double[] rx = new double[size];
      double[] ry = new double[size];
      for (int i = 0; i < size; i++) {
        rx[i] = xs[at + i] = Math.subtractExact(rings.get(r).x(i), room.shell().x(0));
        ry[i] = ys[at + i] = Math.subtractExact(rings.get(r).y(i), room.shell().y(0));
        next[at + i] = at + (i + 1) % size;
        before[at + i] = at + (i + size - 1) % size;
        ring[at + i] = r;
      }
      recesses[r] = new Recesses(rx, ry);
      first[r] = at;
      at += size;
    }
    first[rings.size()] = at;
  }

  /** The turning of a ring by a direction, read from a point a thousand kilometres out; exact along the axes. */
  private static double[] unit(Direction boards) {
    double degrees = boards.degrees();
    if (boards.isAlongAxis()) {
      int quarter = (int) (degrees / 90);
      return new double[] {quarter == 0 ? 1 : quarter == 2 ? -1 : 0, quarter == 1 ? 1 : quarter == 3 ? -1 : 0};
    }
    double radians = StrictMath.toRadians(degrees);
    return new double[] {StrictMath.cos(radians), StrictMath.sin(radians)};
  }

  int size() {
    return xs.length;
  }

  /** How far a place lies along the boards. */
  double along(double x, double y) {
    return x * ux + y * uy;
  }

  /** How far a place lies across the boards. */
  double across(double x, double y) {
    return y * ux - x * uy;
  }

  Point point(double x, double y) {
    return Point.ofNanometres(room.shell().x(0) + (long) x, room.shell().y(0) + (long) y);
  }

  Point corner(int i) {
    return point(xs[i], ys[i]);
  }

  /** Tells whether the floor's angle at a corner is more than a straight one. */
  boolean isInner(int i) {
    double[] in = wall(before[i]);
    double[] out = wall(i);
    return in[0] * out[1] - in[1] * out[0] < -1e-9;
  }

  /** The angle by which the walls turn at a corner, in radians, to the left positive. */
  double turn(int i) {
    double[] in = wall(before[i]);
    double[] out = wall(i);
    return StrictMath.atan2(in[0] * out[1] - in[1] * out[0], in[0] * out[0] + in[1] * out[1]);
  }

  /** The corner at a place, -1 if there is none. */
  int cornerAt(double x, double y) {
    for (int i = 0; i < xs.length; i++) {
      if (StrictMath.abs(xs[i] - x) < TOUCH && StrictMath.abs(ys[i] - y) < TOUCH) {
        return i;
      }
    }
    return -1;
  }

  /** Tells whether a direction leads from a corner into the floor, clear of its walls. */
  boolean opensTo(int i, double dx, double dy) {
    double[] in = wall(before[i]);
    double[] out = wall(i);
    double fromOut = out[0] * dy - out[1] * dx;
    double toIn = dx * -in[1] - dy * -in[0];
    boolean aside = out[0] * dx + out[1] * dy > 0 && StrictMath.abs(fromOut) < ALONG_WALL
        || -(in[0] * dx + in[1] * dy) > 0 && StrictMath.abs(toIn) < ALONG_WALL;
    boolean convex = in[0] * out[1] - in[1] * out[0] > 0;
    return !aside && (convex ? fromOut > 0 && toIn > 0 : fromOut > 0 || toIn > 0);
  }

  /** The unit vector of a wall. */
  double[] wall(int i) {
    double dx = xs[next[i]] - xs[i];
    double dy = ys[next[i]] - ys[i];
    double length = StrictMath.sqrt(dx * dx + dy * dy);
    return new double[] {dx / length, dy / length};
  }

  /** How far it is from a place to the first wall in a direction, walls at the place itself not counted; infinite if there is none. */
  double reach(double x, double y, double dx, double dy) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < xs.length; i++) {
      least = Math.min(least, meeting(i, x, y, dx, dy));
    }
    return least;
  }

  /** How far it is to a wall, taken a touch longer than it is; infinite if the line misses it, runs along it or starts on it. */
  double meeting(int i, double x, double y, double dx, double dy) {
    double fromX = xs[i] - x;
    double fromY = ys[i] - y;
    double wx = xs[next[i]] - xs[i];
    double wy = ys[next[i]] - ys[i];
    double length = StrictMath.sqrt(wx * wx + wy * wy);
    double slope = dx * wy - dy * wx;
    double least = Double.POSITIVE_INFINITY;
    double aside = dx * fromY - dy * fromX;
    if (StrictMath.abs(aside) < TOUCH / 2) { // the corner itself lies on the line
      double t = dx * fromX + dy * fromY;
      least = t > TOUCH ? t : least;
    }
    if (StrictMath.abs(slope) > 1e-9 * length) {
      double t = (fromX * wy - fromY * wx) / slope;
      double share = -aside / slope;
      if (t > TOUCH && share >= 0 && share <= 1) {
        least = Math.min(least, t);
      }
    }
    return least;
  }

  /** Tells whether a place that is on no wall lies on the floor. */
  boolean isFloor(double x, double y) {
    boolean inside = false;
    for (int i = 0; i < xs.length; i++) {
      int j = next[i];
      if (ys[i] > y != ys[j] > y && x < xs[i] + (y - ys[i]) * ((xs[j] - xs[i]) / (ys[j] - ys[i]))) {
        inside = !inside;
      }
    }
    return inside;
  }

  /** The ring that a place lies on, -1 if none. */
  int ringAt(double x, double y) {
    for (int i = 0; i < xs.length; i++) {
      if (isOnWall(i, x, y)) {
        return ring[i];
      }
    }
    return -1;
  }

  /** Tells whether a line from wall to wall has both ends on one wall. */
  boolean runsAlongWall(double ax, double ay, double bx, double by) {
    for (int i = 0; i < xs.length; i++) {
      if (isOnWall(i, ax, ay) && isOnWall(i, bx, by)) {
        return true;
      }
    }
    return false;
  }

  private boolean isOnWall(int i, double x, double y) {
    double[] wall = wall(i);
    double px = x - xs[i];
    double py = y - ys[i];
    double ex = xs[next[i]] - xs[i];
    double ey = ys[next[i]] - ys[i];
    double t = px * wall[0] + py * wall[1];
    return t > -TOUCH && t < StrictMath.sqrt(ex * ex + ey * ey) + TOUCH && StrictMath.abs(px * wall[1] - py * wall[0]) < TOUCH;
  }
}
