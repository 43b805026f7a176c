package floorcalc.examples.job;

import floorcalc.measure.Length;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The walls of a room by number, from 1, in the order in which the job gives them. A wall runs straight from corner to
 * corner; its face may stand off that line.
 */
final class NumberedWalls {
  private final Ring ring;
  /** Where in the ring the corners stand. */
  private final int[] corners;
  /** How long each wall was said to be: its end is reached by that figure even if the wall turned out a little shorter. */
  private final List<Length> measured;
  /** 1 if the room lies to the left of its walls, else -1. */
  private final int inside;

  private NumberedWalls(Ring ring, int[] corners, List<Length> measured) {
    this.ring = ring;
    this.corners = corners;
    this.measured = measured;
    this.inside = ring.signedArea().isNegative() ? -1 : 1;
  }

  /** The walls of a ring as it was given, either way round: every corner begins one. */
  static NumberedWalls of(Ring ring) {
    int[] all = IntStream.range(0, ring.size()).toArray();
    return new NumberedWalls(ring, all, IntStream.range(0, ring.size()).mapToObj(ring::wallLength).toList());
  }

  /** The measured walls between some points of a ring, which are in the ring's order. */
  static NumberedWalls of(Ring ring, List<Point> corners, List<Length> measured) {
    int[] places = corners.stream().mapToInt(corner -> ring.corners().indexOf(corner)).toArray();
    return new NumberedWalls(ring, places, measured);
  }

  int count() {
    return corners.length;
  }

  /** The greatest distance along a wall, from its first corner, that is still on it. */
  Length reach(int wall) {
    return measured.get(wall - 1).max(Length.ofNanometres((long) StrictMath.rint(new Line(wall).length)));
  }

  /** The point of a wall's face at a distance along it, or square off that face into the room; to the nearest nanometre. */
  Point at(int wall, Length along, Length off) {
    Line line = new Line(wall);
    double s = Math.min(along.toNanometres(), line.length);
    double t = face(wall, line, s) + inside * (double) off.toNanometres();
    return line.point(s, t);
  }

  /** How far the face stands to the left of the wall's line. */
  private double face(int wall, Line line, double s) {
    List<double[]> face = new ArrayList<>();
    for (int i = corners[wall - 1];; i = (i + 1) % ring.size()) {
      face.add(line.local(i));
      if (i == corners[wall % corners.length]) {
        break;
      }
    }
    for (int i = 1; i < face.size(); i++) {
      double[] a = face.get(i - 1);
      double[] b = face.get(i);
      if (s <= b[0] && b[0] > a[0]) {
        return a[1] + (b[1] - a[1]) * Math.max(0, s - a[0]) / (b[0] - a[0]);
      }
    }
    return 0;
  }

  /** The straight line of a wall, in nanometres. */
  private final class Line {
    private final long x;
    private final long y;
    private final double dx;
    private final double dy;
    private final double length;

    private Line(int wall) {
      int from = corners[wall - 1];
      int to = corners[wall % corners.length];
      x = ring.x(from);
      y = ring.y(from);
      double across = ring.x(to) - x;
      double up = ring.y(to) - y;
      length = StrictMath.sqrt(across * across + up * up);
      dx = across / length;
      dy = up / length;
    }

    /** A corner of the ring: how far along the line and how far to its left. */
    private double[] local(int corner) {
      double px = ring.x(corner) - x;
      double py = ring.y(corner) - y;
      return new double[] {px * dx + py * dy, py * dx - px * dy};
    }

    private Point point(double s, double t) {
      return Point.of(Length.ofNanometres(x + (long) StrictMath.rint(s * dx - t * dy)),
          Length.ofNanometres(y + (long) StrictMath.rint(s * dy + t * dx)));
    }
  }
}
