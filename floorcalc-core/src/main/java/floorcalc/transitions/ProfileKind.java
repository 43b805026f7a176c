package floorcalc.transitions;

/**
 * The kinds of transition profile.
 *
 * @since 0.1
 */
public enum ProfileKind {
  /** Over a break between two floors of one height. */
  T("T"),
  /** From one height to another. */
  REDUCER("reducer"),
  /** Where a floor ends at a fixed edge or at another finish. */
  END("end"),
  /** The edge of a step. */
  NOSING("nosing");

  private final String word;

  ProfileKind(String word) {
    this.word = word;
  }

  /**
   * Returns the word that plans use.
   *
   * @return {@code "T"}, {@code "reducer"}, {@code "end"} or {@code "nosing"}, not null
   */
  public String word() {
    return word;
  }
}
