package floorcalc.working;

/**
 * How sure a statement is: what stands behind it.
 *
 * @since 0.1
 */
public enum Standing {
  /** Read in the work itself, or in a text of the body that issues it. */
  READ("read in the source"),
  /** Read in another text that quotes the work. */
  QUOTED("quoted by another"),
  /** Done by many in the trade; no published source was found. */
  COMMON_PRACTICE("common practice, no source"),
  /** Recalled, not seen in any text. */
  FROM_MEMORY("from memory"),
  /** Follows from a definition or from arithmetic alone. */
  DEFINITION("definition"),
  /** Given by the person who asks. */
  GIVEN("given in the job");

  private final String words;

  Standing(String words) {
    this.words = words;
  }

  /**
   * Returns the standing in plain words.
   *
   * @return for example {@code "common practice, no source"}, not null
   */
  public String words() {
    return words;
  }
}
