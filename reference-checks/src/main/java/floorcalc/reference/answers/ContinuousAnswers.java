package floorcalc.reference.answers;

import floorcalc.measure.Length;
import floorcalc.moisture.Percent;
import floorcalc.movement.BayMovement;
import floorcalc.movement.BreakAdvice;
import floorcalc.movement.Coefficient;
import floorcalc.movement.ContinuousBay;
import floorcalc.movement.ContinuousFloor;
import floorcalc.movement.GapChecks;
import floorcalc.movement.GapPoint;
import floorcalc.movement.JoinedOpening;
import floorcalc.movement.JoinedRoom;
import floorcalc.movement.MovementForecast;
import floorcalc.movement.Pinning;
import floorcalc.outline.Direction;
import floorcalc.outline.Outline;
import floorcalc.outline.Wkt;
import floorcalc.reference.check.Answer;
import floorcalc.reference.check.Question;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleSet;
import floorcalc.working.Judgement;
import floorcalc.working.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** Gaps in the seasons and floors through several rooms. */
final class ContinuousAnswers {
  private static final Length NO_LIMIT = Length.ofMillimetres(100_000);

  void addTo(Answers answers) {
    answers.add("gaps-in-the-seasons", ContinuousAnswers::gaps, GapChecks.class);
    answers.add("breaks-at-openings", ContinuousAnswers::breaks, BreakAdvice.class, ContinuousFloor.class);
  }

  private static Coefficient coefficient(Question question) {
    return Coefficient.of(question.number("coefficient"), "as stated", Source.GIVEN);
  }

  private static Percent percent(Question question, String name) {
    return Percent.of(question.text(name));
  }

  private static Answer gaps(Question question) {
    MovementForecast forecast = MovementForecast.of(percent(question, "moistureAtLaying"), percent(question, "driest"), percent(question, "dampest"),
        coefficient(question));
    List<GapPoint> points = new ArrayList<>();
    for (List<String> row : question.table("points")) {
      GapPoint point = GapPoint.of("place " + (points.size() + 1), Length.ofMillimetres(row.get(0)), Length.ofMillimetres(row.get(1)));
      points.add(row.get(2).equals("-") ? point : point.cover(Length.ofMillimetres(row.get(2))));
    }
    GapChecks checks = GapChecks.judge(forecast, points, Pinning.notLookedAt()).value();
    Length narrowest = checks.places().stream().map(GapChecks.Place::narrowest).reduce(Length::min).orElseThrow();
    Optional<Length> overlap = checks.places().stream().map(GapChecks.Place::overlap).flatMap(Optional::stream).reduce(Length::min);
    return Answer.of("narrowest", narrowest.toMillimetreString()).with("leastOverlap", overlap.map(Length::toMillimetreString).orElse("none"))
        .with("wideEnough", outcome(checks, "gap-wide-enough")).with("covered", outcome(checks, "gap-covered"));
  }

  private static String outcome(GapChecks checks, String code) {
    Judgement judgement = checks.judgements().stream().filter(one -> one.code().equals(code)).findFirst().orElseThrow();
    return judgement.outcome().name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  private static Outline rectangle(List<String> row, int from) {
    String x0 = row.get(from);
    String y0 = row.get(from + 1);
    String x1 = row.get(from + 2);
    String y1 = row.get(from + 3);
    return Wkt.parse("POLYGON ((" + x0 + " " + y0 + ", " + x1 + " " + y0 + ", " + x1 + " " + y1 + ", " + x0 + " " + y1 + ", " + x0 + " " + y0 + "))");
  }

  private static Answer breaks(Question question) {
    List<JoinedRoom> rooms = question.table("rooms").stream().map(row -> new JoinedRoom(row.get(0), rectangle(row, 1))).toList();
    List<JoinedOpening> openings = question.table("openings").stream()
        .map(row -> new JoinedOpening(row.get(0), row.get(1), row.get(2), rectangle(row, 3))).toList();
    ContinuousFloor floor = ContinuousFloor.of(rooms, openings, Direction.ALONG_X);
    LayingRules rules = RuleSet.COMMON_PRACTICE.forBoard(Length.ofMillimetres(14), Length.ofMillimetres(185))
        .with(LayingRules.EXPANSION_GAP, Length.parse(question.text("ruleGap")), Source.GIVEN)
        .with(LayingRules.MAXIMUM_RUN_ALONG, NO_LIMIT, Source.GIVEN).with(LayingRules.MAXIMUM_RUN_ACROSS, NO_LIMIT, Source.GIVEN);
    Percent now = percent(question, "moistureAtLaying");
    BreakAdvice advice = BreakAdvice.of(MovementForecast.of(now, now, percent(question, "dampest"), coefficient(question)), floor, rules).value();
    List<ContinuousBay> bays = floor.bays(advice.breaks().stream().map(one -> one.opening().name()).toList());
    return Answer.of("across", joined(floor.bays().stream().map(ContinuousBay::across).toList()))
        .with("along", joined(floor.bays().stream().map(ContinuousBay::along).toList()))
        .with("neededAsOne", joined(advice.asOne().stream().map(BayMovement::needed).toList()))
        .with("breaks", advice.breaks().stream().map(one -> one.opening().name() + " " + one.width().toMillimetreString())
            .collect(Collectors.joining("; ")))
        .with("bays", bays.stream().map(bay -> bay.rooms().stream().map(JoinedRoom::name).collect(Collectors.joining("+")))
            .collect(Collectors.joining("; ")))
        .with("baysAcross", joined(bays.stream().map(ContinuousBay::across).toList()));
  }

  private static String joined(List<Length> lengths) {
    return lengths.stream().map(Length::toMillimetreString).collect(Collectors.joining(" "));
  }
}
