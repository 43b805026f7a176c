package floorcalc.measure;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;

/**
 * A {@code double} as a decimal number, the same on every Java. {@link Double#toString(double)} is not, nor are
 * {@link BigDecimal#valueOf(double)} and formats such as {@code %.2f}, which start from it: 2<sup>-44</sup> is 5.6843418860808015E-14 for
 * Java 17 and 5.684341886080802E-14 for Java 25. All text of the library that shows a {@code double} is made here.
 *
 * @since 0.1
 */
public final class PlainNumber {
  /** So many digits of a decimal number always come back from a {@code double}. */
  private static final int SURE_DIGITS = 15;
  /** So many digits always tell a {@code double} from every other. */
  private static final int ALL_DIGITS = 17;

  private static final double LEAST_PLAIN = 1e-3;
  private static final double FIRST_BEYOND = 1e7;

  private PlainNumber() {
  }

  /**
   * Returns the shortest decimal number that is read back as the same {@code double}; of several as short, the nearest. Below
   * 2.2E-308, where a {@code double} holds fewer digits, it may be longer than the shortest.
   *
   * @param value the number, finite
   * @return the decimal number without zeros at the end, not null
   * @throws IllegalArgumentException if the number is infinite or not a number
   */
  public static BigDecimal of(double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("a decimal number must be finite, but was " + text(value));
    }
    BigDecimal exact = new BigDecimal(value);
    for (int digits = SURE_DIGITS; digits < ALL_DIGITS; digits++) {
      // Above a power of two the next double is twice as far as below, so the farther decimal may be the one that comes back.
      for (RoundingMode mode : List.of(RoundingMode.HALF_EVEN, RoundingMode.UP)) {
        BigDecimal shorter = exact.round(new MathContext(digits, mode));
        if (shorter.doubleValue() == value) {
          return plain(shorter);
        }
      }
    }
    return plain(exact.round(new MathContext(ALL_DIGITS, RoundingMode.HALF_EVEN)));
  }

  /**
   * Returns a number as text, with at least one decimal: plain from 0.001 up to 10 million, with a power of ten beyond.
   *
   * @param value the number; may be infinite or not a number
   * @return such as {@code "90.0"}, {@code "0.002"}, {@code "1.0E23"} or {@code "Infinity"}; not null
   */
  public static String text(double value) {
    if (!Double.isFinite(value)) {
      return Double.isNaN(value) ? "NaN" : value > 0 ? "Infinity" : "-Infinity";
    }
    BigDecimal decimal = of(value);
    if (value == 0 || StrictMath.abs(value) >= LEAST_PLAIN && StrictMath.abs(value) < FIRST_BEYOND) {
      return atLeastOneDecimal(decimal);
    }
    int power = decimal.precision() - decimal.scale() - 1;
    return atLeastOneDecimal(decimal.movePointLeft(power)) + "E" + power;
  }

  private static String atLeastOneDecimal(BigDecimal decimal) {
    return (decimal.scale() < 1 ? decimal.setScale(1) : decimal).toPlainString();
  }

  /**
   * Returns a number as text with so many decimals; half a unit of the last is rounded away from zero.
   *
   * @param value the number; may be infinite or not a number
   * @param decimals how many decimals, 0 or more
   * @return such as {@code "0.13"}, never {@code "-0.00"}; not null
   */
  public static String text(double value, int decimals) {
    return !Double.isFinite(value) ? text(value) : of(value).setScale(decimals, RoundingMode.HALF_UP).toPlainString();
  }

  private static BigDecimal plain(BigDecimal number) {
    return number.signum() == 0 ? BigDecimal.ZERO : number.stripTrailingZeros();
  }
}
