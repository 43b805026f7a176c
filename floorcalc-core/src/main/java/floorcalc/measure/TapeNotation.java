package floorcalc.measure;

import java.util.Objects;

/** Tape notation: lengths as people write them. */
public final class TapeNotation {

  private TapeNotation() {
  }

  /**
   * Reads a length.
   *
   * @param text  the text, not null
   * @return the length, exact
   * @throws TapeNotationException if the text is not a length in tape notation
   */
  public static Length parse(CharSequence text) {
    String s = Objects.requireNonNull(text, "text").toString();
    if (!s.endsWith(" mm")) {
      throw new TapeNotationException(s, s.length(), "a unit is missing");
    }
    return Length.ofMillimetres(s.substring(0, s.length() - 3));
  }
}
