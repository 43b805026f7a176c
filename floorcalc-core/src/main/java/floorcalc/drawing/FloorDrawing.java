package floorcalc.drawing;

import floorcalc.measure.Length;
import floorcalc.plan.Bay;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.Room;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * One bay of a plan, or all bays of a room or of the whole floor, drawn to scale on a sheet of paper. Immutable and
 * thread-safe.
 * <p>
 * The sheet shows the room as its user gave it, x to the right and y up: walls and voids with their numbers, the
 * expansion gap, every piece with the number of its board, what is sawn and where factory ends meet, row numbers, the
 * starting wall, doors, pipes, dimensions, scale bar and key. It is black and light grey on white. Texts never overlap;
 * what has no room is left out, and a note below the drawing says so.
 * <p>
 * Every length of the SVG is a millimetre on paper. The same bay gives the same bytes everywhere. A bay of more than
 * 1500 pieces, or with rows narrower than 0.8 mm on paper, is drawn as rows and end joints without board numbers, so
 * that no drawing is longer than a million characters.
 *
 * @since 0.1
 */
public final class FloorDrawing {
  /** How wide a sheet is that lies. */
  public static final Length LYING_WIDTH = Length.ofMillimetres(250);

  private final String svg;
  private final Length width;
  private final Length height;

  FloorDrawing(String svg, Length width, Length height) {
    this.svg = svg;
    this.width = width;
    this.height = height;
  }

  /**
   * Draws a bay with lengths in millimetres.
   *
   * @param job the job that was planned, not null
   * @param plan the plan, not null
   * @param bay a bay of this plan, not null
   * @return the drawing, not null
   * @throws IllegalArgumentException if the plan has no bay of this name, or the job no room of the bay's
   */
  public static FloorDrawing of(FloorJob job, FloorPlan plan, Bay bay) {
    Objects.requireNonNull(job, "job");
    return of(job, plan, bay, Measures.MILLIMETRES);
  }

  /**
   * Draws a bay with lengths in chosen units.
   *
   * @param job the job that was planned, not null
   * @param plan the plan, not null
   * @param bay a bay of this plan, not null
   * @param measures how lengths are written, not null
   * @return the drawing, not null
   * @throws IllegalArgumentException if the plan has no bay of this name, or the job no room of the bay's
   */
  public static FloorDrawing of(FloorJob job, FloorPlan plan, Bay bay, Measures measures) {
    Objects.requireNonNull(job, "job");
    return composition(job, plan, bay, measures).draw();
  }

  /**
   * Draws a bay again in parts, at a scale at which each piece has room for its board's number, if its own sheet is too small for
   * that: a long corridor, say. The floor is drawn as on one long sheet, which is cut into strips, several to a sheet;
   * each strip repeats the end of the one before.
   *
   * @param job the job that was planned, not null
   * @param plan the plan, not null
   * @param bay a bay of this plan, not null
   * @param measures how lengths are written, not null
   * @return the sheets in order; none if the bay's own sheet has room for board numbers, or if it has too many pieces
   *     for numbers altogether; not null
   * @throws IllegalArgumentException if the plan has no bay of this name, or the job no room of the bay's
   */
  public static List<FloorDrawing> parts(FloorJob job, FloorPlan plan, Bay bay, Measures measures) {
    Objects.requireNonNull(job, "job");
    return composition(job, plan, bay, measures).parts();
  }

  /**
   * Draws all bays of a room on one sheet: their names, how long each runs along and across its boards, and the breaks and
   * profiles between them and at the doors, each with its length.
   *
   * @param job the job that was planned, not null
   * @param plan the plan, not null
   * @param room the name of a room of this job, not null
   * @param measures how lengths are written, not null
   * @return the drawing, not null
   * @throws IllegalArgumentException if the job has no such room
   */
  public static FloorDrawing ofRoom(FloorJob job, FloorPlan plan, String room, Measures measures) {
    Objects.requireNonNull(room, "room");
    Objects.requireNonNull(plan, "plan");
    Objects.requireNonNull(measures, "measures");
    Room found = job.rooms().stream().filter(one -> one.name().equals(room)).findFirst().orElseThrow(
        () -> new IllegalArgumentException("the job has no room '" + room + "'; draw one of its own rooms"));
    return new BaysComposition(job, plan, List.of(found), measures, Svg.identifier("room-", room), "Bays of " + room).draw();
  }

  /**
   * Draws all rooms of a job on one sheet, likewise, if they are measured in one frame: no two of them overlap, and
   * together they fill at least a quarter of the rectangle round them all.
   *
   * @param job the job that was planned, not null
   * @param plan the plan, not null
   * @param measures how lengths are written, not null
   * @return the drawing; empty if there is one room only, or if the rooms do not share a frame; not null
   */
  public static Optional<FloorDrawing> ofAllRooms(FloorJob job, FloorPlan plan, Measures measures) {
    Objects.requireNonNull(plan, "plan");
    Objects.requireNonNull(measures, "measures");
    return OneFrame.isShared(job.rooms())
        ? Optional.of(new BaysComposition(job, plan, job.rooms(), measures, "all-rooms", "All rooms").draw()) : Optional.empty();
  }

  private static Composition composition(FloorJob job, FloorPlan plan, Bay bay, Measures measures) {
    Objects.requireNonNull(measures, "measures");
    Objects.requireNonNull(bay, "bay");
    if (plan.bays().stream().noneMatch(b -> b.bay().equals(bay.bay()))) {
      throw new IllegalArgumentException("the plan has no bay '" + bay.bay() + "'; draw one of its own bays");
    }
    Room room = job.rooms().stream().filter(r -> r.name().equals(bay.room())).findFirst().orElseThrow(
        () -> new IllegalArgumentException("the job has no room '" + bay.room() + "', which bay '" + bay.bay()
            + "' lies in; draw a plan with the job that it was made for"));
    return new Composition(job, plan, room, bay, measures);
  }

  /**
   * Returns the width of the sheet.
   *
   * @return 184 mm upright or 250 mm lying, not null
   */
  public Length paperWidth() {
    return width;
  }

  /**
   * Returns the height of the sheet.
   *
   * @return at most 250 mm upright or 184 mm lying, not null
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
