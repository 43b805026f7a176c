package floorcalc.audit;

import floorcalc.outline.Outline;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import floorcalc.plan.Bay;
import floorcalc.plan.Room;
import floorcalc.plan.RoomBreak;
import java.util.ArrayList;
import java.util.List;

/**
 * Checks that the laid areas of a room are the room less its gap: nothing nearer to a wall than the gap, every edge of a
 * laid area along some wall at just the gap, and along every wall some edge wherever nothing else is in the way. A part of
 * the floor cannot be left out then: it would have an edge of its own along some wall.
 */
final class GapCheck {
  /** Widens what is in the way of an edge, in nanometres: a neck hardly wider than two gaps may be left out. */
  private static final double WIDER = 2100;
  /** An edge of a laid area across a neck that is left out is at most so long, in nanometres: it runs along no wall. */
  private static final double ACROSS = 3000;
  /**
   * How far a corner of the laid area of a turned bay may lie from its place, in nanometres: the planner may put walls in
   * line with the boards.
   */
  private static final double IN_LINE = 9;
  /** So long a stretch of wall without floor along it is missed, in nanometres. */
  private static final double MISSED = 100_000;

  private final Room room;
  private final Fences fences;
  private final Bands bands;
  private final long originX;
  private final long originY;
  private final double gap;
  private final Breaches breaches;
  /** How far the corners of the bay that is looked at, and of all bays so far, may lie from their places. */
  private double rounding = BayFrame.ROUNDING;
  private double mostRounding = BayFrame.ROUNDING;
  /** For each wall where laid edges run along it. */
  private final Spans[] along;
  private final Segments edges = new Segments();

  private GapCheck(Room room, List<RoomBreak> lines, double gap, Breaches breaches) {
    this.room = room;
    this.gap = gap;
    this.breaches = breaches;
    this.originX = room.outline().shell().x(0);
    this.originY = room.outline().shell().y(0);
    this.fences = Fences.of(room.outline(), lines, originX, originY, gap);
    this.bands = new Bands(fences.ay, fences.by, fences.size);
    this.along = new Spans[fences.size];
    for (int i = 0; i < fences.size; i++) {
      along[i] = new Spans();
    }
  }

  /**
   * Checks the bays of a room.
   *
   * @param lines the breaks between them
   * @return whether a part of the room that can be laid is in no bay
   */
  static boolean check(Room room, List<RoomBreak> lines, List<Bay> bays, double gap, Breaches breaches) {
    GapCheck check = new GapCheck(room, lines, gap, breaches);
    for (Bay bay : bays) {
      List<Ring> rings = rings(bay.laid());
      if (rings.stream().allMatch(ring -> ring.size() >= 3 && BayFrame.inRange(ring))) {
        check.rounding = BayFrame.of(bay.direction(), bay.laid().shell()).isExact() ? BayFrame.ROUNDING : IN_LINE;
        check.mostRounding = Math.max(check.mostRounding, check.rounding);
        for (Ring ring : rings) {
          check.addEdges(ring, bay);
        }
        check.checkVoids(bay);
      }
    }
    check.checkCorners(bays);
    return check.findMissing(bays.isEmpty());
  }

  static List<Ring> rings(Outline outline) {
    List<Ring> rings = new ArrayList<>();
    rings.add(outline.shell());
    rings.addAll(outline.voids());
    return rings;
  }

  private void addEdges(Ring ring, Bay bay) {
    int n = ring.size();
    for (int i = 0; i < n; i++) {
      int j = i + 1 == n ? 0 : i + 1;
      double px = ring.x(i) - originX;
      double py = ring.y(i) - originY;
      double qx = ring.x(j) - originX;
      double qy = ring.y(j) - originY;
      edges.add(px, py, qx, qy, 0, i);
      checkDistance(px, py, bay);
      checkAlong(px, py, qx, qy, bay);
    }
    if (gap > 2 * BayFrame.ROUNDING && !isInside(rings(room.outline()), ring.x(0), ring.y(0))) {
      breaches.add(Code.LAID_TOO_NEAR, bay.bay(), "corner " + Point.ofNanometres(ring.x(0), ring.y(0))
          + " of the laid area of " + bay.bay() + " lies outside room '" + room.name() + "'");
    }
  }

  private void checkDistance(double x, double y, Bay bay) {
    double reach = fences.farthest + rounding;
    for (int k = bands.first(y - reach); k < bands.last(y + reach); k++) {
      int line = bands.member(k);
      if (line < fences.lines && fences.isTooNear(line, x, y, rounding)) {
        breaches.add(Code.LAID_TOO_NEAR, bay.bay(), "corner " + place(x, y) + " of the laid area of " + bay.bay()
            + " lies " + Words.mm(fences.distanceTo(line, x, y)) + " from " + fences.name[line] + " of room '" + room.name()
            + "'; the gap is " + Words.mm(fences.distance[line]));
        return;
      }
    }
  }

  private String place(double x, double y) {
    return Words.point(originX + x, originY + y);
  }

  /** Finds the walls that an edge of a laid area runs along; they must account for all of it. */
  private void checkAlong(double px, double py, double qx, double qy, Bay bay) {
    double length = Math.sqrt((qx - px) * (qx - px) + (qy - py) * (qy - py));
    if (length <= 2 * BayFrame.ROUNDING) {
      return;
    }
    Spans explained = new Spans();
    double reach = fences.farthest + WIDER;
    for (int k = bands.first(Math.min(py, qy) - reach); k < bands.last(Math.max(py, qy) + reach); k++) {
      match(bands.member(k), px, py, qx, qy, length, explained);
    }
    double[] left = explained.longestGap(0, length);
    if (left[1] - left[0] > ACROSS) {
      for (int fence = 0; fence < fences.size; fence++) {
        match(fence, px, py, qx, qy, length, explained);
      }
      left = explained.longestGap(0, length);
    }
    if (left[1] - left[0] > ACROSS) {
      double middle = (left[0] + left[1]) / 2 / length;
      breaches.add(Code.LAID_ASTRAY, bay.bay(), "the edge of the laid area of " + bay.bay() + " from " + place(px, py)
          + " to " + place(qx, qy) + " runs along no wall"
          + (fences.lines > fences.walls ? " or break" : "") + " of room '" + room.name() + "' at the gap of " + Words.mm(gap)
          + " near " + place(px + middle * (qx - px), py + middle * (qy - py)));
    }
  }

  private void match(int fence, double px, double py, double qx, double qy, double length, Spans explained) {
    double from = fences.along(fence, px, py);
    double to = fences.along(fence, qx, qy);
    double start = Math.max(from, -fences.beyondStart[fence]);
    double end = Math.min(to, fences.length[fence] + fences.beyondEnd[fence]);
    if (end <= start) {
      return;
    }
    double leftP = fences.left(fence, px, py) - fences.distance[fence];
    double leftQ = fences.left(fence, qx, qy) - fences.distance[fence];
    double slope = (leftQ - leftP) / (to - from);
    if (Math.abs(leftP + (start - from) * slope) <= rounding
        && Math.abs(leftP + (end - from) * slope) <= rounding) {
      double stretch = length / (to - from);
      explained.add((start - from) * stretch, (end - from) * stretch);
      if (fence < fences.lines && !alreadyNoted(fence, px, py)) {
        along[fence].add(Math.max(0, start), Math.min(fences.length[fence], end));
      }
    }
  }

  private final List<Integer> noted = new ArrayList<>();
  private double notedX = Double.NaN;
  private double notedY = Double.NaN;

  /** Whether a wall has been matched with the edge that starts here: a wall may come up several times. */
  private boolean alreadyNoted(int fence, double px, double py) {
    if (px != notedX || py != notedY) {
      noted.clear();
      notedX = px;
      notedY = py;
    }
    if (noted.contains(fence)) {
      return true;
    }
    noted.add(fence);
    return false;
  }

  /** A corner of a wall must not come nearer to an edge of a laid area either. */
  private void checkCorners(List<Bay> bays) {
    if (bays.isEmpty() || edges.size == 0) {
      return;
    }
    Bands near = new Bands(edges.y0, edges.y1, edges.size);
    double reach = gap + mostRounding;
    for (int wall = 0; wall < fences.walls; wall++) {
      double x = fences.ax[wall];
      double y = fences.ay[wall];
      for (int k = near.first(y - reach); k < near.last(y + reach); k++) {
        int edge = near.member(k);
        double distance = distance(edge, x, y);
        if (distance < gap - mostRounding) {
          breaches.add(Code.LAID_TOO_NEAR, bays.get(0).bay(), "the start " + place(x, y) + " of " + fences.name[wall]
              + " of room '" + room.name() + "' lies " + Words.mm(distance) + " from an edge of a laid area; the gap is "
              + Words.mm(gap));
          break;
        }
      }
    }
  }

  private double distance(int edge, double x, double y) {
    double dx = edges.x1[edge] - edges.x0[edge];
    double dy = edges.y1[edge] - edges.y0[edge];
    double square = dx * dx + dy * dy;
    double t = square == 0 ? 0 : ((x - edges.x0[edge]) * dx + (y - edges.y0[edge]) * dy) / square;
    t = Math.min(Math.max(t, 0), 1);
    double ex = x - edges.x0[edge] - t * dx;
    double ey = y - edges.y0[edge] - t * dy;
    return Math.sqrt(ex * ex + ey * ey);
  }

  /** No void may lie within a laid area. */
  private void checkVoids(Bay bay) {
    for (int v = 0; v < room.outline().voids().size() && gap > 2 * BayFrame.ROUNDING; v++) {
      Ring ring = room.outline().voids().get(v);
      if (ring.size() > 0 && isInside(rings(bay.laid()), ring.x(0), ring.y(0))) {
        breaches.add(Code.LAID_TOO_NEAR, bay.bay(), "the laid area of " + bay.bay() + " covers void " + (v + 1)
            + " of room '" + room.name() + "' at " + Point.ofNanometres(ring.x(0), ring.y(0)));
      }
    }
  }

  /** Whether a ray from a point to the right crosses the rings an odd number of times. */
  private static boolean isInside(List<Ring> rings, long x, long y) {
    boolean inside = false;
    for (Ring ring : rings) {
      for (int i = 0, j = ring.size() - 1; i < ring.size(); j = i++) {
        if (ring.y(i) > y != ring.y(j) > y) {
          double part = (double) (y - ring.y(i)) / (ring.y(j) - ring.y(i));
          inside ^= x < ring.x(i) + part * (ring.x(j) - ring.x(i));
        }
      }
    }
    return inside;
  }

  /** Looks along every wall for floor that is in no bay, and for floor that is in two. */
  private boolean findMissing(boolean none) {
    boolean missing = false;
    for (int wall = 0; wall < fences.lines; wall++) {
      double[] twice = along[wall].longestOverlap();
      if (twice[1] - twice[0] > MISSED) {
        breaches.add(Code.BAYS_OVERLAP, room.name(), "two edges of laid areas of room '" + room.name()
            + "' run along the same stretch of " + fences.name[wall]);
      }
      Spans taken = along[wall];
      InTheWay.of(fences, bands, wall, WIDER).addTo(taken);
      double[] free = taken.longestGap(0, fences.length[wall]);
      if (free[1] - free[0] > MISSED) {
        missing = true;
        if (none) {
          return true;
        }
        breaches.add(Code.LAID_MISSING, room.name(), "no laid area runs along " + fences.name[wall] + " of room '"
            + room.name() + "' from " + Words.mm(free[0]) + " to " + Words.mm(free[1])
            + ", though nothing there is in its way");
      }
    }
    return missing;
  }
}
