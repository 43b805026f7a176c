package floorcalc.reference.answers;

import floorcalc.measure.Length;
import floorcalc.outline.Point;
import floorcalc.outline.survey.Survey;
import floorcalc.outline.survey.SurveyReport;
import floorcalc.outline.survey.SurveyUncertainty;
import floorcalc.outline.survey.SurveyWall;
import floorcalc.outline.survey.SurveyedRoom;
import floorcalc.outline.survey.Tie;
import floorcalc.reference.check.Answer;
import floorcalc.reference.check.Question;
import java.util.List;

/** Rooms measured by tape. */
final class TapeRoomAnswers {
  /** No turn is measured in these rooms. */
  private static final double ANY_DEGREES = 0.5;

  void addTo(Answers answers) {
    answers.add("room-from-walls-and-ties", TapeRoomAnswers::room, SurveyReport.class, Survey.class);
  }

  static SurveyUncertainty everyLength(String deviation) {
    return new SurveyUncertainty(Length.parse(deviation), Length.ZERO, ANY_DEGREES);
  }

  static List<SurveyWall> walls(List<String> lengths) {
    return lengths.stream().map(length -> SurveyWall.of(Length.parse(length))).toList();
  }

  private static Answer room(Question question) {
    SurveyReport report = SurveyReport.of(Survey.of(walls(question.list("walls"))).withTies(question.table("ties").stream()
        .map(row -> new Tie(Integer.parseInt(row.get(0)), Integer.parseInt(row.get(1)), Length.parse(row.get(2)))).toList())
        .withUncertainty(everyLength(question.text("deviation")))).value();
    SurveyedRoom room = report.room().orElseThrow();
    Answer answer = Answer.of("measurements", Integer.toString(room.measurements().size())).with("redundancy", Integer.toString(room.redundancy()))
        .with("factor", room.factor()).with("area", SquarenessAnswers.squareMillimetres(room.area()))
        .with("misfits", Integer.toString(report.misfits().size()));
    for (int i = 0; i < room.corners().size(); i++) {
      Point corner = room.corners().get(i);
      answer = answer.with("corner" + (i + 1) + ".x", corner.x().toMillimetreString()).with("corner" + (i + 1) + ".y", corner.y().toMillimetreString());
    }
    return answer;
  }
}
