package floorcalc.laying;

import floorcalc.measure.Length;
import floorcalc.plan.Check;
import floorcalc.plan.PlanFigures;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleKey;
import floorcalc.rules.RuleValue;
import floorcalc.working.Outcome;
import floorcalc.working.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Holds the laid floor against the rules, one line each. */
final class Checks {
  private static final long ROUNDED = 1_000;

  private final LayingRules rules;
  private final List<Check> checks = new ArrayList<>();

  private Checks(LayingRules rules) {
    this.rules = rules;
  }

  static List<Check> of(JobLaying laying, Breaches breaches, PlanFigures figures) {
    Checks list = new Checks(laying.job().rules());
    list.least("narrowest-row", "narrowest row", breaches.narrowestRow(), LayingRules.MINIMUM_ROW_WIDTH);
    list.least("shortest-piece", "shortest start or end piece", breaches.shortestPiece(), LayingRules.MINIMUM_END_PIECE);
    list.least("joint-offset", "smallest joint offset between touching rows", breaches.smallestOffset(),
        LayingRules.MINIMUM_JOINT_OFFSET);
    list.none("joints-in-line", "joints in line with one row between (H pattern)", figures.inLine());
    list.none("joints-in-steps", "joints in equal steps over three rows or more (stair pattern)", figures.stairs());
    for (BayPlan plan : laying.bays()) {
      Frame frame = plan.bay().frame();
      Loop shell = frame.floor.get(0);
      list.most("length-along-boards", plan.bay().name() + " along the boards", shell.maxX - shell.minX, LayingRules.MAXIMUM_RUN_ALONG);
      list.most("width-across-boards", plan.bay().name() + " across the boards", shell.maxY - shell.minY, LayingRules.MAXIMUM_RUN_ACROSS);
    }
    return list.checks;
  }

  private void least(String code, String what, Optional<Length> found, RuleKey<Length> key) {
    RuleValue<Length> rule = rules.get(key);
    Outcome outcome = found.isEmpty() || found.get().compareTo(rule.value()) >= 0 ? Outcome.MET : Outcome.NOT_MET;
    checks.add(Check.of(code, what, found.map(Length::toString).orElse("none on this floor"),
        "at least " + rule.value(), outcome, rule.source()));
  }

  private void none(String code, String what, int count) {
    checks.add(Check.of(code, what, Integer.toString(count), "none", count == 0 ? Outcome.MET : Outcome.NOT_MET,
        Source.COMMON_PRACTICE));
  }

  private void most(String code, String what, long nanometres, RuleKey<Length> key) {
    RuleValue<Length> rule = rules.get(key);
    // What is beyond the limit by less than a micrometre only because corners were rounded is at the limit.
    long over = nanometres - rule.value().toNanometres();
    Length found = over > 0 && over <= ROUNDED ? rule.value() : Length.ofNanometres(nanometres);
    Outcome outcome = found.compareTo(rule.value()) <= 0 ? Outcome.MET : Outcome.NOT_MET;
    checks.add(Check.of(code, what, found.toString(), "at most " + rule.value(), outcome, rule.source()));
  }
}
