package floorcalc.outline;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;

/**
 * Looks for the place of a floor that is farthest from all walls. The floor is divided into squares; a square is divided into four as long as
 * it may hold a place that is farther from the walls than the best so far, the most promising first.
 * <p>
 * How far from the walls a place of a square can be: not farther than its middle by more than half its diagonal; and, between two walls
 * that face each other, not farther than the mean of both distances, which hardly changes within a square. So a corridor takes few squares. In
 * floating point, nanometres from the middle of the outline. Used by one thread.
 */
final class RoundSearch {
  /** Squares that promise no more than this beyond the best are left alone. */
  private static final double ENOUGH = 0.5;
  /** A place is better if it is so much farther from the walls: less is floating point alone. */
  private static final double BETTER = 0.25;
  private static final int MOST_SQUARES = 400_000;
  private static final double HALF_DIAGONAL = StrictMath.sqrt(2);

  private final double[] x1;
  private final double[] y1;
  private final double[] x2;
  private final double[] y2;
  private final PriorityQueue<Square> squares =
      new PriorityQueue<>(Comparator.comparingDouble((Square square) -> -square.most).thenComparingInt(square -> square.number));
  private int made;
  private boolean found;
  private double bestX;
  private double bestY;
  private double reached;
  private double most;

  /** A square: its middle, half its side, the walls that may be the nearest somewhere in it, and how far from walls a place in it can be. */
  private static final class Square {
    final double x;
    final double y;
    final double half;
    final int number;
    int[] walls;
    double distance;
    boolean inside;
    double most;

    Square(double x, double y, double half, int number) {
      this.x = x;
      this.y = y;
      this.half = half;
      this.number = number;
    }

    /** How far from the walls its middle is, negative off the floor. */
    double depth() {
      return inside ? distance : -distance;
    }
  }

  RoundSearch(List<Ring> rings, long middleX, long middleY) {
    int n = rings.stream().mapToInt(Ring::size).sum();
    x1 = new double[n];
    y1 = new double[n];
    x2 = new double[n];
    y2 = new double[n];
    int at = 0;
    for (Ring ring : rings) {
      for (int i = 0; i < ring.size(); i++) {
        int next = (i + 1) % ring.size();
        x1[at] = ring.x(i) - middleX;
        y1[at] = ring.y(i) - middleY;
        x2[at] = ring.x(next) - middleX;
        y2[at++] = ring.y(next) - middleY;
      }
    }
  }

  /** Looks through a square round the middle that holds the whole outline. */
  void search(double half) {
    int[] all = new int[x1.length];
    Arrays.setAll(all, i -> i);
    add(0, 0, half, all, null);
    while (!squares.isEmpty() && squares.peek().most > reached + ENOUGH && made < MOST_SQUARES) {
      Square square = squares.poll();
      double quarter = square.half / 2;
      for (int i = 0; i < 4; i++) {
        add(square.x + (i % 2 == 0 ? -quarter : quarter), square.y + (i < 2 ? -quarter : quarter), quarter, square.walls, square);
      }
    }
    most = Math.max(reached + ENOUGH, squares.isEmpty() ? 0 : squares.peek().most);
  }

  private void add(double x, double y, double half, int[] walls, Square parent) {
    Square square = new Square(x, y, half, made++);
    measure(square, walls);
    boolean clear = parent != null && parent.distance > parent.half * HALF_DIAGONAL;
    square.inside = clear ? parent.inside : isInside(x, y);
    if (square.inside) {
      keep(x, y, square.distance);
    }
    square.most = most(square);
    if (square.most > reached + ENOUGH) {
      squares.add(square);
    }
  }

  private void keep(double x, double y, double distance) {
    if (!found || distance > reached + BETTER) {
      found = true;
      bestX = x;
      bestY = y;
      reached = distance;
    }
  }

  /** Finds the nearest wall of a middle, and keeps those that are the nearest of some place in the square. */
  private void measure(Square square, int[] walls) {
    double[] distances = new double[walls.length];
    double least = Double.MAX_VALUE;
    for (int k = 0; k < walls.length; k++) {
      distances[k] = distance(walls[k], square.x, square.y);
      least = Math.min(least, distances[k]);
    }
    double reach = least + 2 * HALF_DIAGONAL * square.half;
    int count = 0;
    int[] near = new int[walls.length];
    for (int k = 0; k < walls.length; k++) {
      if (distances[k] <= reach) {
        near[count++] = walls[k];
      }
    }
    square.walls = Arrays.copyOf(near, count);
    square.distance = least;
  }

  private double most(Square square) {
    double diagonal = square.half * HALF_DIAGONAL;
    if (!square.inside || square.distance <= diagonal) {
      return square.depth() + diagonal;
    }
    double[][] sights = new double[square.walls.length][];
    int nearest = 0;
    for (int k = 0; k < sights.length; k++) {
      sights[k] = sight(square.walls[k], square);
      nearest = sights[k][0] < sights[nearest][0] ? k : nearest;
    }
    double least = Double.MAX_VALUE;
    int facing = nearest;
    for (int k = 0; k < sights.length; k++) {
      double bound = most(sights[nearest], sights[k], square.half);
      if (bound < least) {
        least = bound;
        facing = k;
      }
    }
    if (least > reached + ENOUGH) {
      balance(square, sights[nearest], sights[facing]);
    }
    return least;
  }

  /** Tries the place half-way between two walls that face each other, if it lies in the square: the middle of a square rarely does. */
  private void balance(Square square, double[] a, double[] b) {
    double gx = a[1] - b[1];
    double gy = a[2] - b[2];
    double slope = gx * gx + gy * gy;
    double step = slope == 0 ? 0 : (b[0] - a[0]) / slope;
    double x = square.x + step * gx;
    double y = square.y + step * gy;
    if (step != 0 && StrictMath.abs(x - square.x) <= square.half && StrictMath.abs(y - square.y) <= square.half) {
      double least = Double.MAX_VALUE;
      for (int wall : square.walls) {
        least = Math.min(least, distance(wall, x, y));
      }
      keep(x, y, least); // the square is clear of walls, so all of it is on the floor
    }
  }

  /**
   * A wall as a square sees it: at most how far its places are from the wall, but for the way they lie from the middle, and the unit vector from
   * the wall to the middle. The distance of (x + u, y + v) is at most {@code [0] + [1] * u + [2] * v}: the distance of a
   * straight line while the foot of the perpendicular stays on the wall, else that of the foot itself, √(d² + 2 d g + w²) ≤ d + g + w² / 2d.
   */
  private double[] sight(int wall, Square square) {
    double dx = x2[wall] - x1[wall];
    double dy = y2[wall] - y1[wall];
    double length = StrictMath.sqrt(dx * dx + dy * dy);
    double along = length == 0 ? 0 : ((square.x - x1[wall]) * dx + (square.y - y1[wall]) * dy) / length;
    double foot = Math.max(0, Math.min(length, along));
    double footX = length == 0 ? x1[wall] : x1[wall] + dx / length * foot;
    double footY = length == 0 ? y1[wall] : y1[wall] + dy / length * foot;
    double ux = square.x - footX;
    double uy = square.y - footY;
    double distance = StrictMath.sqrt(ux * ux + uy * uy);
    double sway = length == 0 ? 0 : square.half * (StrictMath.abs(dx) + StrictMath.abs(dy)) / length;
    boolean straight = along >= sway && along <= length - sway && length > 0;
    double bend = straight ? 0 : square.half * square.half / distance;
    return new double[] {distance + bend, ux / distance, uy / distance};
  }

  /** The least of all weighted means of two walls: none of them can be exceeded by the nearer one. */
  private static double most(double[] a, double[] b, double half) {
    double least = Math.min(mean(a, b, 0, half), mean(a, b, 1, half));
    for (int axis = 1; axis <= 2; axis++) {
      double weight = b[axis] / (b[axis] - a[axis]); // where the slopes along this axis cancel
      if (weight > 0 && weight < 1) {
        least = Math.min(least, mean(a, b, weight, half));
      }
    }
    return least;
  }

  private static double mean(double[] a, double[] b, double weight, double half) {
    double value = weight * a[0] + (1 - weight) * b[0];
    double slopeX = weight * a[1] + (1 - weight) * b[1];
    double slopeY = weight * a[2] + (1 - weight) * b[2];
    return value + half * (StrictMath.abs(slopeX) + StrictMath.abs(slopeY));
  }

  private double distance(int wall, double x, double y) {
    double dx = x2[wall] - x1[wall];
    double dy = y2[wall] - y1[wall];
    double square = dx * dx + dy * dy;
    double share = square == 0 ? 0 : Math.max(0, Math.min(1, ((x - x1[wall]) * dx + (y - y1[wall]) * dy) / square));
    double px = x - (x1[wall] + share * dx);
    double py = y - (y1[wall] + share * dy);
    return StrictMath.sqrt(px * px + py * py);
  }

  /** Whether a ray to the right crosses an odd number of walls. */
  private boolean isInside(double x, double y) {
    boolean inside = false;
    for (int i = 0; i < x1.length; i++) {
      if (y1[i] > y != y2[i] > y && x < x1[i] + (y - y1[i]) / (y2[i] - y1[i]) * (x2[i] - x1[i])) {
        inside = !inside;
      }
    }
    return inside;
  }

  /** Whether any place of the floor was found. */
  boolean isFound() {
    return found;
  }

  double x() {
    return bestX;
  }

  double y() {
    return bestY;
  }

  /** How far from all walls no place of the floor can be. */
  double most() {
    return most;
  }
}
