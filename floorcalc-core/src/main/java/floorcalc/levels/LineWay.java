package floorcalc.levels;

/**
 * Which way a straightedge lies on a grid of levels.
 *
 * @since 0.1
 */
public enum LineWay {
  /** Along x. */
  ROW("row"),
  /** Along y. */
  COLUMN("column"),
  /** From node to node to the right and along y. */
  RISING_DIAGONAL("rising diagonal"),
  /** From node to node to the right and against y. */
  FALLING_DIAGONAL("falling diagonal");

  private final String words;

  LineWay(String words) {
    this.words = words;
  }

  /**
   * Returns the way in plain words.
   *
   * @return for example {@code "rising diagonal"}, not null
   */
  public String words() {
    return words;
  }
}
