package floorcalc.outline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;

/** The exact tests against the same sums with whole numbers of any size. */
class ExactPropertyTest {
  private static final long FAR = 20_000_000_000_000L; // 20 km in nanometres: twice the furthest coordinate
  private static final long WIDE = 1L << 62;

  @Property(tries = 2000)
  void comparesProducts(@ForAll long a, @ForAll long b, @ForAll long c, @ForAll long d) {
    assertThat(Exact.compareProducts(a, b, c, d)).isEqualTo(times(a, b).compareTo(times(c, d)));
    assertThat(Exact.compareProducts(a, b, a, b)).isZero();
    assertThat(Exact.compareProducts(a, b, b, a)).isZero();
  }

  @Property(tries = 2000)
  void subtractsProductsWithOneRounding(
      @ForAll @LongRange(min = -WIDE, max = WIDE) long a, @ForAll @LongRange(min = -FAR, max = FAR) long b,
      @ForAll @LongRange(min = -WIDE, max = WIDE) long c, @ForAll @LongRange(min = -FAR, max = FAR) long d) {
    assertNearly(Exact.differenceOfProducts(a, b, c, d), times(a, b).subtract(times(c, d)));
  }

  @Property(tries = 2000)
  void subtractsNearlyEqualProducts(
      @ForAll @LongRange(min = -FAR, max = FAR) long a, @ForAll @LongRange(min = -FAR, max = FAR) long b,
      @ForAll @LongRange(min = -3, max = 3) long e, @ForAll @LongRange(min = -3, max = 3) long f) {
    assertNearly(Exact.differenceOfProducts(a, b, a + e, b + f), times(a, b).subtract(times(a + e, b + f)));
  }

  private static void assertNearly(double actual, BigInteger exact) {
    double nearest = exact.doubleValue();
    assertThat(Math.abs(actual - nearest)).isLessThanOrEqualTo(Math.ulp(nearest));
    assertThat((int) Math.signum(actual)).isEqualTo(exact.signum());
  }

  @Property(tries = 2000, edgeCases = EdgeCasesMode.NONE)
  void tellsTheSide(
      @ForAll @LongRange(min = -FAR, max = FAR) long ax, @ForAll @LongRange(min = -FAR, max = FAR) long ay,
      @ForAll @LongRange(min = -FAR, max = FAR) long bx, @ForAll @LongRange(min = -FAR, max = FAR) long by,
      @ForAll @LongRange(min = -FAR, max = FAR) long cx, @ForAll @LongRange(min = -FAR, max = FAR) long cy) {
    BigInteger area = times(bx - ax, cy - ay).subtract(times(by - ay, cx - ax));
    assertThat(Exact.side(ax, ay, bx, by, cx, cy)).isEqualTo(area.signum());
    assertThat(Exact.side(bx, by, ax, ay, cx, cy)).isEqualTo(-area.signum());
  }

  @Property(tries = 2000)
  void roundsLengthsToTheNearest(@ForAll long dx, @ForAll long dy, @ForAll @LongRange(min = 0, max = 40) int shift) {
    long x = (dx >> shift) / 4;
    long y = (dy >> shift) / 4;
    BigDecimal root = new BigDecimal(times(x, x).add(times(y, y))).sqrt(new MathContext(60));
    BigDecimal off = root.subtract(BigDecimal.valueOf(Exact.roundedLength(x, y))).abs();
    assertThat(off).isLessThan(new BigDecimal("0.5"));
  }

  @Example
  void pythagoras() {
    assertThat(Exact.roundedLength(3, 4)).isEqualTo(5);
    assertThat(Exact.roundedLength(-3_000_000_000_000L, 4_000_000_000_000L)).isEqualTo(5_000_000_000_000L);
    assertThat(Exact.roundedLength(0, 0)).isZero();
    assertThat(Exact.roundedLength(1, 1)).isEqualTo(1); // 1.414
    assertThat(Exact.roundedLength(1, 2)).isEqualTo(2); // 2.236
    assertThat(Exact.roundedLength(2, 3)).isEqualTo(4); // 3.606
  }

  @Example
  void refusesWhatALongCannotHold() {
    assertThatThrownBy(() -> Exact.side(Long.MIN_VALUE, 0, Long.MAX_VALUE, 0, 0, 1))
        .isInstanceOf(ArithmeticException.class);
  }

  private static BigInteger times(long a, long b) {
    return BigInteger.valueOf(a).multiply(BigInteger.valueOf(b));
  }
}
