package floorcalc.laying;

import floorcalc.boards.BoardBound;
import floorcalc.boards.PackBound;
import floorcalc.boards.SearchEffort;
import floorcalc.outline.ExpansionGap;
import floorcalc.plan.Bay;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.PlanFigures;
import floorcalc.rules.LayingRules;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Worked;
import floorcalc.joints.JointPattern;
import floorcalc.working.Severity;
import floorcalc.working.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Lays a job: the rooms less their gaps are cut into rows, runs and pieces, joints are searched, pieces are cut from
 * boards, and all is written down as a plan. The plan has not been audited yet; {@code floorcalc.FloorPlanner} does that.
 *
 * @since 0.1
 */
public final class FloorLaying {
  private FloorLaying() {}

  /**
   * Lays a job.
   *
   * @param job the job, not null, with valid outlines
   * @return the plan, not audited; not null
   */
  public static FloorPlan of(FloorJob job) {
    JobLaying laying = JobLaying.of(job);
    LayingRules rules = job.rules();
    Breaches breaches = Breaches.of(laying);
    PieceMaker maker = new PieceMaker(laying.cutting());
    List<Bay> bays = new ArrayList<>();
    List<Worked> working = new ArrayList<>();
    List<Finding> findings = new ArrayList<>();
    List<BayPlan> plans = laying.bays();
    for (RoomLaying room : laying.rooms()) {
      Calculated<ExpansionGap> gap = room.gap();
      working.add(new Worked(room.room().name() + ": expansion gap", gap.steps()));
      findings.addAll(about(room.room().name(), gap.findings()));
      if (!room.breaks().steps().isEmpty()) {
        working.add(new Worked(room.room().name() + ": expansion breaks", room.breaks().steps()));
      }
      findings.addAll(about(room.room().name(), room.breaks().findings()));
      findings.addAll(room.notFree(rules));
    }
    for (int i = 0; i < plans.size(); i++) {
      FrameBay bay = plans.get(i).bay();
      bays.add(maker.bay(bay, laying.pieces().get(i)));
      working.add(new Worked(bay.name() + ": rows", plans.get(i).startLine().steps()));
      findings.addAll(about(bay.name(), plans.get(i).startLine().findings()));
    }
    findings.addAll(Doorways.notRunThrough(job));
    if (job.pattern().kind() != JointPattern.Kind.FREE && job.board().pack().size() > 1) {
      findings.add(new Finding("pattern-not-followed", Severity.WARNING, "", "the joint pattern '" + job.pattern()
          + "' needs boards of one length, but the packs hold " + job.board().lengths()
          + "; the joints are laid free: order boards of one length, or ask for no pattern", Source.DEFINITION));
    }
    BoundParts parts = BoundParts.of(laying, rules.value(LayingRules.MINIMUM_END_PIECE).toNanometres());
    boolean rulesKept = laying.joints().breaches() == 0;
    Calculated<Integer> bound = rulesKept && job.effort() == SearchEffort.FULL
        ? BoardBound.of(parts.runs, parts.stretches, parts.rest, parts.floor, job.board(), rules,
            laying.joints(), laying.cutting().boardCount())
        : BoardBound.of(parts.stretches, parts.rest, parts.floor, job.board(), rules);
    working.add(new Worked("boards", bound.steps()));
    // A plan that breaks a rule may take fewer boards than any that keeps them all: the bound then says no more than that.
    int atLeast = breaches.found.isEmpty() ? bound.value() : Math.min(bound.value(), laying.cutting().boardCount());
    Calculated<Integer> packs = PackBound.of(parts.stretches, parts.rest, parts.floor, job.board(), rules, atLeast);
    OrderMaker order = OrderMaker.of(laying, atLeast, breaches.found.isEmpty() ? packs
        : Calculated.of(Math.min(packs.value(), laying.packs()), packs.steps()));
    working.addAll(order.working());
    findings.addAll(order.findings());
    PlanFigures figures = Figures.of(laying, breaches.layouts);
    return new FloorPlan(job.title(), bays, maker.boards(), order.order(), order.ledger(), order.materials(), List.of(),
        Checks.of(laying, breaches, figures), breaches.found, findings, Cautions.of(job), working,
        Optional.of(figures), laying.rooms().stream().flatMap(room -> room.breaks().in(room.room()).stream()).toList());
  }

  private static List<Finding> about(String where, List<Finding> findings) {
    return findings.stream().map(finding -> new Finding(finding.code(), finding.severity(),
        finding.where().isEmpty() ? where : where + ", " + finding.where(), finding.message(), finding.source()))
        .toList();
  }
}
