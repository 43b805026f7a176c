package floorcalc.drawing;

import floorcalc.outline.Outline;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import floorcalc.outline.survey.SurveyReport;
import floorcalc.outline.survey.SurveyedRoom;
import floorcalc.outline.survey.ToMeasure;
import java.util.List;

/** Puts the parts of a drawing of a survey onto a sheet, each in its turn: what comes first finds its place free. */
final class SurveyComposition {
  private static final double HEADING = 4.2;
  private static final String MAY_MOVE = " stroke-dasharray=\"3 1.5\"";
  /** The sheet of a survey that no room has is flat. */
  private static final Outline NOTHING = Outline.of(Ring.of(Point.ofMillimetres(0, 0), Point.ofMillimetres(4000, 0),
      Point.ofMillimetres(4000, 10), Point.ofMillimetres(0, 10)));

  private final SurveyDrawing drawing;
  private final SurveyReport report;
  private final SurveyWords words;
  private final List<SurveyShape> shapes;
  private final List<SurveyLine> lines;

  SurveyComposition(SurveyDrawing drawing) {
    this.drawing = drawing;
    this.report = drawing.report();
    this.words = new SurveyWords(report, drawing.measures());
    this.shapes = SurveyShape.of(report);
    this.lines = SurveyLine.of(report);
  }

  /** Draws at the largest scale at which the notes have room as well. */
  String draw() {
    String last = "";
    for (Paper paper : Paper.fit(shapes.isEmpty() ? NOTHING : SurveyShape.extent(shapes))) {
      Sheet sheet = new Sheet(paper, new Frame(1, 0, 0, -1), drawing.measures(),
          drawing.title().isBlank() ? "survey" : Svg.identifier("survey-", drawing.title()));
      caption(sheet);
      words.notes().forEach(sheet::note);
      Foot foot = new Foot(sheet);
      List<SurveyAngles.OutOfSquare> out = List.of();
      if (report.room().isPresent()) {
        out = room(sheet, foot, report.room().get());
      } else {
        open(sheet, foot);
      }
      foot.endKey();
      foot.notes();
      last = put(sheet, foot, out);
      if (foot.hasRoom()) {
        return last;
      }
    }
    return last;
  }

  private List<SurveyAngles.OutOfSquare> room(Sheet sheet, Foot foot, SurveyedRoom room) {
    SurveyFigure figure = new SurveyFigure(sheet, shapes.get(0));
    SurveyErrors errors = new SurveyErrors(figure, room, lines);
    SurveyLabels labels = new SurveyLabels(figure);
    SurveyAngles angles = new SurveyAngles(figure, report, room, labels);
    figure.drawWalls(sheet.id + "-walls", "");
    figure.drawChords(room.survey());
    lines.stream().filter(line -> !line.isWall()).forEach(line -> figure.drawTie(line.from(), line.to()));
    errors.drawEllipses();
    errors.drawWalk();
    errors.drawBars();
    labels.corners();
    labels.readings(lines);
    angles.write();
    if (sheet.marks().contains(Mark.WALK)) {
      String closing = errors.closingWords();
      sheet.note(closing.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + closing.substring(1) + ".");
    }
    new OverallDimensions(sheet).draw();
    foot.scaleBar();
    SurveyKey key = new SurveyKey(foot, sheet);
    key.write();
    key.write(errors);
    return angles.outOfSquare();
  }

  /** Shapes that are not fixed yet, with what would fix them. */
  private void open(Sheet sheet, Foot foot) {
    boolean several = shapes.size() > 1;
    for (int i = 0; i < shapes.size(); i++) {
      SurveyFigure figure = new SurveyFigure(sheet, shapes.get(i));
      SurveyLabels labels = new SurveyLabels(figure);
      figure.drawWalls(sheet.id + "-walls" + (several ? "-" + (i + 1) : ""), several ? "" : MAY_MOVE);
      lines.stream().filter(line -> !line.isWall()).forEach(line -> figure.drawTie(line.from(), line.to()));
      for (ToMeasure one : report.toMeasure()) {
        if (one.from() != one.to() && (one.why() == ToMeasure.Why.FIX_SHAPE || one.why() == ToMeasure.Why.TELL_APART)) {
          propose(figure, one);
        }
      }
      if (several) {
        name(sheet, figure, "shape " + (i + 1) + ": " + SurveyWords.area(shapes.get(i).outline().area().toSquareMillimetres()));
      }
      labels.corners();
      labels.readings(i == 0 ? lines : List.of());
    }
    if (report.possible().size() > shapes.size()) {
      sheet.note(Words.count(report.possible().size() - shapes.size(), "more shape is", "more shapes are") + " not drawn.");
    }
    if (!shapes.isEmpty()) {
      foot.scaleBar();
      new SurveyKey(foot, sheet).write();
    }
  }

  private static void propose(SurveyFigure figure, ToMeasure one) {
    figure.drawProposedTie(one.from(), one.to());
    String length = figure.sheet.measures.wall(SurveyWords.between(figure.shape.corners(), one.from(), one.to()));
    String about = one.why() == ToMeasure.Why.FIX_SHAPE ? "about " + length : length;
    if (!figure.writeOnLine(one.from(), one.to(), about, Sheet.TEXT, SurveyFigure.Ground.PLAIN)) {
      figure.writeOnLine(one.from(), one.to(), length, Sheet.SMALLEST, SurveyFigure.Ground.PLAIN);
    }
  }

  /** Writes which shape it is below it. */
  private static void name(Sheet sheet, SurveyFigure figure, String text) {
    double left = Double.MAX_VALUE;
    double right = -Double.MAX_VALUE;
    double low = -Double.MAX_VALUE;
    for (int corner = 1; corner <= figure.size(); corner++) {
      left = Math.min(left, figure.x(corner));
      right = Math.max(right, figure.x(corner));
      low = Math.max(low, figure.y(corner));
    }
    for (double below = 12; below < 16; below += 0.5) {
      Box box = new Box((left + right) / 2, low + below, TextSize.width(text) * Sheet.TEXT / 2, TextSize.halfHeight(text) * Sheet.TEXT, 1, 0);
      if (figure.free(box)) {
        sheet.write(text, Sheet.TEXT, box);
        return;
      }
    }
    sheet.note("From left to right, " + text + ".");
  }

  private void caption(Sheet sheet) {
    double width = sheet.paper.width() - 8;
    sheet.writeFrom(TextSize.cut(drawing.title().isBlank() ? "Survey" : drawing.title(), HEADING, width), HEADING, 4, 5.4);
    String facts = (shapes.isEmpty() ? "" : "Scale 1:" + Words.grouped(sheet.paper.scale()) + " \u00b7 ") + words.facts();
    sheet.writeFitting(facts, width, 4, 10.4);
  }

  private String put(Sheet sheet, Foot foot, List<SurveyAngles.OutOfSquare> out) {
    return sheet.svg(foot.end(), drawing.title().isBlank() ? "A room as measured" : "A room as measured: " + drawing.title(),
        words.description(sheet, out));
  }
}
