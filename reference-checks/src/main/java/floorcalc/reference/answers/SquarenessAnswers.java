package floorcalc.reference.answers;

import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.outline.OutlineCheck;
import floorcalc.outline.OutlineFault;
import floorcalc.outline.Ring;
import floorcalc.outline.Wkt;
import floorcalc.outline.survey.AreaRange;
import floorcalc.outline.survey.CornerSquareness;
import floorcalc.outline.survey.Squareness;
import floorcalc.outline.survey.ThreeFourFive;
import floorcalc.outline.survey.Tie;
import floorcalc.reference.check.Answer;
import floorcalc.reference.check.Question;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Collectors;

/** Areas by coordinates, and rooms of four walls. */
final class SquarenessAnswers {
  /** A square metre is 10^18 square nanometres; an area is half a whole number of them. */
  private static final int ALL_DECIMALS = 19;

  void addTo(Answers answers) {
    answers.add("area-by-coordinates", SquarenessAnswers::area, Ring.class, Area.class, Wkt.class);
    answers.add("faults-of-outline", SquarenessAnswers::faults, OutlineCheck.class);
    answers.add("diagonal-of-rectangle", SquarenessAnswers::diagonal, Squareness.class);
    answers.add("three-four-five", SquarenessAnswers::threeFourFive, ThreeFourFive.class);
    answers.add("corners-by-diagonals", SquarenessAnswers::byDiagonals, Squareness.class);
    answers.add("room-by-coordinates", SquarenessAnswers::byCoordinates, Squareness.class, Ring.class);
    answers.add("area-by-walls-and-diagonal", SquarenessAnswers::byDiagonal, AreaRange.class);
    answers.add("area-range-near-square", SquarenessAnswers::nearSquare, AreaRange.class);
  }

  private static Ring ring(Question question, Wkt.Unit unit) {
    return Wkt.parseRings(question.text("outline"), unit).get(0);
  }

  private static Answer area(Question question) {
    // Any unit does: all numbers are read as metres.
    Area signed = ring(question, Wkt.Unit.METRES).signedArea();
    return Answer.of("signedArea", signed.toSquareMetreString(ALL_DECIMALS)).with("area", signed.abs().toSquareMetreString(ALL_DECIMALS))
        .with("order", signed.isPositive() ? "counter-clockwise" : "clockwise")
        .with("corners", Integer.toString(ring(question, Wkt.Unit.METRES).size()));
  }

  private static Answer faults(Question question) {
    List<OutlineFault> faults = OutlineCheck.faultsOf(ring(question, Wkt.Unit.METRES), List.of());
    return Answer.of("faults", Integer.toString(faults.size())).with("walls", faults.stream()
        .filter(fault -> fault.message().contains(" cross at ")).flatMap(fault -> fault.walls().stream()).map(wall -> Integer.toString(wall))
        .collect(Collectors.joining(" and ")));
  }

  private static Answer diagonal(Question question) {
    Length diagonal = Squareness.squareDiagonal(Length.parse(question.text("length")), Length.parse(question.text("width"))).value();
    return Answer.of("diagonal", metres(diagonal));
  }

  private static BigDecimal metres(Length length) {
    return new BigDecimal(length.toMillimetreString()).movePointLeft(3);
  }

  private static Answer threeFourFive(Question question) {
    ThreeFourFive check = ThreeFourFive.of(Length.parse(question.text("firstWall")), Length.parse(question.text("secondWall")),
        Length.parse(question.text("unit"))).value();
    return Answer.of("firstMark", metres(check.onFirst())).with("secondMark", metres(check.onSecond())).with("between", metres(check.diagonal()));
  }

  private static List<Length> walls(Question question) {
    return question.list("walls").stream().map(Length::parse).toList();
  }

  private static Answer byDiagonals(Question question) {
    Calculated<List<CornerSquareness>> room = Squareness.ofWallsAndDiagonals(walls(question), Length.parse(question.text("diagonal13")),
        Length.parse(question.text("diagonal24")), Length.parse(question.text("equalWithin")));
    return corners(Answer.empty(), room.value()).with("shape", shape(room.findings().stream().map(Finding::code).toList()));
  }

  private static String shape(List<String> codes) {
    return switch (String.join(" ", codes)) {
      case "rectangle", "parallelogram" -> codes.get(0);
      case "equal-diagonals-no-rectangle" -> "equal diagonals, no rectangle";
      case "" -> "other";
      default -> codes.toString();
    };
  }

  private static Answer corners(Answer answer, List<CornerSquareness> corners) {
    Answer all = answer;
    for (CornerSquareness corner : corners) {
      all = all.with("corner" + corner.corner(), BigDecimal.valueOf(90).add(BigDecimal.valueOf(corner.degrees())));
    }
    return all;
  }

  private static Answer byCoordinates(Question question) {
    Ring ring = ring(question, Wkt.Unit.MILLIMETRES);
    Answer answer = corners(Answer.empty(), Squareness.of(ring).value());
    for (int i = 0; i < ring.size(); i++) {
      answer = answer.with("wall" + (i + 1), ring.wallLength(i).toMillimetreString());
    }
    return answer.with("area", squareMillimetres(ring.area()));
  }

  static BigDecimal squareMillimetres(Area area) {
    return new BigDecimal(area.toHalfSquareNanometres()).divide(BigDecimal.valueOf(2)).movePointLeft(12);
  }

  private static Answer byDiagonal(Question question) {
    return Answer.of("area", squareMillimetres(AreaRange.withDiagonal(walls(question),
        new Tie(question.count("from"), question.count("to"), Length.parse(question.text("diagonal")))).value()));
  }

  private static Answer nearSquare(Question question) {
    AreaRange range = AreaRange.nearSquare(walls(question), question.number("degrees").doubleValue()).value();
    return Answer.of("least", squareMillimetres(range.least()).movePointLeft(6)).with("greatest", squareMillimetres(range.greatest()).movePointLeft(6));
  }
}
