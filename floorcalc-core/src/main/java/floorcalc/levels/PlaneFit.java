package floorcalc.levels;

import floorcalc.measure.Length;
import floorcalc.outline.Point;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;

/**
 * The sums of least squares, exact: whole nanometres are multiplied and added as whole numbers, so nothing is lost however
 * far from zero the readings are. Each {@code S} is {@code n * sum(uv) - sum(u) * sum(v)}.
 */
final class PlaneFit {
  private static final MathContext DIGITS = new MathContext(40, RoundingMode.HALF_EVEN);
  /** Readings this many times longer than wide, or more, lie in line. */
  private static final int TOO_NARROW = 100;

  private final int n;
  private final BigInteger[] sums;

  private PlaneFit(int n, BigInteger[] sums) {
    this.n = n;
    this.sums = sums;
  }

  static PlaneFit of(List<SpotLevel> spots) {
    BigInteger[] sums = new BigInteger[9];
    java.util.Arrays.fill(sums, BigInteger.ZERO);
    spots.forEach(spot -> add(sums, spot, 1));
    return new PlaneFit(spots.size(), sums);
  }

  /** The same readings but one. */
  PlaneFit without(SpotLevel spot) {
    BigInteger[] less = sums.clone();
    add(less, spot, -1);
    return new PlaneFit(n - 1, less);
  }

  private static void add(BigInteger[] sums, SpotLevel spot, int sign) {
    BigInteger[] v = {BigInteger.valueOf(spot.place().xNanometres()), BigInteger.valueOf(spot.place().yNanometres()),
        BigInteger.valueOf(spot.height().toNanometres())};
    int at = 0;
    for (int i = 0; i < 3; i++) {
      sums[at] = sign > 0 ? sums[at].add(v[i]) : sums[at].subtract(v[i]);
      at++;
    }
    for (int i = 0; i < 3; i++) {
      for (int k = i; k < 3; k++) {
        BigInteger product = v[i].multiply(v[k]);
        sums[at] = sign > 0 ? sums[at].add(product) : sums[at].subtract(product);
        at++;
      }
    }
  }

  int n() {
    return n;
  }

  /** {@code S} of two of x (0), y (1) and z (2), in square nanometres. */
  BigInteger s(int u, int v) {
    int low = Math.min(u, v);
    int high = Math.max(u, v);
    int at = 3 + (low == 0 ? high : low == 1 ? 2 + high : 5);
    return BigInteger.valueOf(n).multiply(sums[at]).subtract(sums[low].multiply(sums[high]));
  }

  private BigInteger determinant() {
    return s(0, 0).multiply(s(1, 1)).subtract(s(0, 1).pow(2));
  }

  /** Tells whether the readings lie on one line, or so nearly that a plane through them would be a guess. */
  boolean isInLine() {
    // Of the two spreads u >= v along the main axes, u + v is the trace and u * v the determinant: u / v is less than the
    // square of the limit exactly where trace squared is less than determinant * (k + 2 + 1 / k).
    BigInteger k = BigInteger.valueOf((long) TOO_NARROW * TOO_NARROW);
    BigInteger trace = s(0, 0).add(s(1, 1));
    BigInteger determinant = determinant();
    return determinant.signum() <= 0
        || trace.pow(2).compareTo(determinant.multiply(k.add(BigInteger.TWO))) >= 0;
  }

  /** The slope along x or y: rise over run. */
  BigDecimal slope(int axis) {
    int other = 1 - axis;
    BigInteger top = s(axis, 2).multiply(s(other, other)).subtract(s(other, 2).multiply(s(0, 1)));
    return new BigDecimal(top).divide(new BigDecimal(determinant()), DIGITS);
  }

  /** The mean of x, y or z in nanometres. */
  BigDecimal mean(int axis) {
    return new BigDecimal(sums[axis]).divide(BigDecimal.valueOf(n), DIGITS);
  }

  /** The plane, as a function of the place. */
  Surface surface() {
    return new Surface(mean(0), mean(1), mean(2), slope(0), slope(1));
  }

  /** A plane through the middle of the readings. */
  record Surface(BigDecimal x, BigDecimal y, BigDecimal z, BigDecimal alongX, BigDecimal alongY) {
    Length at(Point place) {
      BigDecimal right = BigDecimal.valueOf(place.xNanometres()).subtract(x);
      BigDecimal up = BigDecimal.valueOf(place.yNanometres()).subtract(y);
      BigDecimal height = z.add(alongX.multiply(right)).add(alongY.multiply(up));
      return Length.ofNanometres(height.setScale(0, RoundingMode.HALF_EVEN).longValueExact());
    }
  }
}
