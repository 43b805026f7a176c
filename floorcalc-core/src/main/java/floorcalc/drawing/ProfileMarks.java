package floorcalc.drawing;

import floorcalc.outline.Point;
import floorcalc.plan.Profile;
import java.util.List;
import java.util.function.Predicate;

/**
 * Expansion breaks and transition profiles: a chain of lozenges between two bars at its exact ends, a framed letter and
 * number, and at a reducer a triangle that points down its fall.
 */
final class ProfileMarks {
  static final double MARGIN = 0.62;
  static final double HALF_HEIGHT = 0.39 * Sheet.TEXT + MARGIN;
  private static final int MOST = 200;
  private static final double STEP = 3.2;
  private static final double BAR = 1.1;
  private static final double THICKNESS = 1.4;
  private static final double[] SHARES = {0.5, 0.35, 0.65, 0.2, 0.8, 0.1, 0.9, 0};

  private final Sheet sheet;
  private final List<RoomProfiles.Shown> profiles;

  ProfileMarks(Sheet sheet, List<RoomProfiles.Shown> profiles) {
    this.sheet = sheet;
    this.profiles = profiles.stream().filter(shown -> line(sheet, shown.profile()).length() > 0).limit(MOST).toList();
    if (profiles.size() > MOST) {
      sheet.note("Only the first " + MOST + " of " + Words.grouped(profiles.size()) + " profiles are drawn.");
    }
  }

  /** A profile on the sheet: its ends and the direction of its length. */
  private record Line(double x1, double y1, double x2, double y2) {
    double length() {
      return Math.sqrt((x2 - x1) * (x2 - x1) + (y2 - y1) * (y2 - y1));
    }

    double ux() {
      return length() == 0 ? 1 : (x2 - x1) / length();
    }

    double uy() {
      return length() == 0 ? 0 : (y2 - y1) / length();
    }

    double x(double share, double away) {
      return x1 + share * (x2 - x1) - away * uy();
    }

    double y(double share, double away) {
      return y1 + share * (y2 - y1) + away * ux();
    }
  }

  private Line line(Profile profile) {
    return line(sheet, profile);
  }

  /** The part of a profile that the sheet shows, of length 0 if it shows none. */
  private static Line line(Sheet sheet, Profile profile) {
    Line all = new Line(x(sheet, profile.from()), y(sheet, profile.from()), x(sheet, profile.to()), y(sheet, profile.to()));
    double[] share = sheet.window.share(all.x1(), all.y1(), all.x2(), all.y2());
    return share[0] == 0 && share[1] == 1 ? all
        : new Line(all.x(share[0], 0), all.y(share[0], 0), all.x(share[1], 0), all.y(share[1], 0));
  }

  private static double x(Sheet sheet, Point point) {
    return sheet.paper.x(point.xNanometres());
  }

  private static double y(Sheet sheet, Point point) {
    return sheet.paper.y(point.yNanometres());
  }

  /** Draws each profile along its exact line and keeps texts off it. */
  void draw() {
    for (RoomProfiles.Shown shown : profiles) {
      Line line = line(shown.profile());
      sheet.lines.line("<g id=\"" + sheet.id + "-profile-" + Svg.identifier("", shown.label()) + "\">");
      chain(sheet.lines, line.x1(), line.y1(), line.x2(), line.y2());
      sheet.lines.line("</g>");
      sheet.take(Box.along(line.x1(), line.y1(), line.x2(), line.y2(), THICKNESS));
      sheet.explain(Mark.BREAK);
      sheet.explain(shown.mark());
    }
  }

  /** Draws the chain between two places. */
  static void chain(Svg lines, double x1, double y1, double x2, double y2) {
    Line line = new Line(x1, y1, x2, y2);
    int count = (int) Math.max(1, Math.min(400, StrictMath.rint(line.length() / STEP)));
    StringBuilder bars = new StringBuilder();
    StringBuilder lozenges = new StringBuilder();
    Sheet.appendSegment(bars, line.x(0, -BAR), line.y(0, -BAR), line.x(0, BAR), line.y(0, BAR));
    Sheet.appendSegment(bars, line.x(1, -BAR), line.y(1, -BAR), line.x(1, BAR), line.y(1, BAR));
    double half = line.length() == 0 ? 0 : Math.min(0.9, 0.35 * line.length() / count) / line.length();
    for (int i = 0; i < count; i++) {
      double share = (i + 0.5) / count;
      lozenges.append('M').append(place(line, share - half, 0)).append('L').append(place(line, share, -0.6)).append('L')
          .append(place(line, share + half, 0)).append('L').append(place(line, share, 0.6)).append('Z');
    }
    lines.line("<path stroke-width=\"0.18\" d=\"" + Sheet.segment(x1, y1, x2, y2) + "\"/>");
    lines.line("<path stroke-width=\"0.35\" d=\"" + bars + "\"/>");
    lines.line("<path fill=\"#000\" stroke=\"#fff\" stroke-width=\"0.18\" d=\"" + lozenges + "\"/>");
  }

  private static String place(Line line, double share, double away) {
    return Svg.number(line.x(share, away)) + ' ' + Svg.number(line.y(share, away));
  }

  /**
   * Sets the labels: beside the profile where the place is clear of what the drawing is about, or else where nothing else
   * stands yet. Draws which way reducers fall, and lists the lengths below.
   *
   * @param clear whether a box is clear of what the drawing is about
   * @param lengths where lengths are written
   */
  void label(Predicate<Box> clear, Lengths lengths) {
    for (RoomProfiles.Shown shown : profiles) {
      fall(shown);
    }
    for (RoomProfiles.Shown shown : profiles) {
      String length = ' ' + sheet.measures.wall(shown.profile().length());
      Line line = line(shown.profile());
      boolean placed = lengths == Lengths.BESIDE && (set(shown.label() + length, line, clear) || set(shown.label() + length, line, sheet::free))
          || set(shown.label(), line, clear) || set(shown.label(), line, sheet::free);
      if (!placed) {
        sheet.note("No room for the label of profile " + shown.label() + '.');
      }
    }
    if (!profiles.isEmpty() && lengths == Lengths.BELOW) {
      List<String> list = profiles.stream()
          .map(shown -> shown.label() + ' ' + sheet.measures.withUnit(shown.profile().length())).toList();
      sheet.note("Breaks and profiles: " + Words.list(list, 16) + ".");
    }
  }

  private boolean set(String text, Line line, Predicate<Box> clear) {
    double turn = StrictMath.toRadians(Sheet.turn(line.ux(), line.uy()));
    double rx = StrictMath.cos(turn);
    double ry = StrictMath.sin(turn);
    double half = TextSize.width(text) * Sheet.TEXT / 2 + MARGIN;
    for (double away = THICKNESS / 2 + 0.5 + HALF_HEIGHT; away < 9; away += 0.8) {
      for (double share : SHARES) {
        for (int side = 1; side >= -1; side -= 2) {
          Box box = new Box(line.x(share, side * away), line.y(share, side * away), half, HALF_HEIGHT, rx, ry);
          if (sheet.paper.shows(box.grown(0.4)) && sheet.free(box.grown(0.4)) && clear.test(box)) {
            frame(sheet, text, box);
            return true;
          }
        }
      }
    }
    return false;
  }

  /** Writes a label in its frame. */
  static void frame(Sheet sheet, String text, Box box) {
    sheet.grounds.line("<path fill=\"#fff\" stroke-width=\"0.2\" d=\"" + box.path() + "\"/>");
    sheet.write(text, Sheet.TEXT, new Box(box.x(), box.y(), box.halfWidth() - MARGIN, box.halfHeight() - MARGIN, box.ux(), box.uy()));
    sheet.take(box);
  }

  private void fall(RoomProfiles.Shown shown) {
    if (shown.fall() == 0) {
      return;
    }
    Line line = line(shown.profile());
    Shape shell = Shape.of(sheet.paper, shown.room().outline().shell(), List.of());
    double side = insideAhead(line, shell) == shown.fall() < 0 ? 1 : -1;
    double nx = -line.uy() * side;
    double ny = line.ux() * side;
    double x = line.x(0.5, 0) + nx * 0.9;
    double y = line.y(0.5, 0) + ny * 0.9;
    triangle(sheet.lines, x, y, nx, ny);
    sheet.take(Box.along(x, y, x + nx * 2, y + ny * 2, 2.2));
    sheet.explain(Mark.FALL);
  }

  /** Tells on which side of a profile its room lies: it may stand in the thickness of a wall, so look further and further. */
  private static boolean insideAhead(Line line, Shape shell) {
    for (double away = 0.25; away < 32; away *= 2) {
      boolean ahead = shell.contains(line.x(0.5, away), line.y(0.5, away));
      if (ahead != shell.contains(line.x(0.5, -away), line.y(0.5, -away))) {
        return ahead;
      }
    }
    return true;
  }

  /** Draws a triangle that points from the middle of its base the way of a vector of length 1. */
  static void triangle(Svg lines, double x, double y, double nx, double ny) {
    lines.line("<path fill=\"#000\" stroke=\"#fff\" stroke-width=\"0.18\" d=\"M" + Svg.number(x - ny) + ' ' + Svg.number(y + nx) + 'L'
        + Svg.number(x + ny) + ' ' + Svg.number(y - nx) + 'L' + Svg.number(x + 2 * nx) + ' ' + Svg.number(y + 2 * ny) + "Z\"/>");
  }

  /** Where lengths of profiles are written. */
  enum Lengths {
    /** In the label. */
    BESIDE,
    /** In a note below the drawing. */
    BELOW
  }
}
