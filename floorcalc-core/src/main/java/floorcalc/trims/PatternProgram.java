package floorcalc.trims;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The linear program over all ways to fill a bar: how often is each used, if bars could be cut in parts? A revised simplex
 * method with the inverse of the basis; ways to fill a bar are made as they are needed, the dearest at the present prices.
 * What it says is a guide; the bound beside it is worked out in whole numbers from its prices. Used by one thread.
 */
final class PatternProgram {
  /** The price of the dearest kind of bar. */
  static final long UNIT = 1L << 30;
  private static final double TOLERANCE = 1e-9;
  private static final double GAIN = 1e-7;
  private static final double PIVOT = 1e-8;
  private static final int REFRESH = 60;

  private final Problem problem;
  private final Filling filling;
  private final List<Load> pool;
  private final Budget budget;
  private final double unitCost;

  private int[] demand;
  private int[] limits;
  private int[] rowOf;
  private int[] sizeOfRow;
  private int[] kindOfRow;
  private int rows;
  private double[][] inverse;
  private double[] basic;
  private Column[] basis;
  private double[] right;
  private List<Column> usable;
  private double[] duals;
  private PriceBound bound;
  private boolean isFeasible;

  /** A column: a load, or a slack or stand-in if there is none. */
  private record Column(Load load, int[] at, double[] entries, double cost, boolean standsIn) {}

  PatternProgram(Problem problem, Filling filling, List<Load> pool, Budget budget) {
    this.problem = problem;
    this.filling = filling;
    this.pool = pool;
    this.budget = budget;
    this.unitCost = 1.0 / problem.largestCost();
  }

  /** Solves for a demand; ends early once the bound shows that a cost cannot be kept. */
  void solve(int[] wanted, int[] bars, long costToKeep) {
    demand = wanted;
    limits = bars;
    bound = null;
    layRows();
    layBasis();
    usable = new ArrayList<>();
    for (Load load : pool) {
      if (limits[load.kind()] > 0 && load.timesIn(demand, 1) > 0) {
        usable.add(column(load));
      }
    }
    int most = 40 * rows + 400;
    for (int round = 0; round < most && !budget.isSpent(); round++) {
      setDuals();
      Column entering = cheapest();
      if (entering == null) {
        List<Column> made = priced();
        if (bound != null && bound.least() > costToKeep) {
          return;
        }
        entering = best(made);
        if (entering == null || tailing()) {
          break;
        }
      }
      if (!enter(entering)) {
        break;
      }
      if (round % REFRESH == REFRESH - 1) {
        refresh();
      }
    }
    isFeasible = true;
    for (int r = 0; r < rows; r++) {
      isFeasible &= !basis[r].standsIn || basic[r] < 1e-6;
    }
  }

  /** The best bound found, or null if the budget did not last for one. */
  PriceBound bound() {
    return bound;
  }

  boolean isFeasible() {
    return isFeasible;
  }

  /** The loads used, how often each, with the rows in order. */
  void uses(List<Load> loads, List<Double> times) {
    for (int r = 0; r < rows; r++) {
      if (basis[r].load != null && basic[r] > 1e-7) {
        loads.add(basis[r].load);
        times.add(basic[r]);
      }
    }
  }

  private void layRows() {
    rowOf = new int[problem.sizes()];
    sizeOfRow = new int[problem.sizes() + problem.kinds()];
    kindOfRow = new int[problem.kinds()];
    Arrays.fill(kindOfRow, -1);
    rows = 0;
    for (int i = 0; i < problem.sizes(); i++) {
      rowOf[i] = demand[i] > 0 ? rows : -1;
      if (demand[i] > 0) {
        sizeOfRow[rows++] = i;
      }
    }
    for (int kind = 0; kind < problem.kinds(); kind++) {
      if (limits[kind] != Problem.NO_LIMIT && limits[kind] > 0) {
        sizeOfRow[rows] = -1;
        kindOfRow[kind] = rows++;
      }
    }
  }

  private void layBasis() {
    inverse = new double[rows][rows];
    basic = new double[rows];
    basis = new Column[rows];
    right = new double[rows];
    for (int r = 0; r < rows; r++) {
      int i = sizeOfRow[r];
      if (i < 0) {
        int kind = 0;
        while (kindOfRow[kind] != r) {
          kind++;
        }
        right[r] = limits[kind];
        basis[r] = new Column(null, new int[] {r}, new double[] {1}, 0, false);
        inverse[r][r] = 1;
      } else {
        right[r] = demand[i];
        int kind = unlimitedFor(i);
        if (kind < 0) {
          basis[r] = new Column(null, new int[] {r}, new double[] {1}, 1000, true);
          inverse[r][r] = 1;
        } else {
          int[] counts = new int[problem.sizes()];
          counts[i] = (int) Math.min(demand[i], problem.room(kind) / problem.size(i));
          basis[r] = column(new Load(kind, counts, 1));
          inverse[r][r] = 1.0 / counts[i];
        }
      }
      basic[r] = right[r] * inverse[r][r];
    }
  }

  private int unlimitedFor(int i) {
    int cheapest = -1;
    for (int kind = 0; kind < problem.kinds(); kind++) {
      if (limits[kind] == Problem.NO_LIMIT && problem.room(kind) >= problem.size(i)
          && (cheapest < 0 || problem.cost(kind) < problem.cost(cheapest))) {
        cheapest = kind;
      }
    }
    return cheapest;
  }

  private Column column(Load load) {
    int number = kindOfRow[load.kind()] >= 0 ? 1 : 0;
    for (int count : load.counts()) {
      number += count > 0 ? 1 : 0;
    }
    int[] at = new int[number];
    double[] entries = new double[number];
    int next = 0;
    for (int i = 0; i < load.counts().length; i++) {
      if (load.counts()[i] > 0) {
        at[next] = rowOf[i];
        entries[next++] = load.counts()[i];
      }
    }
    if (kindOfRow[load.kind()] >= 0) {
      at[next] = kindOfRow[load.kind()];
      entries[next] = 1;
    }
    return new Column(load, at, entries, problem.cost(load.kind()) * unitCost, false);
  }

  private void setDuals() {
    duals = new double[rows];
    for (int r = 0; r < rows; r++) {
      double cost = basis[r].cost;
      if (cost != 0) {
        double[] line = inverse[r];
        for (int c = 0; c < rows; c++) {
          duals[c] += cost * line[c];
        }
      }
    }
    budget.spend((long) rows * rows);
  }

  private double gain(Column column) {
    double worth = -column.cost;
    for (int k = 0; k < column.at.length; k++) {
      worth += duals[column.at[k]] * column.entries[k];
    }
    return worth;
  }

  /** The column at hand that gains most, or null if none gains. */
  private Column cheapest() {
    Column best = null;
    double most = GAIN;
    for (Column column : usable) {
      double gain = gain(column);
      if (gain > most) {
        most = gain;
        best = column;
      }
    }
    for (int r = 0; r < rows; r++) {
      if (sizeOfRow[r] >= 0 && -duals[r] > most) {
        most = -duals[r];
        best = new Column(null, new int[] {r}, new double[] {-1}, 0, false);
      }
    }
    for (int kind = 0; kind < problem.kinds(); kind++) {
      int r = kindOfRow[kind];
      if (r >= 0 && duals[r] > most) {
        most = duals[r];
        best = new Column(null, new int[] {r}, new double[] {1}, 0, false);
      }
    }
    budget.spend(usable.size() * 4L);
    return best;
  }

  /** Makes the dearest load of each kind at the present prices, and the bound from these prices. */
  private List<Column> priced() {
    long[] prices = new long[problem.sizes()];
    for (int i = 0; i < prices.length; i++) {
      prices[i] = rowOf[i] < 0 ? 0 : (long) Math.floor(Math.min(4000, Math.max(0, duals[rowOf[i]])) * UNIT + 1e-3);
    }
    List<Column> made = new ArrayList<>();
    int[] guess = filling.guess(prices, demand, budget);
    if (guess != null && limits[0] > 0) {
      Column column = column(new Load(0, guess, 1));
      if (gain(column) > 0.05) {
        usable.add(column);
        pool.add(column.load);
        made.add(column);
        return made;
      }
    }
    filling.price(prices, demand, budget);
    long[] ceilings = new long[problem.kinds()];
    for (int kind = 0; kind < problem.kinds(); kind++) {
      ceilings[kind] = filling.ceiling(kind);
      if (limits[kind] > 0 && filling.found(kind) > 0) {
        Column column = column(new Load(kind, filling.counts(kind), 1));
        if (gain(column) > GAIN) {
          made.add(column);
        }
      }
    }
    PriceBound now = PriceBound.of(problem, demand, limits, prices, ceilings, UNIT);
    if (bound == null || now.least() > bound.least()) {
      bound = now;
    }
    for (Column column : made) {
      usable.add(column);
      pool.add(column.load);
    }
    return made;
  }

  private Column best(List<Column> columns) {
    Column best = null;
    for (Column column : columns) {
      if (best == null || gain(column) > gain(best)) {
        best = column;
      }
    }
    return best;
  }

  /** Whether the bound has reached the cost of the whole bars that the present value asks for. */
  private boolean tailing() {
    double value = 0;
    for (int r = 0; r < rows; r++) {
      if (basis[r].standsIn && basic[r] > 1e-6) {
        return false;
      }
      value += basis[r].cost * basic[r];
    }
    return problem.isUniform() && bound != null && bound.least() >= value / unitCost;
  }

  private boolean enter(Column column) {
    double[] moved = new double[rows];
    for (int r = 0; r < rows; r++) {
      double sum = 0;
      for (int k = 0; k < column.at.length; k++) {
        sum += inverse[r][column.at[k]] * column.entries[k];
      }
      moved[r] = sum;
    }
    int leaving = -1;
    double least = Double.MAX_VALUE;
    for (int r = 0; r < rows; r++) {
      if (moved[r] > PIVOT) {
        double ratio = Math.max(0, basic[r]) / moved[r];
        if (ratio < least - TOLERANCE || ratio < least + TOLERANCE && moved[r] > moved[leaving]) {
          least = Math.min(least, ratio);
          leaving = r;
        }
      }
    }
    if (leaving < 0) {
      return false;
    }
    double step = Math.max(0, basic[leaving]) / moved[leaving];
    double[] line = inverse[leaving];
    double pivot = moved[leaving];
    for (int c = 0; c < rows; c++) {
      line[c] /= pivot;
    }
    for (int r = 0; r < rows; r++) {
      if (r != leaving && moved[r] != 0) {
        double[] other = inverse[r];
        double factor = moved[r];
        for (int c = 0; c < rows; c++) {
          other[c] -= factor * line[c];
        }
        basic[r] -= factor * step;
      }
    }
    basic[leaving] = step;
    basis[leaving] = column;
    budget.spend((long) rows * rows);
    return true;
  }

  /** Works the inverse out anew, against rounding that adds up. */
  private void refresh() {
    double[][] matrix = new double[rows][rows];
    double[][] fresh = new double[rows][rows];
    for (int c = 0; c < rows; c++) {
      fresh[c][c] = 1;
      for (int k = 0; k < basis[c].at.length; k++) {
        matrix[basis[c].at[k]][c] = basis[c].entries[k];
      }
    }
    for (int c = 0; c < rows; c++) {
      int pivot = c;
      for (int r = c + 1; r < rows; r++) {
        if (Math.abs(matrix[r][c]) > Math.abs(matrix[pivot][c])) {
          pivot = r;
        }
      }
      if (Math.abs(matrix[pivot][c]) < PIVOT) {
        return;
      }
      swap(matrix, c, pivot);
      swap(fresh, c, pivot);
      double factor = matrix[c][c];
      for (int k = 0; k < rows; k++) {
        matrix[c][k] /= factor;
        fresh[c][k] /= factor;
      }
      for (int r = 0; r < rows; r++) {
        double times = matrix[r][c];
        if (r != c && times != 0) {
          for (int k = 0; k < rows; k++) {
            matrix[r][k] -= times * matrix[c][k];
            fresh[r][k] -= times * fresh[c][k];
          }
        }
      }
    }
    budget.spend((long) rows * rows * rows / 4);
    inverse = fresh;
    for (int r = 0; r < rows; r++) {
      basic[r] = 0;
      for (int c = 0; c < rows; c++) {
        basic[r] += inverse[r][c] * right[c];
      }
    }
  }

  private static void swap(double[][] lines, int a, int b) {
    double[] line = lines[a];
    lines[a] = lines[b];
    lines[b] = line;
  }
}
