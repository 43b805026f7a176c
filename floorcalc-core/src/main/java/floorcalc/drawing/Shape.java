package floorcalc.drawing;

import floorcalc.outline.Ring;
import java.util.ArrayList;
import java.util.List;

/** Rings on the sheet, in millimetres on paper, y downwards. What an odd number of rings enclose is inside. */
final class Shape {
  private final double[][] xs;
  private final double[][] ys;

  private Shape(double[][] xs, double[][] ys) {
    this.xs = xs;
    this.ys = ys;
  }

  static Shape of(Paper paper, Ring outer, List<Ring> inner) {
    List<Ring> rings = new ArrayList<>();
    rings.add(outer);
    rings.addAll(inner);
    double[][] xs = new double[rings.size()][];
    double[][] ys = new double[rings.size()][];
    for (int r = 0; r < xs.length; r++) {
      Ring ring = rings.get(r);
      xs[r] = new double[ring.size()];
      ys[r] = new double[ring.size()];
      for (int i = 0; i < ring.size(); i++) {
        xs[r][i] = paper.x(ring.x(i));
        ys[r][i] = paper.y(ring.y(i));
      }
    }
    return new Shape(xs, ys);
  }

  int rings() {
    return xs.length;
  }

  /** Returns one ring alone. */
  Shape ring(int ring) {
    return new Shape(new double[][] {xs[ring]}, new double[][] {ys[ring]});
  }

  int size(int ring) {
    return xs[ring].length;
  }

  double x(int ring, int corner) {
    return xs[ring][corner % xs[ring].length];
  }

  double y(int ring, int corner) {
    return ys[ring][corner % ys[ring].length];
  }

  int corners() {
    int all = 0;
    for (double[] ring : xs) {
      all += ring.length;
    }
    return all;
  }

  /** Returns the least value of {@code x * ax + y * ay} over the first ring. */
  double low(double ax, double ay) {
    double low = Double.POSITIVE_INFINITY;
    for (int i = 0; i < xs[0].length; i++) {
      low = Math.min(low, xs[0][i] * ax + ys[0][i] * ay);
    }
    return low;
  }

  /** Returns the greatest value of {@code x * ax + y * ay} over the first ring. */
  double high(double ax, double ay) {
    return -low(-ax, -ay);
  }

  /** Tells whether a ring runs clockwise as seen on the sheet. */
  boolean clockwise(int ring) {
    double twice = 0;
    for (int i = 0; i < xs[ring].length; i++) {
      twice += x(ring, i) * y(ring, i + 1) - x(ring, i + 1) * y(ring, i);
    }
    return twice > 0;
  }

  boolean contains(double px, double py) {
    boolean inside = false;
    for (int r = 0; r < xs.length; r++) {
      for (int i = 0; i < xs[r].length; i++) {
        double y1 = y(r, i);
        double y2 = y(r, i + 1);
        if (y1 > py != y2 > py && px < x(r, i) + (py - y1) / (y2 - y1) * (x(r, i + 1) - x(r, i))) {
          inside = !inside;
        }
      }
    }
    return inside;
  }

  /** Tells whether the box lies inside, wholly. */
  boolean holds(Box box) {
    return contains(box.x(), box.y()) && !cuts(box);
  }

  /** Tells whether the box has a part inside. */
  boolean touches(Box box) {
    return contains(box.x(), box.y()) || cuts(box);
  }

  private boolean cuts(Box box) {
    for (int r = 0; r < xs.length; r++) {
      for (int i = 0; i < xs[r].length; i++) {
        if (box.meetsLine(x(r, i), y(r, i), x(r, i + 1), y(r, i + 1))) {
          return true;
        }
      }
    }
    return false;
  }

  /** Writes the rings as path data; corners nearer to the last one than a fiftieth of a millimetre are left out. */
  void appendPath(StringBuilder d) {
    for (int r = 0; r < xs.length; r++) {
      double lastX = Double.NaN;
      double lastY = Double.NaN;
      for (int i = 0; i < xs[r].length; i++) {
        double x = xs[r][i];
        double y = ys[r][i];
        if (i > 0 && Math.abs(x - lastX) < 0.02 && Math.abs(y - lastY) < 0.02) {
          continue;
        }
        d.append(i == 0 ? 'M' : 'L');
        Svg.appendNumber(d, x);
        d.append(' ');
        Svg.appendNumber(d, y);
        lastX = x;
        lastY = y;
      }
      d.append('Z');
    }
  }

  String path() {
    StringBuilder d = new StringBuilder();
    appendPath(d);
    return d.toString();
  }

  /** Returns the shape with at most so many corners, each ring thinned evenly, and no more rings than that allows. */
  Shape thinned(int most) {
    int all = corners();
    if (all <= most) {
      return this;
    }
    int step = (all + most - 1) / most * 2;
    List<double[]> keptX = new ArrayList<>();
    List<double[]> keptY = new ArrayList<>();
    int used = 0;
    for (int r = 0; r < xs.length; r++) {
      int n = xs[r].length;
      int every = n <= 8 ? 1 : step;
      int kept = (n + every - 1) / every;
      if (kept < 3 || used + kept > most) {
        continue;
      }
      double[] rx = new double[kept];
      double[] ry = new double[kept];
      for (int i = 0; i < kept; i++) {
        rx[i] = xs[r][i * every];
        ry[i] = ys[r][i * every];
      }
      keptX.add(rx);
      keptY.add(ry);
      used += kept;
    }
    return new Shape(keptX.toArray(double[][]::new), keptY.toArray(double[][]::new));
  }
}
