package floorcalc.measure;

import java.io.Serializable;
import java.util.Objects;

/**
 * A length together with the text it was read from, exactly as it was typed: {@code 12' 7 5/8"} stays
 * {@code 12' 7 5/8"} on every sheet, beside 3851.275&nbsp;mm.
 * <p>
 * Two readings are equal if text and length are; {@code 1' 0"} and {@code 12"} are equal lengths but not equal readings.
 * Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class TapeReading implements Serializable {

  private static final long serialVersionUID = 1L;

  /** The text as it was typed. */
  private final String text;
  /** The length it says. */
  private final Length length;

  private TapeReading(String text, Length length) {
    this.text = text;
    this.length = length;
  }

  /**
   * Reads a text and keeps it.
   *
   * @param text  a length in tape notation, not null
   * @return the reading
   * @throws TapeNotationException if the text is not a length in tape notation; the message shows the place
   * @see TapeNotation#parse(CharSequence)
   */
  public static TapeReading of(String text) {
    return new TapeReading(text, TapeNotation.parse(text));
  }

  /** {@return the text exactly as it was typed, spaces included} */
  public String text() {
    return text;
  }

  /** {@return the length, exact} */
  public Length length() {
    return length;
  }

  @Override
  public boolean equals(Object obj) {
    return obj instanceof TapeReading && ((TapeReading) obj).text.equals(text)
        && ((TapeReading) obj).length.equals(length);
  }

  @Override
  public int hashCode() {
    return Objects.hash(text, length);
  }

  /** {@return the text and the length beside it, such as {@code 12' 7 5/8" (3851.275 mm)}} */
  @Override
  public String toString() {
    return text + " (" + length + ")";
  }

  /** What was read is made anew, so that it keeps every check. */
  private Object readResolve() {
    return of(text);
  }
}
