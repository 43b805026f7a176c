package floorcalc.fittings;

/**
 * One of the four sides of a board that lies face up on the floor, seen with the starting wall behind.
 *
 * @since 0.1
 */
public enum BoardSide {
  /** The end at low x: on the left, where a row starts. */
  START_END("start end"),
  /** The end at high x: on the right. */
  FAR_END("far end"),
  /** The edge at low y: the near one, that faces the starting wall. */
  START_EDGE("start edge"),
  /** The edge at high y. */
  FAR_EDGE("far edge");

  private final String words;

  BoardSide(String words) {
    this.words = words;
  }

  /**
   * Returns the side in plain words.
   *
   * @return for example {@code "start edge"}, not null
   */
  public String words() {
    return words;
  }

  /**
   * Tells whether it is an end of the board.
   *
   * @return true for the two ends, false for the two edges
   */
  public boolean isEnd() {
    return this == START_END || this == FAR_END;
  }
}
