package floorcalc.audit;

import java.math.BigInteger;

/** An exact sum of products of two {@code long}s, held in 128 bits. Not thread-safe. */
final class WideSum {
  private long high;
  private long low;

  void addProduct(long a, long b) {
    add(Math.multiplyHigh(a, b), a * b);
  }

  void subtractProduct(long a, long b) {
    long h = Math.multiplyHigh(a, b);
    long l = a * b;
    long was = low;
    low -= l;
    high -= h + (Long.compareUnsigned(was, l) < 0 ? 1 : 0);
  }

  void add(WideSum other) {
    add(other.high, other.low);
  }

  private void add(long h, long l) {
    low += l;
    high += h + (Long.compareUnsigned(low, l) < 0 ? 1 : 0);
  }

  void clear() {
    high = 0;
    low = 0;
  }

  int signum() {
    return high < 0 ? -1 : high == 0 && low == 0 ? 0 : 1;
  }

  void negate() {
    low = -low;
    high = ~high + (low == 0 ? 1 : 0);
  }

  BigInteger value() {
    return BigInteger.valueOf(high).shiftLeft(64).add(BigInteger.valueOf(low >>> 1).shiftLeft(1))
        .add(BigInteger.valueOf(low & 1));
  }
}
