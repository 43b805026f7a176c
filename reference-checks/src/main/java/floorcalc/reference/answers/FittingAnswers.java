package floorcalc.reference.answers;

import static floorcalc.reference.answers.RowAnswers.findings;
import static floorcalc.reference.answers.RowAnswers.length;
import static floorcalc.reference.answers.WallRowAnswers.point;

import floorcalc.fittings.Apron;
import floorcalc.fittings.BorderBoard;
import floorcalc.fittings.MitredBorder;
import floorcalc.fittings.PipeAllowance;
import floorcalc.measure.Length;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import floorcalc.reference.check.Answer;
import floorcalc.reference.check.Question;
import floorcalc.transitions.ProfileLine;
import floorcalc.transitions.ProfilePiece;
import floorcalc.working.Calculated;
import floorcalc.working.Source;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Borders, profiles and pipes. */
final class FittingAnswers {
  void addTo(Answers answers) {
    answers.add("field-between-equal-borders", FittingAnswers::apron, Apron.class);
    answers.add("hole-for-a-pipe", FittingAnswers::pipe, PipeAllowance.class);
    answers.add("border-with-mitres", FittingAnswers::border, MitredBorder.class);
    answers.add("profile-with-mitres", FittingAnswers::profile, ProfileLine.class);
  }

  private static Answer apron(Question question) {
    Apron apron = Apron.of(length(question, "width"), length(question, "pitch"), length(question, "least")).value();
    return Answer.of("boards", BigDecimal.valueOf(apron.boards())).with("firstMillimetres", apron.first().toMillimetreString())
        .with("secondMillimetres", apron.second().toMillimetreString());
  }

  private static Answer pipe(Question question) {
    PipeAllowance allowance = PipeAllowance.of(length(question, "allRound"), Source.GIVEN);
    Length diameter = length(question, "diameter");
    return Answer.of("holeMillimetres", allowance.hole(diameter).value().toMillimetreString())
        .with("overlapMillimetres", allowance.collarOverlap(diameter, length(question, "collar")).value().toMillimetreString());
  }

  private static String threeDecimals(Length length) {
    return new BigDecimal(length.toMillimetreString()).setScale(3, RoundingMode.HALF_EVEN).toPlainString();
  }

  private static String fourDecimals(BigDecimal degrees) {
    return degrees.setScale(4, RoundingMode.HALF_EVEN).toPlainString();
  }

  private static List<Point> points(Question question, String table) {
    return question.table(table).stream().map(row -> point(row, 0)).toList();
  }

  private static Answer border(Question question) {
    Ring line = Ring.of(points(question, "line"));
    Length width = length(question, "width");
    int rows = question.count("rows");
    MitredBorder border = (question.text("way").equals("inside") ? MitredBorder.inside(line, width, rows) : MitredBorder.around(line, width, rows)).value();
    return Answer.of("count", BigDecimal.valueOf(border.boards().size()))
        .with("boards", border.boards().stream().map(FittingAnswers::board).collect(Collectors.joining("; ")))
        .with("stockMillimetres", border.stock().toMillimetreString())
        .with("field", border.field().corners().stream().map(corner -> threeDecimals(corner.x()) + " " + threeDecimals(corner.y()))
            .collect(Collectors.joining("; ")));
  }

  private static String board(BorderBoard board) {
    return board.row() + " " + board.side() + " " + Stream.of(board.atLine(), board.atField(), board.stock()).map(FittingAnswers::threeDecimals)
        .collect(Collectors.joining(" ")) + " " + fourDecimals(board.startMitre()) + " " + fourDecimals(board.endMitre());
  }

  private static Answer profile(Question question) {
    Calculated<ProfileLine> result = ProfileLine.of(points(question, "line"), length(question, "width"));
    return Answer.of("pieces", result.value().pieces().stream().map(FittingAnswers::piece).collect(Collectors.joining("; ")))
        .with("lengthMillimetres", result.value().length().toMillimetreString()).with("findings", findings(result));
  }

  private static String piece(ProfilePiece piece) {
    return Stream.of(piece.length(), piece.longPoint(), piece.shortPoint()).map(FittingAnswers::threeDecimals).collect(Collectors.joining(" "))
        + " " + fourDecimals(piece.cutAtFrom()) + " " + fourDecimals(piece.cutAtTo());
  }
}
