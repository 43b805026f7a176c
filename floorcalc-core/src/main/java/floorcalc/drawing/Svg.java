package floorcalc.drawing;

/**
 * Writes SVG text. Numbers are millimetres on paper with at most two decimals, lines end in a line feed, and every
 * text that comes from outside is escaped, so the bytes depend on the input alone. Not thread-safe.
 */
final class Svg {
  private final StringBuilder out = new StringBuilder(4096);

  /** Writes one line as it stands. */
  Svg line(String markup) {
    out.append(markup).append('\n');
    return this;
  }

  /** Writes all that another has written. */
  Svg add(Svg other) {
    out.append(other.out);
    return this;
  }

  /** Writes an element that holds text. */
  Svg element(String name, String attributes, String text) {
    out.append('<').append(name);
    if (!attributes.isEmpty()) {
      out.append(' ').append(attributes);
    }
    out.append('>').append(escaped(text)).append("</").append(name).append(">\n");
    return this;
  }

  @Override
  public String toString() {
    return out.toString();
  }

  /** Returns a number rounded to hundredths, without trailing zeros, without an exponent, never {@code -0}. */
  static String number(double value) {
    StringBuilder text = new StringBuilder(10);
    appendNumber(text, value);
    return text.toString();
  }

  static void appendNumber(StringBuilder text, double value) {
    long hundredths = (long) StrictMath.rint(value * 100);
    if (hundredths < 0) {
      text.append('-');
      hundredths = -hundredths;
    }
    text.append(hundredths / 100);
    int rest = (int) (hundredths % 100);
    if (rest != 0) {
      text.append('.').append((char) ('0' + rest / 10));
      if (rest % 10 != 0) {
        text.append((char) ('0' + rest % 10));
      }
    }
  }

  /** Returns an attribute such as {@code x="1.5"}. */
  static String attribute(String name, double value) {
    return name + "=\"" + number(value) + '"';
  }

  /** Returns text that may stand between tags and between double quotes, with what XML does not allow replaced. */
  static String escaped(String text) {
    StringBuilder safe = new StringBuilder(text.length() + 16);
    text.codePoints().forEach(c -> appendEscaped(safe, c));
    return safe.toString();
  }

  private static void appendEscaped(StringBuilder safe, int c) {
    switch (c) {
      case '&' -> safe.append("&amp;");
      case '<' -> safe.append("&lt;");
      case '>' -> safe.append("&gt;");
      case '"' -> safe.append("&quot;");
      case '\'' -> safe.append("&#39;");
      default -> safe.appendCodePoint(allowed(c) ? c : '\uFFFD');
    }
  }

  /** XML 1.0, fifth edition, production 2 (Char), less the controls and the marks that turn the reading direction. */
  private static boolean allowed(int c) {
    boolean character = c >= 0x20 && c < 0x7F || c >= 0xA0 && c < 0xD800 || c >= 0xE000 && c < 0xFFFE || c >= 0x10000;
    boolean turnsReading = c >= 0x202A && c <= 0x202E || c >= 0x2066 && c <= 0x2069;
    boolean breaksLine = c == 0x2028 || c == 0x2029;
    return character && !turnsReading && !breaksLine;
  }

  /**
   * Returns a name as the start of an identifier: letters, digits and hyphens stay, anything else becomes its code
   * between underscores, so two names never become one.
   */
  static String identifier(String name) {
    return identifier("bay-", name);
  }

  /** Returns the same with another beginning. */
  static String identifier(String beginning, String name) {
    StringBuilder id = new StringBuilder(beginning);
    name.codePoints().forEach(c -> {
      boolean plain = c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z' || c >= '0' && c <= '9' || c == '-';
      if (plain) {
        id.append((char) c);
      } else {
        id.append('_').append(Integer.toHexString(c)).append('_');
      }
    });
    return id.toString();
  }
}
