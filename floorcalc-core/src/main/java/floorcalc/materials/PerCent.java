package floorcalc.materials;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Shares in %, for display. */
final class PerCent {
  private static final int MOST_DECIMALS = 12;

  private PerCent() {}

  /** Returns 100 * part / whole rounded half away from zero; 0 if the whole is 0. */
  static BigDecimal of(BigDecimal part, BigDecimal whole, int decimals) {
    if (decimals < 0 || decimals > MOST_DECIMALS) {
      throw new IllegalArgumentException("decimals must be 0 to " + MOST_DECIMALS + ", but was " + decimals);
    }
    return whole.signum() == 0 ? BigDecimal.ZERO.setScale(decimals)
        : part.movePointRight(2).divide(whole, decimals, RoundingMode.HALF_UP);
  }
}
