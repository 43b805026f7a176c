package floorcalc.working;

import java.io.Serializable;
import java.util.Objects;

/**
 * A limit held against what was found on site, and what to do about it.
 *
 * @param code a stable name in lower case with hyphens, such as {@code "subfloor-moisture"}, for programs; not null
 * @param check what is judged, in a few words for people; not null
 * @param where the place, not null, may be empty
 * @param found what was found, with its unit; not null, empty if nothing was measured
 * @param limit the limit with its unit, not null
 * @param outcome what it came to, not null
 * @param source whose limit it is, not null
 * @param advice what to do: what to measure, to mend or to wait for; not null, empty if nothing needs doing
 * @since 0.1
 */
public record Judgement(String code, String check, String where, String found, String limit, Outcome outcome,
    Source source, String advice) implements Serializable {

  /** Checks that no part is null. */
  public Judgement {
    Objects.requireNonNull(code, "code");
    Objects.requireNonNull(check, "check");
    Objects.requireNonNull(where, "where");
    Objects.requireNonNull(found, "found");
    Objects.requireNonNull(limit, "limit");
    Objects.requireNonNull(outcome, "outcome");
    Objects.requireNonNull(source, "source");
    Objects.requireNonNull(advice, "advice");
  }

  /**
   * Tells whether the limit is kept.
   *
   * @return true if it was measured and is kept
   */
  public boolean isMet() {
    return outcome == Outcome.MET;
  }
}
