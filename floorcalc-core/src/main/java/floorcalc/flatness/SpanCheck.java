package floorcalc.flatness;

import floorcalc.measure.Length;
import floorcalc.working.Judgement;
import floorcalc.working.Outcome;
import floorcalc.working.Source;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

/**
 * A limit of flatness held against what was found at one span.
 *
 * @param set the tolerance set, not null
 * @param span the length of the edge, or the contact distance of a gap read by hand; not null
 * @param limit the limit; of a set by contact distance that at the distance of the contacts found; not null
 * @param found the gap that decides, empty if nothing could be judged; not null
 * @param rest the contacts behind it, where a profile was judged by an edge resting on it; not null
 * @param outcome what it came to, not null
 * @param where the place in words, not null, may be empty
 * @param advice what to do, not null, empty if nothing needs doing
 * @since 0.1
 */
public record SpanCheck(ToleranceSet set, Length span, SpanLimit limit, Optional<Length> found, Optional<EdgeRest> rest,
    Outcome outcome, String where, String advice) {

  /** Checks that no part is null. */
  public SpanCheck {
    Objects.requireNonNull(set, "set");
    Objects.requireNonNull(span, "span");
    Objects.requireNonNull(limit, "limit");
    Objects.requireNonNull(found, "found");
    Objects.requireNonNull(rest, "rest");
    Objects.requireNonNull(outcome, "outcome");
    Objects.requireNonNull(where, "where");
    Objects.requireNonNull(advice, "advice");
  }

  /**
   * Returns whose limit it is.
   *
   * @return the source, not null
   */
  public Source source() {
    return limit.source();
  }

  /**
   * Returns the check in the form that all judgements on a site share.
   *
   * @return the judgement, code {@code flatness}; not null
   */
  public Judgement judgement() {
    return new Judgement("flatness", "flatness under " + span + ", " + set.name(), where,
        found.map(Length::toString).orElse(""), limit.toString(), outcome, source(), advice);
  }

  @Override
  public String toString() {
    return span + ": " + found.map(Length::toString).orElse("not measured") + ", limit " + limit + ", "
        + outcome.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
