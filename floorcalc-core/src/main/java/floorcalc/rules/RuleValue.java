package floorcalc.rules;

import floorcalc.working.Source;
import java.io.Serializable;
import java.util.Objects;

/**
 * A rule's value and where it comes from.
 *
 * @param <T> the type of the value
 * @param key the rule, not null
 * @param value its value, not null
 * @param source where it comes from, not null
 */
public record RuleValue<T>(RuleKey<T> key, T value, Source source) implements Serializable {
  /** Checks that no part is null. */
  public RuleValue {
    Objects.requireNonNull(key, "key");
    Objects.requireNonNull(value, "value");
    Objects.requireNonNull(source, "source");
  }
}
