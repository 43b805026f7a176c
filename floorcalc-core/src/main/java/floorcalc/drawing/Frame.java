package floorcalc.drawing;

import floorcalc.outline.Direction;

/**
 * The frame of a bay on the sheet: {@code u} points along the boards, {@code v} across them from the starting wall on.
 * A place is its distance along and across; both vectors have length 1.
 */
record Frame(double ux, double uy, double vx, double vy) {

  static Frame of(Direction direction) {
    double cos;
    double sin;
    if (direction.isAlongAxis()) {
      int quarters = (int) StrictMath.rint(direction.degrees() / 90);
      cos = quarters == 0 ? 1 : quarters == 2 ? -1 : 0;
      sin = quarters == 1 ? 1 : quarters == 3 ? -1 : 0;
    } else {
      double radians = StrictMath.toRadians(direction.degrees());
      cos = StrictMath.cos(radians);
      sin = StrictMath.sin(radians);
    }
    // The sheet's y runs down, the room's y runs up.
    return new Frame(cos, 0.0 - sin, 0.0 - sin, 0.0 - cos);
  }

  double along(double x, double y) {
    return x * ux + y * uy;
  }

  double across(double x, double y) {
    return x * vx + y * vy;
  }

  double x(double along, double across) {
    return along * ux + across * vx;
  }

  double y(double along, double across) {
    return along * uy + across * vy;
  }

  /** Returns the box round a text that runs along the boards. */
  Box textAlong(String text, double size, double along, double across) {
    return new Box(x(along, across), y(along, across), TextSize.width(text) * size / 2,
        TextSize.halfHeight(text) * size, ux, uy);
  }

  /** Returns the box round a text that runs across the boards. */
  Box textAcross(String text, double size, double along, double across) {
    return new Box(x(along, across), y(along, across), TextSize.width(text) * size / 2,
        TextSize.halfHeight(text) * size, vx, vy);
  }
}
