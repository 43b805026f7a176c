package floorcalc.audit;

import floorcalc.outline.Outline;
import floorcalc.outline.Ring;
import floorcalc.plan.RoomBreak;
import java.util.Arrays;
import java.util.List;

/**
 * What the floor of a room keeps away from: a list of straight fences with the floor on their left, each with the
 * distance at which the laid area ends. Most are walls with the expansion gap. At a reflex corner the edges of the laid
 * area run on beyond the ends of the two walls until they meet, and where that would be further than
 * {@value #MITRE} gaps from the corner a fence of no length cuts the tip off square.
 * <p>
 * The expansion breaks of a room are further fences, one along each side of their middle line, with half the gap of the break.
 */
final class Fences {
  /** How far from a reflex corner the laid area may be mitred, in gaps; see the expansion gap's own definition. */
  static final double MITRE = 10;

  /** How far past its true end an edge may reach along a fence, in nanometres; across the fence only rounding is allowed. */
  private static final double ALONG = 1000;

  double[] ax = new double[0];
  double[] ay = new double[0];
  double[] bx = new double[0];
  double[] by = new double[0];
  double[] ux = new double[0];
  double[] uy = new double[0];
  double[] length = new double[0];
  /** At what distance from the fence the laid area ends. */
  double[] distance = new double[0];
  /** How far the edge along the fence may reach beyond the fence's start and end. */
  double[] beyondStart = new double[0];
  double[] beyondEnd = new double[0];
  String[] name = new String[0];
  /** The fences that are walls come first. */
  int walls;
  /** The sides of breaks follow, two by two; those behind only cut tips off and close wide breaks. */
  int lines;
  int size;
  /** The greatest distance from any wall or break. */
  double farthest;

  static Fences of(Outline room, List<RoomBreak> breaks, long originX, long originY, double gap) {
    Fences fences = new Fences();
    int[] ringEnd = new int[room.voids().size() + 1];
    fences.addWalls(room.shell(), "", originX, originY, gap);
    ringEnd[0] = fences.size;
    for (int v = 0; v < room.voids().size(); v++) {
      fences.addWalls(room.voids().get(v), " of void " + (v + 1), originX, originY, gap);
      ringEnd[v + 1] = fences.size;
    }
    fences.walls = fences.size;
    fences.farthest = gap;
    for (int i = 0; i < breaks.size(); i++) {
      fences.addBreak(breaks.get(i), i, originX, originY);
    }
    fences.lines = fences.size;
    for (int line = fences.walls; line < fences.lines; line++) {
      if (fences.distance[line] > gap) {
        fences.addEndOfBreak(line);
      }
    }
    int start = 0;
    for (int end : ringEnd) {
      for (int i = start; i < end; i++) {
        fences.addCorner(i == start ? end - 1 : i - 1, i, gap);
      }
      start = end;
    }
    return fences;
  }

  private void addWalls(Ring ring, String of, long originX, long originY, double gap) {
    int n = ring.size();
    for (int i = 0; i < n; i++) {
      int j = i + 1 == n ? 0 : i + 1;
      if (ring.x(i) != ring.x(j) || ring.y(i) != ring.y(j)) {
        add(ring.x(i) - originX, ring.y(i) - originY, ring.x(j) - originX, ring.y(j) - originY, gap,
            "wall " + (i + 1) + of);
      }
    }
  }

  private void addBreak(RoomBreak line, int number, long originX, long originY) {
    double ax0 = line.line().from().xNanometres() - originX;
    double ay0 = line.line().from().yNanometres() - originY;
    double bx0 = line.line().to().xNanometres() - originX;
    double by0 = line.line().to().yNanometres() - originY;
    double half = line.gap().toNanometres() / 2.0;
    String itsName = "break " + (number + 1);
    add(ax0, ay0, bx0, by0, half, itsName);
    add(bx0, by0, ax0, ay0, half, itsName);
    farthest = Math.max(farthest, half);
  }

  /** A break wider than two gaps ends square where its line ends: its end may border on the floor. */
  private void addEndOfBreak(int line) {
    double half = distance[line];
    double x = bx[line];
    double y = by[line];
    add(x - half * uy[line], y + half * ux[line], x + half * uy[line], y - half * ux[line], 0, "the end of " + name[line]);
  }

  private int add(double px, double py, double qx, double qy, double itsDistance, String itsName) {
    if (size == ax.length) {
      grow(Math.max(16, 2 * size));
    }
    ax[size] = px;
    ay[size] = py;
    bx[size] = qx;
    by[size] = qy;
    double dx = qx - px;
    double dy = qy - py;
    length[size] = Math.sqrt(dx * dx + dy * dy);
    ux[size] = dx / length[size];
    uy[size] = dy / length[size];
    distance[size] = itsDistance;
    beyondStart[size] = ALONG;
    beyondEnd[size] = ALONG;
    name[size] = itsName;
    return size++;
  }

  private void grow(int room) {
    ax = Arrays.copyOf(ax, room);
    ay = Arrays.copyOf(ay, room);
    bx = Arrays.copyOf(bx, room);
    by = Arrays.copyOf(by, room);
    ux = Arrays.copyOf(ux, room);
    uy = Arrays.copyOf(uy, room);
    length = Arrays.copyOf(length, room);
    distance = Arrays.copyOf(distance, room);
    beyondStart = Arrays.copyOf(beyondStart, room);
    beyondEnd = Arrays.copyOf(beyondEnd, room);
    name = Arrays.copyOf(name, room);
  }

  /** Lets the edges along two walls run on where they meet at a reflex corner. */
  private void addCorner(int in, int out, double gap) {
    double sine = ux[in] * uy[out] - uy[in] * ux[out];
    double cosine = ux[in] * ux[out] + uy[in] * uy[out];
    // Walls almost in one line meet at a place along them that rounding moves far.
    double slack = Math.min(1e6, 3 * BayFrame.ROUNDING / Math.max(1e-9, Math.abs(sine)));
    beyondEnd[in] += slack;
    beyondStart[out] += slack;
    if (sine >= 0 && !(cosine < 0 && sine == 0)) {
      return;
    }
    double half = Math.sqrt(Math.max(0, (1 + cosine) / 2));
    double halfSine = Math.sqrt(Math.max(0, (1 - cosine) / 2));
    double reach = half * MITRE >= 1 ? gap * halfSine / half : gap * (MITRE - half) / halfSine;
    beyondEnd[in] += reach;
    beyondStart[out] += reach;
    if (half * MITRE < 1) {
      // The bisector points from the corner to the tip; the floor lies beyond the cut.
      double bisectorX = (ux[in] - ux[out]) / (2 * halfSine);
      double bisectorY = (uy[in] - uy[out]) / (2 * halfSine);
      double side = gap * (1 - MITRE * half) / halfSine + ALONG;
      int cut = add(ax[out], ay[out], ax[out] + bisectorY, ay[out] - bisectorX, MITRE * gap, "the tip of " + name[out]);
      bx[cut] = ax[cut];
      by[cut] = ay[cut];
      ux[cut] = bisectorY;
      uy[cut] = -bisectorX;
      length[cut] = 0;
      beyondStart[cut] = side;
      beyondEnd[cut] = side;
    }
  }

  boolean isBreak(int fence) {
    return fence >= walls && fence < lines;
  }

  /** The other side of the same break. */
  int twin(int line) {
    return walls + (line - walls ^ 1);
  }

  /** Whether a point lies nearer to a wall than its gap, or in the strip of a break. */
  boolean isTooNear(int fence, double x, double y, double rounding) {
    if (isBreak(fence)) {
      double along = along(fence, x, y);
      return along > rounding && along < length[fence] - rounding
          && Math.abs(left(fence, x, y)) < distance[fence] - rounding;
    }
    return distanceTo(fence, x, y) < distance[fence] - rounding;
  }

  /** The distance of a point from a wall or fence. */
  double distanceTo(int fence, double x, double y) {
    double along = (x - ax[fence]) * ux[fence] + (y - ay[fence]) * uy[fence];
    double t = Math.min(Math.max(along, 0), length[fence]);
    double dx = x - (ax[fence] + t * ux[fence]);
    double dy = y - (ay[fence] + t * uy[fence]);
    return Math.sqrt(dx * dx + dy * dy);
  }

  /** How far a point lies along a fence from its start. */
  double along(int fence, double x, double y) {
    return (x - ax[fence]) * ux[fence] + (y - ay[fence]) * uy[fence];
  }

  /** How far a point lies to the left of a fence's line. */
  double left(int fence, double x, double y) {
    return (y - ay[fence]) * ux[fence] - (x - ax[fence]) * uy[fence];
  }
}
