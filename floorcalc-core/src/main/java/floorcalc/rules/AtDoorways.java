package floorcalc.rules;

/**
 * What a floor does at a doorway that it could run through.
 *
 * @since 0.1
 */
public enum AtDoorways {
  /** It runs through, unless the floor would get too long, too wide or could not move. */
  RUN_THROUGH("run through"),
  /** It has an expansion break there. */
  BREAK("a break");

  private final String words;

  AtDoorways(String words) {
    this.words = words;
  }

  /**
   * Returns what is done, in words.
   *
   * @return the words, not null
   */
  @Override
  public String toString() {
    return words;
  }
}
