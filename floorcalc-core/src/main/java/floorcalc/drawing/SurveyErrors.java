package floorcalc.drawing;

import floorcalc.outline.network.AdjustedPoint;
import floorcalc.outline.survey.Measured;
import floorcalc.outline.survey.Survey;
import floorcalc.outline.survey.SurveyedRoom;
import java.util.List;
import java.util.Locale;

/** What is small and drawn large: error ellipses of corners, what each reading is off, the walk along the walls as read. */
final class SurveyErrors {
  private static final double LARGEST_ELLIPSE = 3.2;
  private static final double LONGEST_BAR = 9;
  private static final double FARTHEST_WALK = 9;
  /** Millimetres of floor below which an error is none. */
  private static final double NOTHING = 0.05;
  private static final double BAR = 1;
  /** Bars inside the walls stand this far from their middle. */
  private static final double BESIDE = 1.4;

  private final SurveyFigure figure;
  private final Sheet sheet;
  private final SurveyedRoom room;
  private final List<SurveyLine> lines;
  private final Exaggeration ellipses;
  private final Exaggeration bars;
  private final Exaggeration walk;
  private final double[] path;

  SurveyErrors(SurveyFigure figure, SurveyedRoom room, List<SurveyLine> lines) {
    this.figure = figure;
    this.sheet = figure.sheet;
    this.room = room;
    this.lines = lines;
    ellipses = Exaggeration.of(leastSure().greatestDeviation(), LARGEST_ELLIPSE, sheet.paper);
    bars = Exaggeration.of(longestBar(), LONGEST_BAR, sheet.paper);
    path = path();
    double farthest = 0;
    for (int i = 0; i < path.length; i += 2) {
      farthest = Math.max(farthest, StrictMath.hypot(path[i], path[i + 1]));
    }
    walk = Exaggeration.of(farthest, FARTHEST_WALK, sheet.paper);
  }

  /** The corner that is least sure against the middle of all. */
  AdjustedPoint leastSure() {
    AdjustedPoint worst = room.free().points().get(0);
    for (AdjustedPoint point : room.free().points()) {
      worst = point.greatestDeviation() > worst.greatestDeviation() ? point : worst;
    }
    return worst;
  }

  private double longestBar() {
    return lines.stream().mapToDouble(line -> Math.abs(line.residual())).max().orElse(0);
  }

  Exaggeration ellipses() {
    return ellipses;
  }

  Exaggeration bars() {
    return bars;
  }

  Exaggeration walk() {
    return walk;
  }

  /** By how much the walk does not close, in millimetres. */
  double closing() {
    return StrictMath.hypot(path[path.length - 2], path[path.length - 1]);
  }

  /** Draws the ellipse of one standard deviation at each corner. */
  void drawEllipses() {
    for (int corner = 1; corner <= figure.size(); corner++) {
      AdjustedPoint point = room.free().points().get(corner - 1);
      double a = Math.max(0.15, ellipses.of(point.greatestDeviation()));
      double b = Math.max(0.15, ellipses.of(point.leastDeviation()));
      double degrees = -point.leastSureDegrees();
      double x = figure.x(corner);
      double y = figure.y(corner);
      sheet.grounds.line("<ellipse " + Svg.attribute("cx", x) + ' ' + Svg.attribute("cy", y) + ' ' + Svg.attribute("rx", a) + ' '
          + Svg.attribute("ry", b) + " fill=\"#fff\" fill-opacity=\"0.75\" stroke-width=\"0.2\" transform=\"rotate("
          + Svg.number(degrees) + ' ' + Svg.number(x) + ' ' + Svg.number(y) + ")\"/>");
      sheet.grounds.line("<circle " + Svg.attribute("cx", x) + ' ' + Svg.attribute("cy", y) + " r=\"0.35\" fill=\"#000\" stroke=\"none\"/>");
      double radians = StrictMath.toRadians(degrees);
      sheet.take(new Box(x, y, a + 0.2, b + 0.2, StrictMath.cos(radians), StrictMath.sin(radians)));
      sheet.explain(Mark.ELLIPSE);
    }
  }

  /** Draws a bar along each reading, as long as it is off: black if it was read too short, white if too long. */
  void drawBars() {
    int without = 0;
    for (SurveyLine line : lines) {
      if (bars.of(Math.abs(line.residual())) >= 0.2 && Math.abs(line.residual()) >= NOTHING && !bar(line)) {
        without++;
      }
    }
    if (without > 0) {
      sheet.note(Words.count(without, "reading has", "readings have") + " no room for the bar that shows what it is off.");
    }
  }

  private boolean bar(SurveyLine line) {
    double dx = figure.x(line.to()) - figure.x(line.from());
    double dy = figure.y(line.to()) - figure.y(line.from());
    double length = Math.sqrt(dx * dx + dy * dy);
    double half = bars.of(Math.abs(line.residual())) / 2;
    double beside = line.isWall() ? BESIDE : 0;
    for (double share : new double[] {0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8}) {
      // The room lies on the left: on the sheet, where y runs down, that is (y, -x).
      Box box = new Box(figure.x(line.from()) + share * dx + beside * dy / length,
          figure.y(line.from()) + share * dy - beside * dx / length, half, BAR / 2, dx / length, dy / length);
      if (figure.free(box.grown(0.1))) {
        draw(sheet.lines, box, line.residual());
        sheet.take(box.grown(0.2));
        sheet.explain(Mark.RESIDUAL_BAR);
        return true;
      }
    }
    return false;
  }

  static void draw(Svg svg, Box box, double residual) {
    svg.line("<path stroke-width=\"" + Svg.number(BAR) + "\" d=\"" + Sheet.segment(box.x() - box.halfWidth() * box.ux(),
        box.y() - box.halfWidth() * box.uy(), box.x() + box.halfWidth() * box.ux(), box.y() + box.halfWidth() * box.uy()) + "\"/>");
    if (residual < 0 && box.halfWidth() > 0.2) {
      double inner = box.halfWidth() - 0.18;
      svg.line("<path stroke=\"#fff\" stroke-width=\"" + Svg.number(BAR - 0.36) + "\" d=\"" + Sheet.segment(box.x() - inner * box.ux(),
          box.y() - inner * box.uy(), box.x() + inner * box.ux(), box.y() + inner * box.uy()) + "\"/>");
    }
  }

  /** Draws the walk from corner 1 along the walls as read, what it is off much larger than it is. */
  void drawWalk() {
    if (closing() < NOTHING) {
      return;
    }
    StringBuilder d = new StringBuilder();
    for (int i = 0; i < path.length / 2; i++) {
      d.append(i == 0 ? 'M' : 'L');
      Svg.appendNumber(d, walkX(i));
      d.append(' ');
      Svg.appendNumber(d, walkY(i));
      if (i > 0) {
        figure.keepOff(Box.along(walkX(i - 1), walkY(i - 1), walkX(i), walkY(i), 0.4));
      }
    }
    sheet.lines.line("<path id=\"" + sheet.id + "-walk\" stroke-width=\"0.2\" stroke-dasharray=\"0.7 0.6\" d=\"" + d + "\"/>");
    int end = path.length / 2 - 1;
    sheet.grounds.line("<path stroke-width=\"0.45\" d=\"" + Sheet.segment(walkX(end), walkY(end), figure.x(1), figure.y(1)) + "\"/>");
    sheet.take(Box.along(walkX(end), walkY(end), figure.x(1), figure.y(1), 0.6));
    sheet.explain(Mark.WALK);
  }

  private double walkX(int step) {
    return figure.x(step + 1) + walk.of(path[2 * step]);
  }

  private double walkY(int step) {
    return figure.y(step + 1) - walk.of(path[2 * step + 1]);
  }

  /** How far the walk is from each corner in turn, and from corner 1 at its end, in millimetres. */
  private double[] path() {
    Survey survey = room.survey();
    int n = survey.size();
    double[] off = new double[2 * n + 2];
    double turned = 0;
    for (int i = 0; i < n; i++) {
      double dx = adjusted(i + 1, 0) - adjusted(i, 0);
      double dy = adjusted(i + 1, 1) - adjusted(i, 1);
      double way = StrictMath.atan2(dy, dx) + turned;
      double read = survey.walls().get(i).length().toMillimetres();
      off[2 * i + 2] = off[2 * i] + read * StrictMath.cos(way) - dx;
      off[2 * i + 3] = off[2 * i + 1] + read * StrictMath.sin(way) - dy;
      turned += StrictMath.toRadians(turnOff((i + 1) % n + 1));
    }
    return off;
  }

  /** What was read of a turn less what it became, in degrees; 0 if it was not read. */
  private double turnOff(int corner) {
    return room.measurements().stream().filter(one -> one.kind() == Measured.Kind.TURN && one.from() == corner)
        .mapToDouble(one -> -one.residual()).findFirst().orElse(0);
  }

  private double adjusted(int corner, int axis) {
    AdjustedPoint point = room.fixed().points().get(Math.floorMod(corner, room.survey().size()));
    return axis == 0 ? point.x() : point.y();
  }

  /** For example "does not close by 12.3 mm", with the length of the walk. */
  String closingWords() {
    double around = room.survey().walls().stream().mapToDouble(wall -> wall.length().toMillimetres()).sum();
    boolean turned = room.survey().walls().stream().limit(room.survey().size() - 1L).allMatch(wall -> wall.turn().isMeasured());
    boolean known = turned || room.survey().corners() == Survey.Corners.RIGHT_ANGLES;
    return "the walk along the walls as read" + (known ? "" : ", in their adjusted directions where no turn was read,")
        + " does not close by " + sheet.measures.withUnit(Words.fromMillimetres(closing()))
        + String.format(Locale.ROOT, ", 1 in %s", Words.grouped(Math.round(around / closing())));
  }
}
