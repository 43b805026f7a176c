package floorcalc.drawing;

import floorcalc.measure.Length;
import java.util.List;

/** Dimension lines below and to the left: how wide and deep the floor is over all. */
final class OverallDimensions {
  private static final double THIN = 0.13;

  private static final List<Double> SIZES = List.of(Sheet.TEXT, Sheet.LESS);

  private final Sheet sheet;

  OverallDimensions(Sheet sheet) {
    this.sheet = sheet;
  }

  void draw() {
    Paper p = sheet.paper;
    double y = p.planBottom() + 13;
    double x = p.planLeft() - 14;
    line(p.planLeft(), y, p.planRight(), y, 1, 0);
    line(x, p.planBottom(), x, p.planTop(), 0, -1);
    for (double at : new double[] {p.planLeft(), p.planRight()}) {
      sheet.stroke(at, y - 2.5, at, y + 1, THIN);
    }
    for (double at : new double[] {p.planTop(), p.planBottom()}) {
      sheet.stroke(x - 1, at, x + 2.5, at, THIN);
    }
  }

  private void line(double x1, double y1, double x2, double y2, double ux, double uy) {
    double length = Math.sqrt((x2 - x1) * (x2 - x1) + (y2 - y1) * (y2 - y1));
    sheet.stroke(x1, y1, x2, y2, THIN);
    tick(sheet, x1, y1, ux, uy);
    tick(sheet, x2, y2, ux, uy);
    Length floor = Words.fromMillimetres(sheet.paper.floor(length));
    if (SIZES.stream().noneMatch(size -> write(sheet.measures.overall(floor), size, x1, y1, length, ux, uy))
        && SIZES.stream().noneMatch(size -> write(sheet.measures.wall(floor), size, x1, y1, length, ux, uy))) {
      sheet.note("The floor is " + sheet.measures.overall(floor) + (uy == 0 ? " wide" : " deep") + " over all.");
    }
  }

  /** Writes a figure over the middle of a line, or beyond its end, or before its start. */
  private boolean write(String value, double size, double x1, double y1, double length, double ux, double uy) {
    double half = TextSize.width(value) * size / 2;
    boolean fits = 2 * half + 1 < length;
    double up = fits ? 1.7 : 0;
    for (double along : fits ? new double[] {length / 2} : new double[] {length + half + 1.5, -half - 1.5}) {
      // Above a line that runs to the right, to the left of one that runs up: turned a quarter, that is the same side.
      Box box = new Box(x1 + along * ux + up * uy, y1 + along * uy - up * ux, half, 0.39 * size, ux, uy);
      if (sheet.paper.shows(box) && sheet.free(box)) {
        sheet.write(value, size, box);
        return true;
      }
    }
    return false;
  }

  static void tick(Sheet sheet, double x, double y, double ux, double uy) {
    double dx = 0.7 * (ux - uy);
    double dy = 0.7 * (uy + ux);
    sheet.lines.line("<path stroke-width=\"0.35\" d=\"" + Sheet.segment(x - dx, y - dy, x + dx, y + dy) + "\"/>");
  }
}
