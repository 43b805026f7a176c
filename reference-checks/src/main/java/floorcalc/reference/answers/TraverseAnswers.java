package floorcalc.reference.answers;

import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.outline.Point;
import floorcalc.outline.survey.Angle;
import floorcalc.outline.survey.AngleBalance;
import floorcalc.outline.survey.ClosingLimit;
import floorcalc.outline.survey.Course;
import floorcalc.outline.survey.Traverse;
import floorcalc.reference.check.Answer;
import floorcalc.reference.check.Question;
import floorcalc.working.Calculated;
import java.math.BigDecimal;
import java.util.List;

/** Walks that must close. Lengths in any unit are read as metres. */
final class TraverseAnswers {
  private static final int ALL_DECIMALS = 19;

  void addTo(Answers answers) {
    answers.add("traverse-by-compass-rule", TraverseAnswers::traverse, Traverse.class, Angle.class);
    answers.add("balanced-angles", TraverseAnswers::balance, AngleBalance.class, Angle.class);
    answers.add("traverse-by-angles", TraverseAnswers::byAngles, Traverse.class, Angle.class);
  }

  private static Length metres(String number) {
    return Length.ofNanometres(new BigDecimal(number).movePointRight(9).longValueExact());
  }

  private static BigDecimal number(Length length) {
    return BigDecimal.valueOf(length.toNanometres()).movePointLeft(9);
  }

  private static Answer traverse(Question question) {
    Calculated<Traverse> calculated = Traverse.of(question.table("courses").stream()
        .map(row -> new Course(Angle.fromDegrees(new BigDecimal(row.get(0))), metres(row.get(1)))).toList(), ClosingLimit.FLOOR);
    Traverse walk = calculated.value();
    List<Point> corners = walk.outline().corners();
    Answer answer = Answer.empty();
    for (int i = 0; i < corners.size(); i++) {
      Point from = corners.get(i);
      Point to = corners.get((i + 1) % corners.size());
      answer = answer.with("latitude" + (i + 1), number(walk.latitudes().get(i))).with("departure" + (i + 1), number(walk.departures().get(i)))
          .with("adjustedLatitude" + (i + 1), number(to.y().minus(from.y()))).with("adjustedDeparture" + (i + 1), number(to.x().minus(from.x())))
          .with("adjustedLength" + (i + 1), number(walk.adjustedCourses().get(i).length()))
          .with("north" + (i + 1), number(from.y()).add(question.number("north"))).with("east" + (i + 1), number(from.x()).add(question.number("east")));
    }
    Area area = walk.area();
    return answer.with("perimeter", number(walk.perimeter())).with("latitudeError", number(walk.latitudeError()))
        .with("departureError", number(walk.departureError())).with("closingError", number(walk.closingError()))
        .with("ratio", Long.toString(walk.ratio().orElseThrow())).with("area", area.toSquareMetreString(ALL_DECIMALS))
        .with("closesToOneIn2000", calculated.findings().stream().anyMatch(finding -> finding.code().equals("closes-badly")) ? "no" : "yes");
  }

  private static Answer balance(Question question) {
    AngleBalance balance = AngleBalance.of(question.list("angles").stream().map(Angle::parse).toList()).value();
    Answer answer = Answer.of("misclosure", balance.misclosure().toString());
    for (int i = 0; i < balance.angles().size(); i++) {
      answer = answer.with("angle" + (i + 1), balance.angles().get(i).toString());
    }
    return answer;
  }

  private static Answer byAngles(Question question) {
    Traverse walk = Traverse.ofAngles(Angle.parse(question.text("firstAzimuth")), question.list("angles").stream().map(Angle::parse).toList(),
        question.list("lengths").stream().map(TraverseAnswers::metres).toList(), ClosingLimit.FLOOR).value();
    Answer answer = Answer.of("closingError", number(walk.closingError()));
    for (int i = 0; i < walk.courses().size(); i++) {
      answer = answer.with("azimuth" + (i + 1), walk.courses().get(i).azimuth().toString());
    }
    return answer;
  }
}
