package floorcalc.audit;

import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.working.Step;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/** Checks a plan against its job from first principles. */
public final class PlanAudit {
  private PlanAudit() {
  }

  /**
   * Checks a plan. It may come from this library, from other code, or be made by hand; whatever is wrong with it is a
   * breach in the report and never an exception.
   *
   * @param job what was asked for, not null
   * @param plan what was worked out, not null
   * @return what was found, not null
   */
  public static AuditReport of(FloorJob job, FloorPlan plan) {
    Objects.requireNonNull(job, "job");
    Objects.requireNonNull(plan, "plan");
    Breaches breaches = new Breaches();
    Tally tally = new Tally();
    List<Step> steps = new ArrayList<>();
    BoardBook book = BoardBook.of(job, plan, breaches);
    tally.boards = book.size();
    OrderCheck.check(job, plan, book, 0, breaches);
    return new AuditReport(breaches, steps, tally);
  }
}
