package floorcalc.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.function.Supplier;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

class LengthPropertyTest {

  private static final BigInteger LEAST = BigInteger.valueOf(Long.MIN_VALUE);
  private static final BigInteger MOST = BigInteger.valueOf(Long.MAX_VALUE);

  private static BigInteger big(long value) {
    return BigInteger.valueOf(value);
  }

  private static Length nm(long value) {
    return Length.ofNanometres(value);
  }

  /** The calculation gives the exact value if a length can hold it, and is refused if not. */
  private static void assertExactOrRefused(Supplier<Length> calculation, BigInteger exact) {
    if (exact.compareTo(LEAST) < 0 || exact.compareTo(MOST) > 0) {
      assertThatThrownBy(calculation::get).isInstanceOf(ArithmeticException.class)
          .hasMessageContaining(" is outside the range of a length");
    } else {
      assertThat(big(calculation.get().toNanometres())).isEqualTo(exact);
    }
  }

  @Property
  void textReadsBack(@ForAll long a) {
    assertThat(Length.parse(nm(a).toString())).isEqualTo(nm(a));
    assertThat(Length.ofMillimetres(nm(a).toMillimetreString())).isEqualTo(nm(a));
  }

  @Property
  void sumsAreExactOrRefused(@ForAll long a, @ForAll long b) {
    assertExactOrRefused(() -> nm(a).plus(nm(b)), big(a).add(big(b)));
    assertExactOrRefused(() -> nm(a).minus(nm(b)), big(a).subtract(big(b)));
    assertExactOrRefused(() -> nm(a).negated(), big(a).negate());
    assertExactOrRefused(() -> nm(a).abs(), big(a).abs());
  }

  @Property
  void productsAreExactOrRefused(@ForAll long a, @ForAll int small, @ForAll long large) {
    assertExactOrRefused(() -> nm(a).multipliedBy(large), big(a).multiply(big(large)));
    assertExactOrRefused(() -> nm(small).multipliedBy(a), big(a).multiply(big(small)));
    assertExactOrRefused(() -> nm(small).multipliedBy(small), big(small).multiply(big(small)));
    assertExactOrRefused(() -> Length.ofMillimetres(a), big(a).multiply(big(1_000_000)));
    assertThat(nm(a).times(nm(large)).toHalfSquareNanometres())
        .isEqualTo(big(a).multiply(big(large)).multiply(BigInteger.TWO));
  }

  @Property
  void inchesAreExactOrRefused(@ForAll long whole, @ForAll short few, @ForAll byte sixtyFourths) {
    int sign = few < 0 ? -1 : 1;
    int numerator = sign * Math.abs((int) sixtyFourths);
    assertExactOrRefused(() -> Length.ofInches(few, numerator, 64),
        big(few).multiply(big(25_400_000)).add(big(numerator).multiply(big(396_875))));
    assertExactOrRefused(() -> Length.ofInches(whole, 0, 1), big(whole).multiply(big(25_400_000)));
  }

  @Property
  void plusAndMinusUndoEachOther(@ForAll int a, @ForAll int b) {
    assertThat(nm(a).plus(nm(b)).minus(nm(b))).isEqualTo(nm(a));
    assertThat(nm(a).minus(nm(b))).isEqualTo(nm(b).minus(nm(a)).negated());
  }

  @Property
  void quotientAndRemainderMakeTheRun(@ForAll long run, @ForAll long width) {
    Assume.that(width != 0 && !(run == Long.MIN_VALUE && width == -1));
    long n = nm(run).dividedBy(nm(width));
    Length rest = nm(run).remainder(nm(width));
    assertThat(big(n).multiply(big(width)).add(big(rest.toNanometres()))).isEqualTo(big(run));
    assertThat(rest.isZero() || rest.isNegative() == (width < 0)).isTrue();
    assertThat(big(rest.toNanometres()).abs()).isLessThan(big(width).abs());
  }

  @Property
  void quotientAndRemainderMakeTheRun_roomSizes(@ForAll int run, @ForAll short width) {
    Assume.that(width != 0);
    Length w = nm(width);
    assertThat(w.multipliedBy(nm(run).dividedBy(w)).plus(nm(run).remainder(w))).isEqualTo(nm(run));
  }

  @Property
  void partsAreRoundedAsAsked(@ForAll long a, @ForAll long divisor, @ForAll RoundingMode mode) {
    Assume.that(divisor != 0 && mode != RoundingMode.UNNECESSARY);
    assertExactOrRefused(() -> nm(a).dividedBy(divisor, mode),
        BigDecimal.valueOf(a).divide(BigDecimal.valueOf(divisor), 0, mode).toBigIntegerExact());
  }

  @Property
  void nearestPartIsWithinHalfANanometre(@ForAll long a, @ForAll int divisor) {
    Assume.that(divisor != 0 && !(a == Long.MIN_VALUE && divisor == -1));
    BigInteger part = big(nm(a).dividedBy(divisor, RoundingMode.HALF_EVEN).toNanometres());
    BigInteger twiceError = part.multiply(big(divisor)).subtract(big(a)).abs().multiply(BigInteger.TWO);
    assertThat(twiceError).isLessThanOrEqualTo(big(divisor).abs());
  }

  @Property
  void doublesComeBackWithinTheirReach(@ForAll int mm, @ForAll int nanometres) {
    Length length = Length.ofMillimetres(mm).plus(nm(nanometres));   // at most 2147 km, below 2^53 nm = 9007 km
    assertThat(Length.fromMillimetres(length.toMillimetres(), RoundingMode.HALF_EVEN)).isEqualTo(length);
  }

  @Property
  void doubleIsTheNearest(@ForAll long a) {
    BigDecimal exact = BigDecimal.valueOf(a, 6);
    double mm = nm(a).toMillimetres();
    BigDecimal error = new BigDecimal(mm).subtract(exact).abs();
    assertThat(error).isLessThanOrEqualTo(new BigDecimal(Math.nextUp(mm)).subtract(exact).abs())
        .isLessThanOrEqualTo(new BigDecimal(Math.nextDown(mm)).subtract(exact).abs());
  }

  @Property
  void orderAgreesWithEquality(@ForAll long a, @ForAll long b, @ForAll byte near) {
    assertOrder(a, b);
    assertOrder(a, a);
    assertOrder(near, near / 2);
  }

  private static void assertOrder(long a, long b) {
    int order = nm(a).compareTo(nm(b));
    assertThat(Integer.signum(order)).isEqualTo(big(a).compareTo(big(b)))
        .isEqualTo(-Integer.signum(nm(b).compareTo(nm(a))));
    assertThat(order == 0).isEqualTo(nm(a).equals(nm(b)));
    assertThat(nm(a).min(nm(b))).isEqualTo(nm(Math.min(a, b)));
    assertThat(nm(a).max(nm(b))).isEqualTo(nm(Math.max(a, b)));
    if (a == b) {
      assertThat(nm(a)).hasSameHashCodeAs(nm(b));
    }
  }
}
