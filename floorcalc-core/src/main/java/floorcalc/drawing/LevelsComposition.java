package floorcalc.drawing;

import floorcalc.levels.LevelPlane;
import floorcalc.levels.Levels;
import floorcalc.levels.SpotLevel;
import floorcalc.measure.Length;
import floorcalc.outline.Outline;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import floorcalc.plan.Room;
import floorcalc.working.Finding;
import java.util.ArrayList;
import java.util.List;

/** Puts the parts of a drawing of levels onto a sheet, each in its turn: what comes first finds its place free. */
final class LevelsComposition {
  private static final double HEADING = 4.2;
  private static final int MOST_DOUBTS = 3;

  private final LevelsDrawing drawing;
  private final Levels levels;
  private final LevelPlane plane;

  LevelsComposition(LevelsDrawing drawing) {
    this.drawing = drawing;
    this.levels = drawing.levels();
    this.plane = levels.plane().value();
  }

  /** Draws at the largest scale at which the notes have room as well. */
  String draw() {
    String last = "";
    for (Paper paper : Paper.fit(extent())) {
      Sheet sheet = new Sheet(paper, new Frame(1, 0, 0, -1), drawing.measures(),
          drawing.title().isBlank() ? "levels" : Svg.identifier("levels-", drawing.title()));
      HeightBands bands = sheet(sheet);
      Foot foot = new Foot(sheet);
      foot.scaleBar();
      new LevelsKey(foot, sheet, drawing, plane).write(bands);
      foot.notes();
      last = put(sheet, foot);
      if (foot.hasRoom()) {
        return last;
      }
    }
    return last;
  }

  /** All that is drawn: the readings, and the room if there is one. */
  private Outline extent() {
    List<Point> points = new ArrayList<>(levels.spots().stream().map(SpotLevel::place).toList());
    drawing.room().ifPresent(room -> points.addAll(room.shell().corners()));
    Length left = points.stream().map(Point::x).reduce(Length::min).orElseThrow();
    Length right = points.stream().map(Point::x).reduce(Length::max).orElseThrow();
    Length low = points.stream().map(Point::y).reduce(Length::min).orElseThrow();
    Length high = points.stream().map(Point::y).reduce(Length::max).orElseThrow();
    return Outline.of(Ring.of(Point.of(left, low), Point.of(right, low), Point.of(right, high), Point.of(left, high)));
  }

  private HeightBands sheet(Sheet sheet) {
    caption(sheet);
    Relief relief = Relief.of(levels, sheet.paper);
    HeightBands bands = HeightBands.of(relief, levels, sheet.measures);
    LevelTones tones = new LevelTones(sheet, relief, bands);
    drawing.room().ifPresent(room -> {
      Walls walls = new Walls(sheet, Room.of("room", room), room.shell(), Length.ZERO);
      walls.draw();
      tones.clip(room);
    });
    tones.draw(drawing.preparation().isPresent() && relief.isGrid() ? drawing.preparation().get().spots() : List.of());
    drawing.room().ifPresent(room -> room.voids().forEach(ring -> sheet.floor.line("<path fill=\"#a8a8a8\" stroke-width=\"0.3\" d=\""
        + Shape.of(sheet.paper, ring, List.of()).path() + "\"/>")));
    notes(sheet, relief);
    new OverallDimensions(sheet).draw();
    new LevelLabels(sheet, drawing, relief, plane).write(bands);
    return bands;
  }

  private void caption(Sheet sheet) {
    double width = sheet.paper.width() - 8;
    String heading = TextSize.cut(drawing.title().isBlank() ? "Levels" : drawing.title(), HEADING, width);
    sheet.writeFrom(heading, HEADING, 4, 5.4);
    String facts = "Scale 1:" + Words.grouped(sheet.paper.scale()) + " \u00b7 " + Words.count(levels.spots().size(), "reading", "readings")
        + " from " + sheet.measures.markedHeight(levels.lowest().height()) + " to "
        + sheet.measures.markedHeight(levels.highest().height()) + " \u00b7 heights " + sheet.measures.heightWords()
        + ", upwards \u00b7 x to the right, y up";
    sheet.writeFitting(facts, width, 4, 10.4);
  }

  private void notes(Sheet sheet, Relief relief) {
    List<Finding> doubts = levels.doubts();
    doubts.stream().limit(MOST_DOUBTS).forEach(doubt -> sheet.note("Doubtful: "
        + (doubt.where().isEmpty() ? "" : "at " + doubt.where() + ", ") + doubt.message() + "."));
    if (doubts.size() > MOST_DOUBTS) {
      sheet.note(Words.count(doubts.size() - MOST_DOUBTS, "more doubt is", "more doubts are") + " not listed.");
    }
    sheet.note(relief.isGrid()
        ? "Between readings: each cell of the grid is four planes that meet at the mean height of its corners. Nothing is drawn beyond the"
            + " outermost readings."
        : "Between readings: scattered readings are joined to triangles (Delaunay), each a plane. Nothing is drawn outside their hull, and"
            + " flatness is not judged.");
    drawing.room().ifPresent(room -> {
      long outside = levels.spots().stream()
          .filter(spot -> room.locate(spot.place()) == floorcalc.outline.Containment.OUTSIDE).count();
      if (outside > 0) {
        sheet.note(Words.count(outside, "reading lies", "readings lie") + " outside the walls or in a void; check where x and y begin.");
      }
    });
  }

  private String put(Sheet sheet, Foot foot) {
    String width = Svg.number(sheet.paper.width());
    String height = Svg.number(foot.end());
    Svg svg = new Svg();
    svg.line("<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" aria-labelledby=\"" + sheet.id + "-title "
        + sheet.id + "-desc\" width=\"" + width + "mm\" height=\"" + height + "mm\" viewBox=\"0 0 " + width + ' '
        + height + "\" font-family=\"sans-serif\" fill=\"none\" stroke=\"#000\">");
    svg.element("title", "id=\"" + sheet.id + "-title\"", drawing.title().isBlank() ? "Levels of a floor" : "Levels of a floor: "
        + drawing.title());
    svg.element("desc", "id=\"" + sheet.id + "-desc\"", description(sheet));
    svg.line("<rect width=\"" + width + "\" height=\"" + height + "\" fill=\"#fff\" stroke=\"none\"/>");
    svg.line("<g>").add(sheet.floor).line("</g>");
    svg.line("<g>").add(sheet.lines).line("</g>");
    svg.line("<g fill=\"#000\" stroke=\"none\" text-anchor=\"middle\">").add(sheet.texts).line("</g>");
    svg.line("</svg>");
    return svg.toString();
  }

  private String description(Sheet sheet) {
    SpotLevel high = levels.highest();
    SpotLevel low = levels.lowest();
    StringBuilder text = new StringBuilder("A plan to scale, 1 to ").append(sheet.paper.scale()).append(", of ")
        .append(Words.count(levels.spots().size(), "reading", "readings")).append(". The highest is ").append(high.height())
        .append(" at x = ").append(high.place().x()).append(", y = ").append(high.place().y()).append("; the lowest is ")
        .append(low.height()).append(" at x = ").append(low.place().x()).append(", y = ").append(low.place().y()).append('.');
    drawing.preparation().ifPresent(work -> text.append(' ').append(Words.count(work.toGrind().size(), "spot", "spots"))
        .append(" to grind, at most ").append(work.deepestGrinding()).append(" deep; ")
        .append(Words.count(work.toFill().size(), "spot", "spots")).append(" to fill, at most ").append(work.deepestFilling())
        .append(" deep."));
    return text.toString();
  }
}
