package floorcalc.drawing;

/**
 * How much room a text takes, on the safe side for every common sans-serif face: the viewer chooses the face. Advance
 * widths are in em, hundredths rounded up, and are at least those of two widely installed faces (DejaVu Sans 2.37 and
 * Liberation Sans 1.07, read from the fonts; a test holds this table against them).
 */
final class TextSize {
  /** How far the baseline lies below the middle of a digit. */
  static final double BASELINE = 0.365;
  private static final double HALF_DIGIT = 0.39;
  private static final double HALF_LINE = 0.62;

  private TextSize() {
  }

  /** Returns the width in em. */
  static double width(String text) {
    return text.codePoints().mapToDouble(TextSize::advance).sum();
  }

  /** Returns half the height in em, above and below the middle of a digit. */
  static double halfHeight(String text) {
    boolean digits = text.chars().allMatch(c -> c >= '0' && c <= '9' || c == '.' || c == '-' || c == '+' || c == 0xA0);
    return digits ? HALF_DIGIT : HALF_LINE;
  }

  private static double advance(int c) {
    if (c >= '0' && c <= '9') {
      return 0.64;
    }
    if (c > 0xFF) {
      return c > 0xFFFF ? 1.5 : c == '\u2013' ? 0.56 : c == '\u2026' || c == '\u2014' ? 1.02 : 1.45;
    }
    return switch (c) {
      case ' ', ',', '.', '/', ':', ';', 'i', 'j', 'l', '\'', '|', '\\', '\u00b7', 0xA0 -> 0.34;
      case 'I', 'r', 't', 'f', '(', ')', '[', ']', '-', '!' -> 0.42;
      case 'm', 'W', '@', '%', '&', '\u00c6', '\u00e6', '\u00a9', '\u00ae', '\u00bc', '\u00bd', '\u00be' -> 1.02;
      case 'w', 'M' -> 0.87;
      default -> c >= 'a' && c <= 'z' ? 0.64 : c >= 'A' && c <= 'Z' ? 0.79 : 0.84;
    };
  }

  /** Returns the text, or its beginning and an ellipsis, so that it is at most so wide. */
  static String cut(String text, double size, double most) {
    if (width(text) * size <= most) {
      return text;
    }
    StringBuilder kept = new StringBuilder();
    double used = width("\u2026") * size;
    for (int i = 0; i < text.length(); ) {
      int c = text.codePointAt(i);
      used += advance(c) * size;
      if (used > most) {
        break;
      }
      kept.appendCodePoint(c);
      i += Character.charCount(c);
    }
    return kept.toString().stripTrailing() + "\u2026";
  }
}
