package floorcalc.outline;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * How two walls meet where they should not.
 *
 * @param kind how
 * @param first the place of the one wall in the list of walls
 * @param second the place of the other, later in the list
 * @param places the place where they meet; two, the ends, if they run along each other
 */
record Meeting(Kind kind, int first, int second, List<Point> places) {

  enum Kind { CROSS, TOUCH, ALONG, FOLD }

  /** Returns how two walls meet, or null if they do not, or only as neighbours at their common corner. */
  static Meeting of(Walls walls, int first, int second) {
    if (walls.next[first] == second) {
      return fold(walls, first, second, first, second);
    }
    if (walls.next[second] == first) {
      return fold(walls, second, first, first, second);
    }
    int a = walls.side(second, walls.ax[first], walls.ay[first]);
    int b = walls.side(second, walls.bx[first], walls.by[first]);
    if (a * b > 0) {
      return null;
    }
    int c = walls.side(first, walls.ax[second], walls.ay[second]);
    int d = walls.side(first, walls.bx[second], walls.by[second]);
    if (c * d > 0) {
      return null;
    }
    if (a * b < 0 && c * d < 0) {
      return new Meeting(Kind.CROSS, first, second, List.of(crossing(walls, first, second)));
    }
    List<Point> ends = Stream.of(
            end(walls, second, first, a, true), end(walls, second, first, b, false),
            end(walls, first, second, c, true), end(walls, first, second, d, false))
        .filter(Objects::nonNull).distinct().sorted().toList();
    return switch (ends.size()) {
      case 0 -> null;
      case 1 -> new Meeting(Kind.TOUCH, first, second, ends);
      default -> new Meeting(Kind.ALONG, first, second, ends);
    };
  }

  /** Returns an end of {@code other} if it lies on {@code wall}, whose line it is known to lie on if side is 0. */
  private static Point end(Walls walls, int wall, int other, int side, boolean start) {
    long x = start ? walls.ax[other] : walls.bx[other];
    long y = start ? walls.ay[other] : walls.by[other];
    boolean within = side == 0
        && Math.min(walls.ax[wall], walls.bx[wall]) <= x && x <= Math.max(walls.ax[wall], walls.bx[wall])
        && Math.min(walls.ay[wall], walls.by[wall]) <= y && y <= Math.max(walls.ay[wall], walls.by[wall]);
    return within ? Point.ofNanometres(x, y) : null;
  }

  private static Meeting fold(Walls walls, int before, int after, int first, int second) {
    if (walls.side(before, walls.bx[after], walls.by[after]) != 0) {
      return null;
    }
    long ux = walls.bx[before] - walls.ax[before];
    long uy = walls.by[before] - walls.ay[before];
    long vx = walls.bx[after] - walls.ax[after];
    long vy = walls.by[after] - walls.ay[after];
    boolean back = Exact.compareProducts(ux, vx, -uy, vy) < 0;
    return back
        ? new Meeting(Kind.FOLD, first, second, List.of(Point.ofNanometres(walls.ax[after], walls.ay[after])))
        : null;
  }

  /** Returns where two walls cross, rounded to the nearest nanometre. */
  private static Point crossing(Walls walls, int first, int second) {
    BigInteger ux = difference(walls.bx[first], walls.ax[first]);
    BigInteger uy = difference(walls.by[first], walls.ay[first]);
    BigInteger vx = difference(walls.bx[second], walls.ax[second]);
    BigInteger vy = difference(walls.by[second], walls.ay[second]);
    BigInteger wx = difference(walls.ax[second], walls.ax[first]);
    BigInteger wy = difference(walls.ay[second], walls.ay[first]);
    BigInteger over = wx.multiply(vy).subtract(wy.multiply(vx));
    BigInteger under = ux.multiply(vy).subtract(uy.multiply(vx));
    return Point.ofNanometres(
        walls.ax[first] + quotient(ux.multiply(over), under), walls.ay[first] + quotient(uy.multiply(over), under));
  }

  private static BigInteger difference(long a, long b) {
    return BigInteger.valueOf(a).subtract(BigInteger.valueOf(b));
  }

  private static long quotient(BigInteger over, BigInteger under) {
    return new BigDecimal(over).divide(new BigDecimal(under), 0, RoundingMode.HALF_EVEN).longValueExact();
  }
}
