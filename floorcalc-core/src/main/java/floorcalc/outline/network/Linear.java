package floorcalc.outline.network;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.linear.SingularValueDecomposition;

/**
 * Linear equations by singular values: the shortest solution with the least squares, what it leaves free, and how large
 * the solution's variances are. There may be more or fewer equations than unknowns.
 */
final class Linear {
  /** What a singular value must be of the largest to count: below it the equations do not tell. */
  private static final double TOLD = 1e-9;

  private final int unknowns;
  private final int rank;
  private final RealMatrix left;
  private final RealMatrix right;
  private final double[] values;

  private Linear(int unknowns, int rank, RealMatrix left, RealMatrix right, double[] values) {
    this.unknowns = unknowns;
    this.rank = rank;
    this.left = left;
    this.right = right;
    this.values = values;
  }

  /** Takes equations apart: one row each, any number of rows, at least one unknown. */
  static Linear of(double[][] rows, int unknowns) {
    double[][] padded = new double[Math.max(Math.max(rows.length, unknowns), 1)][];
    for (int i = 0; i < padded.length; i++) {
      padded[i] = i < rows.length ? rows[i] : new double[unknowns];
    }
    SingularValueDecomposition parts = new SingularValueDecomposition(new Array2DRowRealMatrix(padded, false));
    double[] values = parts.getSingularValues();
    int rank = 0;
    while (rank < values.length && values[rank] > TOLD * values[0]) {
      rank++;
    }
    return new Linear(unknowns, rank, parts.getU(), parts.getV(), values);
  }

  int rank() {
    return rank;
  }

  int free() {
    return unknowns - rank;
  }

  /** The shortest of the solutions with the least squares. */
  RealVector solve(double[] results) {
    return damped(results, 0);
  }

  /**
   * A solution that is shorter where the equations tell little, at the price of larger squares.
   *
   * @param damping what counts as little, as a part of the most that they tell; with 0 nothing does
   */
  RealVector damped(double[] results, double damping) {
    double little = damping * values[0];
    double[] padded = new double[left.getRowDimension()];
    System.arraycopy(results, 0, padded, 0, results.length);
    RealVector turned = left.preMultiply(new ArrayRealVector(padded, false));
    RealVector sum = new ArrayRealVector(unknowns);
    for (int j = 0; j < rank; j++) {
      sum = sum.add(right.getColumnVector(j).mapMultiply(turned.getEntry(j) * values[j] / (values[j] * values[j] + little * little)));
    }
    return sum;
  }

  /** Ways to move that no equation notices: unit vectors square to each other, one a column; at least one column. */
  RealMatrix leftFree() {
    return right.getSubMatrix(0, unknowns - 1, rank, unknowns - 1);
  }

  /** A matrix that times its own transpose gives the variances and covariances of the solution; at least one column. */
  RealMatrix rootOfVariances() {
    RealMatrix root = new Array2DRowRealMatrix(unknowns, Math.max(1, rank));
    for (int j = 0; j < rank; j++) {
      root.setColumnVector(j, right.getColumnVector(j).mapDivide(values[j]));
    }
    return root;
  }

  /** The share of an equation that the others do not control: its part of the equations' own space. */
  double ownShare(int row) {
    double share = 0;
    for (int j = 0; j < rank; j++) {
      share += left.getEntry(row, j) * left.getEntry(row, j);
    }
    return share;
  }
}
