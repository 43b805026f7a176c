package floorcalc.movement;

/**
 * How a board was sawn from the log: which of the two movements of wood its width shows.
 *
 * @since 0.1
 */
public enum Grain {
  /** Flat-sawn (plain-sawn): the width runs along the growth rings and moves most, tangentially. */
  FLAT_SAWN("flat-sawn"),
  /** Quarter-sawn: the width runs across the growth rings and moves least, radially. */
  QUARTER_SAWN("quarter-sawn"),
  /** Rift-sawn or mixed: the mean of the two. */
  MIXED("mixed grain");

  private final String words;

  Grain(String words) {
    this.words = words;
  }

  /**
   * Returns the grain in a few words.
   *
   * @return for example {@code "flat-sawn"}, not null
   */
  public String words() {
    return words;
  }
}
