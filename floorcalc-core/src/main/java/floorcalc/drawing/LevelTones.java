package floorcalc.drawing;

import floorcalc.levels.SpotWork;
import floorcalc.outline.Outline;
import java.util.List;
import java.util.function.Predicate;

/** The floor in tones, its lines of equal height, and what is ground and filled in two kinds of hatching. */
final class LevelTones {
  private final Sheet sheet;
  private final Relief relief;
  private final HeightBands bands;
  private String clip = "";

  LevelTones(Sheet sheet, Relief relief, HeightBands bands) {
    this.sheet = sheet;
    this.relief = relief;
    this.bands = bands;
  }

  /** Keeps the floor within the walls and out of the voids. */
  void clip(Outline room) {
    sheet.floor.line("<clipPath id=\"" + sheet.id + "-room\"><path clip-rule=\"evenodd\" d=\""
        + Shape.of(sheet.paper, room.shell(), room.voids()).path() + "\"/></clipPath>");
    clip = " clip-path=\"url(#" + sheet.id + "-room)\"";
  }

  void draw(List<SpotWork> work) {
    Svg floor = sheet.floor;
    String whole = HeightLines.of(relief, Double.NEGATIVE_INFINITY).region();
    floor.line("<g" + clip + ">");
    floor.line("<path id=\"" + sheet.id + "-floor\" fill=\"" + bands.tone(0) + "\" stroke=\"none\" d=\"" + whole + "\"/>");
    for (int i = 0; i < bands.heights().size(); i++) {
      String region = bands.lines(i).region();
      if (!region.isEmpty()) {
        floor.line("<path fill=\"" + bands.tone(i + 1) + "\" stroke=\"none\" d=\"" + region + "\"/>");
      }
    }
    hatch(work);
    for (int i = 0; i < bands.heights().size(); i++) {
      String path = HeightLines.path(bands.lines(i).lines());
      if (!path.isEmpty()) {
        floor.line("<path class=\"height\" stroke-width=\"0.18\" stroke-linejoin=\"round\" d=\"" + path + "\"/>");
      }
    }
    floor.line("<path stroke-width=\"0.18\" stroke-dasharray=\"1 0.8\" d=\"" + whole + "\"/>");
    floor.line("</g>");
  }

  private void hatch(List<SpotWork> work) {
    if (work.stream().noneMatch(spot -> spot.grind().isPositive() || spot.fill().isPositive())) {
      return;
    }
    patterns(sheet.floor, sheet.id);
    hatch(work, "grind", spot -> spot.grind().isPositive());
    hatch(work, "fill", spot -> spot.fill().isPositive());
  }

  /** Slanting lines for grinding, dots for filling. */
  private static void patterns(Svg floor, String id) {
    floor.line("<defs>");
    floor.line("<pattern id=\"" + id + "-grind\" width=\"1.3\" height=\"1.3\" patternUnits=\"userSpaceOnUse\""
        + " patternTransform=\"rotate(-45)\"><path stroke=\"#000\" stroke-width=\"0.22\" d=\"M0 0.65L1.3 0.65\"/></pattern>");
    floor.line("<pattern id=\"" + id + "-fill\" width=\"1.6\" height=\"1.6\" patternUnits=\"userSpaceOnUse\">"
        + "<circle cx=\"0.8\" cy=\"0.8\" r=\"0.25\" fill=\"#000\" stroke=\"none\"/></pattern>");
    floor.line("</defs>");
  }

  private void hatch(List<SpotWork> work, String kind, Predicate<SpotWork> chosen) {
    StringBuilder d = new StringBuilder();
    ReadingGrid grid = relief.grid();
    for (int column = 0; column < grid.xs.length; column++) {
      for (int row = 0; row < grid.ys.length; row++) {
        if (grid.node(column, row) >= 0 && chosen.test(work.get(grid.node(column, row)))) {
          quarters(d, column, row);
        }
      }
    }
    if (!d.isEmpty()) {
      sheet.floor.line("<path id=\"" + sheet.id + "-to-" + kind + "\" fill=\"url(#" + sheet.id + '-' + kind
          + ")\" stroke-width=\"0.18\" d=\"" + d + "\"/>");
    }
  }

  /** A quarter of each cell round a reading: the floor that it stands for. Whole neighbours make one rectangle. */
  private void quarters(StringBuilder d, int column, int row) {
    boolean leftLow = isCell(column - 1, row - 1);
    boolean rightLow = isCell(column, row - 1);
    boolean leftHigh = isCell(column - 1, row);
    boolean rightHigh = isCell(column, row);
    int left = leftLow || leftHigh ? -1 : 0;
    int right = rightLow || rightHigh ? 1 : 0;
    int low = leftLow || rightLow ? -1 : 0;
    int high = leftHigh || rightHigh ? 1 : 0;
    boolean whole = (left == 0 || low == 0 || leftLow) && (right == 0 || low == 0 || rightLow)
        && (left == 0 || high == 0 || leftHigh) && (right == 0 || high == 0 || rightHigh);
    if (whole) {
      rectangle(d, column, row, left, right, low, high);
      return;
    }
    for (int side : new int[] {-1, 1}) {
      for (int up : new int[] {-1, 1}) {
        if (isCell(side < 0 ? column - 1 : column, up < 0 ? row - 1 : row)) {
          rectangle(d, column, row, Math.min(side, 0), Math.max(side, 0), Math.min(up, 0), Math.max(up, 0));
        }
      }
    }
  }

  private boolean isCell(int column, int row) {
    ReadingGrid grid = relief.grid();
    return column >= 0 && row >= 0 && column + 1 < grid.xs.length && row + 1 < grid.ys.length
        && grid.corners(column, row).length > 0;
  }

  private void rectangle(StringBuilder d, int column, int row, int left, int right, int low, int high) {
    double x1 = halfWay(relief.grid().xs, column, left, true);
    double x2 = halfWay(relief.grid().xs, column, right, true);
    double y1 = halfWay(relief.grid().ys, row, low, false);
    double y2 = halfWay(relief.grid().ys, row, high, false);
    double[][] corners = {{x1, y1}, {x2, y1}, {x2, y2}, {x1, y2}};
    for (int i = 0; i < corners.length; i++) {
      d.append(i == 0 ? 'M' : 'L');
      Svg.appendNumber(d, corners[i][0]);
      d.append(' ');
      Svg.appendNumber(d, corners[i][1]);
    }
    d.append('Z');
  }

  private double halfWay(long[] places, int at, int side, boolean across) {
    long here = places[at];
    long there = places[at + side];
    return across ? (sheet.paper.x(here) + sheet.paper.x(there)) / 2 : (sheet.paper.y(here) + sheet.paper.y(there)) / 2;
  }
}
