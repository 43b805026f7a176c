package floorcalc;

import floorcalc.deviations.SizeSet;
import floorcalc.plan.Check;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Judgement;
import floorcalc.working.Outcome;
import floorcalc.working.Worked;
import java.util.ArrayList;
import java.util.List;

/** Holds the boards of a job against the sizes of their standard, and a sample of them against what they may deviate. */
final class GoodsChecks {
  private GoodsChecks() {}

  /**
   * The plan with what was measured of the boards among its checks. Sizes outside a standard are a finding alone: they say which papers to look
   * for, not that the boards are wrong. What a set asks for and nobody measured is no check here, for a sample is the layer's own choice.
   */
  static FloorPlan added(FloorJob job, FloorPlan plan) {
    List<Check> checks = new ArrayList<>();
    List<Finding> findings = new ArrayList<>(SizeSet.fitting(job.board()).judge(job.board()).findings());
    List<Worked> working = new ArrayList<>();
    job.measuredBoards().ifPresent(sample -> {
      Calculated<List<Judgement>> judged = sample.judge();
      judged.value().stream().filter(one -> one.outcome() != Outcome.NOT_MEASURED || !one.found().isEmpty())
          .forEach(one -> checks.add(new Check("", one)));
      findings.addAll(judged.findings());
      if (!judged.steps().isEmpty()) {
        working.add(new Worked("boards as measured", judged.steps()));
      }
    });
    return checks.isEmpty() && findings.isEmpty() && working.isEmpty() ? plan : plan.with(checks, findings, working);
  }
}
