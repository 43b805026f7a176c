package floorcalc.drawing;

import floorcalc.measure.Length;
import floorcalc.plan.Bay;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.PieceKind;
import floorcalc.plan.Room;
import floorcalc.rules.LayingRules;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/**
 * One bay of a plan, drawn to scale on a sheet of paper. Immutable and thread-safe.
 * <p>
 * The sheet has the room as its user gave it, x to the right and y up. Every length of the SVG is a millimetre on
 * paper. The same bay gives the same bytes everywhere.
 */
public final class FloorDrawing {
  /** Pieces drawn one by one; a bay with more is drawn as rows and joints without numbers. */
  private static final int MOST_PIECES = 1500;
  /** Corners of all these pieces together. */
  private static final int MOST_CORNERS = 20_000;
  /** Rows at least this wide on paper have board numbers in their pieces: room for the smallest digits. */
  private static final double NUMBERED_PITCH = 1.65;
  /** Rows at least this wide on paper have their pieces drawn one by one. */
  private static final double TONED_PITCH = 0.8;

  private final String svg;
  private final Length width;
  private final Length height;

  private FloorDrawing(String svg, Length width, Length height) {
    this.svg = svg;
    this.width = width;
    this.height = height;
  }

  /**
   * Draws a bay.
   *
   * @param job the job that was planned, not null
   * @param plan the plan, not null
   * @param bay a bay of this plan, not null
   * @return the drawing, not null
   * @throws IllegalArgumentException if the plan has no bay of this name, or the job no room of the bay's
   */
  public static FloorDrawing of(FloorJob job, FloorPlan plan, Bay bay) {
    Objects.requireNonNull(bay, "bay");
    if (plan.bays().stream().noneMatch(b -> b.bay().equals(bay.bay()))) {
      throw new IllegalArgumentException("the plan has no bay '" + bay.bay() + "'; draw one of its own bays");
    }
    Room room = job.rooms().stream().filter(r -> r.name().equals(bay.room())).findFirst().orElseThrow(
        () -> new IllegalArgumentException("the job has no room '" + bay.room() + "', which bay '" + bay.bay()
            + "' lies in; draw a plan with the job that it was made for"));
    return draw(job, plan, room, bay);
  }

  private static FloorDrawing draw(FloorJob job, FloorPlan plan, Room room, Bay bay) {
    Length gap = job.rules().value(LayingRules.EXPANSION_GAP);
    Length pitch = job.board().laidPitch();
    Length fullWidth = pitch.min(job.board().coverWidth());
    Sheet sheet = new Sheet(Paper.fit(room.outline()), bay);
    double pitchOnPaper = sheet.paper.of(pitch);
    Walls walls = new Walls(sheet, room, bay.laid().shell(), gap);
    sheet.note(gapNote(gap, sheet.paper.of(gap), walls.extra()));
    walls.draw();
    walls.drawOtherBays(plan, bay);
    Set<Foot.Mark> marks = EnumSet.noneOf(Foot.Mark.class);
    Set<PieceKind> kinds = EnumSet.noneOf(PieceKind.class);
    Boards boards = onePieceAtATime(bay, pitchOnPaper)
        ? new Boards(sheet, bay, lengths(plan), job.board().longest(), fullWidth) : null;
    if (boards != null && boards.corners() > MOST_CORNERS) {
      boards = null;
    }
    Dimensions dimensions = new Dimensions(sheet, walls);
    Openings openings = new Openings(sheet, room, walls);
    RowMarks rowMarks = new RowMarks(sheet, bay, walls, pitchOnPaper);
    dimensions.overall();
    openings.drawDoors();
    dimensions.rows(bay);
    rowMarks.numberStarts();
    rowMarks.arrows();
    rowMarks.numberEnds();
    openings.nameDoors();
    if (walls.number()) {
      marks.add(Foot.Mark.WALL_NUMBER);
    }
    walls.nameVoids();
    openings.drawPipes();
    if (boards == null) {
      if (new Overview(sheet, bay, pitchOnPaper).draw()) {
        marks.add(Foot.Mark.JOINT);
      }
    } else {
      boards.draw();
      if (pitchOnPaper >= NUMBERED_PITCH) {
        boards.number();
        marks.add(Foot.Mark.BOARD_NUMBER);
      } else {
        sheet.noteEarly("Rows are too narrow at this scale for board numbers; the cut card lists every piece.");
      }
      boards.grain();
      bay.rows().forEach(row -> row.pieces().forEach(piece -> kinds.add(piece.kind())));
      marks.add(Foot.Mark.SAWN);
      if (boards.hasJoints()) {
        marks.add(Foot.Mark.JOINT);
      }
    }
    if (!room.pipes().isEmpty()) {
      marks.add(Foot.Mark.PIPE);
    }
    Caption.write(sheet, plan, bay);
    Foot foot = new Foot(sheet);
    foot.scaleBar();
    foot.key(kinds, Boards.tick(pitchOnPaper), marks);
    return put(sheet, foot.notes(), Caption.title(bay), Caption.description(bay, room, gap, sheet.paper.scale()));
  }

  private static boolean onePieceAtATime(Bay bay, double pitchOnPaper) {
    return PieceShape.count(bay) <= MOST_PIECES && pitchOnPaper >= TONED_PITCH;
  }

  private static Map<Integer, Length> lengths(FloorPlan plan) {
    Map<Integer, Length> lengths = new HashMap<>();
    plan.boards().forEach(board -> lengths.put(board.board(), board.length()));
    return lengths;
  }

  private static String gapNote(Length gap, double onPaper, double extra) {
    if (gap.isZero()) {
      return "No expansion gap: the boards touch the walls.";
    }
    String text = "Expansion gap " + Words.tenths(gap) + " mm, the white line inside the walls: ";
    return text + (extra == 0 ? "to scale." : Svg.number(onPaper) + " mm wide at this scale, drawn "
        + Svg.number(onPaper + extra) + " mm wide so that it shows.");
  }

  private static FloorDrawing put(Sheet sheet, double height, String title, String description) {
    String width = Svg.number(sheet.paper.width());
    String high = Svg.number(StrictMath.ceil(height));
    Svg svg = new Svg();
    svg.line("<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" aria-labelledby=\"" + sheet.id + "-title "
        + sheet.id + "-desc\" width=\"" + width + "mm\" height=\"" + high + "mm\" viewBox=\"0 0 " + width + ' ' + high
        + "\" font-family=\"sans-serif\" fill=\"none\" stroke=\"#000\">");
    svg.element("title", "id=\"" + sheet.id + "-title\"", title);
    svg.element("desc", "id=\"" + sheet.id + "-desc\"", description);
    svg.line("<rect width=\"" + width + "\" height=\"" + high + "\" fill=\"#fff\" stroke=\"none\"/>");
    svg.line("<g>").add(sheet.floor).line("</g>");
    svg.line("<g>").add(sheet.lines).line("</g>");
    svg.line("<g fill=\"#000\" stroke=\"none\" text-anchor=\"middle\">").add(sheet.texts).line("</g>");
    svg.line("<g id=\"" + sheet.id + "-board-numbers\" fill=\"#000\" stroke=\"none\" text-anchor=\"middle\">")
        .add(sheet.boardNumbers).line("</g>");
    svg.line("</svg>");
    return new FloorDrawing(svg.toString(), Length.ofMillimetres((long) sheet.paper.width()),
        Length.ofMillimetres((long) StrictMath.ceil(height)));
  }

  /**
   * Returns the width of the sheet.
   *
   * @return 190 mm upright or 277 mm lying, not null
   */
  public Length paperWidth() {
    return width;
  }

  /**
   * Returns the height of the sheet.
   *
   * @return at most 277 mm upright or 190 mm lying, not null
   */
  public Length paperHeight() {
    return height;
  }

  /**
   * Returns the drawing as an SVG element, to be kept as a file or put into a page of HTML. It needs nothing from
   * outside; its identifiers begin with the bay's name; it ends in a line feed.
   *
   * @return the SVG, not null
   */
  public String toSvg() {
    return svg;
  }
}
