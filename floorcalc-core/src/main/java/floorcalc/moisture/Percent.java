package floorcalc.moisture;

import java.io.Serializable;
import java.math.BigDecimal;
import java.util.Objects;

/**
 * A percentage as it was read or calculated: a moisture content, a relative humidity, or a difference of two of them in
 * percentage points. An exact decimal number; 8.5 % is held as 8.5. Immutable and thread-safe.
 * <p>
 * Two are equal if their numbers are: 8.50 % is 8.5 %. From -1 000 000 to 1 000 000, with at most 12 decimals.
 *
 * @since 0.1
 */
public final class Percent implements Comparable<Percent>, Serializable {
  /** 0 %. */
  public static final Percent ZERO = new Percent(BigDecimal.ZERO);

  private static final long serialVersionUID = 1L;
  private static final BigDecimal MOST = BigDecimal.valueOf(1_000_000);
  private static final int DECIMALS = 12;

  private final BigDecimal number;

  private Percent(BigDecimal number) {
    this.number = number;
  }

  /**
   * Returns a percentage.
   *
   * @param number the number of hundredths, such as 8.5 for 8.5 %; not null
   * @return the percentage, not null
   * @throws IllegalArgumentException if the number is out of bounds or has more than 12 decimals
   */
  public static Percent of(BigDecimal number) {
    Objects.requireNonNull(number, "number");
    if (number.precision() - (long) number.scale() > 8 || number.scale() > 1000 || number.abs().compareTo(MOST) > 0) {
      throw new IllegalArgumentException("a percentage must be from -1000000 to 1000000, but was " + number);
    }
    BigDecimal plain = number.signum() == 0 ? BigDecimal.ZERO : number.stripTrailingZeros();
    if (plain.scale() > DECIMALS) {
      throw new IllegalArgumentException("a percentage has at most 12 decimals, but was " + number);
    }
    return new Percent(plain.scale() < 0 ? plain.setScale(0) : plain);
  }

  /**
   * Returns a percentage written as a decimal number.
   *
   * @param decimal the number without a unit, such as {@code "8.5"}; not null
   * @return the percentage, not null
   * @throws IllegalArgumentException if the text is no decimal number, or as in {@link #of(BigDecimal)}
   */
  public static Percent of(String decimal) {
    Objects.requireNonNull(decimal, "decimal");
    return of(Decimals.read(decimal, "percentage", "8.5"));
  }

  /**
   * Returns the number of hundredths.
   *
   * @return 8.5 for 8.5 %, without trailing zeros, not null
   */
  public BigDecimal number() {
    return number;
  }

  /**
   * Returns this and another percentage together.
   *
   * @param other the other, not null
   * @return the sum, not null
   */
  public Percent plus(Percent other) {
    return of(number.add(other.number));
  }

  /**
   * Returns the difference to another percentage, in percentage points.
   *
   * @param other what is taken off, not null
   * @return the difference, negative if the other is more; not null
   */
  public Percent minus(Percent other) {
    return of(number.subtract(other.number));
  }

  /**
   * Returns the size without the sign.
   *
   * @return this or its negation, not null
   */
  public Percent abs() {
    return number.signum() < 0 ? of(number.negate()) : this;
  }

  @Override
  public int compareTo(Percent other) {
    return number.compareTo(other.number);
  }

  @Override
  public boolean equals(Object object) {
    return object instanceof Percent other && number.equals(other.number);
  }

  @Override
  public int hashCode() {
    return number.hashCode();
  }

  /**
   * Returns the percentage as text.
   *
   * @return for example {@code "8.5 %"}, not null
   */
  @Override
  public String toString() {
    return number.toPlainString() + " %";
  }

  /** What was read is made anew, so that it keeps every check. */
  private Object readResolve() {
    return of(number);
  }
}
