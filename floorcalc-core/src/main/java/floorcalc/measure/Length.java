package floorcalc.measure;

import java.io.Serializable;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.Objects;
import java.util.function.Supplier;

/**
 * An exact length, positive, zero or negative, held as a whole number of nanometres in a {@code long}.
 * <p>
 * One inch is exactly 25&nbsp;400&nbsp;000&nbsp;nm and 1/64&nbsp;in exactly 396&nbsp;875&nbsp;nm, so readings in
 * millimetres and readings in feet, inches and fractions are added and compared without any rounding. The range is
 * that of a {@code long}: about 9.2&nbsp;million kilometres either way. A result outside it is refused with an
 * {@link ArithmeticException}, never wrapped round.
 * <p>
 * Factories called {@code of} are exact or refuse; a factory called {@code from} may round and asks how. Zero is a
 * length like any other. A negative length is a difference, a shortfall or a distance to the other side; what is asked
 * to be a size says so where it is asked.
 * <pre>{@code
 * Length run = Length.parse("12' 7 5/8\"");          // 3851.275 mm
 * long rows = run.dividedBy(Length.ofMillimetres(185)); // 20
 * Length rest = run.remainder(Length.ofMillimetres(185)); // 151.275 mm
 * }</pre>
 * Immutable and thread-safe.
 *
 * @see TapeNotation
 * @since 0.1
 */
public final class Length implements Comparable<Length>, Serializable {

  private static final long serialVersionUID = 1L;

  static final long NANOMETRES_PER_INCH = 25_400_000L;
  /** Decimals of a millimetre that a whole nanometre has. */
  static final int MILLIMETRE_DECIMALS = 6;
  private static final long NANOMETRES_PER_MILLIMETRE = 1_000_000L;
  private static final long MAX_MILLIMETRES = Long.MAX_VALUE / NANOMETRES_PER_MILLIMETRE;

  /** The length of nothing: 0 mm. */
  public static final Length ZERO = new Length(0);

  /** The length in whole nanometres. */
  private final long nanometres;

  private Length(long nanometres) {
    this.nanometres = nanometres;
  }

  /**
   * {@return a length of whole nanometres}
   *
   * @param nanometres  the nanometres, any value
   */
  public static Length ofNanometres(long nanometres) {
    return nanometres == 0 ? ZERO : new Length(nanometres);
  }

  /**
   * Returns a length of whole millimetres.
   *
   * @param millimetres  the millimetres
   * @return the length
   * @throws ArithmeticException if it is outside the range of a length
   */
  public static Length ofMillimetres(long millimetres) {
    if (millimetres > MAX_MILLIMETRES || millimetres < -MAX_MILLIMETRES) {
      throw Whole.outOfRange(millimetres + " mm");
    }
    return ofNanometres(millimetres * NANOMETRES_PER_MILLIMETRE);
  }

  /**
   * Returns the length written as a plain decimal number of millimetres, such as {@code "2405.5"}.
   * <p>
   * The digits 0 to 9, one decimal point and one minus sign in front; no unit, no exponent, no grouping. For text with
   * a unit see {@link #parse(CharSequence)}.
   *
   * @param decimal  the number, not null
   * @return the length, exact
   * @throws TapeNotationException if the text is not such a number
   * @throws ArithmeticException if the number is not a whole count of nanometres (six decimals of a millimetre), or
   *   outside the range of a length
   */
  public static Length ofMillimetres(String decimal) {
    Objects.requireNonNull(decimal, "decimal");
    BigDecimal millimetres = DecimalText.read(decimal);
    BigDecimal nm = millimetres.movePointRight(MILLIMETRE_DECIMALS);
    if (!Whole.isWhole(nm)) {
      throw new ArithmeticException(decimal + " mm is not a whole number of nanometres;"
          + " give at most six decimals of a millimetre");
    }
    return Whole.length(nm.toBigInteger(), () -> decimal + " mm");
  }

  /**
   * Returns a length of whole inches and a fraction of an inch: {@code ofInches(7, 5, 16)} is 7 5/16 in.
   * <p>
   * The value is {@code whole + numerator / denominator}. Whole inches and numerator may both be negative, but not of
   * opposite sign: whether minus 7 and plus 5/16 is meant as −6 11/16 or as −7 5/16 cannot be told.
   *
   * @param whole  the whole inches
   * @param numerator  the numerator of the fraction, may be more than the denominator
   * @param denominator  the denominator of the fraction, more than zero
   * @return the length, exact
   * @throws IllegalArgumentException if the denominator is not more than zero, or the signs differ
   * @throws ArithmeticException if the value is not a whole number of nanometres, as 1/3 in and 1/128 in are not, or
   *   outside the range of a length
   */
  public static Length ofInches(long whole, int numerator, int denominator) {
    if (denominator <= 0) {
      throw new IllegalArgumentException("denominator must be more than 0, but was " + denominator);
    }
    if (whole != 0 && numerator != 0 && (whole < 0) != (numerator < 0)) {
      throw new IllegalArgumentException("whole inches " + whole + " and numerator " + numerator
          + " have opposite signs; give both the sign of the length");
    }
    BigInteger den = BigInteger.valueOf(denominator);
    BigInteger nmTimesDen = BigInteger.valueOf(whole).multiply(den).add(BigInteger.valueOf(numerator))
        .multiply(BigInteger.valueOf(NANOMETRES_PER_INCH));
    BigInteger[] parts = nmTimesDen.divideAndRemainder(den);
    Supplier<String> inches = () -> whole + " + " + numerator + "/" + denominator + " in";
    if (parts[1].signum() != 0) {
      throw new ArithmeticException(inches.get() + " is not a whole number of nanometres;"
          + " halves to sixty-fourths of an inch are");
    }
    return Whole.length(parts[0], inches);
  }

  /**
   * Returns the length nearest to a number of millimetres, rounded to a whole nanometre as asked.
   * <p>
   * What is rounded is the binary value of the {@code double}, which for {@code 0.3} is a little less than 0.3: the
   * modes that round to the nearest return 0.3 mm, {@link RoundingMode#FLOOR} returns 0.299999 mm.
   *
   * @param millimetres  the millimetres, finite
   * @param mode  how to round, not null
   * @return the length
   * @throws IllegalArgumentException if the number is not finite
   * @throws ArithmeticException if it is outside the range of a length, or the mode is
   *   {@link RoundingMode#UNNECESSARY} and rounding is necessary
   */
  public static Length fromMillimetres(double millimetres, RoundingMode mode) {
    Objects.requireNonNull(mode, "mode");
    if (!Double.isFinite(millimetres)) {
      throw new IllegalArgumentException("millimetres must be a finite number, but was " + PlainNumber.text(millimetres));
    }
    BigDecimal nm = new BigDecimal(millimetres).movePointRight(MILLIMETRE_DECIMALS);
    if (mode == RoundingMode.UNNECESSARY && !Whole.isWhole(nm)) {
      throw new ArithmeticException(PlainNumber.text(millimetres) + " mm is not a whole number of nanometres as a double;"
          + " choose another rounding than UNNECESSARY");
    }
    return Whole.length(nm.setScale(0, mode).toBigInteger(), () -> PlainNumber.text(millimetres) + " mm");
  }

  /**
   * Reads a length written in tape notation, such as {@code "2405.5 mm"}, {@code "3.2 m"}, {@code "5 3/8\""} or
   * {@code "12' 7 5/8\""}. Reads back everything {@link #toString()} and the formats of {@link TapeNotation} write.
   *
   * @param text  the text, not null
   * @return the length, exact
   * @throws TapeNotationException if the text is not a length in tape notation; the message shows the place
   * @see TapeNotation#parse(CharSequence)
   */
  public static Length parse(CharSequence text) {
    return TapeNotation.parse(text);
  }

  /**
   * Returns this length and another, laid end to end.
   *
   * @param other  the other length, not null
   * @return the sum
   * @throws ArithmeticException if it is outside the range of a length
   */
  public Length plus(Length other) {
    Objects.requireNonNull(other, "other");
    long sum = nanometres + other.nanometres;
    if (((nanometres ^ sum) & (other.nanometres ^ sum)) < 0) {
      throw Whole.outOfRange(this + " plus " + other);
    }
    return ofNanometres(sum);
  }

  /**
   * Returns this length less another.
   *
   * @param other  the other length, not null
   * @return the difference, negative if the other is the longer
   * @throws ArithmeticException if it is outside the range of a length
   */
  public Length minus(Length other) {
    Objects.requireNonNull(other, "other");
    long difference = nanometres - other.nanometres;
    if (((nanometres ^ other.nanometres) & (nanometres ^ difference)) < 0) {
      throw Whole.outOfRange(this + " minus " + other);
    }
    return ofNanometres(difference);
  }

  /**
   * Returns this length a whole number of times.
   *
   * @param factor  how many times
   * @return the product
   * @throws ArithmeticException if it is outside the range of a length
   */
  public Length multipliedBy(long factor) {
    try {
      return ofNanometres(Math.multiplyExact(nanometres, factor));
    } catch (ArithmeticException e) {
      throw Whole.outOfRange(this + " times " + factor);
    }
  }

  /**
   * Returns how many times another length goes into this one, rounded down: {@code floor(this / other)}.
   * <p>
   * With {@link #remainder(Length)} it holds for every sign that {@code other * quotient + remainder = this}. Rounding
   * is towards minus infinity, so −1 mm holds 2 mm −1 times with a remainder of 1 mm.
   *
   * @param other  the length to divide by, not null, not zero
   * @return the whole quotient
   * @throws ArithmeticException if the other length is zero, or the quotient does not fit a {@code long}
   */
  public long dividedBy(Length other) {
    requireDivisor(other);
    if (nanometres == Long.MIN_VALUE && other.nanometres == -1) {
      throw new ArithmeticException(this + " divided by " + other + " does not fit a long");
    }
    return Math.floorDiv(nanometres, other.nanometres);
  }

  /**
   * Returns what is left of this length when another is taken from it as often as {@link #dividedBy(Length)} says.
   * <p>
   * It is zero or has the sign of the other length, and is smaller in size than it.
   *
   * @param other  the length to divide by, not null, not zero
   * @return the remainder
   * @throws ArithmeticException if the other length is zero
   */
  public Length remainder(Length other) {
    requireDivisor(other);
    return ofNanometres(Math.floorMod(nanometres, other.nanometres));
  }

  /**
   * Returns one of a whole number of equal parts of this length, rounded to a whole nanometre as asked.
   *
   * @param divisor  the number of parts, not zero
   * @param mode  how to round, not null
   * @return the part
   * @throws ArithmeticException if the divisor is zero, the result is outside the range of a length, or the mode is
   *   {@link RoundingMode#UNNECESSARY} and rounding is necessary
   */
  public Length dividedBy(long divisor, RoundingMode mode) {
    Objects.requireNonNull(mode, "mode");
    if (divisor == 0) {
      throw new ArithmeticException(this + " cannot be divided by 0");
    }
    Supplier<String> division = () -> this + " divided by " + divisor;
    return Whole.length(
        Whole.quotient(BigInteger.valueOf(nanometres), BigInteger.valueOf(divisor), mode, division), division);
  }

  /**
   * Returns the area of a rectangle with this length and another as its sides.
   *
   * @param other  the other side, not null
   * @return the area, exact; negative if one of the two is
   */
  public Area times(Length other) {
    Objects.requireNonNull(other, "other");
    return Area.ofSquareNanometres(BigInteger.valueOf(nanometres).multiply(BigInteger.valueOf(other.nanometres)));
  }

  /** {@return the whole nanometres, exact} */
  public long toNanometres() {
    return nanometres;
  }

  /** {@return the millimetres as the nearest {@code double}, exact to the nanometre up to 9007 km} */
  public double toMillimetres() {
    return inMillimetres().doubleValue();
  }

  /**
   * Returns the millimetres as a plain decimal number, such as {@code "2405.5"}: exact, at most six decimals, no
   * trailing zeros, no exponent, no unit.
   *
   * @return the number; {@link #ofMillimetres(String)} reads it back
   */
  public String toMillimetreString() {
    return inMillimetres().stripTrailingZeros().toPlainString();
  }

  /** {@return whether this length is zero} */
  public boolean isZero() {
    return nanometres == 0;
  }

  /** {@return whether this length is less than zero} */
  public boolean isNegative() {
    return nanometres < 0;
  }

  /** {@return whether this length is more than zero} */
  public boolean isPositive() {
    return nanometres > 0;
  }

  /**
   * Returns the size of this length without its sign.
   *
   * @return this length, or its negation if it is negative
   * @throws ArithmeticException if this is the most negative length, whose size is one nanometre out of range
   */
  public Length abs() {
    return nanometres < 0 ? negated() : this;
  }

  /**
   * Returns this length with the other sign.
   *
   * @return the negated length
   * @throws ArithmeticException if this is the most negative length, whose size is one nanometre out of range
   */
  public Length negated() {
    if (nanometres == Long.MIN_VALUE) {
      throw Whole.outOfRange(this + " negated");
    }
    return ofNanometres(-nanometres);
  }

  /**
   * Returns the shorter of this length and another; of two negative lengths the one further from zero.
   *
   * @param other  the other length, not null
   * @return the smaller by {@link #compareTo(Length)}
   */
  public Length min(Length other) {
    return compareTo(other) <= 0 ? this : other;
  }

  /**
   * Returns the longer of this length and another; of two negative lengths the one nearer to zero.
   *
   * @param other  the other length, not null
   * @return the larger by {@link #compareTo(Length)}
   */
  public Length max(Length other) {
    return compareTo(other) >= 0 ? this : other;
  }

  @Override
  public int compareTo(Length other) {
    Objects.requireNonNull(other, "other");
    return Long.compare(nanometres, other.nanometres);
  }

  @Override
  public boolean equals(Object obj) {
    return obj instanceof Length && ((Length) obj).nanometres == nanometres;
  }

  @Override
  public int hashCode() {
    return Long.hashCode(nanometres);
  }

  /**
   * Returns the one canonical text of this length, such as {@code "2405.5 mm"}: exact, the same in every locale.
   *
   * @return the text; {@link #parse(CharSequence)} reads it back
   */
  @Override
  public String toString() {
    return toMillimetreString() + " mm";
  }

  BigDecimal inMillimetres() {
    return BigDecimal.valueOf(nanometres, MILLIMETRE_DECIMALS);
  }

  private void requireDivisor(Length other) {
    Objects.requireNonNull(other, "other");
    if (other.nanometres == 0) {
      throw new ArithmeticException(this + " cannot be divided by a length of 0 mm");
    }
  }
}
