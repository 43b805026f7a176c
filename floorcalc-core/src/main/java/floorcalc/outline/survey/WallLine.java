package floorcalc.outline.survey;

import floorcalc.measure.Length;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;

/** The straight line from a wall's first corner to its second, with places along it and off it to the left. */
final class WallLine {
  private final Point from;
  private final double dx;
  private final double dy;
  private final Length length;
  private final double nanometres;

  private WallLine(Point from, Point to) {
    this.from = from;
    this.dx = Math.subtractExact(to.xNanometres(), from.xNanometres());
    this.dy = Math.subtractExact(to.yNanometres(), from.yNanometres());
    this.length = Ring.of(from, to).wallLength(0);
    this.nanometres = Math.sqrt(dx * dx + dy * dy);
  }

  static WallLine of(Point from, Point to) {
    if (from.equals(to)) {
      throw new IllegalArgumentException("a wall needs two different corners, but both are " + from);
    }
    return new WallLine(from, to);
  }

  /** Returns the length to the nearest nanometre. */
  Length length() {
    return length;
  }

  /** Returns the length in nanometres. */
  double nanometres() {
    return nanometres;
  }

  /** Returns the place so far along the line and so far to its left, to the nearest nanometre. */
  Point place(double along, double left) {
    double x = (along * dx - left * dy) / nanometres;
    double y = (along * dy + left * dx) / nanometres;
    return Point.ofNanometres(Math.addExact(from.xNanometres(), Math.round(x)), Math.addExact(from.yNanometres(), Math.round(y)));
  }
}
