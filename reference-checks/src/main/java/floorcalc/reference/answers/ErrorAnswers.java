package floorcalc.reference.answers;

import floorcalc.measure.Length;
import floorcalc.outline.survey.Survey;
import floorcalc.outline.survey.SurveyReport;
import floorcalc.outline.survey.SurveyedRoom;
import floorcalc.reference.check.Answer;
import floorcalc.reference.check.Question;
import floorcalc.rows.ErrorBudget;
import floorcalc.rows.ErrorPart;
import floorcalc.rows.StartLine;
import floorcalc.rows.Stop;
import floorcalc.rows.StripRisk;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleValue;
import floorcalc.working.Source;
import java.util.List;

/** Errors that add up. */
final class ErrorAnswers {
  private static final long SEED = 1;

  void addTo(Answers answers) {
    answers.add("sum-of-errors", ErrorAnswers::sum, ErrorBudget.class);
    answers.add("sum-of-errors-by-tries", ErrorAnswers::tries, ErrorBudget.class);
    answers.add("deviation-of-rectangle-area", ErrorAnswers::rectangle, SurveyReport.class);
    answers.add("chance-of-narrow-strip", ErrorAnswers::strip, StripRisk.class);
  }

  private static ErrorBudget budget(Question question) {
    return ErrorBudget.of(question.table("parts").stream().map(row -> new ErrorPart("part",
        row.get(0).equals("normal") ? ErrorPart.Shape.NORMAL : ErrorPart.Shape.WITHIN_LIMITS, Length.parse(row.get(1)), Long.parseLong(row.get(2))))
        .toList()).value();
  }

  private static Answer sum(Question question) {
    ErrorBudget budget = budget(question);
    return Answer.of("standardDeviation", budget.standardDeviation().toMillimetreString())
        .with("halfWidthIfNormal", budget.normalRange().toMillimetreString())
        .with("rootSumSquare", budget.rootSumSquare().toMillimetreString())
        .with("worstCase", budget.worstCase().map(Length::toMillimetreString).orElse("without limit"));
  }

  private static Answer tries(Question question) {
    return Answer.of("halfWidth", budget(question).rangeByTries(question.count("tries"), SEED).toMillimetreString());
  }

  /** Both walls of a pair are measured here, so that a side is their mean, of 1 / sqrt(2) of the deviation of one; asked is one that was measured once. */
  private static Answer rectangle(Question question) {
    List<String> walls = List.of(question.text("length"), question.text("width"), question.text("length"), question.text("width"));
    SurveyedRoom room = SurveyReport.of(Survey.of(TapeRoomAnswers.walls(walls)).withCorners(Survey.Corners.RIGHT_ANGLES)
        .withUncertainty(TapeRoomAnswers.everyLength(question.text("deviation")))).value().room().orElseThrow();
    return Answer.of("areaDeviation", room.areaDeviation() * 1e6 * Math.sqrt(2));
  }

  /** A strip alone, or at a stop eight rows from a first row of 40 mm: the place of the rows does not matter. */
  private static Answer strip(Question question) {
    Length strip = Length.parse(question.text("strip"));
    Length pitch = Length.parse(question.text("pitch"));
    Length minimum = Length.parse(question.text("minimum"));
    Length taper = Length.parse(question.text("taper"));
    Length deviation = Length.parse(question.text("deviation"));
    if (question.text("floorAtStop").isEmpty()) {
      return Answer.of("chance", StripRisk.of(strip, pitch, minimum, deviation).value().probability());
    }
    Length first = Length.ofMillimetres(40).min(pitch);
    Length line = first.plus(pitch.multipliedBy(8));
    Stop stop = question.text("floorAtStop").equals("below") ? Stop.floorBelow("stop", line.plus(strip), line.plus(strip).plus(taper))
        : Stop.floorAbove("stop", line.minus(strip).minus(taper), line.minus(strip));
    StartLine rows = StartLine.at(List.of(stop), Length.ZERO, pitch, new RuleValue<>(LayingRules.MINIMUM_ROW_WIDTH, minimum, Source.GIVEN), first)
        .value();
    return Answer.of("chance", StripRisk.at(rows, stop, deviation).value().probability());
  }
}
