package floorcalc.drawing;

import floorcalc.measure.Length;
import floorcalc.outline.Outline;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import floorcalc.plan.Door;
import floorcalc.plan.Pipe;
import floorcalc.plan.Room;
import java.util.ArrayList;
import java.util.List;

/** Doors as openings in the band of their wall, with name and what lies beyond, and pipes as circles with a cross. */
final class Openings {
  private static final int MOST_DOORS = 60;
  private static final int MOST_PIPES = 200;
  /** The clear space round a pipe where a job keeps no gap: the hole is 20 mm wider than the pipe. */
  private static final Length NO_GAP = Length.ofMillimetres(10);
  /** A hole that is drawn narrower than this round its pipe is left out. */
  private static final double CLEAR_RING = 0.12;

  private final Sheet sheet;
  private final Room room;
  private final Walls walls;
  /** The clear space round a pipe: as at every other fixed thing. */
  private final Length gap;
  private final List<String> nameless = new ArrayList<>();

  Openings(Sheet sheet, Room room, Walls walls, Length gap) {
    this.gap = gap.isZero() ? NO_GAP : gap;
    this.sheet = sheet;
    this.room = room;
    this.walls = walls;
  }

  void drawDoors() {
    List<Door> doors = doors();
    for (Door door : doors.subList(0, Math.min(doors.size(), MOST_DOORS))) {
      At at = at(door);
      if (at.width() >= 0.05) {
        draw(at);
      }
    }
    if (doors.size() > MOST_DOORS) {
      sheet.note("Only the first " + MOST_DOORS + " of " + Words.grouped(doors.size()) + " doors are drawn.");
    }
  }

  /** The doors that the sheet shows. */
  private List<Door> doors() {
    return room.doors().stream().filter(door -> isShown(RoomProfiles.middle(door.from(), door.to()))).toList();
  }

  private List<Pipe> pipes() {
    return room.pipes().stream().filter(pipe -> isShown(pipe.at())).toList();
  }

  private boolean isShown(Point place) {
    return sheet.window.contains(sheet.paper.x(place.xNanometres()), sheet.paper.y(place.yNanometres()));
  }

  /** Sets the doors' names outside the walls. */
  void nameDoors() {
    List<Door> doors = doors();
    for (Door door : doors.subList(0, Math.min(doors.size(), MOST_DOORS))) {
      At at = at(door);
      if (at.width() >= 0.05) {
        name(door, at);
      } else {
        sheet.note("Door " + shown(door.name()) + " is too narrow to show.");
      }
    }
    if (!nameless.isEmpty()) {
      sheet.note("Doors whose name finds no room at their wall: " + Words.list(nameless, MOST_DOORS) + ".");
    }
  }

  /** Where a door is: one jamb, the direction to the other, the width, the direction to the outside. */
  private record At(double x, double y, double ux, double uy, double width, double nx, double ny) {
    double x(double along, double out) {
      return x + ux * along + nx * out;
    }

    double y(double along, double out) {
      return y + uy * along + ny * out;
    }

    String segment(double along1, double out1, double along2, double out2) {
      return Sheet.segment(x(along1, out1), y(along1, out1), x(along2, out2), y(along2, out2));
    }
  }

  private At at(Door door) {
    double x = sheet.paper.x(door.from().xNanometres());
    double y = sheet.paper.y(door.from().yNanometres());
    double dx = sheet.paper.x(door.to().xNanometres()) - x;
    double dy = sheet.paper.y(door.to().yNanometres()) - y;
    double width = Math.sqrt(dx * dx + dy * dy);
    double ux = width == 0 ? 1 : dx / width;
    double uy = width == 0 ? 0 : dy / width;
    double side = outside(ux, uy, x + dx / 2, y + dy / 2);
    return new At(x, y, ux, uy, width, -uy * side, ux * side);
  }

  private void draw(At at) {
    double face = walls.outerFace();
    double jamb = face + 0.9;
    String opening = at.segment(0, 0, at.width(), 0) + 'L'
        + at.segment(at.width(), face + 0.3, 0, face + 0.3).substring(1);
    sheet.floor.line("<path fill=\"#fff\" stroke=\"none\" d=\"" + opening + "Z\"/>");
    sheet.lines.line("<path stroke-width=\"0.35\" d=\"" + at.segment(0, walls.extra(), 0, jamb)
        + at.segment(at.width(), walls.extra(), at.width(), jamb) + "\"/>");
    sheet.lines.line("<path stroke-width=\"0.2\" stroke-dasharray=\"0.8 0.6\" d=\""
        + at.segment(0, face, at.width(), face) + "\"/>");
    sheet.take(Box.along(at.x(0, jamb / 2), at.y(0, jamb / 2), at.x(at.width(), jamb / 2), at.y(at.width(), jamb / 2),
        jamb + 0.3));
  }

  /** Returns 1 if the outside lies to the right of the way from one jamb to the other as drawn, -1 if to the left. */
  private double outside(double ux, double uy, double x, double y) {
    Outline outline = room.outline();
    List<Ring> rings = new ArrayList<>();
    rings.add(outline.shell());
    rings.addAll(outline.voids());
    double nearest = Double.POSITIVE_INFINITY;
    double side = 1;
    for (Ring ring : rings) {
      for (int i = 0; i < ring.size(); i++) {
        int next = (i + 1) % ring.size();
        double ax = sheet.paper.x(ring.x(i));
        double ay = sheet.paper.y(ring.y(i));
        double dx = sheet.paper.x(ring.x(next)) - ax;
        double dy = sheet.paper.y(ring.y(next)) - ay;
        double square = dx * dx + dy * dy;
        double share = square == 0 ? 0 : Math.max(0, Math.min(1, ((x - ax) * dx + (y - ay) * dy) / square));
        double ex = ax + share * dx - x;
        double ey = ay + share * dy - y;
        double far = ex * ex + ey * ey;
        if (far < nearest - 1e-9) {
          nearest = far;
          side = dx * ux + dy * uy >= 0 ? 1 : -1;
        }
      }
    }
    return side;
  }

  private void name(Door door, At at) {
    String name = TextSize.cut(door.name(), Sheet.LESS, 30);
    String beyond = door.leadsTo().isBlank() ? "" : TextSize.cut("to " + door.leadsTo(), Sheet.LESS, 38);
    boolean placed = !beyond.isEmpty() && (stack(List.of(name, beyond), Sheet.TEXT, at) || stack(List.of(name, beyond), Sheet.LESS, at))
        || stack(List.of(name), Sheet.TEXT, at) || stack(List.of(name), Sheet.LESS, at);
    if (!placed) {
      nameless.add(shown(door.name()));
    }
    String what = beyond(door);
    if (!what.isEmpty()) {
      sheet.note("Beyond door " + shown(door.name()) + ": " + what + ".");
    }
  }

  private static String shown(String text) {
    return TextSize.cut(text, 1, 24);
  }

  private String beyond(Door door) {
    Length higher = door.beyond().higherBy();
    List<String> parts = new ArrayList<>();
    if (!door.leadsTo().isBlank()) {
      parts.add(shown(door.leadsTo()));
    }
    if (!door.beyond().finish().isBlank()) {
      parts.add(shown(door.beyond().finish()));
    }
    if (!higher.isZero()) {
      parts.add(sheet.measures.withUnit(higher.abs()) + " " + (higher.isNegative() ? "lower" : "higher"));
    }
    door.beyond().aboveSubfloor().ifPresent(height -> parts.add(sheet.measures.withUnit(height) + " above the subfloor here"));
    return parts.size() == 1 && !door.leadsTo().isBlank() ? "" : String.join(", ", parts);
  }

  /** Sets lines of text above each other outside the wall; false if there is no room for them. */
  private boolean stack(List<String> texts, double size, At at) {
    double turn = StrictMath.toRadians(Sheet.turn(at.ux(), at.uy()));
    double rx = StrictMath.cos(turn);
    double ry = StrictMath.sin(turn);
    double line = 2 * 0.62 * size;
    double halfHeight = line * texts.size() / 2;
    double halfWidth = texts.stream().mapToDouble(TextSize::width).max().orElse(0) * size / 2;
    for (double away = walls.outerFace() + 1.1 + halfHeight; away < 14; away += 0.8) {
      for (double aside : new double[] {0, -4, 4, -8, 8, -12, 12, -18, 18}) {
        double cx = at.x(at.width() / 2 + aside, away);
        double cy = at.y(at.width() / 2 + aside, away);
        if (walls.outside(new Box(cx, cy, halfWidth + 0.2, halfHeight + 0.1, rx, ry), at.x(at.width() / 2, 0.1),
            at.y(at.width() / 2, 0.1))) {
          for (int i = 0; i < texts.size(); i++) {
            double down = (i + 0.5) * line - halfHeight;
            sheet.write(texts.get(i), size, new Box(cx - ry * down, cy + rx * down,
                TextSize.width(texts.get(i)) * size / 2, line / 2, rx, ry));
          }
          return true;
        }
      }
    }
    return false;
  }

  void drawPipes() {
    List<Pipe> pipes = pipes();
    for (Pipe pipe : pipes.subList(0, Math.min(pipes.size(), MOST_PIPES))) {
      double x = sheet.paper.x(pipe.at().xNanometres());
      double y = sheet.paper.y(pipe.at().yNanometres());
      double radius = Math.max(0.6, sheet.paper.of(pipe.diameter()) / 2);
      double hole = sheet.paper.of(pipe.diameter()) / 2 + sheet.paper.of(gap);
      if (hole >= radius + CLEAR_RING) {
        hole(sheet.lines, x, y, hole);
        sheet.explain(Mark.PIPE_HOLE);
      }
      pipe(sheet.lines, x, y, radius);
      sheet.take(Box.upright(x - radius - 0.7, y - radius - 0.7, x + radius + 0.7, y + radius + 0.7));
    }
    if (pipes.size() > MOST_PIPES) {
      sheet.note("Only the first " + MOST_PIPES + " of " + Words.grouped(pipes.size()) + " pipes are drawn.");
    }
    if (!pipes.isEmpty()) {
      sheet.explain(Mark.PIPE);
    }
  }

  /** Says where the pipes are. */
  void listPipes() {
    List<Pipe> pipes = pipes();
    if (!pipes.isEmpty()) {
      List<String> places = pipes.stream().map(p -> sheet.measures.withUnit(p.diameter()) + " at (" + sheet.measures.row(p.at().x())
          + ", " + sheet.measures.row(p.at().y()) + ")").toList();
      sheet.note((pipes.size() == 1 ? "Pipe: " : "Pipes: ") + Words.list(places, 6) + ".");
    }
  }

  static void hole(Svg lines, double x, double y, double radius) {
    lines.line("<circle " + Svg.attribute("cx", x) + ' ' + Svg.attribute("cy", y) + ' ' + Svg.attribute("r", radius)
        + " fill=\"#fff\" stroke-width=\"0.18\" stroke-dasharray=\"0.35 0.25\"/>");
  }

  static void pipe(Svg lines, double x, double y, double radius) {
    double reach = radius + 0.6;
    lines.line("<circle " + Svg.attribute("cx", x) + ' ' + Svg.attribute("cy", y) + ' ' + Svg.attribute("r", radius)
        + " fill=\"#fff\" stroke-width=\"0.25\"/>");
    lines.line("<path stroke-width=\"0.18\" d=\"" + Sheet.segment(x - reach, y, x + reach, y)
        + Sheet.segment(x, y - reach, x, y + reach) + "\"/>");
  }
}
