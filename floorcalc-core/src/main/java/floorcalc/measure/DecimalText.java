package floorcalc.measure;

import java.math.BigDecimal;

/** Reads plain decimal numbers: one minus sign in front, the digits 0 to 9, one point between digits, nothing else. */
final class DecimalText {

  private static final String WANTED = "a decimal number";

  private DecimalText() {
  }

  static BigDecimal read(String text) {
    if (text.length() > TapeNotationException.MAX_CHARACTERS) {
      throw TapeNotationException.tooLong(text, WANTED);
    }
    boolean point = false;
    boolean afterDigit = false;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '.' && afterDigit && !point) {
        point = true;
        afterDigit = false;
      } else if (c >= '0' && c <= '9') {
        afterDigit = true;
      } else if (c != '-' || i != 0) {
        int end = i + Character.charCount(text.codePointAt(i));
        throw TapeNotationException.of(text, WANTED, i, end,
            "write digits 0 to 9 and at most one decimal point between them, such as 2405.5, without a unit");
      }
    }
    if (!afterDigit) {
      throw TapeNotationException.of(text, WANTED, text.length(), text.length(), "a digit is missing");
    }
    return new BigDecimal(text);
  }
}
