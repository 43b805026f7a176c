package floorcalc.rules;

import floorcalc.working.Source;
import java.io.Serializable;
import java.math.BigDecimal;
import java.util.Objects;

/**
 * A rule's value and where it comes from.
 *
 * @param <T> the type of the value
 * @param key the rule, not null
 * @param value its value, not null, within the bounds of the rule
 * @param source where it comes from, not null
 * @since 0.1
 */
public record RuleValue<T>(RuleKey<T> key, T value, Source source) implements Serializable {
  /**
   * Checks that no part is null and that the value keeps the bounds of its rule.
   *
   * @throws IllegalArgumentException if the value is out of bounds
   */
  public RuleValue {
    Objects.requireNonNull(key, "key");
    key.check(value);
    Objects.requireNonNull(source, "source");
  }

  /**
   * Returns the rule as one line.
   *
   * @return for example {@code "expansionGap = 10 mm (common practice, no source)"}, not null
   */
  @Override
  public String toString() {
    return key + " = " + (value instanceof BigDecimal decimal ? decimal.toPlainString() : value) + " (" + source + ")";
  }
}
