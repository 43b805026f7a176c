package floorcalc;

import floorcalc.audit.AuditReport;
import floorcalc.audit.PlanAudit;
import floorcalc.finishing.CutOuts;
import floorcalc.finishing.OrderList;
import floorcalc.finishing.Transitions;
import floorcalc.laying.FloorLaying;
import floorcalc.laying.JobCheck;
import floorcalc.plan.Check;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.JobFault;
import floorcalc.plan.UnsoundJobException;
import floorcalc.site.Readiness;
import floorcalc.working.Calculated;
import floorcalc.working.Outcome;
import floorcalc.working.Source;
import java.util.List;
import java.util.Objects;

/**
 * The front door: a job in, an audited plan out, with what its sites still need.
 * <pre>{@code
 * BoardGoods boards = BoardGoods.of(Length.parse("2.2 m"), Length.parse("185 mm"), Length.parse("14 mm"), 6);
 * Room study = Room.of("Study", Wkt.parse("POLYGON ((0 0, 4210 0, 4195 3620, 0 3605, 0 0))"));
 * FloorPlan plan = FloorPlanner.plan(FloorJob.of("Study floor", boards).room(study).build());
 * }</pre>
 * Stateless and thread-safe. The same job gives the same plan on every machine.
 *
 * @since 0.1
 */
public final class FloorPlanner {
  private FloorPlanner() {}

  /**
   * Plans a floor. The boards are held against the sizes of their standard, a sample of them against what they may deviate, and each room's
   * site is judged by its readings; a floor is planned whether or not boards and site are fit. A profile lies at each expansion break
   * and at each door.
   *
   * @param job what is known about the floor, not null
   * @return the plan, audited; not null
   * @throws UnsoundJobException if the job cannot be planned, with all its faults
   * @throws UnsoundPlanException if the audit finds a fault in the plan, which is a fault of the library
   */
  public static FloorPlan plan(FloorJob job) {
    Objects.requireNonNull(job, "job");
    List<JobFault> faults = JobCheck.faultsOf(job);
    if (!faults.isEmpty()) {
      throw new UnsoundJobException(faults);
    }
    FloorPlan plan = FloorLaying.of(job);
    AuditReport report = PlanAudit.of(job, plan);
    if (!report.isClean()) {
      throw new UnsoundPlanException(report);
    }
    Check audited = Check.of("plan-audited", "plan audited a second time by other means",
        "covered, nothing overlaps, cuttable from the boards listed, rules kept or named", "no fault", Outcome.MET,
        Source.DEFINITION);
    FloorPlan bought = GoodsChecks.added(job, plan.with(List.of(audited), List.of(), List.of()));
    FloorPlan judged = SiteChecks.added(job, SurveyChecks.added(job, bought));
    FloorPlan edged = Transitions.of(job, judged).addedTo(judged);
    FloorPlan cut = CutOuts.added(job, edged);
    // Last, since it cuts the profiles that the plan has by then from their bars.
    return OrderList.of(job, cut).addedTo(cut);
  }

  /**
   * Judges whether the site of each room of a job is fit for laying, with the gaps and directions of its plan. The same
   * judgements stand among the checks of a plan, and what was noticed about the readings among its findings.
   *
   * @param job the job, not null
   * @param plan a plan of it, not null
   * @return a report for each room in the order of the job, not null
   */
  public static List<Readiness> readiness(FloorJob job, FloorPlan plan) {
    Objects.requireNonNull(job, "job");
    Objects.requireNonNull(plan, "plan");
    return SiteChecks.of(job, plan).stream().map(Calculated::value).toList();
  }

  /**
   * Plans the floor again with wider and wider joint offsets, so that a nicer floor can be chosen where a pack has boards to
   * spare: boards and packs against the smallest joint offset, H and stair patterns, cuts and the longest leftover.
   * <p>
   * Offsets asked for go from that of the rules in steps of whole 50 mm, seven at most, up to half of the longest board, beyond
   * which no offset can be kept. Left out are plans that break more rules than the first, and plans that another
   * beats or equals in all six. So one with the fewest packs is always among them; of the others
   * {@link Alternative#isNoDearer()} tells which take no more.
   *
   * @param job what is known about the floor, not null
   * @return the ways worth choosing between, in the order of the offsets asked for; unmodifiable, never empty
   * @throws UnsoundJobException if the job cannot be planned, with all its faults
   * @throws UnsoundPlanException if the audit finds a fault in a plan, which is a fault of the library
   */
  public static List<Alternative> alternatives(FloorJob job) {
    return Offsets.alternatives(Objects.requireNonNull(job, "job"), FloorPlanner::plan);
  }

  /**
   * Returns what keeps a job from being planned.
   *
   * @param job the job, not null
   * @return all faults; empty if {@link #plan} will plan it
   */
  public static List<JobFault> faultsOf(FloorJob job) {
    return JobCheck.faultsOf(Objects.requireNonNull(job, "job"));
  }

  /**
   * Checks a plan from first principles, whoever made it: is the floor covered, does nothing overlap, can it be cut from the boards
   * listed, is each rule of the job kept or its breach named?
   *
   * @param job the job that the plan must answer, with the rules to hold it against, not null
   * @param plan the plan, not null
   * @return what was found, not null
   */
  public static AuditReport audit(FloorJob job, FloorPlan plan) {
    return PlanAudit.of(Objects.requireNonNull(job, "job"), Objects.requireNonNull(plan, "plan"));
  }
}
