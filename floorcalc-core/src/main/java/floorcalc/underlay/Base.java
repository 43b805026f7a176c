package floorcalc.underlay;

/**
 * What lies below an underlay, as far as it decides what to lay.
 *
 * @since 0.1
 */
public enum Base {
  /** Concrete or a screed. */
  MINERAL("concrete or screed"),
  /** Timber boards or wood-based sheets. */
  WOOD("timber or sheets"),
  /** An old floor that stays. */
  OLD_FLOOR("an old floor"),
  /** Not stated. */
  NOT_STATED("a subfloor that is not stated");

  private final String words;

  Base(String words) {
    this.words = words;
  }

  /**
   * Returns the base in a few words.
   *
   * @return for example {@code "concrete or screed"}, not null
   */
  public String words() {
    return words;
  }
}
