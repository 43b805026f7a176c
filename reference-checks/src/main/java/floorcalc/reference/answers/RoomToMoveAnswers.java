package floorcalc.reference.answers;

import floorcalc.measure.Length;
import floorcalc.moisture.Percent;
import floorcalc.movement.Coefficient;
import floorcalc.movement.GapAdvice;
import floorcalc.movement.MovementForecast;
import floorcalc.movement.WallAngle;
import floorcalc.reference.check.Answer;
import floorcalc.reference.check.Question;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleValue;
import floorcalc.working.Source;
import java.math.BigDecimal;

/** Gaps for the movement of a floor. */
final class RoomToMoveAnswers {
  void addTo(Answers answers) {
    answers.add("room-to-move", RoomToMoveAnswers::room, GapAdvice.class, MovementForecast.class);
    answers.add("gap-along-board", RoomToMoveAnswers::along, WallAngle.class);
    answers.add("gap-square-to-wall", RoomToMoveAnswers::square, WallAngle.class);
  }

  private static Answer room(Question question) {
    Percent now = Percent.of(question.text("moistureAtLaying"));
    Percent dampest = Percent.of(question.text("dampest"));
    MovementForecast forecast = MovementForecast.of(now, now.compareTo(dampest) < 0 ? now : dampest, dampest,
        Coefficient.of(question.number("coefficient"), "as stated", Source.GIVEN));
    GapAdvice.StaysPut held = question.text("staysPut").equals("in the middle") ? GapAdvice.StaysPut.IN_THE_MIDDLE : GapAdvice.StaysPut.AT_ONE_SIDE;
    GapAdvice advice = GapAdvice.of(forecast, Length.parse(question.text("width")),
        new RuleValue<>(LayingRules.EXPANSION_GAP, Length.parse(question.text("ruleGap")), Source.GIVEN), held).value();
    return Answer.of("swellingMillimetres", advice.swelling().toMillimetreString()).with("neededMillimetres", advice.needed().toMillimetreString())
        .with("gapMillimetres", advice.gap().toMillimetreString())
        .with("greatestWidthMillimetres", advice.greatestWidth().map(Length::toMillimetreString).orElse("none"))
        .with("bays", BigDecimal.valueOf(advice.bays()));
  }

  private static Answer along(Question question) {
    return Answer.of("millimetres", WallAngle.of(question.number("wallAngle")).alongBoard(Length.parse(question.text("gapSquareToWall"))).value()
        .toMillimetreString());
  }

  private static Answer square(Question question) {
    return Answer.of("millimetres", WallAngle.of(question.number("wallAngle")).squareToWall(Length.parse(question.text("gapAlongBoard"))).value()
        .toMillimetreString());
  }
}
