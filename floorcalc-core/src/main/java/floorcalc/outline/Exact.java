package floorcalc.outline;

import java.math.BigInteger;

/** Exact tests and sizes on whole nanometres, by 128-bit products where 64 bits do not hold them. */
final class Exact {
  private static final double TWO_TO_64 = 0x1p64;
  /** Below this the square root of a {@code double} is off by less than a quarter of a unit. */
  private static final double SURE_ROOT = 0x1p50;

  private Exact() {}

  /**
   * Tells on which side of the line from a to b the point c lies: 1 to the left, 0 on the line, -1 to the right.
   *
   * @throws ArithmeticException if two coordinates differ by more than a {@code long} holds
   */
  static int side(long ax, long ay, long bx, long by, long cx, long cy) {
    return compareProducts(
        Math.subtractExact(bx, ax), Math.subtractExact(cy, ay), Math.subtractExact(by, ay), Math.subtractExact(cx, ax));
  }

  /** Compares a·b with c·d. */
  static int compareProducts(long a, long b, long c, long d) {
    int byHigh = Long.compare(Math.multiplyHigh(a, b), Math.multiplyHigh(c, d));
    return byHigh != 0 ? byHigh : Long.compareUnsigned(a * b, c * d);
  }

  /** Returns a·b − c·d with one rounding, for factors of at most 62 bits. */
  static double differenceOfProducts(long a, long b, long c, long d) {
    long low = a * b - c * d;
    long borrow = Long.compareUnsigned(a * b, c * d) < 0 ? 1 : 0;
    long high = Math.multiplyHigh(a, b) - Math.multiplyHigh(c, d) - borrow;
    if (high == low >> 63) {
      return low;
    }
    double unsignedLow = (low >>> 1) * 2.0 + (low & 1);
    return high * TWO_TO_64 + unsignedLow;
  }

  /** Returns the length of (dx, dy), rounded to the nearest whole number; a tie cannot occur. */
  static long roundedLength(long dx, long dy) {
    double estimate = Math.sqrt((double) dx * dx + (double) dy * dy);
    if (estimate >= SURE_ROOT) {
      return roundedRoot(squaredLength(dx, dy)).longValueExact();
    }
    long root = (long) estimate; // the estimate is off by less than a quarter, so the answer is this or one more
    long rest = dx * dx + dy * dy - root * root; // small, so exact although each square may wrap round
    return rest > root ? root + 1 : root; // more than root + 1/2 if its square is more than root² + root
  }

  static BigInteger squaredLength(long dx, long dy) {
    BigInteger x = BigInteger.valueOf(dx);
    BigInteger y = BigInteger.valueOf(dy);
    return x.multiply(x).add(y.multiply(y));
  }

  /** The root r of a whole number s is rounded up if s > r² + r, that is if the root is more than r + 1/2. */
  private static BigInteger roundedRoot(BigInteger square) {
    BigInteger[] root = square.sqrtAndRemainder();
    return root[1].compareTo(root[0]) > 0 ? root[0].add(BigInteger.ONE) : root[0];
  }
}
