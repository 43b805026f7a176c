package floorcalc.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigInteger;
import java.math.RoundingMode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AreaTest {

  private static final Area HALF_SQUARE_NANOMETRE = Area.ofHalfSquareNanometres(BigInteger.ONE);

  private static Area m2(String decimal) {
    return Area.ofSquareMetres(decimal);
  }

  private static BigInteger big(String digits) {
    return new BigInteger(digits);
  }

  @Test
  void factoriesAgree() {
    // 1 m2 = 10^6 mm2 = 10^18 nm2 = 2 x 10^18 half nm2
    assertThat(Area.ofSquareMillimetres(1_000_000)).isEqualTo(m2("1"));
    assertThat(Area.ofSquareNanometres(BigInteger.TEN.pow(18))).isEqualTo(m2("1.0"));
    assertThat(Area.ofHalfSquareNanometres(big("2000000000000000000"))).isEqualTo(m2("1.000"));
    assertThat(m2("0.0000000000000000005")).isEqualTo(HALF_SQUARE_NANOMETRE);
    assertThat(Area.ofSquareMillimetres(Long.MAX_VALUE)).isEqualTo(m2("9223372036854.775807"));
    assertThat(Area.ofSquareMillimetres(0)).isSameAs(Area.ZERO).isSameAs(m2("-0.0"));
  }

  @Test
  void factoriesRefuse() {
    assertThatThrownBy(() -> m2("0.0000000000000000001")).isInstanceOf(ArithmeticException.class).hasMessage(
        "0.0000000000000000001 m² is not a whole number of half square nanometres; give at most eighteen decimals of a"
            + " square metre");
    assertThatThrownBy(() -> m2("12.3 m²")).isInstanceOf(TapeNotationException.class);
    assertThatNullPointerException().isThrownBy(() -> m2(null)).withMessage("decimal");
    assertThatNullPointerException().isThrownBy(() -> Area.ofSquareNanometres(null)).withMessage("squareNanometres");
    assertThatNullPointerException().isThrownBy(() -> Area.ofHalfSquareNanometres(null))
        .withMessage("halfSquareNanometres");
  }

  @Test
  void aTriangleOfOneNanometreIsExact() {
    // corners (0,0) (1,0) (0,1): shoelace sum 1, area half a square nanometre
    assertThat(HALF_SQUARE_NANOMETRE).hasToString("0.0000000000000000005 m²");
    assertThat(HALF_SQUARE_NANOMETRE.plus(HALF_SQUARE_NANOMETRE)).isEqualTo(Area.ofSquareNanometres(BigInteger.ONE));
  }

  @Test
  void sums() {
    assertThat(m2("1.5").plus(m2("-2"))).isEqualTo(m2("-0.5"));
    assertThat(m2("1.5").minus(m2("1.5"))).isSameAs(Area.ZERO);
    assertThat(m2("12.345").multipliedBy(-2)).isEqualTo(m2("-24.69"));
    assertThat(m2("1.5").negated()).isEqualTo(m2("-1.5"));
    assertThat(m2("-1.5").abs()).isEqualTo(m2("1.5")).isEqualTo(m2("1.5").abs());
    assertThatNullPointerException().isThrownBy(() -> Area.ZERO.plus(null)).withMessage("other");
    assertThatNullPointerException().isThrownBy(() -> Area.ZERO.minus(null)).withMessage("other");
  }

  @Test
  void signs() {
    assertThat(Area.ZERO.isZero()).isTrue();
    assertThat(Area.ZERO.isNegative() || Area.ZERO.isPositive()).isFalse();
    assertThat(m2("-1").isNegative()).isTrue();
    assertThat(m2("1").isNegative()).isFalse();
    assertThat(m2("1").isPositive()).isTrue();
    assertThat(m2("-1").isPositive()).isFalse();
    assertThat(m2("1").isZero()).isFalse();
  }

  @Test
  void dividedBy() {
    assertThat(m2("12").dividedBy(Length.parse("3 m"), RoundingMode.UNNECESSARY)).isEqualTo(Length.parse("4 m"));
    assertThat(m2("-12").dividedBy(Length.parse("3 m"), RoundingMode.UNNECESSARY)).isEqualTo(Length.parse("-4 m"));
    // half a square nanometre by one nanometre: half a nanometre
    Length nanometre = Length.ofNanometres(1);
    assertThat(HALF_SQUARE_NANOMETRE.dividedBy(nanometre, RoundingMode.HALF_EVEN)).isEqualTo(Length.ZERO);
    assertThat(HALF_SQUARE_NANOMETRE.dividedBy(nanometre, RoundingMode.HALF_UP)).isEqualTo(nanometre);
  }

  @Test
  void dividedBy_refused() {
    Length metre = Length.parse("1 m");
    assertThatThrownBy(() -> m2("12").dividedBy(Length.ZERO, RoundingMode.UP)).isInstanceOf(ArithmeticException.class)
        .hasMessage("12 m² cannot be divided by a length of 0 mm");
    assertThatThrownBy(() -> m2("1").dividedBy(metre.multipliedBy(3), RoundingMode.UNNECESSARY))
        .isInstanceOf(ArithmeticException.class)
        .hasMessage("1 m² divided by 3000 mm is not exact; choose another rounding than UNNECESSARY");
    assertThatThrownBy(() -> m2("10000000000").dividedBy(metre, RoundingMode.UP))
        .isInstanceOf(ArithmeticException.class).hasMessage("10000000000 m² divided by 1000 mm"
            + " is outside the range of a length, about 9.2 million km either way");
    assertThatNullPointerException().isThrownBy(() -> m2("1").dividedBy(null, RoundingMode.UP)).withMessage("side");
    assertThatNullPointerException().isThrownBy(() -> m2("1").dividedBy(metre, null)).withMessage("mode");
  }

  @ParameterizedTest
  @CsvSource({"12.345, 2, 12.35", "12.345, 3, 12.345", "12.345, 4, 12.3450", "12.345, 0, 12", "0.5, 0, 1",
      "-12.345, 2, -12.35", "-0.004, 2, 0.00", "0, 1, 0.0", "100, 0, 100",
      "0.0000000000000000005, 19, 0.0000000000000000005"})
  void toSquareMetreString(String area, int decimals, String text) {
    assertThat(m2(area).toSquareMetreString(decimals)).isEqualTo(text);
  }

  @Test
  void toSquareMetreString_refused() {
    assertThatIllegalArgumentException().isThrownBy(() -> Area.ZERO.toSquareMetreString(-1))
        .withMessage("decimals must be 0 to 19, but was -1");
    assertThatIllegalArgumentException().isThrownBy(() -> Area.ZERO.toSquareMetreString(20))
        .withMessage("decimals must be 0 to 19, but was 20");
  }

  @ParameterizedTest
  @CsvSource({"12.345, 12.345 m²", "-12.3450, -12.345 m²", "100, 100 m²", "0, 0 m²",
      "0.000000000000000001, 0.000000000000000001 m²", "4046.8564224, 4046.8564224 m²"})
  void toString_isCanonical(String area, String text) {
    assertThat(m2(area)).hasToString(text);
  }

  @Test
  void doubles() {
    assertThat(m2("12.345").toSquareMetres()).isEqualTo(12.345);
    assertThat(m2("12.345").toSquareMillimetres()).isEqualTo(12_345_000.0);
    assertThat(HALF_SQUARE_NANOMETRE.toSquareMetres()).isEqualTo(5e-19);
    assertThat(HALF_SQUARE_NANOMETRE.toSquareMillimetres()).isEqualTo(5e-13);
    assertThat(m2("-0.1").toSquareMetres()).isEqualTo(-0.1);
  }

  @Test
  void order_equals_hashCode() {
    assertThat(m2("1")).isLessThan(m2("1.0000001")).isEqualByComparingTo(m2("1.0")).hasSameHashCodeAs(m2("1.0"));
    assertThat(m2("-2")).isLessThan(m2("-1"));
    assertThat(m2("1")).isNotEqualTo(m2("2")).isNotEqualTo("1 m²").isNotEqualTo(null);
    assertThatNullPointerException().isThrownBy(() -> Area.ZERO.compareTo(null)).withMessage("other");
  }

  @Test
  void squareFeetOfARoom() {
    // 10 ft x 12 ft = 120 ft2 = 120 x 0.09290304 = 11.1483648 m2; in inches 120 x 144 = 17280 in2
    Area room = Length.parse("10 ft").times(Length.parse("12 ft"));
    assertThat(room).isEqualTo(m2("11.1483648"));
    assertThat(room).isEqualTo(Length.parse("1 in").times(Length.parse("1 in")).multipliedBy(17_280));
  }
}
