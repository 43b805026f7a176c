package floorcalc.bays;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The nodes where the walls and the cuts of a room meet, the corners first, and the edges between them. Of corners at one place the first is
 * the node, and no edge leads to the others.
 */
final class MeshNodes {
  /** Places as near to each other are one node, so that three lines that were rounded and cross at one place have no triangle between them. */
  private static final double SAME = 20;
  /** A node as near to a line is on it. */
  private static final double ON_LINE = 25;
  private static final long GRID = 64;

  private final RoomShape shape;
  private final List<Cut> cuts;
  private final List<double[]> places = new ArrayList<>();
  private final Map<List<Long>, List<Integer>> byGrid = new HashMap<>(); // only asked, never walked through
  private final List<int[]> edges = new ArrayList<>();
  private final Map<Long, Integer> edgeOf = new HashMap<>(); // only asked
  private final BitSet folds = new BitSet();
  private final BitSet merged = new BitSet();

  MeshNodes(RoomShape shape, List<Cut> cuts) {
    this.shape = shape;
    this.cuts = cuts;
    int[] cornerNode = new int[shape.size()];
    for (int i = 0; i < shape.size(); i++) {
      cornerNode[i] = corner(shape.xs[i], shape.ys[i]);
    }
    for (Cut cut : cuts) {
      node(cut.ax(), cut.ay());
      node(cut.bx(), cut.by());
    }
    for (int i = 0; i < cuts.size(); i++) {
      for (int j = 0; j < i; j++) {
        meet(cuts.get(i), cuts.get(j));
      }
    }
    for (int i = 0; i < shape.size(); i++) {
      int j = shape.next[i];
      if (cornerNode[i] == cornerNode[j]) {
        continue;
      }
      string(shape.xs[i], shape.ys[i], shape.xs[j], shape.ys[j], -1);
    }
    for (int k = 0; k < cuts.size(); k++) {
      Cut cut = cuts.get(k);
      string(cut.ax(), cut.ay(), cut.bx(), cut.by(), k);
    }
  }

  double[] xs() {
    return places.stream().mapToDouble(place -> place[0]).toArray();
  }

  double[] ys() {
    return places.stream().mapToDouble(place -> place[1]).toArray();
  }

  /** The node each side starts from. */
  int[] sides() {
    int[] from = new int[2 * edges.size()];
    for (int e = 0; e < edges.size(); e++) {
      from[2 * e] = edges.get(e)[0];
      from[2 * e + 1] = edges.get(e)[1];
    }
    return from;
  }

  int[] cuts() {
    return edges.stream().mapToInt(edge -> edge[2]).toArray();
  }

  /**
   * Of each side: whether it is the far side of a wall. Two walls that run to and fro nearer to each other than nodes do are one edge, a fold:
   * there is floor on both sides of it or on neither, as the walls round it say.
   */
  boolean[] isOff() {
    boolean[] off = new boolean[2 * edges.size()];
    for (int e = 0; e < edges.size(); e++) {
      off[2 * e + 1] = edges.get(e)[2] < 0 && !folds.get(e); // walls run with the floor on the left
    }
    return off;
  }

  /** The node of the next corner: its own, or that of a corner before it at the same place. */
  private int corner(double x, double y) {
    int own = places.size();
    int node = node(x, y);
    if (node < own) {
      places.add(new double[] {x, y});
      merged.set(own);
    }
    return node;
  }

  private int add(double x, double y) {
    places.add(new double[] {x, y});
    byGrid.computeIfAbsent(List.of(grid(x), grid(y)), key -> new ArrayList<>(1)).add(places.size() - 1);
    return places.size() - 1;
  }

  private static long grid(double value) {
    return Math.floorDiv((long) value, GRID);
  }

  /** The node at a place, a new one if there is none. */
  private int node(double x, double y) {
    int nearest = -1;
    double least = SAME * SAME;
    for (long gx = grid(x - SAME); gx <= grid(x + SAME); gx++) {
      for (long gy = grid(y - SAME); gy <= grid(y + SAME); gy++) {
        for (int other : byGrid.getOrDefault(List.of(gx, gy), List.of())) {
          double dx = places.get(other)[0] - x;
          double dy = places.get(other)[1] - y;
          if (dx * dx + dy * dy < least) {
            least = dx * dx + dy * dy;
            nearest = other;
          }
        }
      }
    }
    return nearest >= 0 ? nearest : add(x, y);
  }

  private void meet(Cut a, Cut b) {
    double ax = a.bx() - a.ax();
    double ay = a.by() - a.ay();
    double bx = b.bx() - b.ax();
    double by = b.by() - b.ay();
    double slope = ax * by - ay * bx;
    if (StrictMath.abs(slope) < 1e-7 * a.length() * b.length()) {
      return; // side by side; where they lie on each other their ends are nodes of both
    }
    double fromX = b.ax() - a.ax();
    double fromY = b.ay() - a.ay();
    double s = (fromX * by - fromY * bx) / slope;
    double t = (fromX * ay - fromY * ax) / slope;
    double slackA = SAME / a.length();
    double slackB = SAME / b.length();
    if (s > -slackA && s < 1 + slackA && t > -slackB && t < 1 + slackB) {
      node(StrictMath.rint(a.ax() + s * ax), StrictMath.rint(a.ay() + s * ay));
    }
  }

  /** Makes the edges along a wall or a cut, from node to node. */
  private void string(double ax, double ay, double bx, double by, int cut) {
    double dx = bx - ax;
    double dy = by - ay;
    double length = StrictMath.sqrt(dx * dx + dy * dy);
    dx /= length;
    dy /= length;
    List<double[]> on = new ArrayList<>();
    for (int n = 0; n < places.size(); n++) {
      double px = places.get(n)[0] - ax;
      double py = places.get(n)[1] - ay;
      double t = px * dx + py * dy;
      if (!merged.get(n) && t > -ON_LINE && t < length + ON_LINE && StrictMath.abs(px * dy - py * dx) < ON_LINE) {
        on.add(new double[] {t, n});
      }
    }
    on.sort(Comparator.comparingDouble(entry -> entry[0]));
    for (int k = 0; k + 1 < on.size(); k++) {
      edge((int) on.get(k)[1], (int) on.get(k + 1)[1], cut);
    }
  }

  private void edge(int a, int b, int cut) {
    long key = ((long) Math.min(a, b) << 32) + Math.max(a, b);
    Integer known = edgeOf.putIfAbsent(key, edges.size());
    if (known == null) {
      edges.add(new int[] {a, b, cut});
    } else {
      int[] edge = edges.get(known);
      if (cut < 0 && edge[0] == b) {
        folds.set(known);
      }
      if (cut >= 0 && edge[2] >= 0 && cuts.get(cut).kind().compareTo(cuts.get(edge[2]).kind()) < 0) {
        edge[2] = cut;
      }
    }
  }
}
