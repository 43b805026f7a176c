package floorcalc.drawing;

import floorcalc.measure.Length;
import floorcalc.outline.Extent;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import floorcalc.plan.Bay;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.PieceKind;
import floorcalc.plan.Room;
import floorcalc.plan.Row;
import floorcalc.rules.LayingRules;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Puts the parts of a drawing onto a sheet, each in its turn: what comes first finds its place free. */
final class Composition {
  /** Pieces drawn one by one; a bay with more is drawn as rows and joints without numbers. */
  private static final int MOST_PIECES = 1500;
  /** Corners of all these pieces together. */
  private static final int MOST_CORNERS = 20_000;
  /** Rows at least this wide on paper have board numbers in their pieces: room for the smallest digits. */
  private static final double NUMBERED_PITCH = 1.65;
  /** Rows are at least this wide where a bay is drawn in strips. */
  private static final double STRIP_PITCH = 2.6;
  private static final double WIDEST_STRIP_PITCH = 6;
  /** A piece this wide on paper has room for the smallest digits along it. */
  private static final double NARROWEST_NUMBERED = 1.75;
  /** Rows at least this wide on paper have their pieces drawn one by one. */
  private static final double TONED_PITCH = 0.8;

  private final FloorJob job;
  private final FloorPlan plan;
  private final Room room;
  private final Bay bay;
  private final Measures measures;
  private final Length gap;
  private final Length pitch;
  private final Ring view;

  Composition(FloorJob job, FloorPlan plan, Room room, Bay bay, Measures measures) {
    this.measures = measures;
    this.job = job;
    this.plan = plan;
    this.room = room;
    this.bay = bay;
    this.gap = job.rules().value(LayingRules.EXPANSION_GAP);
    this.pitch = job.board().laidPitch();
    this.view = view();
  }

  /** The room, or the rectangle round the bay and its gap where that is shown at a larger scale. */
  private Ring view() {
    Ring whole = room.outline().shell();
    boolean alone = plan.bays().stream().filter(other -> other.room().equals(bay.room())).count() < 2;
    if (alone || bay.laid().shell().size() == 0) {
      return whole;
    }
    Extent laid = bay.laid().extent();
    Point low = Point.of(laid.low().x().minus(gap), laid.low().y().minus(gap));
    Point high = Point.of(laid.high().x().plus(gap), laid.high().y().plus(gap));
    Ring near = Ring.of(low, Point.of(high.x(), low.y()), high, Point.of(low.x(), high.y()));
    return Paper.fit(List.of(near)).get(0).scale() < Paper.fit(List.of(whole)).get(0).scale() ? near : whole;
  }

  /** Draws at the largest scale at which the notes have room as well. */
  FloorDrawing draw() {
    List<Paper> papers = Paper.fit(List.of(view));
    for (Paper paper : papers.subList(0, papers.size() - 1)) {
      Sheet sheet = sheet(paper);
      Foot foot = foot(sheet);
      if (foot.hasRoom()) {
        return put(sheet, foot);
      }
    }
    Sheet sheet = sheet(papers.get(papers.size() - 1));
    return put(sheet, foot(sheet));
  }

  /** Draws the bay in strips if its board numbers have no room on a sheet. */
  List<FloorDrawing> parts() {
    List<Paper> papers = Paper.fit(List.of(view));
    if (papers.get(papers.size() - 1).of(pitch) >= NUMBERED_PITCH || isTooMuch()) {
      return List.of();
    }
    Sheet roll = sheet(Paper.roll(view, pitch, stripPitch()), Svg.identifier(bay.bay()) + "-parts");
    return new Strips(roll, Caption.title(bay), Caption.description(plan, bay, room, gap, roll.paper, measures)).draw(bay);
  }

  /** How wide rows are on paper so that the narrowest has room for numbers too, unless that takes far too much paper. */
  private double stripPitch() {
    double narrowest = bay.rows().stream().mapToDouble(row -> row.coverWidth().toMillimetres()).min().orElse(1);
    return Math.max(STRIP_PITCH, Math.min(WIDEST_STRIP_PITCH, NARROWEST_NUMBERED * pitch.toMillimetres() / narrowest));
  }

  private Sheet sheet(Paper paper) {
    Sheet sheet = sheet(paper, Svg.identifier(bay.bay()));
    Caption.write(sheet, plan, bay);
    return sheet;
  }

  private Sheet sheet(Paper paper, String id) {
    boolean near = !view.equals(room.outline().shell());
    Sheet sheet = new Sheet(paper, Frame.of(bay.direction()), measures, id, near ? Window.round(paper) : Window.ALL);
    Walls walls = new Walls(sheet, room, bay.laid().shell(), gap);
    sheet.note(gapNote(paper.of(gap), walls.extra()));
    walls.draw();
    walls.drawOtherBays(plan, bay);
    Dimensions dimensions = new Dimensions(sheet, walls);
    Openings openings = new Openings(sheet, room, walls, gap);
    new OverallDimensions(sheet).draw();
    openings.drawDoors();
    dimensions.rows(bay);
    new RowMarks(sheet, bay, walls, paper.of(pitch)).draw();
    openings.nameDoors();
    ProfileMarks profiles = new ProfileMarks(sheet, RoomProfiles.of(plan, room));
    profiles.draw();
    profiles.label(walls::clear, ProfileMarks.Lengths.BELOW);
    walls.number();
    walls.nameVoids();
    openings.drawPipes();
    openings.listPipes();
    boards(sheet);
    if (near) {
      sheet.note("Only what borders on this bay is drawn; the whole room is on the sheet of its bays.");
    }
    sheet.window.cover(sheet);
    return sheet;
  }

  private void boards(Sheet sheet) {
    double onPaper = sheet.paper.of(pitch);
    if (isTooMuch() || onPaper < TONED_PITCH) {
      new Overview(sheet, bay, onPaper).draw();
      return;
    }
    Map<Integer, Length> lengths = new HashMap<>();
    plan.boards().forEach(board -> lengths.put(board.board(), board.length()));
    Boards boards = new Boards(sheet, bay, lengths, job.board().longest(), pitch.min(job.board().coverWidth()));
    boards.draw();
    if (onPaper >= NUMBERED_PITCH) {
      boards.number();
    } else {
      sheet.noteEarly("Rows are too narrow at this scale for board numbers; the cut card lists every piece.");
    }
    boards.grain();
  }

  private boolean isTooMuch() {
    return PieceShape.count(bay) > MOST_PIECES || corners() > MOST_CORNERS;
  }

  private int corners() {
    return bay.rows().stream().flatMap(row -> row.pieces().stream())
        .mapToInt(piece -> piece.outline().size() + piece.holes().stream().mapToInt(hole -> hole.size()).sum()).sum();
  }

  private Foot foot(Sheet sheet) {
    Foot foot = new Foot(sheet);
    Set<PieceKind> kinds = EnumSet.noneOf(PieceKind.class);
    if (sheet.marks().contains(Mark.SAWN)) {
      bay.rows().stream().map(Row::pieces).forEach(pieces -> pieces.forEach(piece -> kinds.add(piece.kind())));
    }
    foot.scaleBar();
    foot.key(kinds, Boards.tick(sheet.paper.of(pitch)));
    foot.notes();
    return foot;
  }

  private String gapNote(double onPaper, double extra) {
    if (gap.isZero()) {
      return "No expansion gap: the boards touch the walls.";
    }
    String text = "Expansion gap " + measures.withUnit(gap) + ", the white line inside the walls: ";
    return text + (extra == 0 ? "to scale." : Svg.number(onPaper) + " mm wide at this scale, drawn "
        + Svg.number(onPaper + extra) + " mm wide so that it shows.");
  }

  private FloorDrawing put(Sheet sheet, Foot foot) {
    String width = Svg.number(sheet.paper.width());
    String height = Svg.number(foot.end());
    Svg svg = new Svg();
    svg.line("<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" aria-labelledby=\"" + sheet.id + "-title "
        + sheet.id + "-desc\" width=\"" + width + "mm\" height=\"" + height + "mm\" viewBox=\"0 0 " + width + ' '
        + height + "\" font-family=\"sans-serif\" fill=\"none\" stroke=\"#000\">");
    svg.element("title", "id=\"" + sheet.id + "-title\"", Caption.title(bay));
    svg.element("desc", "id=\"" + sheet.id + "-desc\"", Caption.description(plan, bay, room, gap, sheet.paper, measures));
    svg.line("<rect width=\"" + width + "\" height=\"" + height + "\" fill=\"#fff\" stroke=\"none\"/>");
    svg.line("<g>").add(sheet.floor).line("</g>");
    svg.line("<g>").add(sheet.lines).line("</g>");
    svg.line("<g>").add(sheet.grounds).line("</g>");
    svg.line("<g fill=\"#000\" stroke=\"none\" text-anchor=\"middle\">").add(sheet.texts).line("</g>");
    svg.line("<g id=\"" + sheet.id + "-board-numbers\" fill=\"#000\" stroke=\"none\" text-anchor=\"middle\">")
        .add(sheet.boardNumbers).line("</g>");
    svg.line("</svg>");
    return new FloorDrawing(svg.toString(), Length.ofMillimetres((long) sheet.paper.width()),
        Length.ofMillimetres((long) foot.end()));
  }
}
