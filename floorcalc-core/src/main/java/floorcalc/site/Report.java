package floorcalc.site;

import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Judgement;
import floorcalc.working.Outcome;
import floorcalc.working.Source;
import floorcalc.working.Step;
import java.util.ArrayList;
import java.util.List;

/** Gathers judgements, working and findings. Used by one thread. */
final class Report {
  final List<Judgement> judgements = new ArrayList<>();
  final List<Step> steps = new ArrayList<>();
  final List<Finding> findings = new ArrayList<>();

  /** Takes over the working and the findings, and hands on the value. */
  <T> T take(Calculated<T> calculated) {
    return take(calculated, "");
  }

  /** Likewise, with the place of the findings put before theirs. */
  <T> T take(Calculated<T> calculated, String where) {
    steps.addAll(calculated.steps());
    findings.addAll(at(where, calculated.findings()));
    return calculated.value();
  }

  static List<Finding> at(String where, List<Finding> findings) {
    return findings.stream().map(finding -> new Finding(finding.code(), finding.severity(),
        joined(where, finding.where()), finding.message(), finding.source())).toList();
  }

  static String joined(String one, String other) {
    return one.isEmpty() ? other : other.isEmpty() ? one : one + ", " + other;
  }

  void open(String code, String check, String where, String found, String limit, Source source, String advice) {
    judgements.add(new Judgement(code, check, where, found, limit, Outcome.NOT_MEASURED, source, advice));
  }
}
