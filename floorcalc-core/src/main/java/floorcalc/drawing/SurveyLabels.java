package floorcalc.drawing;

import floorcalc.outline.survey.Measured;
import java.util.ArrayList;
import java.util.List;

/** Numbers of corners and walls, and what was read, each where it has room. */
final class SurveyLabels {
  private static final double RING = 1.9;
  private static final double DIGITS = 2.2;
  private static final int MOST_LISTED = 24;
  /** From this normalised residual on, what a reading is off is written beside it: beyond it lies one sound reading in twenty. */
  private static final double MATTERS = 2;
  private static final double[] SHARES = {0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8};

  private final SurveyFigure figure;
  private final Sheet sheet;
  private final List<String> left = new ArrayList<>();
  private boolean hasMisfits;

  SurveyLabels(SurveyFigure figure) {
    this.figure = figure;
    this.sheet = figure.sheet;
  }

  /** Numbers the corners: outside the room if there is room, else inside. */
  void corners() {
    List<String> without = new ArrayList<>();
    for (int corner = 1; corner <= figure.size(); corner++) {
      if (!number(corner)) {
        without.add(Integer.toString(corner));
      }
    }
    if (!without.isEmpty()) {
      sheet.note("Corners without room for their number: " + Words.list(without, MOST_LISTED) + ". Corner numbers follow each other round"
          + " the room.");
    }
  }

  private boolean number(int corner) {
    String number = Integer.toString(corner);
    double[] out = outward(corner);
    double half = Math.max(1.5, TextSize.width(number) * DIGITS / 2 + 0.45);
    for (double side : new double[] {1, -1}) {
      for (double away = 2.4; away < 11; away += 0.6) {
        for (double turn : new double[] {0, 25, -25, 50, -50}) {
          double cos = StrictMath.cos(StrictMath.toRadians(turn));
          double sin = StrictMath.sin(StrictMath.toRadians(turn));
          double x = figure.x(corner) + side * away * (out[0] * cos - out[1] * sin);
          double y = figure.y(corner) + side * away * (out[0] * sin + out[1] * cos);
          Box box = new Box(x, y, half + 0.2, 1.7, 1, 0);
          if (side > 0 ? figure.outside(box, figure.x(corner) + 0.4 * out[0], figure.y(corner) + 0.4 * out[1])
              : figure.inside(box) && figure.clear(box)) {
            sheet.grounds.line("<rect " + Svg.attribute("x", x - half) + ' ' + Svg.attribute("y", y - 1.5) + ' '
                + Svg.attribute("width", 2 * half) + " height=\"3\" fill=\"#000\" stroke=\"none\"/>");
            sheet.writeReversed(number, DIGITS, box);
            sheet.explain(Mark.CORNER_NUMBER);
            return true;
          }
        }
      }
    }
    return false;
  }

  /** The way out of the room at a corner, of length 1, along the line that halves it. */
  double[] outward(int corner) {
    double[] in = unit(figure.x(corner) - figure.x(corner - 1), figure.y(corner) - figure.y(corner - 1));
    double[] on = unit(figure.x(corner + 1) - figure.x(corner), figure.y(corner + 1) - figure.y(corner));
    // The room lies on the left; on the sheet, where y runs down, the right-hand normal of (x, y) is (-y, x).
    return unit(-in[1] - on[1], in[0] + on[0]);
  }

  private static double[] unit(double x, double y) {
    double length = Math.sqrt(x * x + y * y);
    return length < 1e-9 ? new double[] {0, -1} : new double[] {x / length, y / length};
  }

  /** Writes what was read of each wall and each tie, those that do not fit first. */
  void readings(List<SurveyLine> lines) {
    hasMisfits = lines.stream().anyMatch(line -> line.suspect().isPresent());
    for (SurveyFigure.Ground ground : new SurveyFigure.Ground[] {SurveyFigure.Ground.FRAMED, SurveyFigure.Ground.PLAIN}) {
      for (SurveyLine line : lines) {
        if (ground == ground(line)) {
          reading(line, ground);
        }
      }
    }
    if (!left.isEmpty()) {
      sheet.note("Readings without room, " + sheet.measures.words() + ": " + Words.list(left, MOST_LISTED) + ".");
    }
  }

  private static SurveyFigure.Ground ground(SurveyLine line) {
    return line.suspect().isPresent() ? SurveyFigure.Ground.FRAMED : SurveyFigure.Ground.PLAIN;
  }

  private void reading(SurveyLine line, SurveyFigure.Ground ground) {
    String read = sheet.measures.row(line.read());
    String off = off(line);
    boolean set = !off.isEmpty() && set(line, read + off, ground);
    if (set) {
      sheet.explain(Mark.RESIDUAL);
    } else {
      set = set(line, read, ground);
    }
    if (!set) {
      if (line.isWall() && wall(line, "", SurveyFigure.Ground.PLAIN)) {
        sheet.explain(Mark.WALL_NUMBER);
      }
      left.add(line.name() + " " + read + off);
    } else if (ground == SurveyFigure.Ground.FRAMED) {
      sheet.explain(Mark.MISFIT);
    }
  }

  private String off(SurveyLine line) {
    // As long as a reading does not fit, it bends all others.
    boolean bent = hasMisfits && line.suspect().isEmpty();
    if (bent || Math.abs(line.normalised()) < MATTERS) {
      return "";
    }
    return (line.residual() < 0 ? " -" : " +") + sheet.measures.height(Words.fromMillimetres(Math.abs(line.residual())));
  }

  private boolean set(SurveyLine line, String text, SurveyFigure.Ground ground) {
    if (line.kind() == Measured.Kind.WALL) {
      return wall(line, text, ground);
    }
    return figure.writeOnLine(line.from(), line.to(), text, Sheet.TEXT, ground)
        || figure.writeOnLine(line.from(), line.to(), text, Sheet.SMALLEST, ground);
  }

  /** Sets a wall's number in a ring and its length outside the room. */
  private boolean wall(SurveyLine line, String text, SurveyFigure.Ground ground) {
    double x1 = figure.x(line.from());
    double y1 = figure.y(line.from());
    double dx = figure.x(line.to()) - x1;
    double dy = figure.y(line.to()) - y1;
    double wall = Math.sqrt(dx * dx + dy * dy);
    String number = Integer.toString(line.from());
    double width = text.isEmpty() ? 0 : TextSize.width(text) * Sheet.TEXT + 0.8;
    double ring = Math.max(RING, TextSize.width(number) * DIGITS / 2 + 0.5);
    if (wall < 1.2 || !text.isEmpty() && wall < 0.8 * (width + 2 * ring)) {
      return false;
    }
    double turn = StrictMath.toRadians(Sheet.turn(dx, dy));
    double rx = StrictMath.cos(turn);
    double ry = StrictMath.sin(turn);
    double[] place = place(line, ring + width / 2, ring, rx, ry);
    if (place.length == 0) {
      return false;
    }
    Box digits = new Box(place[0] - width / 2 * rx, place[1] - width / 2 * ry, ring, ring, 1, 0);
    sheet.grounds.line("<circle " + Svg.attribute("cx", digits.x()) + ' ' + Svg.attribute("cy", digits.y()) + ' '
        + Svg.attribute("r", ring) + " fill=\"#fff\" stroke-width=\"0.18\"/>");
    sheet.write(number, DIGITS, digits);
    sheet.explain(Mark.WALL_NUMBER);
    if (!text.isEmpty()) {
      double shift = ring + 0.4;
      figure.write(text, Sheet.TEXT, new Box(place[0] + shift * rx, place[1] + shift * ry, width / 2 - 0.2, RING, rx, ry), ground);
    }
    return true;
  }

  /** Returns where the number and the length of a wall have room outside it, off other lines if that is possible; else nothing. */
  private double[] place(SurveyLine line, double half, double ring, double rx, double ry) {
    double x1 = figure.x(line.from());
    double y1 = figure.y(line.from());
    double dx = figure.x(line.to()) - x1;
    double dy = figure.y(line.to()) - y1;
    double wall = Math.sqrt(dx * dx + dy * dy);
    double furthest = wall < 8 ? 6 : 13;
    for (int pass = 0; pass < 3; pass++) {
      for (double away = 1.2 + ring; away < furthest; away += 0.75) {
        for (double share : SHARES) {
          double x = x1 + share * dx - dy / wall * away;
          double y = y1 + share * dy + dx / wall * away;
          Box box = new Box(x, y, half + 0.4, ring + 0.3, rx, ry);
          boolean own = figure.outside(box, x1 + share * dx - dy / wall * 0.4, y1 + share * dy + dx / wall * 0.4);
          // The straight line of an arc or a niche may lie inside the room: then any place outside near it must do.
          if (pass < 2 ? own && (pass == 1 || figure.clear(box)) : figure.outside(box, x, y)) {
            return new double[] {x, y};
          }
        }
      }
    }
    return new double[0];
  }
}
