package floorcalc.plan;

import floorcalc.measure.Length;
import java.io.Serializable;
import java.util.Objects;

/**
 * A rule that could not be kept in one place, and why.
 *
 * @param rule the name of the rule, such as {@code "minimumEndPiece"}; not null
 * @param where the place, such as {@code "study-1 row 3 run 2"}; not null
 * @param required what the rule asks for, not null
 * @param found what the floor has, not null
 * @param because why it could not be kept, not null
 * @since 0.1
 */
public record Compromise(String rule, String where, Length required, Length found, String because) implements Serializable {
  /** Checks that no part is null. */
  public Compromise {
    Objects.requireNonNull(rule, "rule");
    Objects.requireNonNull(where, "where");
    Objects.requireNonNull(required, "required");
    Objects.requireNonNull(found, "found");
    Objects.requireNonNull(because, "because");
  }
}
