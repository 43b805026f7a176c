package floorcalc.working;

import java.io.Serializable;
import java.util.Objects;

/**
 * Something that a calculation noticed about sound input: a poor floor, a rule that could not be kept.
 *
 * @param code a stable name in lower case with hyphens, for programs; not null
 * @param severity how much it matters, not null
 * @param where the place, such as {@code "study-1 row 3 run 2"}; not null, may be empty
 * @param message one sentence for people: what, where, the value, the bound, what to do; not null
 * @param source whose bound it is, not null
 * @since 0.1
 */
public record Finding(String code, Severity severity, String where, String message, Source source)
    implements Serializable {

  /** Checks that no part is null. */
  public Finding {
    Objects.requireNonNull(code, "code");
    Objects.requireNonNull(severity, "severity");
    Objects.requireNonNull(where, "where");
    Objects.requireNonNull(message, "message");
    Objects.requireNonNull(source, "source");
  }
}
