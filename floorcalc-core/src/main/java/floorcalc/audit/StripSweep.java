package floorcalc.audit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Compares the pieces of a row with the laid area in the row's strip. A vertical line is swept over the strip from left
 * to right. Between two places where an edge begins or ends, the line always crosses the same edges; they cut the strip
 * into trapezoids, and in each of them as many pieces must lie as the laid area has layers: one inside, none outside.
 * <p>
 * A trapezoid that breaks this is a defect unless its width, the least distance of two parallel lines that hold it, is
 * within rounding. Where all coordinates of the frame are whole and the trapezoid is a rectangle there is no rounding.
 */
final class StripSweep {
  /** So much work per edge, and so many edges one above the other, and the sweep gives up: this is no row of boards. */
  private static final int PATIENCE = 200;
  private static final int HIGHEST = 2000;
  private static final int MOST_DEFECTS = 1000;
  private static final int DEEPEST = 24;

  final List<Defect> defects = new ArrayList<>();
  /** Pieces of the row that meet along an edge that does not stand upright: pairs, one after the other. */
  final List<int[]> sawnContacts = new ArrayList<>();
  /** How many edges were looked at, over all rows. */
  long visits;
  boolean gaveUp;

  private Segments edges;
  private boolean exact;
  private double slack;
  private double[] slope = new double[0];
  private int[] from = new int[0];
  private int[] to = new int[0];
  private int[] wind = new int[0];
  private int[] active = new int[16];
  private double[] ya = new double[16];
  private double[] yb = new double[16];
  private int live;
  private double[] starts = new double[0];
  private double[] ends = new double[0];
  private int places;
  private int near;

  void run(Segments segments, int pieces, BayFrame frame) {
    edges = segments;
    exact = frame.isExact();
    slack = frame.slack();
    defects.clear();
    sawnContacts.clear();
    gaveUp = false;
    int n = edges.size;
    if (wind.length < pieces) {
      wind = new int[pieces];
    }
    findPlaces(n);
    int[] head = sortByStart(n);
    live = 0;
    long budget = visits + (long) PATIENCE * (n + 16);
    for (int k = 0; k + 1 < places; k++) {
      int kept = 0;
      for (int j = 0; j < live; j++) {
        if (to[active[j]] > k) {
          active[kept++] = active[j];
        }
      }
      live = kept;
      for (int h = head[k]; h < head[k + 1]; h++) {
        enter(order[h]);
      }
      if (visits > budget || live > HIGHEST) {
        gaveUp = true;
        return;
      }
      compare(ends[k], starts[k + 1], 0);
    }
  }

  private int[] order = new int[0];

  /** Gathers the ends of all edges into places; ends that differ by rounding alone are one place. */
  private void findPlaces(int n) {
    double[] all = new double[2 * n];
    System.arraycopy(edges.x0, 0, all, 0, n);
    System.arraycopy(edges.x1, 0, all, n, n);
    Arrays.sort(all);
    if (starts.length < all.length) {
      starts = new double[all.length];
      ends = new double[all.length];
    }
    places = 0;
    for (double x : all) {
      if (places == 0 || x - starts[places - 1] > slack) {
        starts[places++] = x;
      }
      ends[places - 1] = x;
    }
  }

  /** Sorts the edges by the place where they begin and leaves out those that begin and end at one place. */
  private int[] sortByStart(int n) {
    if (from.length < n) {
      from = new int[n];
      to = new int[n];
      slope = new double[n];
      order = new int[n];
    }
    int[] head = new int[places + 1];
    near = 0;
    for (int i = 0; i < n; i++) {
      from[i] = place(edges.x0[i]);
      to[i] = place(edges.x1[i]);
      slope[i] = edges.y0[i] == edges.y1[i] ? 0 : (edges.y1[i] - edges.y0[i]) / (edges.x1[i] - edges.x0[i]);
      if (from[i] < to[i]) {
        head[from[i] + 1]++;
      }
    }
    for (int k = 0; k < places; k++) {
      head[k + 1] += head[k];
    }
    int[] next = Arrays.copyOf(head, head.length);
    for (int i = 0; i < n; i++) {
      if (from[i] < to[i]) {
        order[next[from[i]]++] = i;
      }
    }
    return head;
  }

  /** Edges mostly come in the order of their places, so the one before is a good guess. */
  private int place(double x) {
    for (int guess = near; guess < Math.min(places, near + 3); guess++) {
      if (starts[guess] <= x && (guess + 1 == places || x < starts[guess + 1])) {
        near = guess;
        return guess;
      }
    }
    near = search(x);
    return near;
  }

  private int search(double x) {
    int found = Arrays.binarySearch(starts, 0, places, x);
    return found >= 0 ? found : -found - 2;
  }

  private void enter(int edge) {
    if (live == active.length) {
      active = Arrays.copyOf(active, 2 * live);
      ya = new double[2 * live];
      yb = new double[2 * live];
    }
    active[live++] = edge;
  }

  private double heightAt(int edge, double x) {
    return slope[edge] == 0 ? edges.y0[edge] : edges.y0[edge] + (x - edges.x0[edge]) * slope[edge];
  }

  private void compare(double xa, double xb, int depth) {
    if (xb - xa <= slack) {
      return;
    }
    visits += live;
    sortByHeight(xa, xb);
    if (depth < DEEPEST) {
      for (int j = 0; j + 1 < live; j++) {
        double da = ya[j + 1] - ya[j];
        double db = yb[j + 1] - yb[j];
        if (Math.min(da, db) < 0) {
          double across = xa + (xb - xa) * da / (da - db);
          double width = da < 0 ? across - xa : xb - across;
          if (isWide(width, Math.min(da, db), active[j], active[j + 1])) {
            compare(xa, across, depth + 1);
            compare(across, xb, depth + 1);
            return;
          }
        }
      }
    }
    countLayers(xa, xb);
  }

  private void sortByHeight(double xa, double xb) {
    for (int j = 0; j < live; j++) {
      int edge = active[j];
      double a = heightAt(edge, xa);
      double b = heightAt(edge, xb);
      int k = j;
      while (k > 0 && ya[k - 1] + yb[k - 1] > a + b) {
        active[k] = active[k - 1];
        ya[k] = ya[k - 1];
        yb[k] = yb[k - 1];
        k--;
        visits++;
      }
      active[k] = edge;
      ya[k] = a;
      yb[k] = b;
    }
  }

  /** Whether a trapezoid between two edges is wider than rounding explains. */
  private boolean isWide(double width, double height, int below, int above) {
    double h = Math.abs(height);
    // Where a slanted edge meets a row line the place is not whole, and the pieces there are rounded.
    if (exact && slope[below] == 0 && slope[above] == 0 && width == Math.rint(width)) {
      return h > 0 && width > 0;
    }
    return width > BayFrame.ROUNDING && h > rounding(below, above);
  }

  /** How far apart, upright, two edges may be by rounding. */
  private double rounding(int below, int above) {
    double steepest = Math.max(Math.abs(slope[below]), Math.abs(slope[above]));
    return BayFrame.ROUNDING * Math.sqrt(1 + steepest * steepest);
  }

  private void countLayers(double xa, double xb) {
    int laid = 0;
    int layers = 0;
    int odd = 0;
    for (int j = 0; j < live; j++) {
      int edge = active[j];
      int owner = edges.owner[edge];
      if (owner < 0) {
        laid += edges.sign[edge];
      } else {
        odd -= wind[owner] >> 1 == 0 ? 0 : 1;
        wind[owner] += edges.sign[edge];
        layers += edges.sign[edge];
        odd += wind[owner] >> 1 == 0 ? 0 : 1;
      }
      if (j + 1 < live) {
        double da = ya[j + 1] - ya[j];
        double db = yb[j + 1] - yb[j];
        double height = Math.max(Math.abs(da), Math.abs(db));
        if (!isWide(xb - xa, height, edge, active[j + 1])) {
          if (height <= rounding(edge, active[j + 1])) {
            noteContact(edge, active[j + 1], xb - xa);
          }
        } else if (odd > 0 || layers != laid || laid >> 1 != 0) {
          defect(j, laid, layers, odd, xa, xb);
        }
      }
    }
    for (int j = 0; j < live; j++) {
      if (edges.owner[active[j]] >= 0) {
        wind[edges.owner[active[j]]] = 0;
      }
    }
  }

  private void noteContact(int below, int above, double width) {
    int a = edges.owner[below];
    int b = edges.owner[above];
    if (a >= 0 && b >= 0 && a != b && edges.sign[below] != edges.sign[above]
        && width * Math.sqrt(1 + slope[below] * slope[below]) > RowSketch.MEET_ASLANT) {
      int last = sawnContacts.size() - 1;
      if (last < MOST_DEFECTS && (last < 0 || sawnContacts.get(last)[0] != a || sawnContacts.get(last)[1] != b)) {
        sawnContacts.add(new int[] {a, b});
      }
    }
  }

  private void defect(int upToEdge, int laid, int layers, int odd, double xa, double xb) {
    if (defects.size() > MOST_DEFECTS) {
      return;
    }
    visits += upToEdge;
    int first = -1;
    int second = -1;
    for (int j = 0; j <= upToEdge; j++) {
      int owner = edges.owner[active[j]];
      if (owner >= 0 && owner != first && owner != second && (odd > 0 ? wind[owner] >> 1 != 0 : wind[owner] > 0)) {
        if (first < 0) {
          first = owner;
        } else {
          second = owner;
          break;
        }
      }
    }
    Code code = odd > 0 ? Code.PIECE_OUTLINE
        : laid >> 1 != 0 ? Code.LAID_OUTLINE
        : layers > 1 ? Code.OVERLAP
        : layers > laid ? Code.OUTSIDE : Code.HOLE;
    if (code == Code.PIECE_OUTLINE) {
      second = -1;
    }
    if (second >= 0 && second < first) {
      int swap = first;
      first = second;
      second = swap;
    }
    double high = Math.max(0, ya[upToEdge + 1] - ya[upToEdge]);
    double end = Math.max(0, yb[upToEdge + 1] - yb[upToEdge]);
    double area = (high + end) / 2 * (xb - xa);
    double lowest = Math.min(ya[upToEdge], yb[upToEdge]);
    double highest = Math.max(ya[upToEdge + 1], yb[upToEdge + 1]);
    boolean bare = edges.owner[active[upToEdge]] < 0 && edges.owner[active[upToEdge + 1]] < 0;
    for (int k = defects.size() - 1; k >= Math.max(0, defects.size() - 16); k--) {
      Defect known = defects.get(k);
      if (known.code == code && known.first == first && known.second == second && xa - known.right <= 2 * slack) {
        known.add(area, xb, lowest, highest, bare);
        return;
      }
    }
    Defect defect = new Defect(code, first, second, (xa + xb) / 2,
        (ya[upToEdge] + yb[upToEdge] + ya[upToEdge + 1] + yb[upToEdge + 1]) / 4, xa);
    defect.add(area, xb, lowest, highest, bare);
    defects.add(defect);
  }
}
