package floorcalc.audit;

import floorcalc.outline.Outline;
import floorcalc.outline.Ring;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The edges of a laid area, in the frame of its bay, sorted by the strips between row lines that they reach. For one
 * strip it gives the outline of what must be covered: the laid area cut off at both row lines.
 */
final class LaidStrips {
  private final Segments edges = new Segments();
  private final double base;
  private final double pitch;
  private final int rows;
  private final int[] start;
  private final int[] member;
  double yMin = Double.POSITIVE_INFINITY;
  double yMax = Double.NEGATIVE_INFINITY;
  /** The length of all edges, and whether each runs along or across the rows. */
  double perimeter;
  boolean square = true;
  /** Whether the outline turns back on itself, and where; with a width of some nanometres it is only a spur. */
  boolean hasSpike;
  boolean hasSpur;
  double spikeX;
  double spikeY;
  double spurX;
  double spurY;

  private LaidStrips(Outline laid, BayFrame frame, double base, double pitch, int rows) {
    this.base = base;
    this.pitch = pitch;
    this.rows = rows;
    List<Ring> rings = new ArrayList<>();
    rings.add(laid.shell());
    rings.addAll(laid.voids());
    for (Ring ring : rings) {
      read(ring, frame);
    }
    start = new int[rows + 1];
    for (int i = 0; i < edges.size; i++) {
      for (int row = firstRow(i); row <= lastRow(i); row++) {
        start[row + 1]++;
      }
    }
    for (int row = 0; row < rows; row++) {
      start[row + 1] += start[row];
    }
    member = new int[start[rows]];
    int[] next = Arrays.copyOf(start, rows + 1);
    for (int i = 0; i < edges.size; i++) {
      for (int row = firstRow(i); row <= lastRow(i); row++) {
        member[next[row]++] = i;
      }
    }
  }

  static LaidStrips of(Outline laid, BayFrame frame, double base, double pitch, int rows) {
    return new LaidStrips(laid, frame, base, pitch, rows);
  }

  private void read(Ring ring, BayFrame frame) {
    int n = ring.size();
    for (int i = 0; i < n; i++) {
      int j = i + 1 == n ? 0 : i + 1;
      double ax = frame.x(ring.x(i), ring.y(i));
      double ay = frame.y(ring.x(i), ring.y(i));
      double bx = frame.x(ring.x(j), ring.y(j));
      double by = frame.y(ring.x(j), ring.y(j));
      edges.add(ax, ay, bx, by, 0, i);
      yMin = Math.min(yMin, ay);
      yMax = Math.max(yMax, ay);
      perimeter += Math.sqrt((bx - ax) * (bx - ax) + (by - ay) * (by - ay));
      square &= ax == bx || ay == by;
      int k = j + 1 == n ? 0 : j + 1;
      lookForSpur(ax, ay, bx, by, frame.x(ring.x(k), ring.y(k)), frame.y(ring.x(k), ring.y(k)));
      if (turnsBack(ring, i, j, k)) {
        hasSpike = true;
        spikeX = bx;
        spikeY = by;
      }
    }
  }

  /** Whether the outline goes to a corner and comes back the very same way, by whole numbers. */
  private static boolean turnsBack(Ring ring, int i, int j, int k) {
    WideSum product = new WideSum();
    product.addProduct(ring.x(j) - ring.x(i), ring.y(k) - ring.y(j));
    product.subtractProduct(ring.x(k) - ring.x(j), ring.y(j) - ring.y(i));
    if (product.signum() != 0) {
      return false;
    }
    product.addProduct(ring.x(j) - ring.x(i), ring.x(k) - ring.x(j));
    product.addProduct(ring.y(j) - ring.y(i), ring.y(k) - ring.y(j));
    return product.signum() < 0;
  }

  private void lookForSpur(double ax, double ay, double bx, double by, double cx, double cy) {
    double in = Math.sqrt((ax - bx) * (ax - bx) + (ay - by) * (ay - by));
    double out = Math.sqrt((cx - bx) * (cx - bx) + (cy - by) * (cy - by));
    double shorter = Math.min(in, out);
    if (shorter > RowSketch.MEET_ASLANT) {
      double dx = (ax - bx) * (shorter / in) - (cx - bx) * (shorter / out);
      double dy = (ay - by) * (shorter / in) - (cy - by) * (shorter / out);
      if (Math.sqrt(dx * dx + dy * dy) <= BayFrame.ROUNDING) {
        hasSpur = true;
        spurX = bx;
        spurY = by;
      }
    }
  }

  private int firstRow(int edge) {
    double y = Math.min(edges.y0[edge], edges.y1[edge]);
    return (int) Math.max(0, Math.floor((y - base) / pitch) - 1);
  }

  private int lastRow(int edge) {
    double y = Math.max(edges.y0[edge], edges.y1[edge]);
    return (int) Math.min(rows - 1, Math.floor((y - base) / pitch) + 1);
  }

  /**
   * Adds the outline of the laid area within a strip, as edges from left to right: sign +1 if the laid area lies above,
   * -1 if it lies below; owner -1.
   *
   * @return whether the laid area is on the left of its edges throughout, as it must be
   */
  boolean addStrip(int row, double low, double high, double slack, Segments into) {
    Crossings bottom = new Crossings();
    Crossings top = new Crossings();
    for (int k = start[row]; k < start[row + 1]; k++) {
      cut(member[k], low, high, bottom, top, into);
    }
    return bottom.close(low, 1, slack, into) & top.close(high, -1, slack, into);
  }

  /** Adds the outline of the laid area between any two heights, looking at all edges. */
  void addBeyond(double low, double high, double slack, Segments into) {
    Crossings bottom = new Crossings();
    Crossings top = new Crossings();
    for (int i = 0; i < edges.size; i++) {
      cut(i, low, high, bottom, top, into);
    }
    bottom.close(low, 1, slack, into);
    top.close(high, -1, slack, into);
  }

  private void cut(int i, double low, double high, Crossings bottom, Crossings top, Segments into) {
    double ax = edges.x0[i];
    double ay = edges.y0[i];
    double bx = edges.x1[i];
    double by = edges.y1[i];
    if (ay <= low != by <= low) {
      bottom.add(crossing(ax, ay, bx, by, low), by < ay ? 1 : -1);
    }
    if (ay < high != by < high) {
      top.add(crossing(ax, ay, bx, by, high), by < ay ? 1 : -1);
    }
    if (Math.max(ay, by) > low && Math.min(ay, by) < high) {
      double cx = ay < low ? crossing(ax, ay, bx, by, low) : ay > high ? crossing(ax, ay, bx, by, high) : ax;
      double dx = by < low ? crossing(ax, ay, bx, by, low) : by > high ? crossing(ax, ay, bx, by, high) : bx;
      double cy = Math.min(Math.max(ay, low), high);
      double dy = Math.min(Math.max(by, low), high);
      if (dx > cx) {
        into.add(cx, cy, dx, dy, 1, -1);
      } else if (dx < cx) {
        into.add(dx, dy, cx, cy, -1, -1);
      }
    }
  }

  private static double crossing(double ax, double ay, double bx, double by, double y) {
    return ax + (y - ay) / (by - ay) * (bx - ax);
  }

  /** Where edges cross a row line: between an edge going down and one going up, the laid area goes over the line. */
  private static final class Crossings {
    private double[] x = new double[8];
    private int[] turn = new int[8];
    private int size;

    void add(double place, int itsTurn) {
      if (size == x.length) {
        x = Arrays.copyOf(x, 2 * size);
        turn = Arrays.copyOf(turn, 2 * size);
      }
      x[size] = place;
      turn[size++] = itsTurn;
    }

    boolean close(double y, int sign, double slack, Segments into) {
      int[] order = Segments.order(x, size);
      boolean sound = true;
      int inside = 0;
      double from = 0;
      for (int k = 0; k < size; k++) {
        double here = x[order[k]];
        if (inside > 0 && here > from) {
          into.add(from, y, here, y, sign, -1);
        }
        sound &= inside == 0 || inside == 1 || here - from <= slack;
        inside += turn[order[k]];
        from = here;
      }
      return sound && inside == 0;
    }
  }
}
