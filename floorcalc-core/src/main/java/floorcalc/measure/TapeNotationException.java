package floorcalc.measure;

/**
 * Thrown when a text is not a length in tape notation, or not the plain decimal number asked for. Its message shows the
 * place in the text and says what is allowed there.
 */
public final class TapeNotationException extends IllegalArgumentException {

  private static final long serialVersionUID = 1L;

  /** The text as it was given. */
  private final String text;
  /** Where in the text, from 0. */
  private final int position;
  /** What is wrong and what is allowed. */
  private final String reason;

  TapeNotationException(String text, int position, String reason) {
    super("cannot read \"" + text + "\" at position " + position + ": " + reason);
    this.text = text;
    this.position = position;
    this.reason = reason;
  }

  /**
   * Returns the text as it was given.
   *
   * @return the text
   */
  public String text() {
    return text;
  }

  /**
   * Returns the place of the fault: the index of its first character, or the length of the text if something is missing
   * at its end.
   *
   * @return the index, from 0
   */
  public int position() {
    return position;
  }

  /**
   * Returns what is wrong and what is allowed, without the text itself.
   *
   * @return the reason
   */
  public String reason() {
    return reason;
  }
}
