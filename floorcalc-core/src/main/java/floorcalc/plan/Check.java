package floorcalc.plan;

import floorcalc.working.Source;
import java.util.Objects;

/**
 * A limit held against what was found.
 *
 * @param check what is checked, not null
 * @param found what was found, with its unit; not null, empty if nothing was measured
 * @param limit the limit with its unit, not null
 * @param verdict what it came to, not null
 * @param source whose limit it is, not null
 */
public record Check(String check, String found, String limit, Verdict verdict, Source source) {
  /** Checks that no part is null. */
  public Check {
    Objects.requireNonNull(check, "check");
    Objects.requireNonNull(found, "found");
    Objects.requireNonNull(limit, "limit");
    Objects.requireNonNull(verdict, "verdict");
    Objects.requireNonNull(source, "source");
  }
}
