package floorcalc.outline;

/**
 * Thrown when a text is not a polygon in well-known text. Its message shows the place and says what is allowed there.
 *
 * @since 0.1
 */
public final class WktException extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;
  /** How much of the text the message shows on either side of the place. */
  private static final int SHOWN = 20;

  /** Where in the text, from 0. */
  private final int position;
  /** What is wrong and what is allowed. */
  private final String reason;

  WktException(CharSequence text, int position, String reason) {
    super("cannot read well-known text at position " + position + " (" + excerpt(text, position) + "): " + reason);
    this.position = position;
    this.reason = reason;
  }

  private static String excerpt(CharSequence text, int position) {
    if (position >= text.length()) {
      return "its end";
    }
    int from = Math.max(0, position - SHOWN);
    int to = Math.min(text.length(), position + SHOWN);
    String before = (from > 0 ? "…" : "") + text.subSequence(from, position);
    String after = text.subSequence(position, to) + (to < text.length() ? "…" : "");
    return "\"" + (before + "►" + after).replaceAll("\\p{Cc}", " ") + "\"";
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
   * @return the reason, not null
   */
  public String reason() {
    return reason;
  }
}
