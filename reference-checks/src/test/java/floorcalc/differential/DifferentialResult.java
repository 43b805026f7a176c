package floorcalc.differential;

import java.math.BigDecimal;
import java.util.List;

/**
 * What a comparison found.
 *
 * @param cases how many cases were compared
 * @param worst the largest difference; NaN if one side gave no number
 * @param where the case of the largest difference
 * @param tolerance the largest that is allowed
 * @param notes what else was seen, the same on every machine
 */
public record DifferentialResult(long cases, double worst, String where, double tolerance, List<String> notes) {
  /** {@return whether no difference is larger than allowed} */
  public boolean holds() {
    return worst <= tolerance;
  }

  /**
   * {@return the largest difference rounded up to a power of ten, or to what is allowed where that is nearer; the same on every machine; 0 if
   * both sides agree}
   */
  public String worstRoundedUp() {
    if (Double.isNaN(worst) || Double.isInfinite(worst)) {
      return "no number";
    }
    if (worst == 0) {
      return "0";
    }
    BigDecimal exact = new BigDecimal(worst).stripTrailingZeros();
    int exponent = exact.precision() - exact.scale() - 1;
    boolean isPower = exact.compareTo(BigDecimal.ONE.scaleByPowerOfTen(exponent)) == 0;
    int up = isPower ? exponent : exponent + 1;
    if (holds() && BigDecimal.ONE.scaleByPowerOfTen(up).compareTo(BigDecimal.valueOf(tolerance)) > 0) {
      return BigDecimal.valueOf(tolerance).stripTrailingZeros().toString().replace('E', 'e');
    }
    return up == 0 ? "1" : "1e" + up;
  }
}
