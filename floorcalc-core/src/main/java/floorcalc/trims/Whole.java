package floorcalc.trims;

/** Whole numbers. */
final class Whole {
  private Whole() {}

  static long gcd(long a, long b) {
    long x = Math.abs(a);
    long y = Math.abs(b);
    while (y != 0) {
      long rest = x % y;
      x = y;
      y = rest;
    }
    return x;
  }

  static long ceiling(long dividend, long divisor) {
    return -Math.floorDiv(-dividend, divisor);
  }
}
