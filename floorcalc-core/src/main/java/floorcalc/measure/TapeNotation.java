package floorcalc.measure;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.Objects;

/**
 * Tape notation: lengths as people read them off a tape and write them down. {@link #parse(CharSequence)} reads every
 * form; an object of this class writes one.
 * <p>
 * What is read, always exactly:
 * <ul>
 * <li>millimetres, centimetres, metres: {@code 185 mm}, {@code 18.5 cm}, {@code 3.2 m};
 * <li>inches: {@code 5 3/8"}, {@code 5-3/8 in}, {@code 5⅜″}, {@code 3/8 inch}, {@code 107.625 in}, {@code 42''};
 * <li>feet: {@code 12 ft}, {@code 12.5'}, which is twelve and a half feet, never 12 ft 5 in;
 * <li>feet and inches: {@code 12' 7 5/8"}, {@code 12'-7 5/8"}, {@code 12 ft 7 5/8 in}, with whole feet and less than
 * 12 inches;
 * <li>a minus sign in front of the whole; and {@code 0} without a unit.
 * </ul>
 * The decimal sign is a point. Digits are not grouped. Spaces are free around numbers, marks and units. The words for
 * feet and inches may be in capitals and end in a point; {@code mm}, {@code cm} and {@code m} are small letters. What is
 * refused: a number without a unit, a comma, digits of other scripts, and what is not a whole number of nanometres, such
 * as 1/3&nbsp;in, 1/128&nbsp;in or a seventh decimal of a millimetre.
 * <p>
 * What is written is rounded for the eye alone, to the nearest step and a half to the even one unless
 * {@link #withRounding(RoundingMode)} says otherwise; the length itself never changes. Fractions come in lowest terms, a
 * full inch or foot is carried, and a minus sign stands once, in front; what rounds to zero has none.
 * <pre>{@code
 * TapeNotation tape = TapeNotation.feetAndInches(16);
 * tape.format(Length.ofMillimetres("3657.5"));              // 12' 0"
 * TapeNotation.metres(2).format(Length.ofMillimetres(3657)); // 3.66 m
 * }</pre>
 * Immutable and thread-safe; the same text in every locale.
 *
 * @since 0.1
 */
public final class TapeNotation {

  private static final int FINEST_DENOMINATOR = 64;
  private static final int INCHES_PER_FOOT = 12;
  private static final int CENTIMETRE_DECIMALS = 7;
  private static final int METRE_DECIMALS = 9;

  private final Writer writer;
  private final RoundingMode rounding;

  /** Writes a length in one form, rounding as told. */
  @FunctionalInterface
  private interface Writer {
    String write(Length length, RoundingMode rounding);
  }

  private TapeNotation(Writer writer, RoundingMode rounding) {
    this.writer = writer;
    this.rounding = rounding;
  }

  /**
   * Reads a length in tape notation.
   *
   * @param text  the text, not null, at most 100 characters
   * @return the length, exact
   * @throws TapeNotationException if the text is not a length in tape notation; the message shows the place
   */
  public static Length parse(CharSequence text) {
    return new TapeParser(Objects.requireNonNull(text, "text").toString()).read();
  }

  /** {@return the notation in millimetres with as many decimals as the length has, so exact: {@code 3851.275 mm}} */
  public static TapeNotation millimetres() {
    return exact(Length.MILLIMETRE_DECIMALS, " mm");
  }

  /**
   * {@return the notation in millimetres with a fixed number of decimals: {@code 3851.3 mm}}
   *
   * @param decimals  the decimals, 0 to 6
   * @throws IllegalArgumentException if the decimals are outside that range
   */
  public static TapeNotation millimetres(int decimals) {
    return rounded(Length.MILLIMETRE_DECIMALS, decimals, " mm");
  }

  /** {@return the notation in centimetres with as many decimals as the length has, so exact: {@code 385.1275 cm}} */
  public static TapeNotation centimetres() {
    return exact(CENTIMETRE_DECIMALS, " cm");
  }

  /**
   * {@return the notation in centimetres with a fixed number of decimals: {@code 385.1 cm}}
   *
   * @param decimals  the decimals, 0 to 7
   * @throws IllegalArgumentException if the decimals are outside that range
   */
  public static TapeNotation centimetres(int decimals) {
    return rounded(CENTIMETRE_DECIMALS, decimals, " cm");
  }

  /** {@return the notation in metres with as many decimals as the length has, so exact: {@code 3.851275 m}} */
  public static TapeNotation metres() {
    return exact(METRE_DECIMALS, " m");
  }

  /**
   * {@return the notation in metres with a fixed number of decimals: {@code 3.851 m}}
   *
   * @param decimals  the decimals, 0 to 9
   * @throws IllegalArgumentException if the decimals are outside that range
   */
  public static TapeNotation metres(int decimals) {
    return rounded(METRE_DECIMALS, decimals, " m");
  }

  /**
   * {@return the notation in inches and a fraction: {@code 151 5/8"}}
   *
   * @param denominator  the finest fraction of an inch: 1, 2, 4, 8, 16, 32 or 64
   * @throws IllegalArgumentException if the denominator is none of these
   */
  public static TapeNotation inches(int denominator) {
    requireTapeFraction(denominator);
    return new TapeNotation((length, rounding) -> {
      long steps = steps(length, denominator, rounding);
      return sign(steps) + inches(Math.abs(steps), denominator);
    }, RoundingMode.HALF_EVEN);
  }

  /**
   * {@return the notation in feet, inches and a fraction: {@code 12' 7 5/8"}, {@code 12' 0 5/8"}; less than a foot is
   * written in inches alone}
   *
   * @param denominator  the finest fraction of an inch: 1, 2, 4, 8, 16, 32 or 64
   * @throws IllegalArgumentException if the denominator is none of these
   */
  public static TapeNotation feetAndInches(int denominator) {
    requireTapeFraction(denominator);
    return new TapeNotation((length, rounding) -> {
      long steps = steps(length, denominator, rounding);
      long stepsPerFoot = (long) INCHES_PER_FOOT * denominator;
      long feet = Math.abs(steps) / stepsPerFoot;
      long rest = Math.abs(steps) % stepsPerFoot;
      String zero = feet != 0 && rest != 0 && rest < denominator ? "0 " : "";
      return sign(steps) + (feet == 0 ? "" : feet + "' ") + zero + inches(rest, denominator);
    }, RoundingMode.HALF_EVEN);
  }

  /**
   * Returns this notation with another way of rounding, such as {@link RoundingMode#DOWN} for a piece that must not come
   * out too long on paper.
   *
   * @param mode  how to round, not null
   * @return the notation; with {@link RoundingMode#UNNECESSARY} it refuses a length that is not on its step
   */
  public TapeNotation withRounding(RoundingMode mode) {
    return new TapeNotation(writer, Objects.requireNonNull(mode, "mode"));
  }

  /**
   * Writes a length in this notation.
   *
   * @param length  the length, not null
   * @return the text; {@link #parse(CharSequence)} reads back the length it shows
   * @throws ArithmeticException if the rounding is {@link RoundingMode#UNNECESSARY} and would be necessary
   */
  public String format(Length length) {
    return writer.write(Objects.requireNonNull(length, "length"), rounding);
  }

  private static TapeNotation exact(int unitDecimals, String unit) {
    return new TapeNotation((length, rounding) -> {
      BigDecimal value = BigDecimal.valueOf(length.toNanometres(), unitDecimals);
      return value.stripTrailingZeros().toPlainString() + unit;
    }, RoundingMode.HALF_EVEN);
  }

  private static TapeNotation rounded(int unitDecimals, int decimals, String unit) {
    if (decimals < 0 || decimals > unitDecimals) {
      throw new IllegalArgumentException(
          "decimals of" + unit + " must be 0 to " + unitDecimals + ", but was " + decimals);
    }
    BigInteger step = BigInteger.TEN.pow(unitDecimals - decimals);
    return new TapeNotation((length, rounding) -> {
      BigInteger steps = Whole.quotient(BigInteger.valueOf(length.toNanometres()), step, rounding,
          () -> length + " in steps of " + new BigDecimal(BigInteger.ONE, decimals).toPlainString() + unit);
      return new BigDecimal(steps, decimals).toPlainString() + unit;
    }, RoundingMode.HALF_EVEN);
  }

  private static void requireTapeFraction(int denominator) {
    if (denominator < 1 || denominator > FINEST_DENOMINATOR || Integer.bitCount(denominator) != 1) {
      throw new IllegalArgumentException(
          "denominator must be 1, 2, 4, 8, 16, 32 or 64, but was " + denominator);
    }
  }

  private static long steps(Length length, int denominator, RoundingMode rounding) {
    return Whole.quotient(BigInteger.valueOf(length.toNanometres()),
        BigInteger.valueOf(Length.NANOMETRES_PER_INCH / denominator), rounding,
        () -> length + " in steps of 1/" + denominator + " in").longValueExact();
  }

  private static String sign(long steps) {
    return steps < 0 ? "-" : "";
  }

  private static String inches(long steps, int denominator) {
    long whole = steps / denominator;
    long numerator = steps % denominator;
    if (numerator == 0) {
      return whole + "\"";
    }
    long common = Long.lowestOneBit(numerator);   // the denominator is a power of two
    String fraction = numerator / common + "/" + denominator / common + "\"";
    return whole == 0 ? fraction : whole + " " + fraction;
  }
}
