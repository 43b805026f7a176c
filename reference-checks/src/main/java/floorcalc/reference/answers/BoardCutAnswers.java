package floorcalc.reference.answers;

import static floorcalc.reference.answers.RowAnswers.findings;
import static floorcalc.reference.answers.RowAnswers.length;
import static floorcalc.reference.answers.WallRowAnswers.point;

import floorcalc.fittings.BoardPiece;
import floorcalc.fittings.CutOutLimits;
import floorcalc.fittings.HoleCut;
import floorcalc.fittings.HoleInPiece;
import floorcalc.fittings.Notch;
import floorcalc.fittings.PieceNotches;
import floorcalc.fittings.PipeAllowance;
import floorcalc.fittings.PipeAt;
import floorcalc.fittings.PipeHoles;
import floorcalc.fittings.ThinPart;
import floorcalc.fittings.ThinParts;
import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.outline.Ring;
import floorcalc.reference.check.Answer;
import floorcalc.reference.check.Question;
import floorcalc.working.Calculated;
import floorcalc.working.Source;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What is sawn off and out of boards. */
final class BoardCutAnswers {
  private static final List<BoardPiece> BOARDS = List.of(board("a", 0, 0, 1200, 185), board("b", 1200, 0, 2400, 185), board("c", 0, 185, 800, 370),
      board("d", 800, 185, 2400, 370));

  void addTo(Answers answers) {
    answers.add("notches-of-a-piece", BoardCutAnswers::notches, PieceNotches.class);
    answers.add("thin-parts-of-a-piece", BoardCutAnswers::thin, ThinParts.class, PieceNotches.class);
    answers.add("holes-for-pipes", BoardCutAnswers::holes, PipeHoles.class);
  }

  private static BoardPiece board(String name, int left, int low, int right, int high) {
    return BoardPiece.of(name, ring(Stream.of(List.of(left, low), List.of(right, low), List.of(right, high), List.of(left, high))
        .map(corner -> corner.stream().map(String::valueOf).toList()).toList()));
  }

  private static Ring ring(List<List<String>> corners) {
    return Ring.of(corners.stream().map(corner -> point(corner, 0)).toList());
  }

  private static Calculated<PieceNotches> shape(Question question) {
    List<Ring> holes = question.has("holes") ? question.list("holes").stream()
        .map(hole -> ring(Arrays.stream(hole.split(", ")).map(corner -> List.of(corner.split(" "))).toList())).toList() : List.of();
    return PieceNotches.of(new BoardPiece("piece", ring(question.table("outline")), holes));
  }

  private static String orNone(String text) {
    return text.isEmpty() ? "none" : text;
  }

  private static String inMillimetres(Length... lengths) {
    return Stream.of(lengths).map(Length::toMillimetreString).collect(Collectors.joining(" "));
  }

  private static String squareMillimetres(Area area) {
    return new BigDecimal(area.toHalfSquareNanometres()).divide(BigDecimal.valueOf(2)).movePointLeft(12).stripTrailingZeros().toPlainString();
  }

  private static Answer notches(Question question) {
    PieceNotches shape = shape(question).value();
    return Answer.of("count", BigDecimal.valueOf(shape.notches().size()))
        .with("notches", orNone(shape.notches().stream().map(BoardCutAnswers::notch).sorted().collect(Collectors.joining("; "))))
        .with("lengthMillimetres", shape.length().toMillimetreString()).with("widthMillimetres", shape.width().toMillimetreString())
        .with("squareMillimetres", squareMillimetres(shape.area()));
  }

  private static String notch(Notch notch) {
    return notch.kind() + " " + orNone(notch.open().stream().map(Enum::name).sorted().collect(Collectors.joining("+"))) + " "
        + inMillimetres(notch.fromStartEnd(), notch.along(), notch.fromStartEdge(), notch.across()) + " " + squareMillimetres(notch.area());
  }

  private static Answer thin(Question question) {
    Calculated<List<ThinPart>> parts = ThinParts.of(shape(question).value(),
        CutOutLimits.COMMON_PRACTICE.withLeastTongue(length(question, "least"), Source.GIVEN));
    return Answer.of("parts", orNone(parts.value().stream().map(part -> part.kind() + " " + part.run() + " "
        + inMillimetres(part.width(), part.length(), part.fromStartEnd(), part.fromStartEdge())).collect(Collectors.joining("; "))))
        .with("findings", findings(parts));
  }

  private static Answer holes(Question question) {
    List<List<String>> rows = question.table("pipes");
    List<PipeAt> pipes = rows.stream().map(row -> new PipeAt("pipe", point(row, 0), Length.ofMillimetres(row.get(2)))).toList();
    List<HoleCut> holes = PipeHoles.of(pipes, BOARDS, PipeAllowance.of(length(question, "allRound"), Source.GIVEN), CutOutLimits.COMMON_PRACTICE).value();
    return Answer.of("count", BigDecimal.valueOf(holes.size()))
        .with("holes", holes.stream().map(hole -> rows.size() > 1 ? "wood " + wood(hole) : cut(hole)).collect(Collectors.joining("; ")))
        .with("pieces", orNone(holes.stream().flatMap(hole -> hole.parts().stream()).map(HoleInPiece::piece).distinct().sorted()
            .collect(Collectors.joining(" "))));
  }

  private static String wood(HoleCut hole) {
    return hole.wood().map(Length::toMillimetreString).orElse("none");
  }

  private static String cut(HoleCut hole) {
    return String.join(" ", hole.way().name(), hole.width().toMillimetreString(), wood(hole),
        hole.glued().map(part -> part.side() + " " + part.depth().toMillimetreString()).orElse("none none"));
  }
}
