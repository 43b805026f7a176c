package floorcalc.drawing;

import floorcalc.outline.Point;

/** Marks of readings and figures on a white ground beside them, above all lines of the drawing. Not thread-safe. */
final class SpotFigures {
  /** Half the size of a reading's cross, and of a triangle. */
  static final double CROSS = 0.55;
  static final double MARK = 1.25;
  /** A figure without a frame. */
  static final String PLAIN = "none";

  private final Sheet sheet;
  private final Svg figures = new Svg();

  SpotFigures(Sheet sheet) {
    this.sheet = sheet;
  }

  /** Puts everything onto the sheet. */
  void close() {
    sheet.lines.add(figures);
  }

  void triangle(double x, double y, int down, String fill) {
    triangle(figures, x, y, down, fill);
  }

  /** Sets a figure beside a place, above it if that is free; tells whether there is room. */
  boolean beside(Point place, String text, double size, double mark, String frame) {
    double x = sheet.paper.x(place.xNanometres());
    double y = sheet.paper.y(place.yNanometres());
    double across = TextSize.width(text) * size / 2 + mark + 0.35;
    double down = TextSize.halfHeight(text) * size + padding(frame) + mark + 0.25;
    double[][] ways = {{0, -down}, {0, down}, {across, 0}, {-across, 0}, {across, -down}, {-across, -down}, {across, down}, {-across, down}};
    for (double[] way : ways) {
      if (set(x + way[0], y + way[1], text, size, frame)) {
        return true;
      }
    }
    return false;
  }

  /** Sets a figure on a white ground, if nothing else is there. */
  boolean set(double x, double y, String text, double size, String frame) {
    Box box = new Box(x, y, TextSize.width(text) * size / 2 + 0.2, TextSize.halfHeight(text) * size + padding(frame), 1, 0);
    if (!sheet.paper.shows(box) || !sheet.free(box)) {
      return false;
    }
    figures.line("<rect " + Svg.attribute("x", x - box.halfWidth()) + ' ' + Svg.attribute("y", y - box.halfHeight()) + ' '
        + Svg.attribute("width", 2 * box.halfWidth()) + ' ' + Svg.attribute("height", 2 * box.halfHeight())
        + " fill=\"#fff\" fill-opacity=\"" + (frame.equals(PLAIN) ? "0.8" : "1") + "\" stroke=\"" + frame + "\" stroke-width=\"0.18\"/>");
    sheet.write(text, size, box);
    return true;
  }

  /** How much white there is above and below a figure. */
  private static double padding(String frame) {
    return frame.equals(PLAIN) ? 0.1 : 0.35;
  }

  static Box around(double x, double y, double half) {
    return Box.upright(x - half, y - half, x + half, y + half);
  }

  static void cross(Svg lines, double x, double y) {
    lines.line("<path stroke-width=\"0.18\" d=\"" + Sheet.segment(x - CROSS, y, x + CROSS, y)
        + Sheet.segment(x, y - CROSS, x, y + CROSS) + "\"/>");
  }

  /** A triangle that points up for a high spot and down for a low one. */
  static void triangle(Svg lines, double x, double y, int down, String fill) {
    StringBuilder d = new StringBuilder();
    double[][] corners = {{0, 1.2 * down}, {1.15, -0.9 * down}, {-1.15, -0.9 * down}};
    for (int i = 0; i < corners.length; i++) {
      d.append(i == 0 ? 'M' : 'L');
      Svg.appendNumber(d, x + corners[i][0]);
      d.append(' ');
      Svg.appendNumber(d, y + corners[i][1]);
    }
    lines.line("<path fill=\"" + fill + "\" stroke-width=\"0.25\" d=\"" + d + "Z\"/>");
  }
}
