package floorcalc.boards;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * The best prices against the ways known so far: a linear program, solved by the simplex method with the inverse of the
 * basis kept, so that a way found later is taken up where the last solution stands.
 * <p>
 * Shares x of the ways, adding up to 1, are sought such that the dearest rise, t, costs as little as can be:
 * <pre>
 *   least t,   with   sum over ways of x[i] * cost[i][j]  +  slack[j]  =  t   for each rise j,   sum of x[i] = 1
 * </pre>
 * A general solver would begin anew with each way; a test holds this one against such a solver. The duals of the rows are
 * the prices: none below zero, together 1. The least t is the most that any prices made of these rises get out of the ways
 * known, so it is a limit for what they get out of all ways.
 */
final class PriceProgram {
  private static final double ZERO = 1e-9;
  private static final int PIVOTS = 60;
  /** Stands in the basis for t, which never leaves it. */
  private static final int LIMIT = Integer.MAX_VALUE;
  /** Says that nothing gains by entering the basis. */
  private static final int NONE = Integer.MIN_VALUE;

  private final int rises;
  private final int rows;
  private final List<double[]> costs = new ArrayList<>();
  /** Of each row what stands in the basis: a way, or a slack told by -1 less its rise, or t. */
  private final int[] basis;
  private final double[][] inverse;
  private final double[] values;
  private final double[] prices;
  private final double[] column;
  private double limit;

  PriceProgram(int rises) {
    this.rises = rises;
    this.rows = rises + 1;
    this.basis = new int[rows];
    this.inverse = new double[rows][rows];
    this.values = new double[rows];
    this.prices = new double[rises];
    this.column = new double[rows];
  }

  /** Takes up a way, told by what it costs at each rise alone, and finds the best prices against all. */
  void add(double[] cost) {
    costs.add(cost.clone());
    if (costs.size() == 1) {
      begin(cost);
    } else {
      int entering = costs.size() - 1;
      for (int i = 0; i < PIVOTS && entering != NONE; i++) {
        enter(entering);
        price();
        entering = next();
      }
    }
  }

  /** Sets the only way against its dearest rise. */
  private void begin(double[] cost) {
    int dearest = 0;
    for (int j = 1; j < rises; j++) {
      dearest = cost[j] > cost[dearest] ? j : dearest;
    }
    // Row of rise j: cost[j] x + slack[j] - t = 0; last row: x = 1. The dearest rise's slack is left out; t takes its row.
    for (int j = 0; j < rises; j++) {
      basis[j] = -1 - j;
      inverse[j][j] = 1;
      inverse[j][rises] = cost[dearest] - cost[j];
      inverse[j][dearest] -= 1;
      values[j] = cost[dearest] - cost[j];
    }
    Arrays.fill(inverse[dearest], 0);
    inverse[dearest][dearest] = -1;
    inverse[dearest][rises] = cost[dearest];
    values[dearest] = cost[dearest];
    basis[dearest] = LIMIT;
    basis[rises] = 0;
    inverse[rises][rises] = 1;
    values[rises] = 1;
    price();
  }

  private int limitRow() {
    int row = 0;
    while (basis[row] != LIMIT) {
      row++;
    }
    return row;
  }

  private void price() {
    int row = limitRow();
    for (int j = 0; j < rises; j++) {
      prices[j] = -inverse[row][j];
    }
    limit = values[row];
  }

  /** What gains most by entering the basis: a way that costs less than the limit, or a slack whose price is below zero. */
  private int next() {
    int best = NONE;
    double least = -ZERO;
    for (int j = 0; j < rises; j++) {
      if (prices[j] < least) {
        least = prices[j];
        best = -1 - j;
      }
    }
    double share = inverse[limitRow()][rises];
    for (int i = 0; i < costs.size(); i++) {
      double gain = cost(costs.get(i)) - share;
      if (gain < least) {
        least = gain;
        best = i;
      }
    }
    return best;
  }

  /** What a way costs at the prices. */
  private double cost(double[] cost) {
    double sum = 0;
    for (int j = 0; j < rises; j++) {
      sum += prices[j] * cost[j];
    }
    return sum;
  }

  private void enter(int entering) {
    for (int i = 0; i < rows; i++) {
      double[] row = inverse[i];
      double sum = entering < 0 ? row[-1 - entering] : row[rises];
      if (entering >= 0) {
        double[] cost = costs.get(entering);
        for (int j = 0; j < rises; j++) {
          sum += row[j] * cost[j];
        }
      }
      column[i] = sum;
    }
    int leaving = -1;
    double least = Double.MAX_VALUE;
    for (int i = 0; i < rows; i++) {
      if (column[i] > ZERO && basis[i] != LIMIT) {
        double ratio = Math.max(0, values[i]) / column[i];
        if (ratio < least - ZERO || leaving >= 0 && ratio < least + ZERO && column[i] > column[leaving]) {
          least = Math.min(least, ratio);
          leaving = i;
        }
      }
    }
    if (leaving < 0) {
      return;
    }
    double pivot = column[leaving];
    double[] row = inverse[leaving];
    for (int j = 0; j < rows; j++) {
      row[j] /= pivot;
    }
    values[leaving] /= pivot;
    for (int i = 0; i < rows; i++) {
      double factor = column[i];
      if (i != leaving && factor != 0) {
        double[] other = inverse[i];
        for (int j = 0; j < rows; j++) {
          other[j] -= factor * row[j];
        }
        values[i] -= factor * values[leaving];
      }
    }
    basis[leaving] = entering;
  }

  /** The ways that have a share, the greatest share first. */
  List<Integer> shared() {
    List<Integer> rowsOfWays = new ArrayList<>();
    for (int i = 0; i < rows; i++) {
      if (basis[i] >= 0 && basis[i] != LIMIT && values[i] > ZERO) {
        rowsOfWays.add(i);
      }
    }
    rowsOfWays.sort(Comparator.comparingDouble((Integer i) -> -values[i]).thenComparing(i -> basis[i]));
    return rowsOfWays.stream().map(i -> basis[i]).toList();
  }

  /** The most that any prices of these rises get out of the ways known. */
  double limit() {
    return limit;
  }

  /** The best prices of the rises against the ways known: none below zero, together 1. */
  double[] prices() {
    double[] clean = new double[rises];
    double sum = 0;
    for (int j = 0; j < rises; j++) {
      clean[j] = Math.max(0, prices[j]);
      sum += clean[j];
    }
    for (int j = 0; j < rises; j++) {
      clean[j] /= sum;
    }
    return clean;
  }
}
