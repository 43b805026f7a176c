package floorcalc.bays;

/**
 * How the rows of the bays of one room lie to each other.
 *
 * @since 0.1
 */
public enum ThroughBreaks {
  /** Each bay has the first row that suits it best. */
  EACH_BAY_ITS_OWN,
  /** All bays of a room follow one start line: their rows are in line through every break. */
  ONE_START_LINE
}
