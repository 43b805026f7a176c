package floorcalc.reference.answers;

import static floorcalc.reference.answers.RowAnswers.findings;
import static floorcalc.reference.answers.RowAnswers.length;

import floorcalc.measure.Length;
import floorcalc.outline.Outline;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import floorcalc.reference.check.Answer;
import floorcalc.reference.check.Question;
import floorcalc.rows.ControlLine;
import floorcalc.rows.EndCut;
import floorcalc.rows.RightAngle;
import floorcalc.rows.Scribe;
import floorcalc.rows.TaperedRows;
import floorcalc.rows.TrimCover;
import floorcalc.rows.WallFace;
import floorcalc.working.Calculated;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Rows along walls that bow or run off. */
final class WallRowAnswers {
  void addTo(Answers answers) {
    answers.add("scribed-row", WallRowAnswers::scribe, Scribe.class, WallFace.class);
    answers.add("trim-over-a-gap", WallRowAnswers::trim, TrimCover.class);
    answers.add("tapered-rows", WallRowAnswers::taper, TaperedRows.class, WallFace.class);
    answers.add("largest-right-angle", WallRowAnswers::rightAngle, RightAngle.class);
    answers.add("diagonal-of-a-right-angle", WallRowAnswers::diagonal, RightAngle.class);
    answers.add("cut-at-a-slanted-wall", WallRowAnswers::cut, EndCut.class);
    answers.add("pieces-at-corners", WallRowAnswers::corners, EndCut.class);
  }

  private static WallFace wall(Question question) {
    return WallFace.of(question.table("wall").stream()
        .map(row -> new WallFace.Offset(Length.ofMillimetres(row.get(0)), Length.ofMillimetres(row.get(1)))).toList());
  }

  private static Optional<TrimCover> over(Question question) {
    return question.has("trimCover")
        ? Optional.of(new TrimCover(length(question, "trimCover"), length(question, "trimBearing"), length(question, "gap"))) : Optional.empty();
  }

  private static Answer scribe(Question question) {
    Length pitch = length(question, "pitch");
    Length minimum = length(question, "minimum");
    Calculated<Scribe> result = over(question).map(trim -> Scribe.of(wall(question), pitch, minimum, trim))
        .orElseGet(() -> Scribe.of(wall(question), pitch, minimum, length(question, "gap")));
    Scribe scribe = result.value();
    return Answer.of("rowLineMillimetres", scribe.rowLine().toMillimetreString())
        .with("nearestRowLineMillimetres", scribe.nearestRowLine().toMillimetreString()).with("deepestMillimetres", scribe.deepest().toMillimetreString())
        .with("depths", scribe.depths().stream().map(depth -> depth.depth().toMillimetreString()).collect(Collectors.joining(" ")))
        .with("depthAtPlaceMillimetres", scribe.at(length(question, "place")).depth().toMillimetreString()).with("findings", findings(result));
  }

  private static Answer trim(Question question) {
    TrimCover trim = new TrimCover(length(question, "cover"), length(question, "bearing"), length(question, "leastGap"));
    Calculated<Length> saw = trim.toSaw(length(question, "variation"));
    return Answer.of("spanMillimetres", trim.span().toMillimetreString()).with("toSawMillimetres", saw.value().toMillimetreString())
        .with("toSawAtEachOfTwoMillimetres", trim.toSawAtEachOfTwo(length(question, "variation")).value().toMillimetreString())
        .with("findings", findings(saw));
  }

  private static Answer taper(Question question) {
    Length pitch = length(question, "pitch");
    Calculated<TaperedRows> result = over(question).map(trim -> TaperedRows.of(wall(question), pitch, trim))
        .orElseGet(() -> TaperedRows.of(wall(question), pitch, length(question, "gap")));
    String rips = result.value().rips().stream().map(WallRowAnswers::rip).collect(Collectors.joining("; "));
    return Answer.of("rips", rips.isEmpty() ? "none" : rips)
        .with("straightRowMillimetres", result.value().straightRow().map(Length::toMillimetreString).orElse("none")).with("findings", findings(result));
  }

  private static String rip(TaperedRows.Rip rip) {
    return rip.row() + Stream.of(rip.from(), rip.to(), rip.widthFrom(), rip.widthTo()).map(Length::toMillimetreString)
        .collect(Collectors.joining(" ", " ", ""));
  }

  private static Answer rightAngle(Question question) {
    RightAngle angle = RightAngle.largest(length(question, "roomAlong"), length(question, "roomSquare"), length(question, "unit")).value();
    return Answer.of("alongMillimetres", angle.along().toMillimetreString()).with("squareMillimetres", angle.square().toMillimetreString())
        .with("diagonalMillimetres", angle.diagonal().toMillimetreString());
  }

  private static Answer diagonal(Question question) {
    Length one = length(question, "one");
    Length other = length(question, "other");
    return Answer.of("diagonalMillimetres", RightAngle.diagonalOf(one, other).value().toMillimetreString())
        .with("leanMillimetres", RightAngle.offSquare(one, other, length(question, "measured")).value().toMillimetreString());
  }

  static Point point(List<String> millimetres, int from) {
    return Point.of(Length.ofMillimetres(millimetres.get(from)), Length.ofMillimetres(millimetres.get(from + 1)));
  }

  static ControlLine line(Question question) {
    List<String> line = question.list("line");
    return ControlLine.of(point(line, 0), point(line, 2));
  }

  private static Answer cut(Question question) {
    List<String> wall = question.list("wall");
    EndCut cut = EndCut.of(line(question), point(wall, 0), point(wall, 2), length(question, "pitch")).value();
    return Answer.of("offSquareDegrees", cut.offSquareDegrees()).with("runOffMillimetres", cut.runOff().toMillimetreString())
        .with("cutMillimetres", cut.cut().toMillimetreString());
  }

  static Outline room(List<List<String>> corners) {
    return Outline.of(Ring.of(corners.stream().map(corner -> point(corner, 0)).toList()));
  }

  private static Answer corners(Question question) {
    String pieces = EndCut.cornerPieces(line(question), room(question.table("room")), length(question, "pitch")).stream()
        .map(piece -> piece.corner() + " " + fourDecimals(piece.height()) + " " + fourDecimals(piece.length())).collect(Collectors.joining("; "));
    return Answer.of("pieces", pieces.isEmpty() ? "none" : pieces);
  }

  static String fourDecimals(Length length) {
    return new BigDecimal(length.toMillimetreString()).setScale(4, RoundingMode.HALF_EVEN).toPlainString();
  }
}
