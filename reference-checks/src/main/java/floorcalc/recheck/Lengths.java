package floorcalc.recheck;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.OptionalLong;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads lengths: numbers of millimetres and tape notation, as {@code docs/measure.md} describes it, to whole nanometres. Written a
 * second time from that page, so that a slip of the library's own reader shows.
 */
final class Lengths {
  /** Nanometres in a millimetre. */
  static final double PER_MILLIMETRE = 1e6;
  /** Lengths beyond this many nanometres, 10 km, are no lengths of a floor. */
  private static final long FARTHEST = 10_000_000_000_000L;
  private static final long INCH = 25_400_000;
  private static final int LONGEST_TEXT = 100;

  private static final String DECIMAL = "[0-9]+|[0-9]*\\.[0-9]+";
  private static final String FRACTION = "(?:[0-9]+[ -]+)?[0-9]+/[0-9]+";
  private static final String QUANTITY = "(" + FRACTION + "|" + DECIMAL + ")";
  private static final String INCHES = "(?:inches|inch|in|\")\\.?";
  private static final String FEET = "(?:ft|foot|feet|')\\.?";
  private static final Pattern METRIC = Pattern.compile("(" + DECIMAL + ") *(mm|cm|m)");
  private static final Pattern INCHES_ALONE = Pattern.compile(QUANTITY + " *" + INCHES, Pattern.CASE_INSENSITIVE);
  private static final Pattern FEET_ALONE = Pattern.compile(QUANTITY + " *" + FEET, Pattern.CASE_INSENSITIVE);
  private static final Pattern FEET_AND_INCHES =
      Pattern.compile("([0-9]+) *" + FEET + " *-? *" + QUANTITY + " *" + INCHES, Pattern.CASE_INSENSITIVE);
  private static final String VULGAR = "¼½¾⅐⅑⅒⅓⅔⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞";
  private static final String[] AS_FRACTION = {"1/4", "1/2", "3/4", "1/7", "1/9", "1/10", "1/3", "2/3", "1/5", "2/5", "3/5", "4/5",
      "1/6", "5/6", "1/8", "3/8", "5/8", "7/8"};

  private Lengths() {}

  /** A number of millimetres in nanometres; empty if it is no whole number of them or beyond 10 km. */
  static OptionalLong of(BigDecimal millimetres) {
    if ((long) millimetres.precision() - millimetres.scale() > 9) {
      return OptionalLong.empty();
    }
    BigDecimal plain = millimetres.signum() == 0 ? BigDecimal.ZERO : millimetres.stripTrailingZeros();
    if (plain.scale() > 6) {
      return OptionalLong.empty();
    }
    return within(plain.movePointRight(6).toBigIntegerExact());
  }

  /** A text in tape notation in nanometres; empty if it is none, no whole number of nanometres or beyond 10 km. */
  static OptionalLong of(String tape) {
    if (tape.length() > LONGEST_TEXT) {
      return OptionalLong.empty();
    }
    String text = plain(tape).strip();
    boolean negative = text.startsWith("-") || text.startsWith("−");
    String size = negative ? text.substring(1).strip() : text;
    BigInteger[] length = size.matches("0+") ? whole(BigInteger.ZERO) : read(size);
    if (length == null || length[1].signum() == 0 || length[0].remainder(length[1]).signum() != 0) {
      return OptionalLong.empty();
    }
    BigInteger exact = length[0].divide(length[1]);
    return within(negative ? exact.negate() : exact);
  }

  private static OptionalLong within(BigInteger nanometres) {
    return nanometres.abs().compareTo(BigInteger.valueOf(FARTHEST)) > 0 ? OptionalLong.empty()
        : OptionalLong.of(nanometres.longValueExact());
  }

  /** The nanometres as a numerator and a denominator, null if the text is no length. */
  private static BigInteger[] read(String text) {
    Matcher metric = METRIC.matcher(text);
    if (metric.matches()) {
      long unit = metric.group(2).equals("mm") ? 1_000_000 : metric.group(2).equals("cm") ? 10_000_000 : 1_000_000_000;
      return times(quantity(metric.group(1)), unit);
    }
    Matcher inches = INCHES_ALONE.matcher(text);
    if (inches.matches()) {
      return times(quantity(inches.group(1)), INCH);
    }
    Matcher feet = FEET_ALONE.matcher(text);
    if (feet.matches()) {
      return times(quantity(feet.group(1)), 12 * INCH);
    }
    Matcher both = FEET_AND_INCHES.matcher(text);
    if (!both.matches()) {
      return null;
    }
    BigInteger[] rest = quantity(both.group(2));
    if (rest[0].compareTo(rest[1].multiply(BigInteger.valueOf(12))) >= 0) {
      return null;
    }
    BigInteger whole = new BigInteger(both.group(1)).multiply(BigInteger.valueOf(12)).multiply(rest[1]);
    return times(new BigInteger[] {whole.add(rest[0]), rest[1]}, INCH);
  }

  /** A decimal, a fraction or a whole number with a fraction. */
  private static BigInteger[] quantity(String text) {
    int slash = text.indexOf('/');
    if (slash < 0) {
      BigDecimal decimal = new BigDecimal(text);
      return new BigInteger[] {decimal.unscaledValue(), BigInteger.TEN.pow(decimal.scale())};
    }
    String before = text.substring(0, slash);
    BigInteger bottom = new BigInteger(text.substring(slash + 1));
    String[] parts = before.split("[ -]+");
    BigInteger top = new BigInteger(parts[parts.length - 1]);
    return new BigInteger[] {parts.length == 1 ? top : new BigInteger(parts[0]).multiply(bottom).add(top), bottom};
  }

  private static BigInteger[] whole(BigInteger number) {
    return new BigInteger[] {number, BigInteger.ONE};
  }

  private static BigInteger[] times(BigInteger[] fraction, long factor) {
    return new BigInteger[] {fraction[0].multiply(BigInteger.valueOf(factor)), fraction[1]};
  }

  /** The same text with one sign for each of the marks that mean the same. */
  private static String plain(String tape) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < tape.length(); i++) {
      char c = tape.charAt(i);
      int vulgar = VULGAR.indexOf(c);
      if (vulgar >= 0) {
        text.append(' ').append(AS_FRACTION[vulgar]);
      } else if (Character.isSpaceChar(c) || Character.isWhitespace(c)) {
        text.append(' ');
      } else {
        text.append(c == '′' || c == '’' || c == '‘' ? '\'' : c == '″' || c == '”' || c == '“' ? '"'
            : c == '⁄' || c == '∕' ? '/' : c == '‐' || c == '‑' ? '-' : c);
      }
    }
    return text.toString().replace("''", "\"");
  }
}
