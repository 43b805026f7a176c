package floorcalc.measure;

import java.io.Serializable;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.Objects;
import java.util.function.Supplier;

/**
 * An exact area, positive, zero or negative, held as a whole number of half square nanometres without limit.
 * <p>
 * Twice the area of any polygon whose corners lie on whole nanometres is a whole number of square nanometres (the
 * shoelace sum), so the area of every room, board and offcut is held here without rounding. A negative area is a
 * difference, or the area of a ring walked clockwise.
 * <p>
 * Factories called {@code of} are exact or refuse. Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class Area implements Comparable<Area>, Serializable {
  private static final long serialVersionUID = 1L;

  private static final BigInteger HALVES_PER_SQUARE_MILLIMETRE = BigInteger.valueOf(2_000_000_000_000L);
  private static final BigDecimal HALVES_PER_SQUARE_METRE = new BigDecimal("2000000000000000000");
  private static final BigInteger FIVE = BigInteger.valueOf(5);
  /** Decimals of a square metre that a half square nanometre has. */
  private static final int SQUARE_METRE_DECIMALS = 19;
  private static final int SQUARE_MILLIMETRE_DECIMALS = 13;

  /** The area of nothing: 0 m². */
  public static final Area ZERO = new Area(BigInteger.ZERO);

  private final BigInteger halves;

  private Area(BigInteger halves) {
    this.halves = halves;
  }

  /**
   * Returns an area of whole half square nanometres, which is what a shoelace sum over nanometres gives.
   *
   * @param halfSquareNanometres  twice the area in square nanometres, not null
   * @return the area
   */
  public static Area ofHalfSquareNanometres(BigInteger halfSquareNanometres) {
    Objects.requireNonNull(halfSquareNanometres, "halfSquareNanometres");
    return halfSquareNanometres.signum() == 0 ? ZERO : new Area(halfSquareNanometres);
  }

  /**
   * Returns an area of whole square nanometres.
   *
   * @param squareNanometres  the square nanometres, not null
   * @return the area
   */
  public static Area ofSquareNanometres(BigInteger squareNanometres) {
    Objects.requireNonNull(squareNanometres, "squareNanometres");
    return ofHalfSquareNanometres(squareNanometres.shiftLeft(1));
  }

  /**
   * Returns an area of whole square millimetres.
   *
   * @param squareMillimetres  the square millimetres
   * @return the area
   */
  public static Area ofSquareMillimetres(long squareMillimetres) {
    return ofHalfSquareNanometres(BigInteger.valueOf(squareMillimetres).multiply(HALVES_PER_SQUARE_MILLIMETRE));
  }

  /**
   * Returns the area written as a plain decimal number of square metres, such as {@code "12.345"}.
   * <p>
   * The digits 0 to 9, one decimal point and one minus sign in front; no unit, no exponent, no grouping.
   *
   * @param decimal  the number, not null
   * @return the area, exact
   * @throws TapeNotationException if the text is not such a number
   * @throws ArithmeticException if it is not a whole number of half square nanometres
   */
  public static Area ofSquareMetres(String decimal) {
    Objects.requireNonNull(decimal, "decimal");
    BigDecimal halves = DecimalText.read(decimal).multiply(HALVES_PER_SQUARE_METRE);
    if (!Whole.isWhole(halves)) {
      throw new ArithmeticException(decimal + " m² is not a whole number of half square nanometres;"
          + " give at most eighteen decimals of a square metre");
    }
    return ofHalfSquareNanometres(halves.toBigInteger());
  }

  /**
   * Returns this area and another together.
   *
   * @param other  the other area, not null
   * @return the sum
   */
  public Area plus(Area other) {
    Objects.requireNonNull(other, "other");
    return ofHalfSquareNanometres(halves.add(other.halves));
  }

  /**
   * Returns this area less another.
   *
   * @param other  the other area, not null
   * @return the difference, negative if the other is the larger
   */
  public Area minus(Area other) {
    Objects.requireNonNull(other, "other");
    return ofHalfSquareNanometres(halves.subtract(other.halves));
  }

  /**
   * Returns this area a whole number of times.
   *
   * @param factor  how many times
   * @return the product
   */
  public Area multipliedBy(long factor) {
    return ofHalfSquareNanometres(halves.multiply(BigInteger.valueOf(factor)));
  }

  /**
   * Returns the other side of a rectangle of this area, rounded to a whole nanometre as asked.
   *
   * @param side  the known side, not null, not zero
   * @param mode  how to round, not null
   * @return the other side; negative if one of area and side is
   * @throws ArithmeticException if the side is zero, the result is outside the range of a length, or the mode is
   *   {@link RoundingMode#UNNECESSARY} and rounding is necessary
   */
  public Length dividedBy(Length side, RoundingMode mode) {
    Objects.requireNonNull(side, "side");
    Objects.requireNonNull(mode, "mode");
    if (side.isZero()) {
      throw new ArithmeticException(this + " cannot be divided by a length of 0 mm");
    }
    Supplier<String> division = () -> this + " divided by " + side;
    BigInteger twiceSide = BigInteger.valueOf(side.toNanometres()).shiftLeft(1);
    return Whole.length(Whole.quotient(halves, twiceSide, mode, division), division);
  }

  /** {@return twice the area in square nanometres} */
  public BigInteger toHalfSquareNanometres() {
    return halves;
  }

  /** {@return the square millimetres as the nearest {@code double}} */
  public double toSquareMillimetres() {
    return new BigDecimal(halves.multiply(FIVE), SQUARE_MILLIMETRE_DECIMALS).doubleValue();
  }

  /** {@return the square metres as the nearest {@code double}} */
  public double toSquareMetres() {
    return inSquareMetres().doubleValue();
  }

  /**
   * Returns the square metres with a chosen number of decimals, such as {@code "12.35"}, for display.
   * <p>
   * Rounds half up, that is to the nearest and a half away from zero. What rounds to zero has no minus sign.
   *
   * @param decimals  the decimals to write, 0 to 19; with 19 every area is exact
   * @return the number, without unit, exponent or grouping
   * @throws IllegalArgumentException if the decimals are outside that range
   */
  public String toSquareMetreString(int decimals) {
    if (decimals < 0 || decimals > SQUARE_METRE_DECIMALS) {
      throw new IllegalArgumentException("decimals must be 0 to " + SQUARE_METRE_DECIMALS + ", but was " + decimals);
    }
    return inSquareMetres().setScale(decimals, RoundingMode.HALF_UP).toPlainString();
  }

  /** {@return whether this area is zero} */
  public boolean isZero() {
    return halves.signum() == 0;
  }

  /** {@return whether this area is less than zero} */
  public boolean isNegative() {
    return halves.signum() < 0;
  }

  /** {@return whether this area is more than zero} */
  public boolean isPositive() {
    return halves.signum() > 0;
  }

  /** {@return this area with the other sign} */
  public Area negated() {
    return ofHalfSquareNanometres(halves.negate());
  }

  /**
   * Returns the size of this area without its sign.
   *
   * @return this area, or its negation if it is negative
   */
  public Area abs() {
    return isNegative() ? negated() : this;
  }

  @Override
  public int compareTo(Area other) {
    Objects.requireNonNull(other, "other");
    return halves.compareTo(other.halves);
  }

  @Override
  public boolean equals(Object obj) {
    return obj instanceof Area && ((Area) obj).halves.equals(halves);
  }

  @Override
  public int hashCode() {
    return halves.hashCode();
  }

  /**
   * Returns the one canonical text of this area, such as {@code "12.345 m²"}: exact, without trailing zeros or
   * exponent, the same in every locale.
   *
   * @return the text
   */
  @Override
  public String toString() {
    return inSquareMetres().stripTrailingZeros().toPlainString() + " m²";
  }

  private BigDecimal inSquareMetres() {
    return new BigDecimal(halves.multiply(FIVE), SQUARE_METRE_DECIMALS);
  }

  /** What was read is made anew, so that it keeps every check. */
  private Object readResolve() {
    return ofHalfSquareNanometres(halves);
  }
}
