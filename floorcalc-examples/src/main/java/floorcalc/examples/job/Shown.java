package floorcalc.examples.job;

import com.fasterxml.jackson.databind.JsonNode;
import floorcalc.measure.Length;
import floorcalc.measure.TapeNotation;
import java.math.BigDecimal;

/** What was found, in a few words on one line. */
public final class Shown {
  private static final int LONGEST_TEXT = 60;
  private static final int LONGEST_NUMBER = 40;

  private Shown() {
  }

  /** Says what a node is, for example {@code text "six"}, {@code 0} or {@code an array of 3}. */
  static String of(JsonNode node) {
    return switch (node.getNodeType()) {
      case STRING -> "text \"" + plain(node.textValue(), LONGEST_TEXT) + "\"";
      case NUMBER -> number(node.decimalValue());
      case BOOLEAN, NULL -> node.asText();
      case ARRAY -> node.isEmpty() ? "an empty array" : "an array of " + node.size();
      default -> node.isEmpty() ? "an empty object" : "an object";
    };
  }

  /** A number without an exponent where that is short enough to read. */
  static String number(BigDecimal number) {
    long digitsBefore = (long) number.precision() - number.scale();
    boolean readable = digitsBefore <= LONGEST_NUMBER && number.scale() <= LONGEST_NUMBER;
    return plain(readable ? number.toPlainString() : number.toString(), LONGEST_NUMBER + 2);
  }

  /** A length to a tenth of a millimetre. */
  static String tenths(Length length) {
    return TapeNotation.millimetres(1).format(length);
  }

  /**
   * Returns a text on one line: characters that do not show as their code, the end of a long text left off.
   *
   * @param text the text, not null
   * @param longest how many characters are shown
   * @return the line, not null
   */
  public static String plain(String text, int longest) {
    StringBuilder line = new StringBuilder();
    int shown = 0;
    for (int i = 0; i < text.length(); shown++) {
      if (shown == longest) {
        return line.append('…').toString();
      }
      int c = text.codePointAt(i);
      i += Character.charCount(c);
      if (hidden(c)) {
        line.append("\\u{").append(Integer.toHexString(c)).append('}');
      } else {
        line.appendCodePoint(c);
      }
    }
    return line.toString();
  }

  /**
   * Whether a character has no place in a name: it does not show, turns the line round, or cannot be written to XML.
   * A fixed list, so that every version of Java says the same.
   */
  static boolean hidden(int c) {
    return c < 0x20 || c >= 0x7F && c < 0xA0 || c >= 0xD800 && c < 0xE000 || c == 0x2028 || c == 0x2029
        || c >= 0x202A && c <= 0x202E || c >= 0x2066 && c <= 0x2069 || c == 0xFEFF || (c & 0xFFFE) == 0xFFFE;
  }
}
