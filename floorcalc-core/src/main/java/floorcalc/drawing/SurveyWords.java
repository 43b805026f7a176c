package floorcalc.drawing;

import floorcalc.measure.Length;
import floorcalc.measure.PlainNumber;
import floorcalc.outline.Point;
import floorcalc.outline.survey.Measured;
import floorcalc.outline.survey.Misfit;
import floorcalc.outline.survey.Suspect;
import floorcalc.outline.survey.Survey;
import floorcalc.outline.survey.SurveyReport;
import floorcalc.outline.survey.SurveyedRoom;
import floorcalc.outline.survey.ToMeasure;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** The sentences of a drawing of a survey: the line below the heading, what to measure, and all of it for those who cannot see it. */
final class SurveyWords {
  private static final int MOST_LISTED = 6;

  private final SurveyReport report;
  private final Measures measures;

  SurveyWords(SurveyReport report, Measures measures) {
    this.report = report;
    this.measures = measures;
  }

  /** What the measurements come to, in a line. */
  String facts() {
    Survey survey = report.survey();
    String read = Words.count(survey.size(), "wall", "walls") + ", " + Words.count(survey.ties().size(), "tie", "ties");
    if (report.room().isPresent()) {
      SurveyedRoom room = report.room().get();
      return read + " \u00b7 " + (room.redundancy() == 0 ? "nothing is measured twice over"
          : Words.count(room.redundancy(), "reading", "readings") + " more than the shape needs, off by "
              + decimals(room.factor(), 2) + " times what is usual")
          + " \u00b7 " + area(room.area().toSquareMillimetres()) + " \u00b1 " + decimals(room.areaDeviation(), 3);
    }
    return read + " \u00b7 " + state();
  }

  private String state() {
    return report.sketch().isPresent() ? "not enough to fix the shape: the sketch shows about how it may look"
        : report.possible().isEmpty() ? "no room has these walls and turns"
            : Words.grouped(report.possible().size()) + " shapes fit them";
  }

  static String area(double squareMillimetres) {
    return decimals(squareMillimetres / 1e6, 2) + " m\u00b2";
  }

  static String decimals(double value, int places) {
    return PlainNumber.text(value, places);
  }

  /** What to measure, the worst first. */
  List<String> notes() {
    List<String> notes = new ArrayList<>();
    for (Misfit misfit : report.misfits()) {
      notes.add((misfit.oneOf().size() == 1 ? "Measure again: " : "One of these does not fit, and the others do not tell which. Measure again: ")
          + misfit.oneOf().stream().limit(MOST_LISTED).map(this::again).collect(Collectors.joining("; ")) + ".");
    }
    List<String> fix = about(ToMeasure.Why.FIX_SHAPE);
    if (!fix.isEmpty()) {
      notes.add("To fix the shape, measure " + Words.list(fix, 4 * MOST_LISTED) + ".");
    }
    for (ToMeasure one : report.toMeasure()) {
      if (one.why() == ToMeasure.Why.TELL_APART) {
        notes.add("To tell which, measure corner " + one.from() + " to corner " + one.to() + ": it is " + lengths(one) + ".");
      }
    }
    List<String> check = about(ToMeasure.Why.CHECK);
    if (!check.isEmpty()) {
      notes.add("To check what little or nothing else checks, measure " + Words.list(check, MOST_LISTED) + ".");
    }
    if (report.room().isEmpty() && report.sketch().isEmpty() && report.possible().isEmpty()) {
      notes.add("Look at the lengths, and at which way each corner turns: going round once, the walls turn by 360\u00b0 to the left in all,"
          + " and none is longer than all others together. As read: " + Words.list(walls(), 24) + ".");
    }
    return notes;
  }

  private List<String> walls() {
    List<String> walls = new ArrayList<>();
    for (int i = 0; i < report.survey().size(); i++) {
      walls.add("wall " + (i + 1) + " " + measures.withUnit(report.survey().walls().get(i).length()));
    }
    return walls;
  }

  private List<String> about(ToMeasure.Why why) {
    return report.toMeasure().stream().filter(one -> one.why() == why && one.from() != one.to())
        .map(one -> "corner " + one.from() + " to corner " + one.to() + " (about " + about(one.about()) + ")").toList();
  }

  /** Nobody needs a tenth of a millimetre of what is still to be measured. */
  private String about(Length length) {
    return measures == Measures.MILLIMETRES ? measures.wall(length) + " mm" : measures.wall(length);
  }

  private String again(Suspect suspect) {
    Measured one = suspect.measured();
    boolean turn = one.kind() == Measured.Kind.TURN;
    return one.name() + ", read " + (turn ? degrees(one.read()) : measures.withUnit(Words.fromMillimetres(one.read())))
        + ", the others say " + (turn ? degrees(suspect.expected()) : measures.withUnit(Words.fromMillimetres(suspect.expected())))
        + (suspect.slip().isEmpty() ? "" : " (" + suspect.slip() + ")");
  }

  private static String degrees(double angle) {
    return Words.degrees(PlainNumber.of(angle).setScale(6, RoundingMode.HALF_EVEN));
  }

  private String lengths(ToMeasure tie) {
    List<String> lengths = new ArrayList<>();
    for (int i = 0; i < report.possible().size(); i++) {
      List<Point> corners = report.possible().get(i).shell().corners();
      lengths.add(measures.withUnit(between(corners, tie.from(), tie.to())) + " in shape " + (i + 1));
    }
    return Words.list(lengths, MOST_LISTED);
  }

  static Length between(List<Point> corners, int from, int to) {
    Point a = corners.get(from - 1);
    Point b = corners.get(to - 1);
    return Words.fromMillimetres(StrictMath.hypot((double) b.xNanometres() - a.xNanometres(),
        (double) b.yNanometres() - a.yNanometres()) / 1e6);
  }

  /** All of it, for those who cannot see the drawing. */
  String description(Sheet sheet, List<SurveyAngles.OutOfSquare> outOfSquare) {
    StringBuilder text = new StringBuilder("A plan to scale, 1 to ").append(sheet.paper.scale()).append(", of a room as measured: ")
        .append(facts().replace(" \u00b7 ", "; ").replace("\u00b1", "with a standard deviation of")).append('.');
    Survey survey = report.survey();
    text.append(" Walls as read, in turn: ").append(Words.list(survey.walls().stream()
        .map(wall -> measures.withUnit(wall.length())).toList(), survey.size())).append('.');
    if (!survey.ties().isEmpty()) {
      text.append(" Ties: ").append(Words.list(survey.ties().stream()
          .map(tie -> tie.from() + " to " + tie.to() + " " + measures.withUnit(tie.length())).toList(), 4 * MOST_LISTED)).append('.');
    }
    if (!outOfSquare.isEmpty()) {
      text.append(" Out of square: ").append(Words.list(outOfSquare.stream().map(one -> "corner " + one.corner() + " by "
          + measures.withUnit(Words.fromMillimetres(one.millimetres()))).toList(), 4 * MOST_LISTED)).append('.');
    }
    notes().forEach(note -> text.append(' ').append(note));
    return text.toString();
  }
}
