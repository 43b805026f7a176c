package floorcalc.levels;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The linear program {@code min c x, A x <= b, x >= 0} with costs that are not negative, by the dual simplex method (C. E. Lemke,
 * 1954): rows are added as they are found to be broken, and each exchange of a row against a column keeps all reduced costs at or
 * above zero. So at any time, finished or not, the value is a bound that no solution can be below, as far as doubles go.
 * Of equal choices the variable that came first is taken, so the same rows give the same exchanges everywhere. Work is counted in
 * multiplications, never in time. Not thread-safe.
 */
final class DualSimplex {
  private static final double ZERO = 1e-9;

  private final double[] cost;
  private final long mostWork;
  private final List<double[]> rows = new ArrayList<>();
  private final List<Integer> rowVariables = new ArrayList<>();
  private double[] sides = new double[64];
  private double[] reduced = new double[64];
  private int[] columnVariables = new int[64];
  private int columns;
  private int variables;
  private double value;
  private long work;
  private boolean stopped;
  /** For each of the variables of the problem: its column, or -2 - its row, or -1 if it has not been met. */
  private final int[] places;

  DualSimplex(double[] cost, long mostWork) {
    this.cost = cost;
    this.mostWork = mostWork;
    this.places = new int[cost.length];
    Arrays.fill(places, -1);
    variables = cost.length;
  }

  /** Adds a row: the sum of weights times variables is at most a number. */
  void add(int[] which, double[] weights, double most) {
    for (int variable : which) {
      if (places[variable] == -1) {
        column(variable);
      }
    }
    double[] row = new double[Math.max(16, columns + columns / 2)];
    double side = most;
    for (int i = 0; i < which.length; i++) {
      int place = places[which[i]];
      if (place >= 0) {
        row[place] += weights[i];
      } else {
        double[] basic = rows.get(-2 - place);
        side -= weights[i] * sides[-2 - place];
        for (int c = 0; c < Math.min(columns, basic.length); c++) {
          row[c] -= weights[i] * basic[c];
        }
      }
    }
    if (rows.size() == sides.length) {
      sides = Arrays.copyOf(sides, 2 * sides.length);
    }
    sides[rows.size()] = side;
    rows.add(row);
    rowVariables.add(variables++);
  }

  private void column(int variable) {
    if (columns == reduced.length) {
      reduced = Arrays.copyOf(reduced, 2 * columns);
      columnVariables = Arrays.copyOf(columnVariables, 2 * columns);
    }
    reduced[columns] = cost[variable];
    columnVariables[columns] = variable;
    places[variable] = columns++;
  }

  /** Exchanges until every row is kept, or the work allowed is done. */
  void solve() {
    while (!stopped) {
      int row = -1;
      for (int r = 0; r < rows.size(); r++) {
        if (sides[r] < -ZERO && (row < 0 || sides[r] < sides[row])) {
          row = r;
        }
      }
      int column = row < 0 ? -1 : entering(rows.get(row));
      if (column < 0) {
        // Without a column the row cannot be kept; a problem that has a solution comes here by a rounding alone.
        return;
      }
      exchange(row, column);
      stopped = work > mostWork;
    }
  }

  private int entering(double[] row) {
    int best = -1;
    double least = 0;
    for (int c = 0; c < Math.min(columns, row.length); c++) {
      if (row[c] < -ZERO) {
        double ratio = reduced[c] / -row[c];
        if (best < 0 || ratio < least - 1e-12
            || ratio < least + 1e-12 && columnVariables[c] < columnVariables[best]) {
          best = c;
          least = ratio;
        }
      }
    }
    return best;
  }

  /** Row: basic = side - sum of row * columns. Solves it for the entering column and puts that in everywhere. */
  private void exchange(int r, int c) {
    double[] pivot = Arrays.copyOf(rows.get(r), Math.max(columns, rows.get(r).length));
    double by = 1 / pivot[c];
    int[] used = new int[columns];
    int count = 0;
    for (int k = 0; k < columns; k++) {
      pivot[k] = k == c ? by : pivot[k] * by;
      if (Math.abs(pivot[k]) < 1e-13) {
        pivot[k] = 0;
      } else {
        used[count++] = k;
      }
    }
    sides[r] *= by;
    rows.set(r, pivot);
    for (int k = 0; k < rows.size(); k++) {
      double[] other = rows.get(k);
      double weight = k == r || c >= other.length ? 0 : other[c];
      if (weight != 0) {
        if (other.length < columns) {
          other = Arrays.copyOf(other, columns + columns / 2);
          rows.set(k, other);
        }
        other[c] = 0;
        for (int u = 0; u < count; u++) {
          other[used[u]] -= weight * pivot[used[u]];
        }
        sides[k] -= weight * sides[r];
        work += count;
      }
    }
    double weight = reduced[c];
    reduced[c] = 0;
    for (int u = 0; u < count; u++) {
      reduced[used[u]] = Math.max(0, reduced[used[u]] - weight * pivot[used[u]]);
    }
    value += weight * sides[r];
    work += rows.size() + columns;
    int leaving = rowVariables.get(r);
    rowVariables.set(r, columnVariables[c]);
    columnVariables[c] = leaving;
    place(rowVariables.get(r), -2 - r);
    place(leaving, c);
  }

  private void place(int variable, int where) {
    if (variable < places.length) {
      places[variable] = where;
    }
  }

  /** The value of a variable of the problem. */
  double get(int variable) {
    int place = places[variable];
    return place >= -1 ? 0 : Math.max(0, sides[-2 - place]);
  }

  /** What no solution of these rows can be below. */
  double value() {
    return value;
  }

  /** Whether the work allowed was done before every row was kept. */
  boolean isStopped() {
    return stopped;
  }

  /** Whether there is no room for many more rows. */
  boolean isFull() {
    return (long) rows.size() * columns > 12_000_000L;
  }
}
