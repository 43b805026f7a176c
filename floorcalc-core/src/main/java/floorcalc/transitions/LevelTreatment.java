package floorcalc.transitions;

/**
 * What a difference of height between two floors asks for.
 *
 * @since 0.1
 */
public enum LevelTreatment {
  /** Nothing: the edge may stay as it is. */
  NONE("no treatment"),
  /** A T profile evens it out. */
  T_PROFILE("a T profile"),
  /** A reducer. */
  REDUCER("a reducer"),
  /** A bevelled edge, no steeper than its slope. */
  BEVEL("a bevelled edge"),
  /** A chamfered threshold or a bar. */
  THRESHOLD("a chamfered threshold or a bar"),
  /** A ramp, no steeper than its slope. */
  RAMP("a ramp"),
  /** The set says nothing on a difference of this size. */
  NOT_STATED("nothing is said");

  private final String words;

  LevelTreatment(String words) {
    this.words = words;
  }

  /**
   * Returns the treatment in words.
   *
   * @return such as {@code "a reducer"}, not null
   */
  public String words() {
    return words;
  }
}
