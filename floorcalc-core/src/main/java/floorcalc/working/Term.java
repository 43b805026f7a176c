package floorcalc.working;

import java.io.Serializable;
import java.util.Objects;

/**
 * A number put into a formula.
 *
 * @param symbol the symbol in the formula, not null
 * @param meaning what it stands for, not null
 * @param value the value with its unit: a {@code Length}, an {@code Area}, a whole number, a decimal or a text; not null
 * @param source where the value comes from, not null
 * @since 0.1
 */
public record Term(String symbol, String meaning, Object value, Source source) implements Serializable {

  /** Checks that no part is null. */
  public Term {
    Objects.requireNonNull(symbol, "symbol");
    Objects.requireNonNull(meaning, "meaning");
    Objects.requireNonNull(value, "value");
    Objects.requireNonNull(source, "source");
  }

  /**
   * Returns a term that was given by the caller or came from an earlier step.
   *
   * @param symbol the symbol in the formula, not null
   * @param meaning what it stands for, not null
   * @param value the value, not null
   * @return the term, not null
   */
  public static Term of(String symbol, String meaning, Object value) {
    return new Term(symbol, meaning, value, Source.GIVEN);
  }
}
