package floorcalc.examples.job;

import floorcalc.plan.Check;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * A job as read from a file. Immutable.
 *
 * @param job the job, not null
 * @param notJudged site readings, and what was not measured, as checks that this version does not judge; not null
 * @param tape in which units the job was measured, not null
 */
public record JobFile(FloorJob job, List<Check> notJudged, Tape tape) {
  /** Checks that no part is null and copies the list. */
  public JobFile {
    Objects.requireNonNull(job, "job");
    notJudged = List.copyOf(notJudged);
    Objects.requireNonNull(tape, "tape");
  }

  /**
   * Returns a plan of this job with the readings that were not judged among its checks, so that none is lost.
   *
   * @param plan the plan of {@link #job()}, not null
   * @return the same plan with more checks, not null
   */
  public FloorPlan withNotJudged(FloorPlan plan) {
    List<Check> checks = new ArrayList<>(plan.checks());
    checks.addAll(notJudged);
    return new FloorPlan(plan.title(), plan.bays(), plan.boards(), plan.order(), plan.ledger(), plan.materials(),
        plan.profiles(), checks, plan.compromises(), plan.findings(), plan.cautions(), plan.working());
  }
}
