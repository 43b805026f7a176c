package floorcalc.audit;

import floorcalc.outline.Direction;
import floorcalc.outline.Ring;

/**
 * The frame of a bay: the room turned about a corner of the laid area so that the boards run along +x. Distances to the
 * corner are whole nanometres and stay so for quarter turns. Any other angle is turned in doubles, which for floors of
 * up to a kilometre errs by less than a thousandth of a nanometre.
 */
final class BayFrame {
  /**
   * How far a corner may lie from its true place because coordinates are whole nanometres, in nanometres. A corner of a
   * piece in a turned bay is rounded when the laid area is turned into the frame, when the corner is worked out there,
   * and when it is turned back: three times at most half the diagonal of a square of one nanometre, which is 2.12 nm.
   */
  static final double ROUNDING = 3;

  /** No coordinate may be larger, in nanometres: about 1100 km, within which doubles are exact to a nanometre. */
  static final long RANGE = 1L << 50;

  private final long originX;
  private final long originY;
  private final double cos;
  private final double sin;
  private final boolean exact;

  private BayFrame(long originX, long originY, double cos, double sin, boolean exact) {
    this.originX = originX;
    this.originY = originY;
    this.cos = cos;
    this.sin = sin;
    this.exact = exact;
  }

  static BayFrame of(Direction direction, Ring shell) {
    double degrees = direction.degrees();
    double quarters = degrees / 90;
    long originX = shell.x(0);
    long originY = shell.y(0);
    if (quarters == Math.rint(quarters)) {
      int turns = (int) quarters & 3;
      return new BayFrame(originX, originY, turns == 0 ? 1 : turns == 2 ? -1 : 0, turns == 1 ? 1 : turns == 3 ? -1 : 0,
          true);
    }
    double radians = degrees * StrictMath.PI / 180;
    return new BayFrame(originX, originY, StrictMath.cos(radians), StrictMath.sin(radians), false);
  }

  /** Whether every corner has whole nanometres in the frame, so that straight edges must meet exactly. */
  boolean isExact() {
    return exact;
  }

  /** How far from a row line or a joint a corner on it may lie. */
  double slack() {
    return exact ? 0 : ROUNDING;
  }

  double x(long x, long y) {
    // Adding zero turns -0.0 into 0.0, which sorting would tell apart.
    return (x - originX) * cos + (y - originY) * sin + 0.0;
  }

  double y(long x, long y) {
    return (y - originY) * cos - (x - originX) * sin + 0.0;
  }

  /** A place of the frame in room coordinates, in words. */
  String place(double x, double y) {
    return Words.point(originX + x * cos - y * sin, originY + x * sin + y * cos);
  }

  /** Whether all corners of a ring lie within the range that the audit computes in. */
  static boolean inRange(Ring ring) {
    for (int i = 0; i < ring.size(); i++) {
      if (Math.abs(ring.x(i)) > RANGE || Math.abs(ring.y(i)) > RANGE || ring.x(i) == Long.MIN_VALUE
          || ring.y(i) == Long.MIN_VALUE) {
        return false;
      }
    }
    return true;
  }

  /** Twice the signed area of a ring, exactly. */
  static void addTwiceArea(Ring ring, WideSum sum) {
    int n = ring.size();
    long x0 = n == 0 ? 0 : ring.x(0);
    long y0 = n == 0 ? 0 : ring.y(0);
    for (int i = 1; i + 1 < n; i++) {
      long ax = ring.x(i) - x0;
      long ay = ring.y(i) - y0;
      long bx = ring.x(i + 1) - x0;
      long by = ring.y(i + 1) - y0;
      sum.addProduct(ax, by);
      sum.subtractProduct(bx, ay);
    }
  }
}
