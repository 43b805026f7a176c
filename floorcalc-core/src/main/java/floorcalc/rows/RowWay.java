package floorcalc.rows;

/**
 * How the width of the first row is chosen.
 *
 * @since 0.1
 */
public enum RowWay {
  /**
   * A full first row where every strip is then at least the minimum; otherwise the start line that makes the
   * narrowest strip as wide as possible.
   */
  AS_NEEDED,
  /** A full first row, ripped only as much as the last row needs to reach the minimum. */
  LEAST_CUT,
  /** First and last row of the same width. */
  BALANCED,
  /** The start line that makes the narrowest strip at any stop as wide as possible. */
  WIDEST_STRIP,
  /**
   * Of the start lines at which every strip is at least the minimum, the one with which the floor takes the fewest boards;
   * of equal ones the one with the widest narrowest strip. Only who counts boards can tell, as the planner does. A width or
   * stops alone are divided as with {@link #AS_NEEDED}: every way to divide a plain width takes boards for as many rows.
   */
  FEWEST_BOARDS
}
