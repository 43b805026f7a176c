package floorcalc.drawing;

/**
 * A box on the sheet, turned any way: its middle, half its width and half its height, and the direction of its width
 * as a vector of length 1. Millimetres on paper, y downwards.
 */
record Box(double x, double y, double halfWidth, double halfHeight, double ux, double uy) {

  /** Returns a box that is not turned. */
  static Box upright(double left, double top, double right, double bottom) {
    return new Box((left + right) / 2, (top + bottom) / 2, (right - left) / 2, (bottom - top) / 2, 1, 0);
  }

  /** Returns the box round a line of some thickness. */
  static Box along(double x1, double y1, double x2, double y2, double thickness) {
    double dx = x2 - x1;
    double dy = y2 - y1;
    double length = Math.sqrt(dx * dx + dy * dy);
    boolean dot = length < 1e-9;
    return new Box((x1 + x2) / 2, (y1 + y2) / 2, length / 2, thickness / 2, dot ? 1 : dx / length,
        dot ? 0 : dy / length);
  }

  /** Returns the box with so much more on each side. */
  Box grown(double margin) {
    return new Box(x, y, halfWidth + margin, halfHeight + margin, ux, uy);
  }

  /** Returns its four sides as path data. */
  String path() {
    StringBuilder d = new StringBuilder(64);
    for (int i = 0; i < 4; i++) {
      double w = i == 1 || i == 2 ? halfWidth : -halfWidth;
      double h = i < 2 ? -halfHeight : halfHeight;
      d.append(i == 0 ? 'M' : 'L').append(Svg.number(x + w * ux - h * uy)).append(' ').append(Svg.number(y + w * uy + h * ux));
    }
    return d.append('Z').toString();
  }

  /** Tells whether two boxes share more than an edge. */
  boolean overlaps(Box other) {
    double dx = other.x - x;
    double dy = other.y - y;
    double reach = halfWidth + halfHeight + other.halfWidth + other.halfHeight;
    if (Math.abs(dx) >= reach || Math.abs(dy) >= reach) {
      return false;
    }
    return !apart(dx, dy, ux, uy, other) && !apart(dx, dy, -uy, ux, other)
        && !apart(dx, dy, other.ux, other.uy, other) && !apart(dx, dy, -other.uy, other.ux, other);
  }

  private boolean apart(double dx, double dy, double ax, double ay, Box other) {
    return Math.abs(dx * ax + dy * ay) >= extent(ax, ay) + other.extent(ax, ay);
  }

  /** Returns half the length of the box's shadow on an axis. */
  double extent(double ax, double ay) {
    return halfWidth * Math.abs(ux * ax + uy * ay) + halfHeight * Math.abs(ux * ay - uy * ax);
  }

  /** Tells whether the box lies within an upright one. */
  boolean within(double left, double top, double right, double bottom) {
    double ex = extent(1, 0);
    double ey = extent(0, 1);
    return x - ex >= left && x + ex <= right && y - ey >= top && y + ey <= bottom;
  }

  /** Tells whether a line has a part inside the box: the line is cut to the box from each of the four sides. */
  boolean meetsLine(double x1, double y1, double x2, double y2) {
    double ax = (x1 - x) * ux + (y1 - y) * uy;
    double ay = (y1 - y) * ux - (x1 - x) * uy;
    double bx = (x2 - x) * ux + (y2 - y) * uy;
    double by = (y2 - y) * ux - (x2 - x) * uy;
    double from = 0;
    double to = 1;
    double[] starts = {ax, -ax, ay, -ay};
    double[] ends = {bx, -bx, by, -by};
    for (int i = 0; i < 4; i++) {
      double limit = i < 2 ? halfWidth : halfHeight;
      double step = ends[i] - starts[i];
      double room = limit - starts[i];
      if (step == 0) {
        if (room <= 0) {
          return false;
        }
      } else if (step > 0) {
        to = Math.min(to, room / step);
      } else {
        from = Math.max(from, room / step);
      }
    }
    return from < to;
  }
}
