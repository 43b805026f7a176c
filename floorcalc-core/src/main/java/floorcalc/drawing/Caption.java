package floorcalc.drawing;

import floorcalc.measure.Length;
import floorcalc.plan.Bay;
import floorcalc.plan.Door;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.Room;
import floorcalc.plan.Row;
import java.util.List;

/** The words of a drawing: the caption above it, and the title and the description for those who cannot see it. */
final class Caption {
  private static final double HEADING = 4.2;
  private static final int DOORS_DESCRIBED = 20;
  private static final int PROFILES_DESCRIBED = 40;

  private Caption() {
  }

  static void write(Sheet sheet, FloorPlan plan, Bay bay) {
    double width = sheet.paper.width() - 8;
    String heading = TextSize.cut(bay.room() + ", bay " + bay.bay(), HEADING, width * 0.7);
    sheet.writeFrom(heading, HEADING, 4, 5.4);
    double left = width - TextSize.width(heading) * HEADING - 6;
    if (!plan.title().isBlank() && left > 12) {
      sheet.writeUpTo(TextSize.cut(plan.title(), Sheet.TEXT, left), Sheet.TEXT, sheet.paper.width() - 4, 5.4);
    }
    String facts = "Scale 1:" + Words.grouped(sheet.paper.scale()) + " \u00b7 boards run at " + degrees(bay)
        + ", anticlockwise from the room's x axis \u00b7 " + Words.count(bay.rows().size(), "row", "rows") + " \u00b7 "
        + Words.count(PieceShape.count(bay), "piece", "pieces") + " \u00b7 lengths "
        + sheet.measures.words();
    sheet.writeFitting(facts, width, 4, 10.4);
  }

  static String title(Bay bay) {
    return "Laid floor of " + cut(bay.room()) + ", bay " + cut(bay.bay());
  }

  private static String degrees(Bay bay) {
    return Words.degrees(bay.direction().toDecimal());
  }

  /** Says in words what the drawing shows. */
  static String description(FloorPlan plan, Bay bay, Room room, Length gap, Paper paper, Measures measures) {
    StringBuilder text = new StringBuilder("A plan to scale, 1 to ").append(paper.scale()).append(", of ")
        .append(Words.count(room.outline().shell().size(), "wall", "walls"));
    if (!room.outline().voids().isEmpty()) {
      text.append(" and ").append(Words.count(room.outline().voids().size(), "void", "voids"));
    }
    text.append(". The boards run at ").append(degrees(bay)).append(", anticlockwise from the x axis, in ")
        .append(Words.count(bay.rows().size(), "row", "rows")).append(" of ")
        .append(Words.count(PieceShape.count(bay), "piece", "pieces")).append(" in all. ");
    if (!bay.rows().isEmpty()) {
      Row first = bay.rows().get(0);
      Row last = bay.rows().get(bay.rows().size() - 1);
      text.append("Row 1 at the starting wall shows ").append(measures.withUnit(first.coverWidth()));
      if (last != first) {
        text.append(", row ").append(last.row()).append(" on the far side ")
            .append(measures.withUnit(last.coverWidth()));
      }
      text.append(". ");
    }
    text.append("The expansion gap is ").append(measures.withUnit(gap)).append('.');
    List<Door> doors = room.doors();
    for (Door door : doors.subList(0, Math.min(doors.size(), DOORS_DESCRIBED))) {
      text.append(" Door ").append(cut(door.name()));
      if (!door.leadsTo().isBlank()) {
        text.append(" leads to ").append(cut(door.leadsTo()));
      }
      text.append('.');
    }
    if (!room.pipes().isEmpty()) {
      text.append(' ').append(Words.count(room.pipes().size(), "pipe comes", "pipes come")).append(" up through it.");
    }
    RoomProfiles.of(plan, room).stream().limit(PROFILES_DESCRIBED)
        .forEach(shown -> text.append(' ').append(shown.sentence(measures)));
    return text.toString();
  }

  private static String cut(String name) {
    return TextSize.cut(name, 1, 60);
  }
}
