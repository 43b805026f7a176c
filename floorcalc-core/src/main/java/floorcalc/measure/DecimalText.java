package floorcalc.measure;

import java.math.BigDecimal;

/** Reads plain decimal numbers: ASCII digits, one point, one minus sign in front, nothing else. */
final class DecimalText {

  static final int MAX_CHARACTERS = 100;

  private DecimalText() {
  }

  static BigDecimal read(String text) {
    if (text.length() > MAX_CHARACTERS) {
      throw new TapeNotationException(text, MAX_CHARACTERS, "a number has at most 100 characters");
    }
    int digits = 0;
    int points = 0;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c >= '0' && c <= '9') {
        digits++;
      } else if (c == '.' && points == 0 && digits > 0) {
        points++;
      } else if (!(c == '-' && i == 0)) {
        throw new TapeNotationException(text, i, "write a plain decimal number such as 2405.5, without unit");
      }
    }
    if (digits == 0 || text.charAt(text.length() - 1) == '.') {
      throw new TapeNotationException(text, text.length(), "a digit is missing");
    }
    return new BigDecimal(text);
  }
}
