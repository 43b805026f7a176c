package floorcalc.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

class AreaPropertyTest {

  private static Area halves(BigInteger value) {
    return Area.ofHalfSquareNanometres(value);
  }

  @Property
  void textReadsBack(@ForAll BigInteger a) {
    String text = halves(a).toString();
    assertThat(text).endsWith(" m²").doesNotContain("E");
    if (text.length() <= 100) {
      assertThat(Area.ofSquareMetres(text.substring(0, text.length() - 3))).isEqualTo(halves(a));
      assertThat(Area.ofSquareMetres(halves(a).toSquareMetreString(19))).isEqualTo(halves(a));
    }
  }

  @Property
  void sumsAreExact(@ForAll BigInteger a, @ForAll BigInteger b, @ForAll long factor) {
    assertThat(halves(a).plus(halves(b)).toHalfSquareNanometres()).isEqualTo(a.add(b));
    assertThat(halves(a).plus(halves(b)).minus(halves(b))).isEqualTo(halves(a));
    assertThat(halves(a).multipliedBy(factor).toHalfSquareNanometres()).isEqualTo(a.multiply(BigInteger.valueOf(factor)));
    assertThat(halves(a).negated().negated()).isEqualTo(halves(a));
    assertThat(halves(a).abs().isNegative()).isFalse();
  }

  @Property
  void aRectangleDividedByItsSideIsTheOtherSide(@ForAll long a, @ForAll long b) {
    Assume.that(b != 0);
    Length side = Length.ofNanometres(b);
    assertThat(Length.ofNanometres(a).times(side).dividedBy(side, RoundingMode.UNNECESSARY))
        .isEqualTo(Length.ofNanometres(a));
    assertThat(Length.ofNanometres(a).times(side)).isEqualTo(side.times(Length.ofNanometres(a)));
  }

  @Property
  void sharingOutStaysWithinHalfANanometreOfTheSide(@ForAll int a, @ForAll int b, @ForAll int side) {
    Assume.that(side != 0);
    Area area = Length.ofNanometres(a).times(Length.ofNanometres(b));
    Length other = area.dividedBy(Length.ofNanometres(side), RoundingMode.HALF_EVEN);
    Area error = area.minus(other.times(Length.ofNanometres(side))).abs();
    // at most half a nanometre times the side: so many half square nanometres as the side has nanometres
    assertThat(error).isLessThanOrEqualTo(halves(BigInteger.valueOf(side).abs()));
  }

  @Property
  void displayIsWithinHalfAStep(@ForAll BigInteger a, @ForAll byte digits) {
    int decimals = Math.floorMod(digits, 20);
    BigDecimal shown = new BigDecimal(halves(a).toSquareMetreString(decimals));
    BigDecimal exact = new BigDecimal(a).divide(new BigDecimal("2E18"));
    assertThat(shown.scale()).isEqualTo(decimals);
    assertThat(shown.subtract(exact).abs()).isLessThanOrEqualTo(new BigDecimal(BigInteger.ONE, decimals)
        .divide(BigDecimal.valueOf(2)));
  }

  @Property
  void doublesAreTheNearest(@ForAll BigInteger a) {
    BigDecimal squareMetres = new BigDecimal(a).divide(new BigDecimal("2E18"));
    assertNearest(halves(a).toSquareMetres(), squareMetres);
    assertNearest(halves(a).toSquareMillimetres(), squareMetres.movePointRight(6));
  }

  private static void assertNearest(double value, BigDecimal exact) {
    BigDecimal error = new BigDecimal(value).subtract(exact).abs();
    assertThat(error).isLessThanOrEqualTo(new BigDecimal(Math.nextUp(value)).subtract(exact).abs())
        .isLessThanOrEqualTo(new BigDecimal(Math.nextDown(value)).subtract(exact).abs());
  }

  @Property
  void orderAgreesWithEquality(@ForAll BigInteger a, @ForAll BigInteger b) {
    assertThat(Integer.signum(halves(a).compareTo(halves(b)))).isEqualTo(a.compareTo(b))
        .isEqualTo(-Integer.signum(halves(b).compareTo(halves(a))));
    assertThat(halves(a).equals(halves(b))).isEqualTo(a.equals(b));
    assertThat(halves(a)).isEqualTo(halves(new BigInteger(a.toString()))).hasSameHashCodeAs(halves(a));
  }
}
