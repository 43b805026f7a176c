package floorcalc.bays;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * A ring of corners, its convex hull, and how deep each inner corner lies behind the line across its recess. Coordinates are whole
 * nanometres as {@code double}, near enough to the origin to be exact.
 */
final class Recesses {
  /** A corner as near to the line between its neighbours bends nothing; corners that are made are rounded to whole nanometres. */
  private static final double STRAIGHT = 5;
  private static final int FEW = 60;

  private final double[] xs;
  private final double[] ys;
  private final int[] hull;
  private final int[] before;
  private final int[] after;

  /** Takes the corners of a ring, counter-clockwise if depths are wanted. */
  Recesses(double[] xs, double[] ys) {
    this.xs = xs;
    this.ys = ys;
    this.hull = hull(xs, ys);
    int n = xs.length;
    boolean[] isOn = new boolean[n];
    for (int corner : hull) {
      isOn[corner] = true;
    }
    before = new int[n];
    after = new int[n];
    int last = hull[0];
    for (int k = 0; k < n; k++) {
      int i = (hull[0] + k) % n;
      before[i] = last;
      last = isOn[i] ? i : last;
    }
    for (int k = n; k > 0; k--) {
      int i = (hull[0] + k) % n;
      after[i] = last = k == n ? i : last;
      last = isOn[i] ? i : last;
    }
  }

  /** A corner of the hull. */
  int start() {
    return hull[0];
  }

  /** Tells whether the ring turns to the right at a corner. */
  boolean isInner(int i) {
    int n = xs.length;
    int from = (i + n - 1) % n;
    int to = (i + 1) % n;
    return cross(from, i, to) < -STRAIGHT * distance(from, to);
  }

  /** The last corner of the hull before a corner of a recess. */
  int before(int i) {
    return before[i];
  }

  /** The first corner of the hull after a corner of a recess. */
  int after(int i) {
    return after[i];
  }

  /** The distance of a corner from the line across its recess; 0 if the corner is on the hull. */
  double depth(int i) {
    int from = before[i];
    int to = after[i];
    return from == to ? 0 : StrictMath.abs(cross(from, to, i)) / distance(from, to);
  }

  /** How near a corner comes to the edge of the hull anywhere. A ring that has more round this corner cannot be nearer. */
  double toHull(int i) {
    double least = Double.MAX_VALUE;
    for (int k = 0; k < hull.length; k++) {
      int from = hull[k];
      int to = hull[(k + 1) % hull.length];
      least = Math.min(least, StrictMath.abs(cross(from, to, i)) / distance(from, to));
    }
    return least;
  }

  /** The least width between two parallels that hold the ring: one of them lies along an edge of the hull. */
  double leastWidth() {
    int h = hull.length;
    if (h < 3) {
      return 0;
    }
    double least = Double.MAX_VALUE;
    int far = 1;
    for (int k = 0; k < h; k++) {
      int from = hull[k];
      int to = hull[(k + 1) % h];
      while (cross(from, to, hull[(far + 1) % h]) > cross(from, to, hull[far])) {
        far = (far + 1) % h;
      }
      least = Math.min(least, cross(from, to, hull[far]) / distance(from, to));
    }
    return least;
  }

  private double cross(int a, int b, int c) {
    return (xs[b] - xs[a]) * (ys[c] - ys[a]) - (ys[b] - ys[a]) * (xs[c] - xs[a]);
  }

  double distance(int a, int b) {
    double dx = xs[b] - xs[a];
    double dy = ys[b] - ys[a];
    return StrictMath.sqrt(dx * dx + dy * dy);
  }

  /** The corners from the left to the right, of those above each other the lowest first. */
  private static int[] order(double[] px, double[] py) {
    int n = px.length;
    if (n > FEW) {
      return IntStream.range(0, n).boxed().sorted((a, b) -> compare(px, py, a, b)).mapToInt(Integer::intValue).toArray();
    }
    int[] order = new int[n]; // sorted by insertion: a search judges very many small rings
    for (int i = 0; i < n; i++) {
      int k = i;
      for (; k > 0 && compare(px, py, order[k - 1], i) > 0; k--) {
        order[k] = order[k - 1];
      }
      order[k] = i;
    }
    return order;
  }

  private static int compare(double[] px, double[] py, int a, int b) {
    return px[a] != px[b] ? Double.compare(px[a], px[b]) : Double.compare(py[a], py[b]);
  }

  /** The corners of the hull, counter-clockwise, none on a straight side. */
  private int[] hull(double[] px, double[] py) {
    int[] order = order(px, py);
    int[] stack = new int[2 * order.length + 1];
    int size = 0;
    for (int pass = 0; pass < 2; pass++) {
      int base = size;
      for (int k = 0; k < order.length; k++) {
        int p = order[pass == 0 ? k : order.length - 1 - k];
        while (size >= base + 2 && cross(stack[size - 2], stack[size - 1], p) <= 0) {
          size--;
        }
        stack[size++] = p;
      }
      size--;
    }
    return Arrays.copyOf(stack, Math.max(1, size));
  }
}
