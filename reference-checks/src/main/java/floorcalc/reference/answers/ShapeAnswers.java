package floorcalc.reference.answers;

import static floorcalc.reference.answers.RowAnswers.length;
import static floorcalc.reference.answers.WallRowAnswers.fourDecimals;
import static floorcalc.reference.answers.WallRowAnswers.point;

import floorcalc.measure.Length;
import floorcalc.outline.Point;
import floorcalc.outline.survey.Arc;
import floorcalc.outline.survey.RunningDimensions;
import floorcalc.outline.survey.Slip;
import floorcalc.outline.survey.SurveyUncertainty;
import floorcalc.outline.survey.WallOffset;
import floorcalc.outline.survey.WallShape;
import floorcalc.reference.check.Answer;
import floorcalc.reference.check.Question;
import floorcalc.working.Finding;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.List;
import java.util.function.BiFunction;
import java.util.stream.Collectors;

/** Shapes of walls. */
final class ShapeAnswers {
  private static final BigInteger HALF_SQUARE_NANOMETRES = BigInteger.TWO.multiply(BigInteger.TEN.pow(12));

  void addTo(Answers answers) {
    answers.add("arc-of-chord-and-rise", ShapeAnswers::arc, Arc.class);
    answers.add("arc-as-straight-walls", question -> points(question, (from, to) ->
        WallShape.arc(from, to, length(question, "rise"), length(question, "within"))), WallShape.class);
    answers.add("wall-by-offsets", ShapeAnswers::offsets, WallShape.class);
    answers.add("bay-of-three-walls", question -> points(question, (from, to) ->
        WallShape.bay(from, to, length(question, "depth"), length(question, "front"))), WallShape.class);
    answers.add("running-dimensions", ShapeAnswers::running, RunningDimensions.class);
  }

  private static Answer arc(Question question) {
    Arc arc = Arc.of(length(question, "chord"), length(question, "rise")).value();
    return Answer.of("radiusMillimetres", arc.radius().toMillimetreString()).with("degrees", arc.degrees())
        .with("lengthMillimetres", arc.length().toMillimetreString())
        .with("segmentSquareMillimetres", new BigDecimal(arc.segment().toHalfSquareNanometres()).divide(new BigDecimal(HALF_SQUARE_NANOMETRES)));
  }

  private static Answer points(Question question, BiFunction<Point, Point, List<Point>> face) {
    List<String> wall = question.list("wall");
    List<Point> points = face.apply(point(wall, 0), point(wall, 2));
    String text = points.stream().map(point -> fourDecimals(point.x()) + " " + fourDecimals(point.y())).collect(Collectors.joining("; "));
    return Answer.of("count", BigDecimal.valueOf(points.size())).with("points", text.isEmpty() ? "none" : text);
  }

  private static Answer offsets(Question question) {
    List<WallOffset> offsets = question.table("offsets").stream()
        .map(row -> new WallOffset(1, Length.ofMillimetres(row.get(0)), Length.ofMillimetres(row.get(1)))).toList();
    return points(question, (from, to) -> question.has("measured") ? WallShape.offsets(from, to, length(question, "measured"), offsets)
        : WallShape.offsets(from, to, offsets));
  }

  private static String inMillimetres(List<Length> lengths) {
    return lengths.stream().map(Length::toMillimetreString).collect(Collectors.joining(" "));
  }

  private static Answer running(Question question) {
    RunningDimensions wall = RunningDimensions.of(question.list("readings").stream().map(Length::ofMillimetres).toList(), Slip.Marks.METRIC).value();
    Answer answer = Answer.of("lengths", inMillimetres(wall.lengths()));
    if (question.has("overall")) {
      answer = answer.with("findings", wall.against(length(question, "overall"), Slip.Marks.METRIC, SurveyUncertainty.TAPE).map(Finding::code).orElse("none"));
    }
    if (question.has("step")) {
      RunningDimensions rounded = wall.roundedTo(length(question, "step"));
      answer = answer.with("roundedReadings", inMillimetres(rounded.readings())).with("roundedLengths", inMillimetres(rounded.lengths()));
    }
    return answer;
  }
}
