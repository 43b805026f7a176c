package floorcalc.site;

import floorcalc.flatness.SpanCheck;
import floorcalc.flatness.SpanLimit;
import floorcalc.flatness.ToleranceSet;
import floorcalc.levels.GridGap;
import floorcalc.measure.Length;
import floorcalc.working.Judgement;
import floorcalc.working.Outcome;
import java.util.Comparator;

/**
 * What one source of heights or gaps shows under an edge of one span.
 *
 * @param from which source: a line, the grid of heights, or gaps read by hand
 * @param limit the limit of the set that it is held against; of a set by contact distance any limit that stands for the source
 * @param excess how far the gap is beyond what is allowed, negative if within
 * @param judgement the judgement as flatness gives it, with the source in front of the place
 */
record EdgeFound(String from, SpanLimit limit, Length excess, Judgement judgement) {
  private static final String CAUTION = "grinding concrete raises silica dust: extract it and wear a mask for it; old coverings and"
      + " adhesives may hold asbestos: have them tested before they are ground";

  /** The one that decides comes last: farthest beyond its limit, or nearest to it. */
  static final Comparator<EdgeFound> LESS_FIRST = Comparator.comparing(EdgeFound::isOver)
      .thenComparing(EdgeFound::excess).thenComparing(found -> found.judgement.where());

  private boolean isOver() {
    return judgement.outcome() == Outcome.NOT_MET;
  }

  static EdgeFound of(String from, SpanLimit limit, SpanCheck check) {
    Judgement one = check.judgement();
    return new EdgeFound(from, limit, check.found().orElseThrow().minus(check.limit().gap()), new Judgement(one.code(),
        one.check(), Report.joined(from, one.where()), one.found(), one.limit(), one.outcome(), one.source(), one.advice()));
  }

  static EdgeFound of(String from, SpanLimit limit, ToleranceSet set, GridGap gap) {
    String where = gap.way().words() + " " + gap.line() + ", lowest at " + gap.lowSpot() + ", resting at " + gap.from()
        + " and " + gap.to();
    return new EdgeFound(from, limit, gap.gap().minus(gap.allowed()), new Judgement("flatness", "flatness under " + gap.span()
        + ", " + set.name(), Report.joined(from, where), gap.gap().toString(), gap.allowed() + " under " + gap.span(),
        gap.isAllowed() ? Outcome.MET : Outcome.NOT_MET, limit.source(),
        gap.isAllowed() ? "" : "grind where the edge rests, or fill at " + gap.lowSpot() + "; " + CAUTION));
  }

  /** The judgement with the others that the decision was between. */
  Judgement among(String all) {
    return all.isEmpty() ? judgement : new Judgement(judgement.code(), judgement.check(), judgement.where() + "; the worst of "
        + all, judgement.found(), judgement.limit(), judgement.outcome(), judgement.source(), judgement.advice());
  }
}
