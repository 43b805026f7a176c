package floorcalc.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.math.RoundingMode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LengthTest {

  private static final Length MOST = Length.ofNanometres(Long.MAX_VALUE);
  private static final Length LEAST = Length.ofNanometres(Long.MIN_VALUE);
  private static final String OUTSIDE = " is outside the range of a length, about 9.2 million km either way";

  private static Length mm(String decimal) {
    return Length.ofMillimetres(decimal);
  }

  // ---- factories

  @Test
  void ofNanometres() {
    assertThat(Length.ofNanometres(396_875).toNanometres()).isEqualTo(396_875);
    assertThat(Length.ofNanometres(0)).isSameAs(Length.ZERO);
  }

  @Test
  void ofMillimetres_whole() {
    assertThat(Length.ofMillimetres(-185).toNanometres()).isEqualTo(-185_000_000);
    assertThat(Length.ofMillimetres(9_223_372_036_854L).toNanometres()).isEqualTo(9_223_372_036_854_000_000L);
  }

  @ParameterizedTest
  @ValueSource(longs = {9_223_372_036_855L, -9_223_372_036_855L, Long.MAX_VALUE, Long.MIN_VALUE})
  void ofMillimetres_whole_outOfRange(long mm) {
    assertThatThrownBy(() -> Length.ofMillimetres(mm)).isInstanceOf(ArithmeticException.class)
        .hasMessage(mm + " mm" + OUTSIDE);
  }

  @ParameterizedTest
  @CsvSource({"2405.5, 2405500000", "-0.000001, -1", "0, 0", "-0.0, 0", "007, 7000000", "1.0000000, 1000000",
      "9223372036854.775807, 9223372036854775807", "-9223372036854.775808, -9223372036854775808"})
  void ofMillimetres_decimal(String decimal, long nm) {
    assertThat(Length.ofMillimetres(decimal).toNanometres()).isEqualTo(nm);
  }

  @Test
  void ofMillimetres_decimal_notWhole() {
    assertThatThrownBy(() -> mm("0.0000001")).isInstanceOf(ArithmeticException.class).hasMessage(
        "0.0000001 mm is not a whole number of nanometres; give at most six decimals of a millimetre");
  }

  @Test
  void ofMillimetres_decimal_outOfRange() {
    assertThatThrownBy(() -> mm("9223372036854.775808")).isInstanceOf(ArithmeticException.class)
        .hasMessage("9223372036854.775808 mm" + OUTSIDE);
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {
      "''|0", "'-'|1", "'5.'|2", "'.5'|0", "'1e5'|1", "'1,5'|1", "'+5'|0", "' 5'|0", "'5 '|1", "'5 mm'|1",
      "'--5'|1", "'5-'|1", "'1.2.3'|3", "'٣'|0", "'NaN'|0", "'−5'|0", "'0x10'|1"})
  void ofMillimetres_decimal_notANumber(String text, int position) {
    assertThatThrownBy(() -> mm(text)).isInstanceOfSatisfying(TapeNotationException.class, e -> {
      assertThat(e.text()).isEqualTo(text);
      assertThat(e.position()).isEqualTo(position);
    });
  }

  @Test
  void ofMillimetres_decimal_messages() {
    assertThatThrownBy(() -> mm("1e5")).hasMessage("cannot read [1e5] as a decimal number: at character 2 [e]: "
        + "write digits 0 to 9 and at most one decimal point between them, such as 2405.5, without a unit");
    assertThatThrownBy(() -> mm("5.")).hasMessage(
        "cannot read [5.] as a decimal number: at its end: a digit is missing");
    assertThatThrownBy(() -> mm("1".repeat(101))).hasMessage("cannot read [" + "1".repeat(40)
        + " …] as a decimal number: a decimal number has at most 100 characters, but there are 101");
    assertThatNullPointerException().isThrownBy(() -> mm(null)).withMessage("decimal");
  }

  @ParameterizedTest
  @CsvSource({
      "7, 5, 16, 185737500",     // 7.3125 x 25.4 = 185.7375 mm
      "0, 1, 64, 396875",
      "0, 19, 16, 30162500",     // 1.1875 x 25.4 = 30.1625 mm
      "-7, -5, 16, -185737500",
      "0, -1, 2, -12700000",
      "-3, 0, 8, -76200000",
      "0, 1, 5, 5080000",        // 25.4 / 5 = 5.08 mm
      "0, 1, 25400000, 1"})
  void ofInches(long whole, int numerator, int denominator, long nm) {
    assertThat(Length.ofInches(whole, numerator, denominator).toNanometres()).isEqualTo(nm);
  }

  @Test
  void ofInches_refused() {
    assertThatThrownBy(() -> Length.ofInches(0, 1, 128)).isInstanceOf(ArithmeticException.class).hasMessage(
        "0 + 1/128 in is not a whole number of nanometres; halves to sixty-fourths of an inch are");
    assertThatThrownBy(() -> Length.ofInches(1, 1, 3)).isInstanceOf(ArithmeticException.class);
    assertThatThrownBy(() -> Length.ofInches(Long.MAX_VALUE, 1, 2)).isInstanceOf(ArithmeticException.class)
        .hasMessage("9223372036854775807 + 1/2 in" + OUTSIDE);
    assertThatIllegalArgumentException().isThrownBy(() -> Length.ofInches(1, 1, 0))
        .withMessage("denominator must be more than 0, but was 0");
    assertThatIllegalArgumentException().isThrownBy(() -> Length.ofInches(1, 1, -8));
    assertThatIllegalArgumentException().isThrownBy(() -> Length.ofInches(-7, 5, 16)).withMessage(
        "whole inches -7 and numerator 5 have opposite signs; give both the sign of the length");
    assertThatIllegalArgumentException().isThrownBy(() -> Length.ofInches(7, -5, 16));
  }

  @Test
  void fromMillimetres() {
    assertThat(Length.fromMillimetres(2405.5, RoundingMode.UNNECESSARY)).isEqualTo(mm("2405.5"));
    // the double next to 0.3 is 0.299999999999999988897769753748...
    assertThat(Length.fromMillimetres(0.3, RoundingMode.HALF_EVEN)).isEqualTo(mm("0.3"));
    assertThat(Length.fromMillimetres(0.3, RoundingMode.FLOOR)).isEqualTo(mm("0.299999"));
    assertThat(Length.fromMillimetres(-0.3, RoundingMode.FLOOR)).isEqualTo(mm("-0.3"));
    // 2^-7 mm = 7812.5 nm
    assertThat(Length.fromMillimetres(0.0078125, RoundingMode.HALF_EVEN).toNanometres()).isEqualTo(7812);
    assertThat(Length.fromMillimetres(0.0078125, RoundingMode.HALF_UP).toNanometres()).isEqualTo(7813);
    assertThat(Length.fromMillimetres(-0.0, RoundingMode.UP)).isSameAs(Length.ZERO);
    assertThat(Length.fromMillimetres(Double.MIN_VALUE, RoundingMode.UP).toNanometres()).isEqualTo(1);
  }

  @Test
  void fromMillimetres_refused() {
    assertThatIllegalArgumentException().isThrownBy(() -> Length.fromMillimetres(Double.NaN, RoundingMode.UP))
        .withMessage("millimetres must be a finite number, but was NaN");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Length.fromMillimetres(Double.NEGATIVE_INFINITY, RoundingMode.UP));
    assertThatThrownBy(() -> Length.fromMillimetres(1e13, RoundingMode.UP)).isInstanceOf(ArithmeticException.class)
        .hasMessage("1.0E13 mm" + OUTSIDE);
    assertThatThrownBy(() -> Length.fromMillimetres(-Double.MAX_VALUE, RoundingMode.UP))
        .isInstanceOf(ArithmeticException.class);
    assertThatThrownBy(() -> Length.fromMillimetres(0.3, RoundingMode.UNNECESSARY))
        .isInstanceOf(ArithmeticException.class).hasMessage("0.3 mm is not a whole number of nanometres as a double;"
            + " choose another rounding than UNNECESSARY");
    assertThatNullPointerException().isThrownBy(() -> Length.fromMillimetres(1, null)).withMessage("mode");
  }

  // ---- arithmetic

  @Test
  void plus_minus() {
    assertThat(mm("1.5").plus(mm("-2"))).isEqualTo(mm("-0.5"));
    assertThat(mm("1.5").minus(mm("1.5"))).isSameAs(Length.ZERO);
    assertThatThrownBy(() -> MOST.plus(Length.ofNanometres(1))).isInstanceOf(ArithmeticException.class)
        .hasMessage("9223372036854.775807 mm plus 0.000001 mm" + OUTSIDE);
    assertThatThrownBy(() -> LEAST.minus(Length.ofNanometres(1))).isInstanceOf(ArithmeticException.class)
        .hasMessage("-9223372036854.775808 mm minus 0.000001 mm" + OUTSIDE);
    assertThatThrownBy(() -> Length.ZERO.minus(LEAST)).isInstanceOf(ArithmeticException.class);
    assertThatNullPointerException().isThrownBy(() -> MOST.plus(null)).withMessage("other");
    assertThatNullPointerException().isThrownBy(() -> MOST.minus(null)).withMessage("other");
  }

  @Test
  void multipliedBy() {
    assertThat(mm("2405.5").multipliedBy(-3)).isEqualTo(mm("-7216.5"));
    assertThatThrownBy(() -> MOST.multipliedBy(2)).isInstanceOf(ArithmeticException.class)
        .hasMessage("9223372036854.775807 mm times 2" + OUTSIDE);
    assertThatThrownBy(() -> LEAST.multipliedBy(-1)).isInstanceOf(ArithmeticException.class);
  }

  @ParameterizedTest
  @CsvSource({"7, 2, 3, 1", "-7, 2, -4, 1", "7, -2, -4, -1", "-7, -2, 3, -1", "6, 2, 3, 0", "0, 5, 0, 0", "1, 5, 0, 1"})
  void dividedBy_and_remainder(long run, long width, long quotient, long rest) {
    assertThat(Length.ofMillimetres(run).dividedBy(Length.ofMillimetres(width))).isEqualTo(quotient);
    assertThat(Length.ofMillimetres(run).remainder(Length.ofMillimetres(width))).isEqualTo(Length.ofMillimetres(rest));
  }

  @Test
  void dividedBy_refused() {
    assertThatThrownBy(() -> mm("3").dividedBy(Length.ZERO)).isInstanceOf(ArithmeticException.class)
        .hasMessage("3 mm cannot be divided by a length of 0 mm");
    assertThatThrownBy(() -> mm("3").remainder(Length.ZERO)).isInstanceOf(ArithmeticException.class);
    assertThatThrownBy(() -> LEAST.dividedBy(Length.ofNanometres(-1))).isInstanceOf(ArithmeticException.class)
        .hasMessage("-9223372036854.775808 mm divided by -0.000001 mm does not fit a long");
    assertThat(LEAST.remainder(Length.ofNanometres(-1))).isEqualTo(Length.ZERO);
    assertThatNullPointerException().isThrownBy(() -> MOST.dividedBy(null)).withMessage("other");
    assertThatNullPointerException().isThrownBy(() -> MOST.remainder(null)).withMessage("other");
  }

  @ParameterizedTest
  @CsvSource({"10, 4, HALF_EVEN, 2", "10, 4, HALF_UP, 3", "10, 4, FLOOR, 2", "10, 4, CEILING, 3", "-10, 4, FLOOR, -3",
      "-10, 4, DOWN, -2", "10, -4, HALF_UP, -3", "10, 5, UNNECESSARY, 2", "10, 3, HALF_EVEN, 3"})
  void dividedBy_number(long nm, long divisor, RoundingMode mode, long part) {
    assertThat(Length.ofNanometres(nm).dividedBy(divisor, mode).toNanometres()).isEqualTo(part);
  }

  @Test
  void dividedBy_number_refused() {
    assertThatThrownBy(() -> mm("3").dividedBy(0, RoundingMode.UP)).isInstanceOf(ArithmeticException.class)
        .hasMessage("3 mm cannot be divided by 0");
    assertThatThrownBy(() -> mm("1").dividedBy(3, RoundingMode.UNNECESSARY)).isInstanceOf(ArithmeticException.class)
        .hasMessage("1 mm divided by 3 is not exact; choose another rounding than UNNECESSARY");
    assertThatThrownBy(() -> LEAST.dividedBy(-1, RoundingMode.UP)).isInstanceOf(ArithmeticException.class)
        .hasMessage("-9223372036854.775808 mm divided by -1" + OUTSIDE);
    assertThatNullPointerException().isThrownBy(() -> MOST.dividedBy(2, null)).withMessage("mode");
  }

  @Test
  void times() {
    // a 3.1 m square is 9.61 m2: more square nanometres than a long holds
    assertThat(mm("3100").times(mm("3100"))).isEqualTo(Area.ofSquareMetres("9.61"));
    assertThat(mm("-2").times(mm("3"))).isEqualTo(Area.ofSquareMillimetres(-6));
    assertThatNullPointerException().isThrownBy(() -> MOST.times(null)).withMessage("other");
  }

  @Test
  void abs_negated() {
    assertThat(mm("-1.5").abs()).isEqualTo(mm("1.5")).isEqualTo(mm("1.5").abs());
    assertThat(mm("1.5").negated()).isEqualTo(mm("-1.5"));
    assertThatThrownBy(LEAST::negated).isInstanceOf(ArithmeticException.class)
        .hasMessage("-9223372036854.775808 mm negated" + OUTSIDE);
    assertThatThrownBy(LEAST::abs).isInstanceOf(ArithmeticException.class);
  }

  @Test
  void min_max_signs() {
    assertThat(mm("-2").min(mm("1"))).isEqualTo(mm("-2"));
    assertThat(mm("1").min(mm("-2"))).isEqualTo(mm("-2"));
    assertThat(mm("-2").max(mm("1"))).isEqualTo(mm("1"));
    assertThat(mm("1").max(mm("-2"))).isEqualTo(mm("1"));
    assertThat(Length.ZERO.isZero()).isTrue();
    assertThat(Length.ZERO.isNegative()).isFalse();
    assertThat(Length.ZERO.isPositive()).isFalse();
    assertThat(mm("-1").isNegative()).isTrue();
    assertThat(mm("-1").isPositive()).isFalse();
    assertThat(mm("1").isPositive()).isTrue();
    assertThat(mm("1").isZero()).isFalse();
    assertThatNullPointerException().isThrownBy(() -> MOST.min(null)).withMessage("other");
    assertThatNullPointerException().isThrownBy(() -> MOST.max(null)).withMessage("other");
    assertThatNullPointerException().isThrownBy(() -> MOST.compareTo(null)).withMessage("other");
  }

  // ---- leaving the type

  @ParameterizedTest
  @CsvSource({"2405500000, 2405.5", "1, 0.000001", "-1, -0.000001", "0, 0", "100000000, 100", "1200000, 1.2",
      "9223372036854775807, 9223372036854.775807", "-9223372036854775808, -9223372036854.775808"})
  void toMillimetreString_and_toString(long nm, String text) {
    assertThat(Length.ofNanometres(nm).toMillimetreString()).isEqualTo(text);
    assertThat(Length.ofNanometres(nm)).hasToString(text + " mm");
  }

  @Test
  void toMillimetres() {
    assertThat(Length.ofNanometres(1).toMillimetres()).isEqualTo(0.000001);
    assertThat(mm("3851.275").toMillimetres()).isEqualTo(3851.275);
    assertThat(MOST.toMillimetres()).isEqualTo(9223372036854.775807);
  }

  @Test
  void equals_and_hashCode() {
    assertThat(mm("25.4")).isEqualTo(Length.ofInches(1, 0, 1)).hasSameHashCodeAs(Length.ofInches(1, 0, 1));
    assertThat(mm("1")).isNotEqualTo(mm("2")).isNotEqualTo("1 mm").isNotEqualTo(null);
  }

  @Test
  void serialises() throws Exception {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
      out.writeObject(TapeReading.of("12' 7 5/8\""));
    }
    try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
      assertThat(in.readObject()).isEqualTo(TapeReading.of("12' 7 5/8\""));
    }
  }

  // ---- sums from jobs, worked by hand

  @Test
  void rowsOfStripInALongRun() {
    // 53 ft = 636 in; 195 x 3 1/4 = 633 3/4, rest 2 1/4: 195 full rows and a ripped one, 196 rows
    Length run = Length.parse("53 ft");
    Length strip = Length.parse("3 1/4\"");
    assertThat(run.dividedBy(strip)).isEqualTo(195);
    assertThat(run.remainder(strip)).isEqualTo(Length.parse("2 1/4\""));
  }

  @Test
  void smallGrowthInManyRows() {
    // 78 x 1/64 in = 78/64 = 1 14/64 = 1 7/32 in; less 1/2 in of relief leaves 23/32 in
    Length growth = Length.ofInches(0, 1, 64).multipliedBy(78);
    assertThat(growth).isEqualTo(Length.ofInches(1, 7, 32));
    assertThat(growth.minus(Length.ofInches(0, 1, 2))).isEqualTo(Length.ofInches(0, 23, 32));
  }

  @Test
  void rowsToAStop() {
    // 11 x 3 1/4 = 35 3/4; + 3/8 = 36 1/8
    assertThat(Length.parse("3 1/4\"").multipliedBy(11).plus(Length.parse("3/8\""))).isEqualTo(Length.parse("36 1/8\""));
  }

  @Test
  void balancedSquares() {
    // 176 / 12 = 14 rest 8; two equal ends of (12 + 8) / 2 = 10, with 13 full between: 10 + 156 + 10 = 176
    Length run = Length.parse("176 in");
    Length square = Length.parse("12 in");
    Length end = square.plus(run.remainder(square)).dividedBy(2, RoundingMode.UNNECESSARY);
    assertThat(run.dividedBy(square) - 1).isEqualTo(13);
    assertThat(end).isEqualTo(Length.parse("10 in"));
    assertThat(square.multipliedBy(13).plus(end).plus(end)).isEqualTo(run);
  }

  @Test
  void risersOfAStair() {
    // 6 1/2, seven of 7 3/4, 7 1/2: spread 7 3/4 - 6 1/2 = 1 1/4; sum 68 1/4, mean 68.25 / 9 = 7.58333 in,
    // that is 1733.55 mm / 9 = 192.616667 mm to the nanometre
    Length low = Length.parse("6 1/2\"");
    Length usual = Length.parse("7 3/4\"");
    Length sum = low.plus(usual.multipliedBy(7)).plus(Length.parse("7 1/2\""));
    assertThat(usual.minus(low)).isEqualTo(Length.parse("1 1/4\""));
    assertThat(sum).isEqualTo(Length.parse("5' 8 1/4\"")).isEqualTo(mm("1733.55"));
    assertThat(sum.dividedBy(9, RoundingMode.HALF_EVEN)).isEqualTo(mm("192.616667"));
  }

  @Test
  void metricBoardsInAnInchRoom() {
    // 107 5/8 x 25.4 = 2733.675; less 15 x 182 = 2730 leaves 3.675, the "4 mm" of the job
    assertThat(Length.parse("107 5/8\"").minus(mm("182").multipliedBy(15))).isEqualTo(mm("3.675"));
  }

  @Test
  void workedExampleOfThePage() {
    // docs/measure.md: 151.625 in x 25.4 = 3851.275; - 20 x 185 = 151.275; / 25.4 = 5.9557 in; x 16 = 95.29
    Length run = Length.parse("12' 7 5/8\"");
    Length board = Length.ofMillimetres(185);
    assertThat(run.dividedBy(board)).isEqualTo(20);
    assertThat(run.remainder(board)).hasToString("151.275 mm");
    assertThat(TapeNotation.inches(16).format(run.remainder(board))).isEqualTo("5 15/16\"");
    assertThat(run.times(Length.parse("10 ft"))).hasToString("11.7386862 m²");   // 3.851275 x 3.048
  }
}
