package floorcalc.drawing;

import floorcalc.measure.PlainNumber;
import floorcalc.outline.network.AdjustedPoint;
import floorcalc.outline.survey.Measured;
import floorcalc.outline.survey.Survey;
import floorcalc.outline.survey.SurveyReport;
import floorcalc.outline.survey.SurveyWall;
import floorcalc.outline.survey.SurveyedRoom;
import java.util.ArrayList;
import java.util.List;

/** The angles of a surveyed room: which corners are square, how far the others are from it, which turns do not fit. */
final class SurveyAngles {
  /** Within this many degrees of a right angle a corner is meant to be square. */
  private static final double NEARLY = 10;
  /** Standard deviations beyond which a corner is taken to be out of square. */
  private static final double SURE = 2;
  private static final double SIGN = 1.7;
  private static final int MOST_LISTED = 12;

  private final SurveyFigure figure;
  private final Sheet sheet;
  private final SurveyReport report;
  private final SurveyedRoom room;
  private final SurveyLabels labels;
  private final List<String> left = new ArrayList<>();

  SurveyAngles(SurveyFigure figure, SurveyReport report, SurveyedRoom room, SurveyLabels labels) {
    this.figure = figure;
    this.sheet = figure.sheet;
    this.report = report;
    this.room = room;
    this.labels = labels;
  }

  /** A corner that is meant to be square, and how far the end of the shorter of its walls stands off, in millimetres. */
  record OutOfSquare(int corner, double millimetres) {}

  /** Returns the corners that are out of square for sure, by how much; none as long as a reading does not fit and bends all. */
  List<OutOfSquare> outOfSquare() {
    List<OutOfSquare> out = new ArrayList<>();
    if (!report.misfits().isEmpty()) {
      return out;
    }
    for (int corner = 1; corner <= figure.size(); corner++) {
      if (isMeantSquare(corner) && off(corner) > SURE * offDeviation(corner) && off(corner) >= 1) {
        out.add(new OutOfSquare(corner, off(corner)));
      }
    }
    return out;
  }

  void write() {
    List<OutOfSquare> out = outOfSquare();
    for (int corner = 1; corner <= figure.size(); corner++) {
      int here = corner;
      String off = out.stream().filter(one -> one.corner() == here).findFirst()
          .map(one -> ", " + sheet.measures.row(Words.fromMillimetres(one.millimetres())) + " out").orElse("");
      boolean framed = report.misfits().stream().flatMap(misfit -> misfit.oneOf().stream()).map(suspect -> suspect.measured())
          .anyMatch(one -> one.kind() == Measured.Kind.TURN && one.from() == here);
      if (!report.misfits().isEmpty() && !framed) {
        continue;
      }
      if (off.isEmpty() && isMeantSquare(corner) && !framed) {
        square(corner);
      } else if (label(corner, degrees(180 - turn(corner)) + off, framed ? SurveyFigure.Ground.FRAMED : SurveyFigure.Ground.PLAIN)) {
        sheet.explain(framed ? Mark.MISFIT : Mark.ANGLE);
      } else if (!off.isEmpty()) {
        left.add("corner " + corner + " " + degrees(180 - turn(corner)) + off);
      }
    }
    if (!report.misfits().isEmpty()) {
      sheet.note("Angles and what the other readings are off say little until then: what does not fit bends them all.");
    }
    if (!left.isEmpty()) {
      sheet.note("Out of square, without room: " + Words.list(left, MOST_LISTED) + ".");
    }
  }

  private static String degrees(double angle) {
    return PlainNumber.text(angle, 1) + "\u00b0";
  }

  private boolean label(int corner, String text, SurveyFigure.Ground ground) {
    double[] out = labels.outward(corner);
    for (int pass = 0; pass < 2; pass++) {
      for (double away = 3; away < 18; away += 0.7) {
        for (double turn : new double[] {0, 15, -15, 30, -30, 45, -45, 60, -60}) {
          double cos = StrictMath.cos(StrictMath.toRadians(turn));
          double sin = StrictMath.sin(StrictMath.toRadians(turn));
          Box box = new Box(figure.x(corner) - away * (out[0] * cos - out[1] * sin),
              figure.y(corner) - away * (out[0] * sin + out[1] * cos), TextSize.width(text) * Sheet.TEXT / 2 + 0.4,
              TextSize.halfHeight(text) * Sheet.TEXT + 0.3, 1, 0);
          if (figure.inside(box) && (pass == 1 || figure.clear(box))) {
            figure.write(text, Sheet.TEXT, box, ground);
            return true;
          }
        }
      }
    }
    return false;
  }

  /** Draws the sign of a right angle. */
  private void square(int corner) {
    double[] back = unit(figure.x(corner - 1) - figure.x(corner), figure.y(corner - 1) - figure.y(corner));
    double[] on = unit(figure.x(corner + 1) - figure.x(corner), figure.y(corner + 1) - figure.y(corner));
    double x = figure.x(corner);
    double y = figure.y(corner);
    sheet.lines.line("<path stroke-width=\"0.18\" d=\"" + Sheet.segment(x + SIGN * back[0], y + SIGN * back[1],
        x + SIGN * (back[0] + on[0]), y + SIGN * (back[1] + on[1])) + "L" + Svg.number(x + SIGN * on[0]) + ' '
        + Svg.number(y + SIGN * on[1]) + "\"/>");
    sheet.explain(Mark.SQUARE);
  }

  private static double[] unit(double x, double y) {
    double length = Math.sqrt(x * x + y * y);
    return new double[] {x / length, y / length};
  }

  private boolean isMeantSquare(int corner) {
    return Math.abs(Math.abs(turn(corner)) - 90) <= NEARLY && wall(corner - 1).rise().isZero() && wall(corner).rise().isZero();
  }

  private SurveyWall wall(int wall) {
    Survey survey = room.survey();
    return survey.walls().get(Math.floorMod(wall - 1, survey.size()));
  }

  private double turn(int corner) {
    return room.turn(corner);
  }

  private AdjustedPoint at(int corner) {
    return room.fixed().points().get(Math.floorMod(corner - 1, room.survey().size()));
  }

  private double length(int from, int to) {
    return StrictMath.hypot(at(to).x() - at(from).x(), at(to).y() - at(from).y());
  }

  private double shorter(int corner) {
    return Math.min(length(corner - 1, corner), length(corner, corner + 1));
  }

  private double off(int corner) {
    return shorter(corner) * StrictMath.tan(StrictMath.toRadians(Math.abs(Math.abs(turn(corner)) - 90)));
  }

  private double offDeviation(int corner) {
    return shorter(corner) * StrictMath.toRadians(room.turnDeviation(corner));
  }
}
