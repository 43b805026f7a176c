package floorcalc.measure;

import java.io.Serializable;
import java.math.BigDecimal;
import java.util.Objects;

/**
 * A mass, exact.
 *
 * @param kilograms the mass in kilograms, not null, not negative
 * @since 0.1
 */
public record Mass(BigDecimal kilograms) implements Serializable {
  /** Checks that the mass is not negative. */
  public Mass {
    if (Objects.requireNonNull(kilograms, "kilograms").signum() < 0) {
      throw new IllegalArgumentException("a mass must not be negative, but was " + kilograms.toPlainString() + " kg");
    }
  }

  @Override
  public String toString() {
    return kilograms.toPlainString() + " kg";
  }
}
