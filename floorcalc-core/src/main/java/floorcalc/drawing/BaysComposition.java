package floorcalc.drawing;

import floorcalc.measure.Length;
import floorcalc.outline.Direction;
import floorcalc.outline.Outline;
import floorcalc.outline.Point;
import floorcalc.plan.Bay;
import floorcalc.plan.Door;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.Room;
import floorcalc.rules.LayingRules;
import java.util.ArrayList;
import java.util.List;

/**
 * All bays of one room, or of several rooms that are measured in one frame, on one sheet: their names, how long they run
 * along and across their boards, and the breaks and profiles between them.
 */
final class BaysComposition {
  /** Pieces drawn as faint outlines; a floor of more shows its bays without them. */
  private static final int MOST_PIECES = 3000;
  /** Rows narrower than this on paper would run into a grey. */
  private static final double LEAST_PITCH = 1.2;
  private static final int MOST_BAYS = 200;
  private static final int MOST_DESCRIBED = 60;
  private static final int MOST_DOORS = 60;
  private static final double HEADING = 4.2;

  private final FloorPlan plan;
  private final Length gap;
  private final Length pitch;
  private final List<Room> rooms;
  private final Measures measures;
  private final String id;
  private final String heading;
  private final List<Bay> bays;

  BaysComposition(FloorJob job, FloorPlan plan, List<Room> rooms, Measures measures, String id, String heading) {
    this.plan = plan;
    this.pitch = job.board().laidPitch();
    this.gap = job.rules().value(LayingRules.EXPANSION_GAP);
    this.rooms = rooms;
    this.measures = measures;
    this.id = id;
    this.heading = heading;
    this.bays = plan.bays().stream().filter(bay -> rooms.stream().anyMatch(room -> room.name().equals(bay.room())))
        .limit(MOST_BAYS).toList();
  }

  FloorDrawing draw() {
    List<Paper> papers = Paper.fit(rooms.stream().map(room -> room.outline().shell()).toList());
    for (int i = 0; ; i++) {
      Sheet sheet = new Sheet(papers.get(i), Frame.of(Direction.ALONG_X), measures, id);
      Foot foot = fill(sheet);
      if (foot.hasRoom() || i == papers.size() - 1) {
        return put(sheet, foot);
      }
    }
  }

  private Foot fill(Sheet sheet) {
    caption(sheet);
    List<Walls> walls = new ArrayList<>();
    for (int i = 0; i < rooms.size(); i++) {
      Walls one = new Walls(sheet, rooms.get(i), rooms.get(i).outline().shell(), Length.ZERO);
      one.draw(id + "-walls" + (rooms.size() == 1 ? "" : "-" + (i + 1)));
      walls.add(one);
    }
    boolean faint = sheet.paper.of(pitch) >= LEAST_PITCH && bays.stream().mapToLong(PieceShape::count).sum() <= MOST_PIECES;
    bays.forEach(bay -> area(sheet, bay, faint));
    new OverallDimensions(sheet).draw();
    List<Openings> openings = new ArrayList<>();
    for (int i = 0; i < rooms.size(); i++) {
      Openings one = new Openings(sheet, rooms.get(i), walls.get(i), gap);
      one.drawDoors();
      openings.add(one);
    }
    ProfileMarks profiles = new ProfileMarks(sheet, RoomProfiles.of(plan, rooms));
    profiles.draw();
    openings.forEach(Openings::drawPipes);
    profiles.label(box -> true, ProfileMarks.Lengths.BESIDE);
    BayNames names = new BayNames(sheet);
    bays.forEach(names::write);
    walls.forEach(Walls::nameVoids);
    doors(sheet);
    Foot foot = new Foot(sheet);
    foot.scaleBar();
    if (sheet.marks().contains(Mark.ROW_ARROW)) {
      double left = foot.next("the way the boards run");
      RowMarks.rowArrow(sheet.lines, sheet.frame, left, -foot.middle());
    }
    foot.pipesAndProfiles();
    foot.endKey();
    foot.notes();
    return foot;
  }

  private void caption(Sheet sheet) {
    double width = sheet.paper.width() - 8;
    String head = TextSize.cut(heading, HEADING, width * 0.7);
    sheet.writeFrom(head, HEADING, 4, 5.4);
    double left = width - TextSize.width(head) * HEADING - 6;
    if (!plan.title().isBlank() && left > 12) {
      sheet.writeUpTo(TextSize.cut(plan.title(), Sheet.TEXT, left), Sheet.TEXT, sheet.paper.width() - 4, 5.4);
    }
    String facts = "Scale 1:" + Words.grouped(sheet.paper.scale()) + " \u00b7 " + Words.count(bays.size(), "bay", "bays")
        + " \u00b7 how long each runs along and across its boards \u00b7 lengths " + measures.words();
    sheet.writeFitting(facts, width, 4, 10.4);
  }

  private static void area(Sheet sheet, Bay bay, boolean faint) {
    Outline laid = bay.laid();
    String d = Shape.of(sheet.paper, laid.shell(), laid.voids()).thinned(Walls.MOST_CORNERS).path();
    sheet.floor.line("<path id=\"" + sheet.id + '-' + Svg.identifier("", bay.bay())
        + "\" fill=\"#fff\" fill-rule=\"evenodd\" stroke-width=\"0.2\" d=\"" + d + "\"/>");
    if (!faint) {
      return;
    }
    StringBuilder pieces = new StringBuilder();
    bay.rows().forEach(row -> PieceShape.of(sheet, row).forEach(piece -> piece.shape().appendPath(pieces)));
    if (pieces.length() > 0) {
      sheet.floor.line("<path stroke=\"#aaa\" stroke-width=\"0.08\" d=\"" + pieces + "\"/>");
    }
  }

  /** Names the doors near them; a door that two rooms share stands there once. */
  private void doors(Sheet sheet) {
    List<Door> named = new ArrayList<>();
    List<String> left = new ArrayList<>();
    rooms.stream().flatMap(room -> room.doors().stream()).limit(MOST_DOORS).forEach(door -> {
      boolean shared = named.stream().anyMatch(other -> other.name().equals(door.name()) && isNear(other, door));
      named.add(door);
      if (!shared && !door(sheet, door)) {
        left.add(TextSize.cut(door.name(), 1, 24));
      }
    });
    if (!left.isEmpty()) {
      sheet.note("Doors without room for their names: " + Words.list(left, 16) + ".");
    }
  }

  private static boolean isNear(Door one, Door other) {
    Point middle = RoomProfiles.middle(one.from(), one.to());
    return RoomProfiles.distance(other, middle) <= RoomProfiles.NEAR_DOOR;
  }

  private static boolean door(Sheet sheet, Door door) {
    String text = TextSize.cut(door.name(), Sheet.TEXT, 24);
    Point middle = RoomProfiles.middle(door.from(), door.to());
    double x = sheet.paper.x(middle.xNanometres());
    double y = sheet.paper.y(middle.yNanometres());
    double half = TextSize.width(text) * Sheet.TEXT / 2;
    for (double away = 2; away < 9; away += 0.8) {
      for (int eighth = 0; eighth < 8; eighth++) {
        double dx = StrictMath.cos(eighth * Math.PI / 4) * (away + half);
        double dy = StrictMath.sin(eighth * Math.PI / 4) * away;
        Box box = new Box(x + dx, y + dy, half, TextSize.halfHeight(text) * Sheet.TEXT, 1, 0);
        if (sheet.paper.shows(box) && sheet.free(box)) {
          sheet.ground(box);
          sheet.write(text, Sheet.TEXT, box);
          return true;
        }
      }
    }
    return false;
  }

  private String description(Sheet sheet) {
    StringBuilder text = new StringBuilder("A plan to scale, 1 to ").append(sheet.paper.scale()).append(", of ")
        .append(Words.count(rooms.size(), "room", "rooms")).append(" with ").append(Words.count(bays.size(), "bay", "bays")).append('.');
    bays.stream().limit(MOST_DESCRIBED).forEach(bay -> text.append(" Bay ").append(TextSize.cut(bay.bay(), 1, 60)).append(": ")
        .append(BayNames.runs(bay, measures)).append('.'));
    RoomProfiles.of(plan, rooms).stream().limit(MOST_DESCRIBED).forEach(shown -> text.append(' ').append(shown.sentence(measures)));
    rooms.stream().flatMap(room -> room.doors().stream()).filter(door -> !door.leadsTo().isBlank()).limit(MOST_DOORS)
        .forEach(door -> text.append(" Door ").append(TextSize.cut(door.name(), 1, 60)).append(" leads to ")
            .append(TextSize.cut(door.leadsTo(), 1, 60)).append('.'));
    return text.toString();
  }

  private FloorDrawing put(Sheet sheet, Foot foot) {
    String width = Svg.number(sheet.paper.width());
    String height = Svg.number(foot.end());
    Svg svg = new Svg();
    svg.line("<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" aria-labelledby=\"" + id + "-title " + id
        + "-desc\" width=\"" + width + "mm\" height=\"" + height + "mm\" viewBox=\"0 0 " + width + ' ' + height
        + "\" font-family=\"sans-serif\" fill=\"none\" stroke=\"#000\">");
    svg.element("title", "id=\"" + id + "-title\"", TextSize.cut(heading, 1, 80));
    svg.element("desc", "id=\"" + id + "-desc\"", description(sheet));
    svg.line("<rect width=\"" + width + "\" height=\"" + height + "\" fill=\"#fff\" stroke=\"none\"/>");
    svg.line("<g>").add(sheet.floor).line("</g>");
    svg.line("<g>").add(sheet.lines).line("</g>");
    svg.line("<g>").add(sheet.grounds).line("</g>");
    svg.line("<g fill=\"#000\" stroke=\"none\" text-anchor=\"middle\">").add(sheet.texts).line("</g>");
    svg.line("</svg>");
    return new FloorDrawing(svg.toString(), Length.ofMillimetres((long) sheet.paper.width()),
        Length.ofMillimetres((long) foot.end()));
  }
}
