package floorcalc.reference.check;

/** How an answer compares with what a source prints. */
public enum Verdict {
  /** The answer is the printed figure, to the tolerance. */
  AGREES("agrees"),
  /** The answer is another. */
  DIFFERS("differs"),
  /** The implementation does not answer this question. */
  NOT_ANSWERED("not answered");

  private final String words;

  Verdict(String words) {
    this.words = words;
  }

  /**
   * Returns the verdict in plain words.
   *
   * @return the words, not null
   */
  public String words() {
    return words;
  }
}
