package floorcalc.drawing;

import floorcalc.measure.Length;
import floorcalc.outline.Ring;
import floorcalc.plan.Bay;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.LaidPiece;
import floorcalc.plan.Room;
import floorcalc.plan.Row;
import java.util.List;
import java.util.Objects;

/**
 * One bay of a plan, drawn to scale on a sheet of paper. Immutable and thread-safe.
 * <p>
 * The sheet has the room as its user gave it, x to the right and y up. Every length of the SVG is a millimetre on
 * paper. The same bay gives the same bytes everywhere.
 */
public final class FloorDrawing {
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
    return first(room, bay);
  }

  private static FloorDrawing first(Room room, Bay bay) {
    Ring shell = room.outline().shell();
    long minX = Long.MAX_VALUE;
    long minY = Long.MAX_VALUE;
    long maxX = Long.MIN_VALUE;
    long maxY = Long.MIN_VALUE;
    for (int i = 0; i < shell.size(); i++) {
      minX = Math.min(minX, shell.x(i));
      maxX = Math.max(maxX, shell.x(i));
      minY = Math.min(minY, shell.y(i));
      maxY = Math.max(maxY, shell.y(i));
    }
    int scale = 10;
    while ((maxX - minX) / 1e6 / scale > 180 || (maxY - minY) / 1e6 / scale > 257) {
      scale *= 2;
    }
    double height = 20 + (maxY - minY) / 1e6 / scale;
    String id = Svg.identifier(bay.bay());
    Svg svg = new Svg();
    svg.line("<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" width=\"190mm\" height=\"" + Svg.number(height)
        + "mm\" viewBox=\"0 0 190 " + Svg.number(height) + "\" aria-labelledby=\"" + id + "-title " + id
        + "-desc\" font-family=\"sans-serif\" fill=\"none\" stroke=\"#000\" stroke-width=\"0.2\">");
    svg.element("title", "id=\"" + id + "-title\"", "Floor of " + bay.room() + ", bay " + bay.bay());
    svg.element("desc", "id=\"" + id + "-desc\"", bay.rows().size() + " rows; the boards run at " + bay.direction());
    svg.line("<path stroke-width=\"0.6\" d=\"" + path(List.of(shell), minX, maxY, scale) + "\"/>");
    for (Row row : bay.rows()) {
      for (LaidPiece piece : row.pieces()) {
        svg.line("<path d=\"" + path(List.of(piece.outline()), minX, maxY, scale) + "\"/>");
      }
    }
    svg.line("</svg>");
    return new FloorDrawing(svg.toString(), Length.ofMillimetres(190),
        Length.ofMillimetres((long) StrictMath.ceil(height)));
  }

  private static String path(List<Ring> rings, long minX, long maxY, int scale) {
    StringBuilder d = new StringBuilder();
    for (Ring ring : rings) {
      for (int i = 0; i < ring.size(); i++) {
        d.append(i == 0 ? 'M' : 'L');
        Svg.appendNumber(d, 5 + (ring.x(i) - minX) / 1e6 / scale);
        d.append(' ');
        Svg.appendNumber(d, 15 + (maxY - ring.y(i)) / 1e6 / scale);
      }
      d.append('Z');
    }
    return d.toString();
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
