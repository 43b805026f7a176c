package floorcalc.movement;

import floorcalc.measure.Length;
import floorcalc.outline.Point;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleKey;
import floorcalc.rules.RuleValue;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Judgement;
import floorcalc.working.Outcome;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Works out how far one bay moves. Used by one thread. */
final class BayWorking {
  private static final Length MILLIMETRE = Length.ofMillimetres(1);

  private final MovementForecast forecast;
  private final ContinuousBay bay;
  private final RuleValue<Length> gap;
  private final LayingRules rules;
  private final Optional<Point> held;
  private final List<Step> steps = new ArrayList<>();
  private final Set<Finding> findings = new LinkedHashSet<>();
  private final List<Judgement> judgements = new ArrayList<>();

  /** Held at a point if that is in the bay, else free to move from its middle. */
  private BayWorking(MovementForecast forecast, ContinuousBay bay, LayingRules rules, Optional<Point> held) {
    this.forecast = forecast;
    this.bay = bay;
    this.rules = rules;
    this.gap = rules.get(LayingRules.EXPANSION_GAP);
    this.held = held.filter(bay::contains);
  }

  static Calculated<BayMovement> of(MovementForecast forecast, ContinuousBay bay, LayingRules rules, Optional<Point> held) {
    BayWorking working = new BayWorking(forecast, bay, rules, held);
    BayMovement movement = working.movement();
    return Calculated.of(movement, working.steps, List.copyOf(working.findings));
  }

  private BayMovement movement() {
    Length width = width();
    Calculated<Length> swelling = forecast.swelling(width);
    Calculated<Length> shrinkage = forecast.shrinkage(width);
    steps.addAll(swelling.steps());
    steps.addAll(shrinkage.steps());
    findings.addAll(swelling.findings());
    findings.addAll(shrinkage.findings());
    Length farthest = farthest("across", width, held.map(bay::acrossFromLowEdge));
    Length needed = needed("across", farthest, forecast.coefficient());
    judge("gap-takes-movement", "across", needed, BayMovement.side(farthest, width), swelling.value(), forecast.coefficient());
    Length most = needed;
    if (forecast.coefficientAlong().isPresent()) {
      Coefficient along = forecast.coefficientAlong().get();
      Length far = farthest("along", bay.along(), held.map(bay::alongFromLowEnd));
      Length neededAlong = needed("along", far, along);
      Length total = Length.ofNanometres(BigDecimal.valueOf(bay.along().toNanometres()).multiply(forecast.swellingShare(along))
          .setScale(0, RoundingMode.CEILING).longValueExact());
      judge("gap-takes-movement-along", "along", neededAlong, BayMovement.side(far, bay.along()), total, along);
      most = most.max(neededAlong);
    }
    run("width-within-run", width, "across the boards", LayingRules.MAXIMUM_RUN_ACROSS);
    run("length-within-run", bay.along(), "along the boards", LayingRules.MAXIMUM_RUN_ALONG);
    return new BayMovement(bay, swelling.value(), shrinkage.value(), farthest, needed, advised(most), judgements);
  }

  private Length width() {
    Length width = bay.across();
    steps.add(new Step("width-across", "How wide is the bay of " + bay.name() + " across the boards, in total"
        + (bay.openings().isEmpty() ? "?" : ", through its openings?"), "W = H - L",
        List.of(Term.of("H", "its higher edge, across the boards from its lower one", width),
            Term.of("L", "its lower edge", Length.ZERO)), width, Source.DEFINITION));
    return width;
  }

  private Length farthest(String way, Length extent, Optional<Length> still) {
    String question = "How far is the farther edge of " + bay.name() + ", " + way + " the boards, from the line that stays put?";
    if (still.isEmpty()) {
      Length half = extent.dividedBy(2, RoundingMode.CEILING);
      steps.add(new Step("farther-edge", question, "d = W / 2, rounded up to a whole nanometre",
          List.of(Term.of("W", "extent of the bay, which is free to move from its middle", extent)), half,
          Source.COMMON_PRACTICE));
      return half;
    }
    Length far = still.get().max(extent.minus(still.get()));
    steps.add(new Step("farther-edge", question, "d = max(S, W - S)",
        List.of(Term.of("S", "from its lower edge to where it is held", still.get()),
            Term.of("W", "extent of the bay", extent)), far, Source.DEFINITION));
    return far;
  }

  private Length needed(String way, Length farthest, Coefficient coefficient) {
    steps.add(Movements.swelling(forecast).shareStep("m", way, coefficient));
    BigDecimal share = forecast.swellingShare(coefficient);
    Length needed = Length.ofNanometres(BigDecimal.valueOf(farthest.toNanometres()).multiply(share)
        .setScale(0, RoundingMode.CEILING).longValueExact());
    steps.add(new Step("gap-needed", "Which gap does " + bay.name() + " need for its swelling " + way + " the boards, on one"
        + " side, square to the wall?", "g = d * m, rounded up to a whole nanometre",
        List.of(Term.of("d", "from the line that stays put to the farther edge", farthest),
            Term.of("m", "swelling as a share", share.toPlainString())), needed, Source.DEFINITION));
    return needed;
  }

  private void judge(String code, String way, Length needed, String side, Length total, Coefficient coefficient) {
    boolean met = needed.compareTo(gap.value()) <= 0;
    judgements.add(new Judgement(code, "gap wide enough for the swelling " + way
        + " the boards, on each side, square to the wall", bay.name(), gap.value() + " on each side", "at least " + needed
        + " " + side + " (" + total + " in total)", met ? Outcome.MET : Outcome.NOT_MET, coefficient.source(),
        met ? "" : "leave " + whole(needed) + " " + side + ", or put in a break"));
  }

  private void run(String code, Length extent, String way, RuleKey<Length> key) {
    RuleValue<Length> rule = rules.get(key);
    boolean met = extent.compareTo(rule.value()) <= 0;
    judgements.add(new Judgement(code, "extent of the bay " + way + ", in total", bay.name(), extent.toString(),
        "at most " + rule.value(), met ? Outcome.MET : Outcome.NOT_MET, rule.source(), met ? "" : "put in a break"));
  }

  private Length advised(Length needed) {
    Length advised = gap.value().max(whole(needed));
    steps.add(new Step("gap-advised", "Which gap is advised on each side of " + bay.name() + ", in whole millimetres if"
        + " movement asks for more than the rule?", "a = max(r, ceil(g / 1mm) * 1mm)",
        List.of(new Term("r", "gap that the rule asks for, on each side", gap.value(), gap.source()),
            Term.of("g", "gap needed for the movement", needed)), advised, Source.DEFINITION));
    return advised;
  }

  static Length whole(Length length) {
    return MILLIMETRE.multipliedBy(-length.negated().dividedBy(MILLIMETRE));
  }
}
