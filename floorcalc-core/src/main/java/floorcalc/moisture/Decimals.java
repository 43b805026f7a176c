package floorcalc.moisture;

import java.math.BigDecimal;
import java.util.Objects;
import java.util.regex.Pattern;

/** Plain decimal numbers from text. */
final class Decimals {
  private static final Pattern PLAIN = Pattern.compile("[-+]?[0-9]{1,9}(\\.[0-9]{1,12})?");

  private Decimals() {
  }

  static BigDecimal read(String decimal, String what, String example) {
    Objects.requireNonNull(decimal, what);
    if (!PLAIN.matcher(decimal).matches()) {
      throw new IllegalArgumentException("found [" + decimal + "] as a " + what
          + "; write a decimal number with a point and without a unit, such as " + example);
    }
    return new BigDecimal(decimal);
  }

  /** The number without trailing zeros and without an exponent. */
  static BigDecimal plain(BigDecimal number) {
    BigDecimal stripped = number.signum() == 0 ? BigDecimal.ZERO : number.stripTrailingZeros();
    return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
  }
}
