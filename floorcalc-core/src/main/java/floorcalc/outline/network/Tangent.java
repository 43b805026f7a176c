package floorcalc.outline.network;

import java.util.stream.IntStream;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/** The observations as straight lines at some places. */
final class Tangent {
  private final Equations equations;
  private final int[] exact;
  private final int[] free;
  private final double size;
  private final Linear rules;
  private final RealVector kept;
  private final RealMatrix ways;
  private final Linear fit;
  private final double[] off;

  Tangent(Equations equations, int[] exact, int[] measured, int[] free, double[] place, double size) {
    this.equations = equations;
    this.exact = exact;
    this.free = free;
    this.size = size;
    double[][] rows = new double[exact.length][];
    for (int k = 0; k < exact.length; k++) {
      rows[k] = row(exact[k], place, scale(exact[k]));
    }
    rules = Linear.of(rows, free.length);
    kept = rules.solve(misclosures(place));
    ways = rules.free() == 0 ? null : rules.leftFree();
    off = new double[measured.length];
    double[][] slopes = new double[measured.length][];
    RealMatrix way = ways == null ? new Array2DRowRealMatrix(free.length, 1) : ways;
    for (int k = 0; k < measured.length; k++) {
      double scale = 1 / equations.deviation(measured[k]);
      double[] row = row(measured[k], place, scale);
      off[k] = equations.misclosure(measured[k], place) * scale - dot(row, kept);
      slopes[k] = way.preMultiply(row);
    }
    fit = Linear.of(slopes, way.getColumnDimension());
  }

  private double scale(int rule) {
    return equations.get(rule).kind() == Observation.Kind.DISTANCE ? 1 : size;
  }

  private double[] misclosures(double[] place) {
    return IntStream.of(exact).mapToDouble(rule -> equations.misclosure(rule, place) * scale(rule)).toArray();
  }

  /** The shortest move that brings exact observations back to what they are, as straight lines. */
  double[] back(double[] place) {
    return rules.solve(misclosures(place)).toArray();
  }

  double[] move(double damping) {
    return ways == null ? kept.toArray() : kept.add(ways.operate(fit.damped(off, damping))).toArray();
  }

  /** Times its own transpose: the variances of the free coordinates. */
  RealMatrix root() {
    return ways == null ? new Array2DRowRealMatrix(free.length, 1) : ways.multiply(fit.rootOfVariances());
  }

  int moves() {
    return ways == null ? 0 : ways.getColumnDimension() - fit.rank();
  }

  /** Ways in which the points can move without any observation noticing, free coordinates down, one a column. */
  RealMatrix unnoticed() {
    return ways.multiply(fit.leftFree());
  }

  /** Whether exact observations leave nothing free. */
  boolean isFixed() {
    return ways == null;
  }

  int rank() {
    return fit.rank();
  }

  /** The share of a measured observation that the others do not control. */
  double ownShare(int position) {
    return fit.ownShare(position);
  }

  private double[] row(int observation, double[] place, double scale) {
    double[] all = equations.slopes(observation, place);
    double[] row = new double[free.length];
    for (int j = 0; j < free.length; j++) {
      row[j] = all[free[j]] * scale;
    }
    return row;
  }

  private static double dot(double[] row, RealVector vector) {
    double sum = 0;
    for (int j = 0; j < row.length; j++) {
      sum += row[j] * vector.getEntry(j);
    }
    return sum;
  }
}
