package floorcalc.measure;

/**
 * Thrown when a text is not a length in tape notation, or not the plain decimal number asked for.
 * <p>
 * The message is one line: it shows the text in square brackets, the place and what stands there, and says what is
 * wrong and what to write. Characters that do not show, or that would turn the line round, are shown as their code:
 * <pre>
 * cannot read [3,2 m] as a length: at character 2 [,]: write the decimal sign as a point; a comma could be …
 * </pre>
 *
 * @since 0.1
 */
public final class TapeNotationException extends IllegalArgumentException {

  /** The most characters a length or a number may have. */
  static final int MAX_CHARACTERS = 100;

  private static final long serialVersionUID = 1L;
  private static final int SHOWN_OF_LONG_TEXT = 40;

  /** The text as it was given. */
  private final String text;
  /** Where in the text, from 0. */
  private final int position;
  /** What is wrong and what is allowed. */
  private final String reason;

  private TapeNotationException(String message, String text, int position, String reason) {
    super(message);
    this.text = text;
    this.position = position;
    this.reason = reason;
  }

  /** Makes the exception for the fault from one index of the text up to another. */
  static TapeNotationException of(String text, String wanted, int from, int to, String reason) {
    String place = from >= text.length() ? "at its end"
        : "at character " + (from + 1) + " [" + shown(text, from, to) + "]";
    return new TapeNotationException(
        "cannot read [" + shown(text, 0, text.length()) + "] as " + wanted + ": " + place + ": " + reason,
        text, from, reason);
  }

  /** Makes the exception for a text that is too long to be one. */
  static TapeNotationException tooLong(String text, String wanted) {
    String reason = wanted + " has at most " + MAX_CHARACTERS + " characters, but there are " + text.length();
    return new TapeNotationException(
        "cannot read [" + shown(text, 0, SHOWN_OF_LONG_TEXT) + " …] as " + wanted + ": " + reason,
        text, MAX_CHARACTERS, reason);
  }

  /**
   * {@return the text as it was given}
   */
  public String text() {
    return text;
  }

  /**
   * Returns the place of the fault: the index of its first character, or the length of the text if something is missing
   * at its end.
   *
   * @return the index, from 0; the message counts characters from 1
   */
  public int position() {
    return position;
  }

  /**
   * {@return what is wrong and what is allowed, without the text and the place}
   */
  public String reason() {
    return reason;
  }

  private static String shown(String text, int from, int to) {
    StringBuilder line = new StringBuilder();
    int next;
    for (int i = from; i < to; i = next) {
      int c = text.codePointAt(i);
      next = i + Character.charCount(c);
      if (hidden(c)) {
        line.append("\\u{").append(Integer.toHexString(c)).append('}');
      } else {
        line.appendCodePoint(c);
      }
    }
    return line.toString();
  }

  private static boolean hidden(int c) {
    int type = Character.getType(c);
    return type == Character.CONTROL || type == Character.FORMAT || type == Character.SURROGATE
        || type == Character.LINE_SEPARATOR || type == Character.PARAGRAPH_SEPARATOR
        || type == Character.UNASSIGNED || type == Character.PRIVATE_USE;
  }
}
