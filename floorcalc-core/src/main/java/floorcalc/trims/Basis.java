package floorcalc.trims;

/**
 * The basis of the linear program: a column for each row, the inverse of their matrix, and how often each is used. In
 * floating point, so a guide only. Used by one thread.
 */
final class Basis {
  private static final double TOLERANCE = 1e-9;
  private static final double PIVOT = 1e-8;
  private static final double NOTHING = 1e-6;

  private final int rows;
  private final Column[] columns;
  private final double[] exact;
  private double[] right;
  private final Budget budget;
  private double[][] inverse;
  private final double[] basic;

  /**
   * @param columns one for each row, with an entry there and in no other
   * @param exact what each row asks for
   * @param nudged the same, each a little off, with which the search goes on until {@link #settle}
   */
  Basis(Column[] columns, double[] exact, double[] nudged, Budget budget) {
    this.rows = columns.length;
    this.columns = columns;
    this.exact = exact;
    this.right = nudged;
    this.budget = budget;
    this.inverse = new double[rows][rows];
    this.basic = new double[rows];
    for (int r = 0; r < rows; r++) {
      inverse[r][r] = 1 / entry(columns[r], r);
      basic[r] = right[r] * inverse[r][r];
    }
  }

  private static double entry(Column column, int row) {
    for (int k = 0; k < column.at().length; k++) {
      if (column.at()[k] == row) {
        return column.entries()[k];
      }
    }
    throw new IllegalArgumentException("a column of the first basis has nothing in its own row");
  }

  Column column(int row) {
    return columns[row];
  }

  /** Ends the search: from now on each row has what it asks for. */
  void settle() {
    right = exact;
    refresh();
  }

  /** How often the column of a row is used. */
  double value(int row) {
    return basic[row];
  }

  boolean isFeasible() {
    for (int r = 0; r < rows; r++) {
      if (columns[r].standsIn() && basic[r] > NOTHING) {
        return false;
      }
    }
    return true;
  }

  double cost() {
    double cost = 0;
    for (int r = 0; r < rows; r++) {
      cost += columns[r].cost() * basic[r];
    }
    return cost;
  }

  /** A price for each row, at which no column of the basis gains. */
  double[] duals() {
    double[] duals = new double[rows];
    for (int r = 0; r < rows; r++) {
      double cost = columns[r].cost();
      if (cost != 0) {
        double[] line = inverse[r];
        for (int c = 0; c < rows; c++) {
          duals[c] += cost * line[c];
        }
      }
    }
    budget.spend((long) rows * rows);
    return duals;
  }

  /** Takes a column in for the one that it drives out; false if none is. */
  boolean enter(Column column) {
    double[] moved = new double[rows];
    for (int r = 0; r < rows; r++) {
      double sum = 0;
      for (int k = 0; k < column.at().length; k++) {
        sum += inverse[r][column.at()[k]] * column.entries()[k];
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
    columns[leaving] = column;
    budget.spend((long) rows * rows);
    return true;
  }

  /** Works the inverse out anew, against rounding that adds up. */
  void refresh() {
    double[][] matrix = new double[rows][rows];
    double[][] fresh = new double[rows][rows];
    for (int c = 0; c < rows; c++) {
      fresh[c][c] = 1;
      for (int k = 0; k < columns[c].at().length; k++) {
        matrix[columns[c].at()[k]][c] = columns[c].entries()[k];
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
