package floorcalc.flatness;

import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Outcome;
import floorcalc.working.Severity;
import floorcalc.working.Source;
import floorcalc.working.Step;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Holds a profile against a tolerance set. Used by one thread. */
final class ProfileJudge {
  /** Under edges of these lengths a set by contact distance is judged, as far as they fit. */
  private static final List<Length> EDGES = List.of(Length.ofMillimetres(100), Length.ofMillimetres(1000),
      Length.ofMillimetres(2000), Length.ofMillimetres(4000), Length.ofMillimetres(10_000), Length.ofMillimetres(15_000));
  private static final int FEWEST_SPACINGS = 2;

  private final ToleranceSet set;
  private final HeightProfile profile;
  private final RestRule rule;
  private final List<SpanCheck> checks = new ArrayList<>();
  private final List<Step> steps = new ArrayList<>();
  private final List<Finding> findings;

  private ProfileJudge(ToleranceSet set, HeightProfile profile, RestRule rule) {
    this.set = set;
    this.profile = profile;
    this.rule = rule;
    this.findings = new ArrayList<>(profile.doubts());
  }

  static Calculated<List<SpanCheck>> judge(ToleranceSet set, HeightProfile profile, RestRule rule) {
    ProfileJudge judge = new ProfileJudge(set, profile, rule);
    if (set.method() == EdgeMethod.CONTACT_DISTANCE) {
      judge.byDistance();
    } else {
      set.limits().forEach(judge::bySpan);
    }
    return Calculated.of(List.copyOf(judge.checks), judge.steps, judge.findings);
  }

  private void bySpan(SpanLimit limit) {
    Straightedge edge = Straightedge.of(limit.span());
    if (!edge.fits(profile)) {
      notMeasured(limit, Optional.empty());
    } else if (set.method() == EdgeMethod.EQUAL_OFFSETS) {
      LaidEdge.Found found = new OffsetSearch(profile, limit.span().toNanometres(), new StepCount()).find();
      if (found == null) {
        notMeasured(limit, Optional.empty());
      } else {
        steps.add(EdgeGapWorking.offset(limit.span(), found.rest()));
        decide(limit.span(), limit, found.rest(), Optional.empty(), "edge from " + found.rest().left().place() + " to "
            + found.rest().right().place() + ", farthest off at " + found.rest().lowSpot().place());
      }
    } else if (limit.isForAll()) {
      laid(limit.span(), limit, edge.greatest(profile, rule));
    } else {
      byShare(limit, edge.atReadings(profile));
    }
  }

  private void byShare(SpanLimit limit, List<EdgePlacement> placements) {
    List<EdgePlacement> sorted = new ArrayList<>(placements);
    sorted.sort((one, other) -> one.rest(rule).gap().compareTo(other.rest(rule).gap()));
    int last = (sorted.size() * limit.percent() + 99) / 100 - 1;
    EdgePlacement deciding = sorted.get(last);
    EdgeRest rest = deciding.rest(rule);
    steps.addAll(EdgeGapWorking.steps(new GreatestGap(limit.span(), rule, deciding.start(), rest)));
    decide(limit.span(), limit, rest, Optional.of(rest), limit.percent() + " % of " + sorted.size()
        + " placements at readings keep within " + rest.gap() + "; of these the greatest: " + place(rest));
  }

  private void byDistance() {
    for (Length span : EDGES) {
      boolean dense = profile.widestSpacing().multipliedBy(FEWEST_SPACINGS).compareTo(span) <= 0;
      if (Straightedge.of(span).fits(profile) && (dense || span.compareTo(EDGES.get(0)) > 0)) {
        EdgeSearch search = new EdgeSearch(profile, span.toNanometres(),
            distance -> limitAt(Length.ofNanometres(distance)).gap().toNanometres());
        LaidEdge.Found found = search.find(rule);
        Length distance = found.rest().contactDistance();
        if (set.table().limitAt(distance).isPresent()) {
          steps.add(set.table().step(distance));
        }
        laid(span, limitAt(distance), new GreatestGap(span, rule, Length.ofNanometres(found.start()), found.rest()));
      }
    }
    if (checks.isEmpty()) {
      notMeasured(limitAt(EDGES.get(1)), Optional.empty());
    }
  }

  /** Contacts nearer than the first distance of the table are judged by its first limit. */
  private SpanLimit limitAt(Length distance) {
    return set.table().limitAt(distance).orElse(set.limits().get(0));
  }

  private void laid(Length span, SpanLimit limit, GreatestGap greatest) {
    steps.addAll(EdgeGapWorking.steps(greatest));
    decide(span, limit, greatest.rest(), Optional.of(greatest.rest()),
        "edge from " + greatest.start() + ", " + place(greatest.rest()));
  }

  private static String place(EdgeRest rest) {
    return "resting at " + rest.left().place() + " and " + rest.right().place() + ", lowest at " + rest.lowSpot().place();
  }

  private void decide(Length span, SpanLimit limit, EdgeRest found, Optional<EdgeRest> rest, String where) {
    boolean within = found.gap().compareTo(limit.gap()) <= 0;
    boolean dense = profile.widestSpacing().multipliedBy(FEWEST_SPACINGS).compareTo(span) <= 0;
    if (within && !dense) {
      notMeasured(limit, Optional.of(found.gap()));
      return;
    }
    nearLimit(limit, found.gap(), where);
    checks.add(new SpanCheck(set, span, limit, Optional.of(found.gap()), rest, within ? Outcome.MET : Outcome.NOT_MET, where,
        within ? "" : Advice.mend(found)));
  }

  private void nearLimit(SpanLimit limit, Length gap, String where) {
    profile.uncertainty().ifPresent(each -> {
      Length most = each.multipliedBy(2);
      if (gap.minus(limit.gap()).abs().compareTo(most) <= 0 && most.isPositive()) {
        findings.add(new Finding("within-uncertainty", Severity.WARNING, where, "a gap of " + gap + " is nearer to the limit of "
            + limit.gap() + " than " + most + ", by which readings that may be off by " + each
            + " can move it; read again with a better instrument before relying on it", Source.DEFINITION));
      }
    });
  }

  private void notMeasured(SpanLimit limit, Optional<Length> found) {
    checks.add(new SpanCheck(set, limit.span(), limit, Optional.empty(), Optional.empty(), Outcome.NOT_MEASURED, "",
        Advice.measure(limit.span()) + found.map(gap -> " (" + gap + " was found, but readings are up to "
            + profile.widestSpacing() + " apart)").orElse("")));
  }
}
