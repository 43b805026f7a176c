package floorcalc.measure;

import java.io.Serializable;
import java.math.BigDecimal;
import java.util.Objects;

/**
 * An amount of money, exact, kept with the decimals it was typed with.
 *
 * @param amount the amount, not null, not negative
 * @param currency the three-letter currency code of ISO 4217, not null
 * @since 0.1
 */
public record Price(BigDecimal amount, String currency) implements Serializable {
  /** Checks that the amount is not negative and that the code has three capital letters. */
  public Price {
    if (Objects.requireNonNull(amount, "amount").signum() < 0) {
      throw new IllegalArgumentException("a price must not be negative, but was " + amount.toPlainString());
    }
    if (!Objects.requireNonNull(currency, "currency").matches("[A-Z]{3}")) {
      throw new IllegalArgumentException("currency must be three capital letters such as EUR, but was '" + currency + "'");
    }
  }

  @Override
  public String toString() {
    return amount.toPlainString() + " " + currency;
  }
}
