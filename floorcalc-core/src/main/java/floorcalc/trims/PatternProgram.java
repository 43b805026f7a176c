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
  private static final double GAIN = 1e-7;
  /** What a load must gain to be taken without looking for the dearest. */
  private static final double LARGE_GAIN = 0.05;
  private static final double NUDGE = 1e-4;
  private static final double GOLDEN = 0.6180339887498949;
  private static final double USED = 1e-7;
  /** The cost of pieces that no bar is left for. */
  private static final double STAND_IN = 1000;
  /** The highest price looked at, four times that. */
  private static final double HIGHEST = 4 * STAND_IN;
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
  private Basis basis;
  private List<Column> usable;
  private double[] duals;
  private PriceBound bound;
  private boolean isFeasible;

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
      duals = basis.duals();
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
      if (!basis.enter(entering)) {
        break;
      }
      if (round % REFRESH == REFRESH - 1) {
        basis.refresh();
      }
    }
    basis.settle();
    isFeasible = basis.isFeasible();
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
      Load load = basis.column(r).load();
      if (load != null && basis.value(r) > USED) {
        loads.add(load);
        times.add(basis.value(r));
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

  /** Starts with a bar of one size for each size, a slack for each limit, and a stand-in where only limited bars hold a size. */
  private void layBasis() {
    Column[] columns = new Column[rows];
    double[] right = new double[rows];
    for (int kind = 0; kind < problem.kinds(); kind++) {
      int r = kindOfRow[kind];
      if (r >= 0) {
        right[r] = limits[kind];
        columns[r] = Column.unit(r, 1);
      }
    }
    for (int i = 0; i < problem.sizes(); i++) {
      int r = rowOf[i];
      if (r >= 0) {
        right[r] = demand[i];
        int kind = unlimitedFor(i);
        if (kind < 0) {
          columns[r] = Column.standIn(r, STAND_IN);
        } else {
          int[] counts = new int[problem.sizes()];
          counts[i] = (int) Math.min(demand[i], problem.room(kind) / problem.size(i));
          columns[r] = column(new Load(kind, counts, 1));
        }
      }
    }
    // A little more of each, every row another amount, so that few rows come to nothing at once.
    double[] nudged = new double[rows];
    for (int r = 0; r < rows; r++) {
      double part = (r + 1) * GOLDEN;
      nudged[r] = right[r] + NUDGE * (0.5 + part - Math.floor(part));
    }
    basis = new Basis(columns, right, nudged, budget);
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

  private double gain(Column column) {
    return column.worth(duals) - column.cost();
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
        best = Column.unit(r, -1);
      }
    }
    for (int kind = 0; kind < problem.kinds(); kind++) {
      int r = kindOfRow[kind];
      if (r >= 0 && duals[r] > most) {
        most = duals[r];
        best = Column.unit(r, 1);
      }
    }
    budget.spend(usable.size() * 4L);
    return best;
  }

  /** Makes the dearest load of each kind at the present prices, and the bound from these prices. */
  private List<Column> priced() {
    long[] prices = new long[problem.sizes()];
    for (int i = 0; i < prices.length; i++) {
      prices[i] = rowOf[i] < 0 ? 0 : (long) Math.floor(Math.min(HIGHEST, Math.max(0, duals[rowOf[i]])) * UNIT + 1e-3);
    }
    List<Column> made = new ArrayList<>();
    int[] guess = filling.guess(prices, demand, budget);
    if (guess != null && limits[0] > 0) {
      Column column = column(new Load(0, guess, 1));
      if (gain(column) > LARGE_GAIN) {
        usable.add(column);
        pool.add(column.load());
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
      pool.add(column.load());
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
    return problem.isUniform() && bound != null && basis.isFeasible() && bound.least() >= basis.cost() / unitCost;
  }
}
