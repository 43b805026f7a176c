package floorcalc.measure;

import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.Locale;

/**
 * Reads one length from one text, from left to right and without going back further than one blank.
 * <pre>
 * length  = [ minus ] ( "0" | number unit | whole feet [ hyphen ] number inch )
 * number  = decimal | whole | [ whole ( blank | hyphen ) ] fraction
 * </pre>
 */
final class TapeParser {

  private static final String WANTED = "a length";
  private static final String UNITS = "mm, cm, m, in or ft";
  private static final String EXAMPLE = "such as 3851.5 mm, 3.2 m, 5 3/8\" or 12' 7 5/8\"";
  private static final String VULGAR_FRACTIONS = "¼½¾⅐⅑⅒⅓⅔⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞";
  private static final int[] VULGAR_NUMERATORS = {1, 1, 3, 1, 1, 1, 1, 2, 1, 2, 3, 4, 1, 5, 1, 3, 5, 7};
  private static final int[] VULGAR_DENOMINATORS = {4, 2, 4, 7, 9, 10, 3, 3, 5, 5, 5, 5, 6, 6, 8, 8, 8, 8};
  private static final BigInteger TWELVE = BigInteger.valueOf(12);

  private final String text;
  private int at;

  /** The units, each with its nanometres. */
  private enum Unit {
    MILLIMETRE(1_000_000), CENTIMETRE(10_000_000), METRE(1_000_000_000),
    INCH(Length.NANOMETRES_PER_INCH), FOOT(12 * Length.NANOMETRES_PER_INCH);

    private final BigInteger nanometres;

    Unit(long nanometres) {
      this.nanometres = BigInteger.valueOf(nanometres);
    }

    boolean isMetric() {
      return this == MILLIMETRE || this == CENTIMETRE || this == METRE;
    }
  }

  /** How a number is written. */
  private enum Form { WHOLE, DECIMAL, FRACTION }

  /** An exact number not less than zero, its form and its place in the text. */
  private record Numeral(BigInteger numerator, BigInteger denominator, Form form, int from, int to) { }

  TapeParser(String text) {
    this.text = text;
  }

  Length read() {
    if (text.length() > TapeNotationException.MAX_CHARACTERS) {
      throw TapeNotationException.tooLong(text, WANTED);
    }
    skipBlanks();
    if (atEnd()) {
      throw missing("the text is empty; write a number and its unit, " + EXAMPLE);
    }
    boolean negative = accept("-\u2212");
    skipBlanks();
    if (!atEnd() && peek() == '+') {
      throw unexpected("leave out the plus sign");
    }
    Numeral first = number();
    skipBlanks();
    if (atEnd() && first.form != Form.FRACTION && first.numerator.signum() == 0) {
      return Length.ZERO;
    }
    Unit unit = unit("a unit is missing; write " + UNITS + " after the number");
    if (unit.isMetric() && first.form == Form.FRACTION) {
      throw fault(first.from, first.to, "write millimetres, centimetres and metres with decimals, not as a fraction");
    }
    Numeral value = unit == Unit.FOOT ? withInches(first) : first;
    skipBlanks();
    if (!atEnd()) {
      throw unexpected("nothing may follow here; a length is one number with its unit, or feet and then inches");
    }
    return length(value, value == first ? unit : Unit.INCH, negative);
  }

  /** Returns feet and the inches that follow them as inches, or the feet as they are if nothing follows. */
  private Numeral withInches(Numeral feet) {
    skipBlanks();
    boolean hyphen = accept("-\u2010\u2011");
    skipBlanks();
    if (!hyphen && !atNumber()) {
      return feet;
    }
    if (feet.form != Form.WHOLE) {
      String written = text.substring(feet.from, feet.to);
      throw fault(feet.from, feet.to, "beside inches the feet must be a whole number"
          + (feet.form == Form.DECIMAL ? "; " + written + " ft is a decimal number of feet, never feet and inches" : ""));
    }
    Numeral inches = number();
    skipBlanks();
    int place = at;
    if (unit("the inch mark or unit is missing after the inches; write for example 12' 7\"") != Unit.INCH) {
      throw fault(place, at, "only inches may follow feet, as in 12' 7 5/8\"");
    }
    if (inches.numerator.compareTo(TWELVE.multiply(inches.denominator)) >= 0) {
      throw fault(inches.from, inches.to,
          "beside feet the inches must be less than 12; carry them into the feet, or write inches alone");
    }
    BigInteger feetAsInches = feet.numerator.multiply(TWELVE).multiply(inches.denominator);
    return new Numeral(feetAsInches.add(inches.numerator), inches.denominator, inches.form, feet.from, inches.to);
  }

  private Length length(Numeral value, Unit unit, boolean negative) {
    BigInteger dividend = value.numerator.multiply(unit.nanometres);
    BigInteger signed = negative ? dividend.negate() : dividend;
    BigInteger nearest = Whole.quotient(signed, value.denominator, RoundingMode.HALF_EVEN, () -> text);
    if (!Whole.fitsLong(nearest)) {
      throw fault(value.from, value.to, "this is outside the range of a length, about 9.2 million km either way");
    }
    Length length = Length.ofNanometres(nearest.longValue());
    if (!nearest.multiply(value.denominator).equals(signed)) {
      throw fault(value.from, value.to, "this is not a whole number of nanometres; the nearest is " + length
          + "; halves to sixty-fourths of an inch and six decimals of a millimetre are whole");
    }
    return length;
  }

  private boolean atNumber() {
    return !atEnd() && (isDigit(peek()) || peek() == '.' || VULGAR_FRACTIONS.indexOf(peek()) >= 0);
  }

  private Numeral number() {
    int from = at;
    if (!atEnd() && VULGAR_FRACTIONS.indexOf(peek()) >= 0) {
      return vulgarFraction(from, BigInteger.ZERO);
    }
    String whole = digits();
    if (!atEnd() && peek() == '.') {
      return decimal(from, whole);
    }
    if (whole.isEmpty()) {
      throw unexpected("a number is missing; write digits 0 to 9, " + EXAMPLE);
    }
    BigInteger number = new BigInteger(whole);
    if (accept("/\u2044\u2215")) {
      return fraction(from, BigInteger.ZERO, number, from);
    }
    int end = at;
    boolean apart = accept("-\u2010\u2011") || skipBlanks();
    int next = at;
    if (!atEnd() && VULGAR_FRACTIONS.indexOf(peek()) >= 0) {
      return vulgarFraction(from, number);
    }
    if (apart && !atEnd() && isDigit(peek())) {
      BigInteger numerator = new BigInteger(digits());
      if (!accept("/\u2044\u2215")) {
        throw fault(next, at, "two numbers stand side by side; digits are not grouped, a fraction is written 5 3/8,"
            + " and feet have their mark or unit before the inches");
      }
      return fraction(from, number, numerator, next);
    }
    at = end;
    return new Numeral(number, BigInteger.ONE, Form.WHOLE, from, end);
  }

  private Numeral decimal(int from, String whole) {
    at++;
    String decimals = digits();
    if (decimals.isEmpty()) {
      throw unexpected("a digit is missing after the decimal point");
    }
    int end = at;
    skipBlanks();
    if (atNumber()) {
      throw unexpected("a decimal number has one decimal point and takes neither a fraction nor grouped digits");
    }
    at = end;
    return new Numeral(new BigInteger(whole + decimals), BigInteger.TEN.pow(decimals.length()), Form.DECIMAL, from, end);
  }

  private Numeral vulgarFraction(int from, BigInteger whole) {
    int index = VULGAR_FRACTIONS.indexOf(peek());
    at++;
    return mixed(from, whole, BigInteger.valueOf(VULGAR_NUMERATORS[index]),
        BigInteger.valueOf(VULGAR_DENOMINATORS[index]));
  }

  private Numeral fraction(int from, BigInteger whole, BigInteger numerator, int fractionFrom) {
    int place = at;
    String digits = digits();
    if (digits.isEmpty()) {
      throw unexpected("the denominator of the fraction is missing; write for example 3/8");
    }
    BigInteger denominator = new BigInteger(digits);
    if (denominator.signum() == 0) {
      throw fault(place, at, "the denominator of a fraction must be at least 1");
    }
    if (fractionFrom != from && numerator.compareTo(denominator) >= 0) {
      throw fault(fractionFrom, at, "a fraction beside a whole number must be less than 1");
    }
    return mixed(from, whole, numerator, denominator);
  }

  private Numeral mixed(int from, BigInteger whole, BigInteger numerator, BigInteger denominator) {
    return new Numeral(whole.multiply(denominator).add(numerator), denominator, Form.FRACTION, from, at);
  }

  private Unit unit(String ifMissing) {
    if (atEnd()) {
      throw missing(ifMissing);
    }
    char mark = peek();
    if (accept("\"″”“")) {
      return Unit.INCH;
    }
    if (accept("'′’‘")) {
      return accept(String.valueOf(mark)) ? Unit.INCH : Unit.FOOT;
    }
    int from = at;
    while (!atEnd() && (peek() >= 'a' && peek() <= 'z' || peek() >= 'A' && peek() <= 'Z')) {
      at++;
    }
    String word = text.substring(from, at);
    Unit unit = metric(word);
    if (unit == null) {
      unit = imperial(word.toLowerCase(Locale.ROOT));
      if (unit != null) {
        accept(".");
      }
    }
    if (unit == null) {
      if (!word.isEmpty()) {
        throw fault(from, at, "this is no unit of length known here; write the unit as " + UNITS);
      }
      throw unexpected(peek() == '-' ? "write a mixed number with one blank or one hyphen, as in 5 3/8 or 5-3/8"
          : "write the unit as " + UNITS);
    }
    return unit;
  }

  private static Unit metric(String word) {
    switch (word) {
      case "mm": return Unit.MILLIMETRE;
      case "cm": return Unit.CENTIMETRE;
      case "m": return Unit.METRE;
      default: return null;
    }
  }

  private static Unit imperial(String word) {
    switch (word) {
      case "in": case "inch": case "inches": return Unit.INCH;
      case "ft": case "foot": case "feet": return Unit.FOOT;
      default: return null;
    }
  }

  private String digits() {
    int from = at;
    while (!atEnd() && isDigit(peek())) {
      at++;
    }
    return text.substring(from, at);
  }

  private boolean skipBlanks() {
    int from = at;
    while (!atEnd() && isBlank(peek())) {
      at++;
    }
    return at > from;
  }

  private boolean accept(String oneOf) {
    if (atEnd() || oneOf.indexOf(peek()) < 0) {
      return false;
    }
    at++;
    return true;
  }

  private boolean atEnd() {
    return at == text.length();
  }

  private char peek() {
    return text.charAt(at);
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  /** Blanks within a line: space, tab, no-break space, the spaces of fixed width, narrow no-break space. */
  private static boolean isBlank(char c) {
    return c == ' ' || c == '\t' || c == '\u00A0' || c >= '\u2000' && c <= '\u200A' || c == '\u202F';
  }

  private TapeNotationException unexpected(String reason) {
    if (atEnd()) {
      return missing(reason);
    }
    int c = text.codePointAt(at);
    int end = at + Character.charCount(c);
    if (c == ',') {
      return fault(at, end, "write the decimal sign as a point; a comma could also group thousands");
    }
    if (Character.isDigit(c) && c > '9') {
      return fault(at, end, "write numbers with the digits 0 to 9");
    }
    return fault(at, end, reason);
  }

  private TapeNotationException missing(String reason) {
    return fault(text.length(), text.length(), reason);
  }

  private TapeNotationException fault(int from, int to, String reason) {
    return TapeNotationException.of(text, WANTED, from, to, reason);
  }
}
