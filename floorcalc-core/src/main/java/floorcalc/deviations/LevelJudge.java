package floorcalc.deviations;

import floorcalc.levels.Levels;
import floorcalc.levels.SpotLevel;
import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import floorcalc.working.Judgement;
import floorcalc.working.Outcome;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Holds the levels of a floor against a set of limits on level. */
final class LevelJudge {
  private static final String ADVICE = "find out why it leans before it is built up: boards ask for flat, not for level, but doors and cabinets"
      + " need it level, and a floor that sags may be one for a structural engineer";

  private final OutOfLevelSet set;
  private final Levels levels;
  private final Optional<Length> datum;
  private final List<LevelLine> lines;
  private final List<Judgement> judgements = new ArrayList<>();
  private final List<Step> steps = new ArrayList<>();

  LevelJudge(OutOfLevelSet set, Levels levels, Optional<Length> datum) {
    this.set = set;
    this.levels = levels;
    this.datum = datum;
    this.lines = LevelLine.of(levels.spots());
  }

  Calculated<List<Judgement>> judge() {
    for (OutOfLevelLimit limit : set.limits()) {
      if (limit.measure() == LevelMeasure.FROM_DATUM) {
        fromDatum(limit);
      } else {
        alongLines(limit);
      }
    }
    return Calculated.of(List.copyOf(judgements), steps);
  }

  private void fromDatum(OutOfLevelLimit limit) {
    if (datum.isEmpty()) {
      open(limit, "say how high the level line is above the datum of the readings");
      return;
    }
    Length line = datum.get();
    SpotLevel worst = levels.spots().stream().reduce((one, other) -> other.height().minus(line).abs().compareTo(one.height().minus(line).abs()) > 0
        ? other : one).orElseThrow();
    Length out = worst.height().minus(line).abs();
    steps.add(new Step("out-of-level", "How far is the reading farthest from the level line away from it?", "d = abs(h - z)",
        List.of(Term.of("h", "its height", worst.height()), Term.of("z", "height of the level line", line)), out, Source.DEFINITION));
    add(limit, out, limit.most().orElseThrow(), "x = " + worst.place().x() + ", y = " + worst.place().y(), "");
  }

  private void alongLines(OutOfLevelLimit limit) {
    List<LevelLine> covered = lines.stream().filter(line -> limit.covers(line.length())).toList();
    if (covered.isEmpty() && !lines.isEmpty()) {
      return;
    }
    LevelLine.Pair worst = null;
    for (LevelLine line : covered) {
      Optional<LevelLine.Pair> pair = line.worst(limit);
      if (pair.isPresent() && (worst == null || excess(limit, pair.get()).compareTo(excess(limit, worst)) > 0)) {
        worst = pair.get();
      }
    }
    if (worst == null) {
      open(limit, "read the floor along lines across it, parallel to x or y" + limit.rule().map(rule -> ", at least " + rule + " long")
          .orElse(limit.measure() == LevelMeasure.ALONG_LINE ? ", at least 1 m long" : ""));
      return;
    }
    Length allowed = limit.allowed(worst.distance());
    if (limit.perMetre().isPresent()) {
      steps.add(allowedStep(limit, worst.distance(), allowed));
    }
    steps.add(new Step("out-of-level", "How far are the two places out of level?", "d = b - a", List.of(Term.of("b", "height of the higher place",
        worst.high()), Term.of("a", "height of the lower", worst.low())), worst.out(), Source.DEFINITION));
    add(limit, worst.out(), allowed, worst.where(), " over " + worst.distance());
  }

  private static Step allowedStep(OutOfLevelLimit limit, Length distance, Length allowed) {
    List<Term> terms = new ArrayList<>(List.of(new Term("r", "allowed for each metre", limit.perMetre().orElseThrow(), limit.source()),
        Term.of("d", "how far apart the two places are", distance)));
    limit.most().ifPresent(most -> terms.add(new Term("m", "at most", most, limit.source())));
    return new Step("level-allowed", "How much is allowed between two places?", (limit.most().isPresent() ? "a = min(r * d / 1000mm, m)"
        : "a = r * d / 1000mm") + ", rounded down to a whole nanometre", terms, allowed, limit.source());
  }

  private static Length excess(OutOfLevelLimit limit, LevelLine.Pair pair) {
    return pair.out().minus(limit.allowed(pair.distance()));
  }

  private void add(OutOfLevelLimit limit, Length out, Length allowed, String where, String over) {
    boolean met = out.compareTo(allowed) <= 0;
    judgements.add(new Judgement("out-of-level", check(limit), where, out + over, limit + (limit.perMetre().isPresent() ? " (here " + allowed + ")"
        : ""), met ? Outcome.MET : Outcome.NOT_MET, limit.source(), met ? "" : ADVICE));
  }

  private void open(OutOfLevelLimit limit, String advice) {
    judgements.add(new Judgement("out-of-level", check(limit), "", "", limit.toString(), Outcome.NOT_MEASURED, limit.source(), advice));
  }

  private String check(OutOfLevelLimit limit) {
    return "level " + limit.measure().words() + ", " + set.name();
  }
}
