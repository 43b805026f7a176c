package floorcalc.deviations;

/**
 * A size of a board that a product standard speaks of.
 *
 * @since 0.1
 */
public enum BoardSize {
  /** From end to end. */
  LENGTH("length"),
  /** What a laid board shows: the cover width. */
  WIDTH("cover width"),
  /** From face to back. */
  THICKNESS("thickness"),
  /** The layer of wood above the tongue, or the top layer of a multilayer board. */
  WEAR_LAYER("wear layer");

  private final String words;

  BoardSize(String words) {
    this.words = words;
  }

  /**
   * Returns the size in plain words.
   *
   * @return for example {@code "cover width"}, not null
   */
  public String words() {
    return words;
  }
}
