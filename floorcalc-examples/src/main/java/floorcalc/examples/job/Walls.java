package floorcalc.examples.job;

import floorcalc.measure.Length;
import floorcalc.outline.Outline;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import java.util.ArrayList;
import java.util.List;

/**
 * Where points lie by the walls of a room. Distances are good to a hundredth of a nanometre within 10 km; they only
 * decide whether an entry is refused.
 */
final class Walls {
  private final List<Ring> rings = new ArrayList<>();

  Walls(Outline outline) {
    rings.add(outline.shell());
    rings.addAll(outline.voids());
  }

  /** How far a point is from the nearest wall. */
  Length toNearest(Point point) {
    double least = Double.MAX_VALUE;
    for (Ring ring : rings) {
      for (int i = 0; i < ring.size(); i++) {
        least = Math.min(least, distance(ring, i, point));
      }
    }
    return Length.ofNanometres((long) StrictMath.rint(least));
  }

  /** The point itself if it is farther than a distance from every wall; else the nearest corner or place of a wall. */
  Point onWall(Point point, Length within) {
    Point nearest = point;
    double least = within.toNanometres();
    for (Ring ring : rings) {
      for (int i = 0; i < ring.size(); i++) {
        double away = distance(ring, i, point);
        if (away <= least) {
          least = away;
          nearest = nearest(ring, i, point, within);
        }
      }
    }
    return nearest;
  }

  private static Point nearest(Ring ring, int wall, Point point, Length within) {
    int next = (wall + 1) % ring.size();
    for (int corner : new int[] {wall, next}) {
      Point place = Point.ofNanometres(ring.x(corner), ring.y(corner));
      if (place.distanceTo(point).compareTo(within) <= 0) {
        return place;
      }
    }
    double dx = (double) ring.x(next) - ring.x(wall);
    double dy = (double) ring.y(next) - ring.y(wall);
    double share = ((point.xNanometres() - ring.x(wall)) * dx + (point.yNanometres() - ring.y(wall)) * dy) / (dx * dx + dy * dy);
    return Point.ofNanometres(ring.x(wall) + Math.round(share * dx), ring.y(wall) + Math.round(share * dy));
  }

  /** Whether one wall passes both points within a distance. */
  boolean oneWallPasses(Point from, Point to, Length within) {
    for (Ring ring : rings) {
      for (int i = 0; i < ring.size(); i++) {
        if (distance(ring, i, from) <= within.toNanometres() && distance(ring, i, to) <= within.toNanometres()) {
          return true;
        }
      }
    }
    return false;
  }

  /** Whether a point is on the floor: inside the shell and outside all voids. */
  boolean onFloor(Point point) {
    if (!inside(rings.get(0), point)) {
      return false;
    }
    return rings.stream().skip(1).noneMatch(ring -> inside(ring, point));
  }

  private static boolean inside(Ring ring, Point point) {
    boolean inside = false;
    for (int i = 0; i < ring.size(); i++) {
      int j = (i + 1) % ring.size();
      double ay = ring.y(i) - point.yNanometres();
      double by = ring.y(j) - point.yNanometres();
      if (ay > 0 != by > 0) {
        double ax = ring.x(i) - point.xNanometres();
        double bx = ring.x(j) - point.xNanometres();
        double cross = ax * by - bx * ay;
        inside ^= cross > 0 == by > ay;
      }
    }
    return inside;
  }

  private static double distance(Ring ring, int wall, Point point) {
    int next = (wall + 1) % ring.size();
    double dx = ring.x(next) - ring.x(wall);
    double dy = ring.y(next) - ring.y(wall);
    double px = point.xNanometres() - ring.x(wall);
    double py = point.yNanometres() - ring.y(wall);
    double square = dx * dx + dy * dy;
    double along = px * dx + py * dy;
    if (along <= 0 || square == 0) {
      return StrictMath.sqrt(px * px + py * py);
    }
    if (along >= square) {
      double qx = px - dx;
      double qy = py - dy;
      return StrictMath.sqrt(qx * qx + qy * qy);
    }
    return StrictMath.abs(px * dy - py * dx) / StrictMath.sqrt(square);
  }
}
