package floorcalc.trims;

/**
 * A column of the linear program: what one bar of a load gives to each row, or a unit in one row: a slack, a surplus, or a
 * stand-in for pieces that no bar is left for.
 */
record Column(Load load, int[] at, double[] entries, double cost, boolean standsIn) {

  /** A unit without cost. */
  static Column unit(int row, double entry) {
    return new Column(null, new int[] {row}, new double[] {entry}, 0, false);
  }

  static Column standIn(int row, double cost) {
    return new Column(null, new int[] {row}, new double[] {1}, cost, true);
  }

  /** What it gives, at a price for each row. */
  double worth(double[] prices) {
    double worth = 0;
    for (int k = 0; k < at.length; k++) {
      worth += prices[at[k]] * entries[k];
    }
    return worth;
  }
}
