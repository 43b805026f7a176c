package floorcalc.flatness;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;

/** Exact tests on whole nanometres, by 128-bit products. */
final class Cross {
  private Cross() {}

  /** Tells where the middle point lies against the line from left to right: 1 above, 0 on it, -1 below. */
  static int above(long leftX, long leftY, long x, long y, long rightX, long rightY) {
    return compareProducts(y - leftY, rightX - leftX, rightY - leftY, x - leftX);
  }

  /** Compares a·b with c·d. */
  static int compareProducts(long a, long b, long c, long d) {
    int byHigh = Long.compare(Math.multiplyHigh(a, b), Math.multiplyHigh(c, d));
    return byHigh != 0 ? byHigh : Long.compareUnsigned(a * b, c * d);
  }

  /** How far a point lies below the line from left to right, as a multiple of its width: with one rounding. */
  static double depth(long leftX, long leftY, long x, long y, long rightX, long rightY) {
    long rise = rightY - leftY;
    long along = x - leftX;
    long down = y - leftY;
    long width = rightX - leftX;
    long low = rise * along - down * width;
    long borrow = Long.compareUnsigned(rise * along, down * width) < 0 ? 1 : 0;
    long high = Math.multiplyHigh(rise, along) - Math.multiplyHigh(down, width) - borrow;
    return high == low >> 63 ? low : high * 0x1p64 + ((low >>> 1) * 2.0 + (low & 1));
  }

  /** How far a point lies below the line from left to right, to the nearest nanometre, a half to the even one. */
  static long gap(long leftX, long leftY, long x, long y, long rightX, long rightY) {
    BigInteger width = BigInteger.valueOf(rightX - leftX);
    BigInteger rise = BigInteger.valueOf(rightY - leftY).multiply(BigInteger.valueOf(x - leftX));
    return nearest(rise.subtract(BigInteger.valueOf(y - leftY).multiply(width)), width);
  }

  /** The quotient, to the nearest whole number, a half to the even one. */
  static long nearest(BigInteger dividend, BigInteger divisor) {
    return new BigDecimal(dividend).divide(new BigDecimal(divisor), 0, RoundingMode.HALF_EVEN).longValueExact();
  }
}
