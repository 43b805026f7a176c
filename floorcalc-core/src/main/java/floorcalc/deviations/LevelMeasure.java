package floorcalc.deviations;

/**
 * How a floor is found to be out of level: between which of its readings.
 *
 * @since 0.1
 */
public enum LevelMeasure {
  /** Between the two ends of a line of readings across the floor. */
  ENDS_OF_LINE("between the ends of a line across"),
  /** Between any two readings of a line across the floor that are at least a metre apart. */
  ALONG_LINE("between two readings of a line across"),
  /** Between the ends of a rule of some length, laid anywhere along a line across the floor. */
  UNDER_RULE("under a rule"),
  /** Between the highest and the lowest reading of a line across the floor. */
  WHOLE_LINE("over a line across"),
  /** Between any reading and the level line that the floor is to be at. */
  FROM_DATUM("from the level line");

  private final String words;

  LevelMeasure(String words) {
    this.words = words;
  }

  /**
   * Returns the measure in plain words.
   *
   * @return for example {@code "from the level line"}, not null
   */
  public String words() {
    return words;
  }
}
