package floorcalc.drawing;

import floorcalc.measure.Length;
import floorcalc.outline.Ring;
import floorcalc.plan.Bay;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.Room;
import java.util.ArrayList;
import java.util.List;

/**
 * The walls as a black band outside the room's outline, the voids in grey, the expansion gap as the white line between
 * them and the boards, and the walls' numbers and lengths.
 */
final class Walls {
  /** Corners drawn of one room; more are thinned out. */
  static final int MOST_CORNERS = 5000;
  /** Walls that are numbered, each if there is room for its number. */
  static final int MOST_NUMBERED = 200;
  /** Other bays of the room that are drawn. */
  private static final int MOST_BAYS = 20;
  private static final double BAND = 1.0;
  /** A gap narrower than this on paper is drawn this wide. */
  private static final double CLEAR_GAP = 0.45;
  private static final double RING = 1.9;
  private static final double DIGITS = 2.2;

  private final Sheet sheet;
  private final Room room;
  private final Shape outline;
  private final Shape shell;
  private final Shape laidShell;
  private final double extra;

  Walls(Sheet sheet, Room room, Ring laidShell, Length gap) {
    this.sheet = sheet;
    this.room = room;
    this.outline = Shape.of(sheet.paper, room.outline().shell(), room.outline().voids()).thinned(MOST_CORNERS);
    this.shell = outline.ring(0);
    this.laidShell = Shape.of(sheet.paper, laidShell, List.of()).thinned(MOST_CORNERS);
    double onPaper = sheet.paper.of(gap);
    this.extra = gap.isPositive() ? Math.max(0, CLEAR_GAP - onPaper) : 0;
    if (room.outline().shell().size() + room.outline().voids().stream().mapToInt(Ring::size).sum() > MOST_CORNERS) {
      sheet.note("The outline has more corners than can be drawn: it is shown with every few of them only.");
    }
  }

  /** Returns how far outside the outline the walls are drawn so that the gap shows. */
  double extra() {
    return extra;
  }

  /** Returns how far outside the outline the band of a wall ends. */
  double outerFace() {
    return extra + BAND;
  }

  /** Tells whether a text may stand here: on the sheet, outside the bay, and nothing else is there. */
  boolean clear(Box box) {
    return sheet.paper.shows(box) && sheet.free(box) && !laidShell.touches(box);
  }

  /**
   * Tells whether a text that belongs to a place in a wall may stand here: as {@link #clear}, and outside the room on
   * the wall's own side, not across a corner of the room.
   */
  boolean outside(Box box, double wallX, double wallY) {
    return clear(box) && !shell.touches(box) && !shell.touches(Box.along(wallX, wallY, box.x(), box.y(), 0.1));
  }

  void draw() {
    draw(sheet.id + "-walls");
  }

  /** Draws walls and voids; the band of the walls has an identifier. */
  void draw(String id) {
    String path = shell.path();
    sheet.floor.line("<path id=\"" + id + "\" fill=\"#fff\" stroke-width=\"" + Svg.number(2 * outerFace())
        + "\" stroke-miterlimit=\"6\" d=\"" + path + "\"/>");
    sheet.floor.line("<path fill=\"#fff\" stroke=\"#fff\" stroke-width=\"" + Svg.number(2 * extra)
        + "\" stroke-miterlimit=\"6\" d=\"" + path + "\"/>");
    for (int r = 1; r < outline.rings(); r++) {
      Shape one = outline.ring(r);
      double narrow = Math.min(one.high(1, 0) - one.low(1, 0), one.high(0, 1) - one.low(0, 1));
      double inner = narrow > 4 * extra ? extra : 0;
      sheet.floor.line("<path fill=\"#a8a8a8\" stroke=\"#fff\" stroke-width=\"" + Svg.number(2 * inner) + "\" d=\""
          + one.path() + "\"/>");
    }
    for (int i = 0; i < outline.size(0); i++) {
      double dx = outline.x(0, i + 1) - outline.x(0, i);
      double dy = outline.y(0, i + 1) - outline.y(0, i);
      double length = Math.sqrt(dx * dx + dy * dy);
      if (length > 0 && sheet.window.meets(outline.x(0, i), outline.y(0, i), outline.x(0, i + 1), outline.y(0, i + 1))) {
        double nx = -dy / length * outerFace() / 2;
        double ny = dx / length * outerFace() / 2;
        sheet.take(Box.along(outline.x(0, i) + nx, outline.y(0, i) + ny, outline.x(0, i + 1) + nx,
            outline.y(0, i + 1) + ny, outerFace()).grown(0.15));
      }
    }
  }

  /** Draws the other bays of the room as empty outlines with their names. */
  void drawOtherBays(FloorPlan plan, Bay bay) {
    int others = 0;
    for (Bay other : plan.bays()) {
      if (other.bay().equals(bay.bay()) || !other.room().equals(bay.room()) || others >= MOST_BAYS) {
        continue;
      }
      others++;
      Shape shape = Shape.of(sheet.paper, other.laid().shell(), List.of()).thinned(MOST_CORNERS / MOST_BAYS);
      sheet.floor.line("<path stroke-width=\"0.18\" stroke-dasharray=\"1.5 1\" d=\"" + shape.path() + "\"/>");
      String name = TextSize.cut("bay " + other.bay(), Sheet.TEXT, 40);
      Window window = sheet.window;
      double x = (Math.max(shape.low(1, 0), window.left()) + Math.min(shape.high(1, 0), window.right())) / 2;
      double y = (Math.max(shape.low(0, 1), window.top()) + Math.min(shape.high(0, 1), window.bottom())) / 2;
      double half = TextSize.width(name) * Sheet.TEXT / 2;
      for (int quarter = 0; quarter < 2; quarter++) {
        Box box = new Box(x, y, half, TextSize.halfHeight(name) * Sheet.TEXT, 1 - quarter, -quarter);
        if (shape.holds(box) && window.holds(box) && sheet.free(box)) {
          sheet.write(name, Sheet.TEXT, box);
          break;
        }
      }
    }
    if (others > 0) {
      sheet.note("Bays drawn as broken lines are on sheets of their own.");
    }
  }

  /**
   * Sets each wall's number in a ring, and its length unless the dimension lines show it. The walls of a surveyed room keep the
   * numbers that they were measured by.
   */
  void number() {
    Ring shell = room.outline().shell();
    WallNumbers numbers = WallNumbers.of(room);
    if (numbers.count() > MOST_NUMBERED) {
      sheet.note("The walls are not numbered: there are " + Words.grouped(numbers.count()) + " of them, and at most "
          + MOST_NUMBERED + " are.");
      return;
    }
    List<String> left = new ArrayList<>();
    String across = sheet.window.isAll() ? extent(1, 0) : "";
    String up = sheet.window.isAll() ? extent(0, 1) : "";
    for (int i = 0; i < shell.size(); i++) {
      if (numbers.isSilent(i)) {
        continue;
      }
      int next = (i + 1) % shell.size();
      double dx = (double) shell.x(next) - shell.x(i);
      double dy = (double) shell.y(next) - shell.y(i);
      String length = numbers.isArc(i) ? ""
          : sheet.measures.wall(Length.ofNanometres((long) StrictMath.rint(Math.sqrt(dx * dx + dy * dy))));
      if (!sheet.window.meets(sheet.paper.x(shell.x(i)), sheet.paper.y(shell.y(i)), sheet.paper.x(shell.x(next)),
          sheet.paper.y(shell.y(next)))) {
        continue;
      }
      boolean shown = length.isEmpty() || dy == 0 && length.equals(across) || dx == 0 && length.equals(up);
      String number = Integer.toString(numbers.of(i));
      double x1 = sheet.paper.x(shell.x(i));
      double y1 = sheet.paper.y(shell.y(i));
      double x2 = sheet.paper.x(shell.x(next));
      double y2 = sheet.paper.y(shell.y(next));
      if (!shown && set(number, length, x1, y1, x2, y2)) {
        continue;
      }
      if (!set(number, "", x1, y1, x2, y2) || !shown) {
        left.add(length.isEmpty() ? number : number + " (" + length + ")");
      }
    }
    if (!left.isEmpty()) {
      sheet.note("Walls without room for number or length, with their lengths " + sheet.measures.words() + ": " + Words.list(left, 24) + ".");
    }
    numbers.notes().forEach(sheet::note);
  }

  private String extent(double ax, double ay) {
    return sheet.measures.wall(Words.fromMillimetres(sheet.paper.floor(outline.high(ax, ay) - outline.low(ax, ay))));
  }

  private boolean set(String number, String length, double x1, double y1, double x2, double y2) {
    double dx = x2 - x1;
    double dy = y2 - y1;
    double wall = Math.sqrt(dx * dx + dy * dy);
    double text = length.isEmpty() ? 0 : TextSize.width(length) * Sheet.TEXT + 0.8;
    double ring = Math.max(RING, TextSize.width(number) * DIGITS / 2 + 0.5);
    if (wall < 1.2 || !length.isEmpty() && wall < 0.8 * (text + 2 * ring)) {
      return false;
    }
    double turn = StrictMath.toRadians(Sheet.turn(dx, dy));
    double rx = StrictMath.cos(turn);
    double ry = StrictMath.sin(turn);
    double half = ring + text / 2;
    // A number far from a short wall would seem to belong to another one.
    double furthest = wall < 8 ? outerFace() + ring + 2.5 : 12;
    for (double away = outerFace() + 0.5 + ring; away < furthest; away += 0.75) {
      for (double share : new double[] {0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8}) {
        double footX = x1 + share * dx - dy / wall * 0.1;
        double footY = y1 + share * dy + dx / wall * 0.1;
        double x = footX - dy / wall * away;
        double y = footY + dx / wall * away;
        if (sheet.window.contains(footX, footY) && outside(new Box(x, y, half + 0.3, ring + 0.3, rx, ry), footX, footY)) {
          // The number stands upright in its ring: a turned 6 may be read as a 9.
          Box digits = new Box(x - text / 2 * rx, y - text / 2 * ry, ring, ring, 1, 0);
          sheet.lines.line("<circle " + Svg.attribute("cx", digits.x()) + ' ' + Svg.attribute("cy", digits.y()) + ' '
              + Svg.attribute("r", ring) + " stroke-width=\"0.18\"/>");
          sheet.write(number, DIGITS, digits);
          sheet.explain(Mark.WALL_NUMBER);
          if (!length.isEmpty()) {
            double shift = ring + 0.4;
            sheet.write(length, Sheet.TEXT, new Box(x + shift * rx, y + shift * ry, text / 2 - 0.4, RING, rx, ry));
          }
          return true;
        }
      }
    }
    return false;
  }

  /** Names the voids that are large enough. */
  void nameVoids() {
    for (int r = 1; r < outline.rings() && r <= MOST_NUMBERED; r++) {
      Shape one = outline.ring(r);
      String name = outline.rings() == 2 ? "void" : "void " + r;
      double x = (one.low(1, 0) + one.high(1, 0)) / 2;
      double y = (one.low(0, 1) + one.high(0, 1)) / 2;
      double half = TextSize.width(name) * Sheet.TEXT / 2;
      for (int quarter = 0; quarter < 2; quarter++) {
        Box box = new Box(x, y, half, TextSize.halfHeight(name) * Sheet.TEXT, 1 - quarter, -quarter);
        if (one.holds(box) && sheet.window.holds(box) && sheet.free(box)) {
          sheet.write(name, Sheet.TEXT, box);
          break;
        }
      }
    }
  }
}
