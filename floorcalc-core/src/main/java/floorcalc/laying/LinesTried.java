package floorcalc.laying;

/**
 * How many first rows are tried along one direction of a room, so that large floors end in time.
 * <p>
 * The whole room is laid once for each. Common sizes of room are bound by {@link #MOST} alone.
 *
 * @param bays the bays in which other first rows are tried, from the first bay on
 * @param lines the most first rows tried in each of them
 */
record LinesTried(int bays, int lines) {
  private static final int MOST = 24;
  /** Tried in each bay of a room with many rows, where its pieces let so many. */
  private static final int FEWEST = 3;
  /** Rows laid in all in each bay. */
  private static final int ROWS = 3_000;
  /** Pieces laid in all, over all bays: on a floor of more, no other first row is tried. */
  private static final int PIECES = 300_000;

  /**
   * For a room of so many rows and bays that may be moved.
   *
   * @param pieces laid each time, counted once for each place of a fixed pattern that is tried
   */
  static LinesTried of(int rows, int bays, long pieces) {
    int layings = (int) (PIECES / Math.max(1, pieces));
    int byRows = Math.max(FEWEST, Math.min(MOST, ROWS / Math.max(1, rows)));
    return new LinesTried(Math.min(bays, layings), Math.min(byRows, Math.max(1, layings / Math.max(1, bays))));
  }
}
