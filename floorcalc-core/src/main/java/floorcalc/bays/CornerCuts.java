package floorcalc.bays;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/**
 * The lines from the inner corners of a room and from the corners of voids that the floor may not lie round: along and square to the
 * boards, to the next wall, and where the walls are askew to the boards, the extensions of the walls. In place of a line that misses
 * another inner corner by up to two degrees stands the line to that corner.
 */
final class CornerCuts {
  /** More corners than this are thinned out, evenly. */
  static final int MOST_CORNERS = 56;
  /** Where there are no more inner corners than these, lines are tried that leave a bend at theirs, too. */
  private static final int FEW_CORNERS = 8;
  private static final double OUT_OF_SQUARE = StrictMath.tan(StrictMath.toRadians(2));
  /** Walls that bend by less than three degrees in all are one wall, as far as a recess may be let pass at all. */
  private static final double BEND = StrictMath.toRadians(3);
  private static final double LEAST_RECESS_FOR_BEND = 100e6;

  private static final int WAYS = 6;

  private final RoomShape shape;
  private final SplitLimits limits;
  private final List<Cut> cuts = new ArrayList<>();
  private final List<Integer> anchors = new ArrayList<>();
  private final TreeSet<Integer> anchored = new TreeSet<>();
  private final TreeSet<Integer> shot = new TreeSet<>();
  private boolean thinned;

  CornerCuts(RoomShape shape, SplitLimits limits) {
    this.shape = shape;
    this.limits = limits;
  }

  List<Cut> all() {
    List<Integer> inner = new ArrayList<>();
    for (int r = 0; r < shape.recesses.length; r++) {
      if (r == 0 || shape.recesses[r].leastWidth() > limits.widestVoid()) {
        bends(r, inner);
      }
    }
    int m = inner.size();
    thinned = m > MOST_CORNERS;
    for (int k = 0; k < m; k++) {
      if (!thinned || (long) k * MOST_CORNERS / m != (long) (k + 1) * MOST_CORNERS / m) {
        anchor(inner.get(k));
      }
    }
    betweenCorners();
    boolean few = m <= FEW_CORNERS;
    for (int k = 0; k < anchors.size(); k++) { // grows while voids are met
      int corner = anchors.get(k);
      for (int way = 0; way < WAYS; way++) {
        double[] d = direction(corner, way);
        if (d != null && shape.opensTo(corner, d[0], d[1]) && (few || resolves(corner, d[0], d[1])) && shot.add(WAYS * corner + way)) {
          shoot(shape.xs[corner], shape.ys[corner], d, way);
        }
      }
    }
    return cuts;
  }

  /** Of the lines from each place the one that costs least, where all are too many. */
  static List<Cut> cheapest(List<Cut> cuts) {
    Map<List<Double>, List<Cut>> byStart = new LinkedHashMap<>();
    cuts.forEach(cut -> byStart.computeIfAbsent(List.of(cut.ax(), cut.ay()), start -> new ArrayList<>()).add(cut));
    return byStart.values().stream().flatMap(list -> list.stream().sorted(Comparator.comparingDouble(Cut::counted)).limit(1)).toList();
  }

  /** Tells whether some inner corners were left out. */
  boolean isThinned() {
    return thinned;
  }

  /** The inner corners of a ring, but of those that bend by little only as many as make up a bend. */
  private void bends(int r, List<Integer> inner) {
    int first = shape.first[r];
    int size = shape.first[r + 1] - first;
    double least = limits.deepest() > LEAST_RECESS_FOR_BEND ? BEND : 0;
    double bent = 0;
    for (int k = 0; k < size; k++) {
      int i = first + (shape.recesses[r].start() + k) % size;
      double turn = shape.turn(i);
      bent = Math.max(0, bent - turn);
      if (turn < 0 && bent >= least && shape.recesses[r].isInner(i - first)) {
        inner.add(i);
        bent = 0;
      }
    }
  }

  private void anchor(int corner) {
    if (anchored.add(corner)) {
      anchors.add(corner);
    }
  }

  /** Four ways along and square to the boards, then the extensions of both walls if they lie otherwise; null if not. */
  private double[] direction(int corner, int way) {
    double x = shape.ux;
    double y = shape.uy;
    double[] wall = way < 4 ? null : shape.wall(way == 4 ? shape.before[corner] : corner);
    return switch (way) {
      case 0 -> new double[] {x, y};
      case 1 -> new double[] {-y, x};
      case 2 -> new double[] {-x, -y};
      case 3 -> new double[] {y, -x};
      case 4 -> isAslant(wall[0], wall[1]) ? wall : null;
      default -> isAslant(wall[0], wall[1]) ? new double[] {-wall[0], -wall[1]} : null;
    };
  }

  private boolean isAslant(double dx, double dy) {
    double along = StrictMath.abs(dx * shape.ux + dy * shape.uy);
    double across = StrictMath.abs(dy * shape.ux - dx * shape.uy);
    return Math.min(along, across) > OUT_OF_SQUARE * Math.max(along, across);
  }

  /** Tells whether a line from an inner corner leaves no inner corner on either side of it, but for a bend. */
  private boolean resolves(int i, double dx, double dy) {
    double[] out = shape.wall(i);
    double[] in = shape.wall(shape.before[i]);
    double bend = limits.deepest() > LEAST_RECESS_FOR_BEND ? StrictMath.sin(BEND) : 1e-7;
    return out[0] * dy - out[1] * dx > -bend && dx * -in[1] + dy * in[0] > -bend;
  }

  /** From each corner each way the nearest other corner that is seen a little out of square. */
  private void betweenCorners() {
    for (int i : anchors) {
      for (int way = 0; way < WAYS; way++) {
        double[] d = direction(i, way);
        int nearest = d == null ? -1 : nearest(i, d);
        if (nearest >= 0) {
          shot.add(WAYS * i + way);
          if (way < 4) {
            shot.add(WAYS * nearest + (way + 2 & 3));
          }
          add(shape.xs[i], shape.ys[i], shape.xs[nearest], shape.ys[nearest]);
        }
      }
    }
  }

  private int nearest(int i, double[] d) {
    int nearest = -1;
    double least = Double.MAX_VALUE;
    for (int j : anchors) {
      double dx = shape.xs[j] - shape.xs[i];
      double dy = shape.ys[j] - shape.ys[i];
      double ahead = dx * d[0] + dy * d[1];
      double aside = StrictMath.abs(dy * d[0] - dx * d[1]);
      if (ahead > RoomShape.TOUCH && ahead < least && aside > RoomShape.TOUCH / 2 && aside <= ahead * OUT_OF_SQUARE && sees(i, j)) {
        nearest = j;
        least = ahead;
      }
    }
    return nearest;
  }

  private boolean sees(int i, int j) {
    double dx = shape.xs[j] - shape.xs[i];
    double dy = shape.ys[j] - shape.ys[i];
    double distance = StrictMath.sqrt(dx * dx + dy * dy);
    dx /= distance;
    dy /= distance;
    return shape.opensTo(i, dx, dy) && shape.opensTo(j, -dx, -dy)
        && shape.reach(shape.xs[i], shape.ys[i], dx, dy) > distance - RoomShape.TOUCH;
  }

  private void add(double ax, double ay, double bx, double by) {
    cuts.add(new Cut(ax, ay, bx, by, isAslant(bx - ax, by - ay) ? Cut.Kind.ASLANT : Cut.Kind.CORNER));
  }

  /** Goes from a place to the next wall, and on from there where that wall is only touched or is that of a column. */
  private void shoot(double x, double y, double[] d, int way) {
    double length = shape.reach(x, y, d[0], d[1]);
    if (length == Double.POSITIVE_INFINITY) {
      return;
    }
    double endX = StrictMath.rint(x + length * d[0]);
    double endY = StrictMath.rint(y + length * d[1]);
    int corner = shape.cornerAt(endX, endY);
    if (corner >= 0) {
      endX = shape.xs[corner];
      endY = shape.ys[corner];
    }
    add(x, y, endX, endY);
    if (corner >= 0 && shape.opensTo(corner, d[0], d[1]) && (way >= 4 || shot.add(WAYS * corner + way))) {
      shoot(endX, endY, d, way);
    }
    int met = shape.ringAt(endX, endY);
    if (met > 0 && shape.recesses[met].leastWidth() <= limits.widestVoid()) {
      goOnBeyond(met, endX, endY, d, way);
    }
  }

  private void goOnBeyond(int met, double x, double y, double[] d, int way) {
    double least = Double.MAX_VALUE;
    double most = -Double.MAX_VALUE;
    double far = 0;
    for (int i = shape.first[met]; i < shape.first[met + 1]; i++) {
      double t = (shape.xs[i] - x) * d[0] + (shape.ys[i] - y) * d[1];
      least = Math.min(least, t);
      most = Math.max(most, t);
      double exit = shape.meeting(i, x, y, d[0], d[1]);
      far = exit == Double.POSITIVE_INFINITY ? far : Math.max(far, exit);
    }
    if (far > 0) {
      double exitX = StrictMath.rint(x + far * d[0]);
      double exitY = StrictMath.rint(y + far * d[1]);
      if (shape.isFloor(exitX + 10 * RoomShape.TOUCH * d[0], exitY + 10 * RoomShape.TOUCH * d[1])) {
        shoot(exitX, exitY, d, way);
      }
    }
    if (most - least > limits.deepest()) {
      for (int i = shape.first[met]; i < shape.first[met + 1]; i++) {
        if (shape.isInner(i)) {
          anchor(i);
        }
      }
    }
  }
}
