package floorcalc.measure;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.function.Supplier;

/** Whole numbers out of exact ones, and the messages for those that are not. */
final class Whole {

  private static final int LONG_BITS = 63;

  private Whole() {
  }

  static boolean isWhole(BigDecimal value) {
    return value.signum() == 0 || value.stripTrailingZeros().scale() <= 0;
  }

  static boolean fitsLong(BigInteger value) {
    return value.bitLength() <= LONG_BITS;
  }

  /** Returns the length of so many nanometres, or refuses what the description says. */
  static Length length(BigInteger nanometres, Supplier<String> description) {
    if (!fitsLong(nanometres)) {
      throw outOfRange(description.get());
    }
    return Length.ofNanometres(nanometres.longValue());
  }

  /** Returns the quotient rounded to a whole number; with UNNECESSARY it must be whole already. */
  static BigInteger quotient(BigInteger dividend, BigInteger divisor, RoundingMode mode,
      Supplier<String> description) {
    if (mode == RoundingMode.UNNECESSARY && dividend.remainder(divisor).signum() != 0) {
      throw new ArithmeticException(description.get() + " is not exact; choose another rounding than UNNECESSARY");
    }
    return new BigDecimal(dividend).divide(new BigDecimal(divisor), 0, mode).toBigInteger();
  }

  static ArithmeticException outOfRange(String description) {
    return new ArithmeticException(
        description + " is outside the range of a length, about 9.2 million km either way");
  }
}
