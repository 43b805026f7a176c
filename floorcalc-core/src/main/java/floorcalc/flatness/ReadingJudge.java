package floorcalc.flatness;

import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Outcome;
import floorcalc.working.Severity;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Holds gaps read by hand against a tolerance set. */
final class ReadingJudge {
  private ReadingJudge() {}

  static Calculated<List<SpanCheck>> judge(ToleranceSet set, List<GapReading> readings) {
    return set.method() == EdgeMethod.CONTACT_DISTANCE ? byDistance(set, readings) : bySpan(set, readings);
  }

  private static Calculated<List<SpanCheck>> bySpan(ToleranceSet set, List<GapReading> readings) {
    List<SpanCheck> checks = new ArrayList<>();
    List<Step> steps = new ArrayList<>();
    for (SpanLimit limit : set.limits()) {
      List<GapReading> sorted = readings.stream().filter(reading -> reading.span().equals(limit.span()))
          .sorted((one, other) -> one.gap().compareTo(other.gap())).toList();
      if (sorted.isEmpty()) {
        checks.add(new SpanCheck(set, limit.span(), limit, Optional.empty(), Optional.empty(), Outcome.NOT_MEASURED, "",
            Advice.read(limit.span())));
        continue;
      }
      GapReading deciding = sorted.get((sorted.size() * limit.percent() + 99) / 100 - 1);
      steps.add(step(limit, sorted.size(), deciding.gap()));
      checks.add(check(set, limit, deciding));
    }
    List<Finding> findings = new ArrayList<>();
    for (GapReading reading : readings) {
      if (set.limits().stream().noneMatch(limit -> limit.span().equals(reading.span()))) {
        findings.add(silent(set, reading, "give gaps read under "
            + String.join(" or ", set.limits().stream().map(limit -> limit.span().toString()).distinct().toList())));
      }
    }
    return Calculated.of(List.copyOf(checks), steps, findings);
  }

  private static Calculated<List<SpanCheck>> byDistance(ToleranceSet set, List<GapReading> readings) {
    List<SpanCheck> checks = new ArrayList<>();
    List<Step> steps = new ArrayList<>();
    List<Finding> findings = new ArrayList<>();
    for (GapReading reading : readings) {
      Optional<SpanLimit> limit = set.table().limitAt(reading.span());
      if (limit.isEmpty()) {
        findings.add(silent(set, reading, "its limits begin at " + set.limits().get(0).span()));
        continue;
      }
      steps.add(set.table().step(reading.span()));
      checks.add(check(set, limit.get(), reading));
    }
    if (checks.isEmpty()) {
      SpanLimit first = set.limits().get(1);
      checks.add(new SpanCheck(set, first.span(), first, Optional.empty(), Optional.empty(), Outcome.NOT_MEASURED, "",
          Advice.read(first.span())));
    }
    return Calculated.of(List.copyOf(checks), steps, findings);
  }

  private static SpanCheck check(ToleranceSet set, SpanLimit limit, GapReading reading) {
    boolean within = reading.gap().compareTo(limit.gap()) <= 0;
    return new SpanCheck(set, reading.span(), limit, Optional.of(reading.gap()), Optional.empty(),
        within ? Outcome.MET : Outcome.NOT_MET, reading.where(), within ? "" : Advice.mendByHand());
  }

  private static Step step(SpanLimit limit, int number, Length gap) {
    return new Step("gap-that-decides", "Which gap decides under " + limit.span() + ", of " + number + " read"
        + (limit.isForAll() ? "? The greatest." : "? The greatest of the " + limit.percent() + " % that are least."),
        "value as stated", List.<Term>of(), gap, Source.GIVEN);
  }

  private static Finding silent(ToleranceSet set, GapReading reading, String instead) {
    return new Finding("span-without-limit", Severity.NOTE, reading.where(), "'" + set.name() + "' has no limit for the gap of "
        + reading.gap() + " read under " + reading.span() + "; " + instead, Source.DEFINITION);
  }
}
