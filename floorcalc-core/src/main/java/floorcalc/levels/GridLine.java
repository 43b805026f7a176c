package floorcalc.levels;

/**
 * Three or more readings in line.
 *
 * @param way which way the line runs
 * @param number the number of the row, column or diagonal, from 1
 * @param nodes the readings in order
 * @param at how far along the line each one is, in nanometres; equal steps of a diagonal are equal only as far as a
 *     double goes
 */
record GridLine(LineWay way, int number, int[] nodes, double[] at) {
  int size() {
    return nodes.length;
  }

  /** Tells whether somewhere three readings in a row lie within a distance, so that the middle one can be judged. */
  boolean isJudgedBy(double span) {
    for (int i = 2; i < at.length; i++) {
      if (at[i] - at[i - 2] <= span + Chords.TINY) {
        return true;
      }
    }
    return false;
  }
}
