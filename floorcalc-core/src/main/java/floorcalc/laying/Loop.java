package floorcalc.laying;

import floorcalc.outline.Ring;
import java.math.BigInteger;
import java.util.Arrays;

/**
 * A closed ring of whole-nanometre corners in the frame of a bay, with its bounding box. The floor is on the left of
 * every side: shells run counter-clockwise, holes clockwise. The arrays are never changed once a loop is made.
 */
final class Loop {
  final long[] x;
  final long[] y;
  final long minX;
  final long minY;
  final long maxX;
  final long maxY;

  private Loop(long[] x, long[] y) {
    this.x = x;
    this.y = y;
    long left = x[0];
    long right = x[0];
    long low = y[0];
    long high = y[0];
    for (int i = 1; i < x.length; i++) {
      left = Math.min(left, x[i]);
      right = Math.max(right, x[i]);
      low = Math.min(low, y[i]);
      high = Math.max(high, y[i]);
    }
    this.minX = left;
    this.maxX = right;
    this.minY = low;
    this.maxY = high;
  }

  /** Makes a loop of its corners, which are not copied. */
  static Loop of(long[] x, long[] y) {
    return new Loop(x, y);
  }

  static Loop of(Ring ring) {
    int n = ring.size();
    long[] x = new long[n];
    long[] y = new long[n];
    for (int i = 0; i < n; i++) {
      x[i] = ring.x(i);
      y[i] = ring.y(i);
    }
    return new Loop(x, y);
  }

  /** Makes a loop of the first {@code n} corners, without repeated corners and without corners inside an upright or level side. */
  static Loop tidy(long[] x, long[] y, int n) {
    long[] tx = Arrays.copyOf(x, n);
    long[] ty = Arrays.copyOf(y, n);
    int size = n;
    boolean changed = true;
    while (changed && size >= 3) {
      changed = false;
      int kept = 0;
      for (int i = 0; i < size; i++) {
        int before = kept > 0 ? kept - 1 : size - 1;
        int after = i + 1 < size ? i + 1 : 0;
        boolean same = tx[i] == tx[before] && ty[i] == ty[before];
        boolean level = ty[before] == ty[i] && ty[i] == ty[after];
        boolean upright = tx[before] == tx[i] && tx[i] == tx[after];
        if (same || level || upright) {
          changed = true;
        } else {
          tx[kept] = tx[i];
          ty[kept] = ty[i];
          kept++;
        }
      }
      size = kept;
    }
    return size < 3 ? null : new Loop(Arrays.copyOf(tx, size), Arrays.copyOf(ty, size));
  }

  int size() {
    return x.length;
  }

  Ring toRing() {
    return Ring.ofNanometres(x, y);
  }

  /** Twice the signed area, exactly: products of two corners are 128 bits wide, and so is their sum here. */
  BigInteger twiceArea() {
    long high = 0;
    long low = 0;
    for (int i = 1; i + 1 < x.length; i++) {
      long right = x[i] - x[0];
      long up = y[i + 1] - y[0];
      long left = x[0] - x[i + 1];
      long over = y[i] - y[0];
      long product = right * up;
      low += product;
      high += Math.multiplyHigh(right, up) + (Long.compareUnsigned(low, product) < 0 ? 1 : 0);
      product = left * over;
      low += product;
      high += Math.multiplyHigh(left, over) + (Long.compareUnsigned(low, product) < 0 ? 1 : 0);
    }
    if (high == low >> 63) {
      return BigInteger.valueOf(low);
    }
    // A low half that reads as negative lacks one of the high half.
    return BigInteger.valueOf(low < 0 ? high + 1 : high).shiftLeft(Long.SIZE).add(BigInteger.valueOf(low));
  }

  /** Tells the way round; loops of more than a few nanometres each way are told right in doubles. */
  boolean isHole() {
    double sum = 0;
    for (int i = 1; i + 1 < x.length; i++) {
      sum += (double) (x[i] - x[0]) * (y[i + 1] - y[0]) - (double) (x[i + 1] - x[0]) * (y[i] - y[0]);
    }
    double size = ((double) maxX - minX + 1) * ((double) maxY - minY + 1);
    return StrictMath.abs(sum) > 1e-9 * size ? sum < 0 : twiceArea().signum() < 0;
  }

  /** Tells whether a point that lies on no side is inside, by counting the sides to its right. */
  boolean surrounds(long px, long py) {
    boolean inside = false;
    for (int i = 0, j = x.length - 1; i < x.length; j = i++) {
      if ((y[i] > py) != (y[j] > py)) {
        double cross = (double) (x[j] - x[i]) * (py - y[i]) / (y[j] - y[i]) + x[i];
        if (px < cross) {
          inside = !inside;
        }
      }
    }
    return inside;
  }
}
