package floorcalc.drawing;

import floorcalc.outline.Point;
import floorcalc.outline.survey.Survey;
import java.util.ArrayList;
import java.util.List;

/** A shape of a survey on its sheet: walls, ties, and where texts may stand between them. */
final class SurveyFigure {
  private static final double WALL = 0.6;
  private static final double TIE = 0.15;
  private static final double[] SHARES = {0.5, 0.42, 0.58, 0.34, 0.66, 0.26, 0.74, 0.18, 0.82, 0.1, 0.9};

  /** What a text stands on. */
  enum Ground {
    /** White. */
    PLAIN,
    /** White in a black frame. */
    FRAMED
  }

  final Sheet sheet;
  final SurveyShape shape;
  private final Shape walls;
  private final List<Box> lines = new ArrayList<>();

  SurveyFigure(Sheet sheet, SurveyShape shape) {
    this.sheet = sheet;
    this.shape = shape;
    this.walls = Shape.of(sheet.paper, shape.outline().shell(), List.of());
  }

  double x(int corner) {
    return sheet.paper.x(point(corner).xNanometres());
  }

  double y(int corner) {
    return sheet.paper.y(point(corner).yNanometres());
  }

  int size() {
    return shape.corners().size();
  }

  private Point point(int corner) {
    return shape.corners().get(Math.floorMod(corner - 1, size()));
  }

  /** Draws the walls; broken if they may still move. */
  void drawWalls(String id, String dashes) {
    sheet.floor.line("<path id=\"" + id + "\" fill=\"#fff\" stroke-width=\"" + Svg.number(WALL) + "\" stroke-linejoin=\"round\"" + dashes
        + " d=\"" + walls.path() + "\"/>");
    for (int i = 0; i < walls.size(0); i++) {
      sheet.take(Box.along(walls.x(0, i), walls.y(0, i), walls.x(0, i + 1), walls.y(0, i + 1), WALL + 0.2));
    }
  }

  /** Draws the straight lines of arcs and of walls with offsets: it is along them that such walls are measured. */
  void drawChords(Survey survey) {
    for (int wall = 1; wall <= survey.size(); wall++) {
      int here = wall;
      if (!survey.walls().get(wall - 1).rise().isZero() || survey.offsets().stream().anyMatch(offset -> offset.wall() == here)) {
        line(wall, wall + 1, "stroke-width=\"0.1\"");
      }
    }
  }

  /** Draws a tie that was measured. */
  void drawTie(int from, int to) {
    line(from, to, "stroke-width=\"" + Svg.number(TIE) + "\" stroke-dasharray=\"1.6 0.8\"");
    sheet.explain(Mark.TIE);
  }

  /** Draws a tie that is to be measured. */
  void drawProposedTie(int from, int to) {
    line(from, to, "stroke-width=\"0.4\" stroke-dasharray=\"2.4 1.2\"");
    sheet.explain(Mark.PROPOSED_TIE);
  }

  private void line(int from, int to, String style) {
    sheet.lines.line("<path " + style + " d=\"" + Sheet.segment(x(from), y(from), x(to), y(to)) + "\"/>");
    keepOff(Box.along(x(from), y(from), x(to), y(to), 0.3));
  }

  /** Keeps texts off a line as far as there is room elsewhere. */
  void keepOff(Box line) {
    lines.add(line);
  }

  /** Tells whether nothing is in a box on the sheet: no text, no wall. */
  boolean free(Box box) {
    return sheet.paper.shows(box) && sheet.free(box);
  }

  /** Tells whether no tie or other line runs through a box either. */
  boolean clear(Box box) {
    return free(box) && lines.stream().noneMatch(box::overlaps);
  }

  /** Tells whether a box is free and inside the walls. */
  boolean inside(Box box) {
    return free(box) && walls.holds(box);
  }

  /** Tells whether a box is free and outside the walls, and so is the way to it. */
  boolean outside(Box box, double fromX, double fromY) {
    return free(box) && !walls.touches(box) && !walls.touches(Box.along(fromX, fromY, box.x(), box.y(), 0.1));
  }

  /** Sets a text on a line between two corners, on a white ground; tells whether there is room. */
  boolean writeOnLine(int from, int to, String text, double size, Ground ground) {
    double dx = x(to) - x(from);
    double dy = y(to) - y(from);
    double length = Math.sqrt(dx * dx + dy * dy);
    double half = TextSize.width(text) * size / 2 + (ground == Ground.FRAMED ? 0.6 : 0.3);
    if (length < 2 * half + 2) {
      return false;
    }
    double turn = StrictMath.toRadians(Sheet.turn(dx, dy));
    double cos = StrictMath.cos(turn);
    double sin = StrictMath.sin(turn);
    Box own = Box.along(x(from), y(from), x(to), y(to), 0.3);
    for (int pass = 0; pass < 2; pass++) {
      for (double share : SHARES) {
        Box box = new Box(x(from) + share * dx, y(from) + share * dy, half,
            TextSize.halfHeight(text) * size + (ground == Ground.FRAMED ? 0.5 : 0.1), cos, sin);
        boolean crossed = pass == 0 && lines.stream().anyMatch(tie -> !tie.equals(own) && box.overlaps(tie));
        if (Math.min(share, 1 - share) * length > half + 1 && free(box) && !crossed) {
          write(text, size, box, ground);
          return true;
        }
      }
    }
    return false;
  }

  /** Writes a text into a box on a white ground, framed or not. */
  void write(String text, double size, Box box, Ground ground) {
    StringBuilder d = new StringBuilder();
    double[][] corners = {{-1, -1}, {1, -1}, {1, 1}, {-1, 1}};
    for (int i = 0; i < 4; i++) {
      double a = corners[i][0] * box.halfWidth();
      double b = corners[i][1] * box.halfHeight();
      d.append(i == 0 ? 'M' : 'L');
      Svg.appendNumber(d, box.x() + a * box.ux() - b * box.uy());
      d.append(' ');
      Svg.appendNumber(d, box.y() + a * box.uy() + b * box.ux());
    }
    sheet.grounds.line("<path fill=\"#fff\" stroke=\"" + (ground == Ground.FRAMED ? "#000\" stroke-width=\"0.35" : "none") + "\" d=\"" + d + "Z\"/>");
    sheet.write(text, size, box);
  }
}
