package floorcalc.plan;

import floorcalc.working.Judgement;
import floorcalc.working.Outcome;
import floorcalc.working.Source;
import java.io.Serializable;
import java.util.Objects;

/**
 * A limit held against what was found, in a plan.
 *
 * @param room the name of the room whose site was judged, not null, empty if it is the laid floor that was
 * @param judgement what was judged, found and allowed, what it came to, and what to do; not null
 * @since 0.1
 */
public record Check(String room, Judgement judgement) implements Serializable {
  /** Checks that no part is null. */
  public Check {
    Objects.requireNonNull(room, "room");
    Objects.requireNonNull(judgement, "judgement");
  }

  /**
   * Returns a check of the laid floor, about which there is nothing to do on site.
   *
   * @param code a stable name in lower case with hyphens, not null
   * @param check what is checked, not null
   * @param found what was found, with its unit; not null, empty if nothing was measured
   * @param limit the limit with its unit, not null
   * @param outcome what it came to, not null
   * @param source whose limit it is, not null
   * @return the check, not null
   */
  public static Check of(String code, String check, String found, String limit, Outcome outcome, Source source) {
    return new Check("", new Judgement(code, check, "", found, limit, outcome, source, ""));
  }

  /**
   * Returns what is checked.
   *
   * @return a few words, not null
   */
  public String check() {
    return judgement.check();
  }

  /**
   * Returns what was found.
   *
   * @return with its unit; empty if nothing was measured; not null
   */
  public String found() {
    return judgement.found();
  }

  /**
   * Returns the limit.
   *
   * @return with its unit, not null
   */
  public String limit() {
    return judgement.limit();
  }

  /**
   * Returns what it came to.
   *
   * @return the outcome, not null
   */
  public Outcome outcome() {
    return judgement.outcome();
  }

  /**
   * Returns whose limit it is.
   *
   * @return the source, not null
   */
  public Source source() {
    return judgement.source();
  }

  /**
   * Returns what to do.
   *
   * @return what to measure, to mend or to wait for; empty if nothing; not null
   */
  public String advice() {
    return judgement.advice();
  }
}
