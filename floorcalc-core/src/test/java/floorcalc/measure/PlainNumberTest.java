package floorcalc.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlainNumberTest {
  // Each is the number as it is typed, so it comes back by definition. Double.toString of Java 17.0.15 writes the first three as
  // 1.9999999999999998E23, 9.999999999999999E22 and 8.409999999999999E21, that of Java 25 as they are here.
  @ParameterizedTest
  @CsvSource({"2.0E23, 2.0E23", "1.0E23, 1.0E23", "8.41E21, 8.41E21", "2.0E-3, 0.002", "0.001, 0.001", "9.99E-4, 9.99E-4",
      "-2.2E-5, -2.2E-5", "90, 90.0", "-0.5, -0.5", "0, 0.0", "-0.0, 0.0", "0.1, 0.1", "1e7, 1.0E7", "9999999, 9999999.0",
      "123456.789, 123456.789", "-1e300, -1.0E300", "NaN, NaN", "Infinity, Infinity", "-Infinity, -Infinity"})
  void textIsPlainAndShort(double value, String text) {
    assertThat(PlainNumber.text(value)).isEqualTo(text);
  }

  @Test
  void shortestTextOfAPowerOfTwo() {
    // 2^-44 is 5.684341886080801486968994140625E-14. The doubles next to it are 2^-97 = 6.3E-30 below and 2^-96 = 1.26E-29 above, and
    // half of that is read as 2^-44. With 16 digits ...801 is 4.9E-30 below, too far; ...802 is 5.1E-30 above, near enough.
    assertThat(PlainNumber.of(StrictMath.scalb(1.0, -44))).isEqualTo(new BigDecimal("5.684341886080802E-14"));
  }

  @Test
  void comesBackAndIsShort() {
    Random random = new Random(7);
    for (int i = 0; i < 2000; i++) {
      double value = Double.longBitsToDouble(random.nextLong());
      if (Double.isFinite(value)) {
        assertThat(PlainNumber.of(value).doubleValue()).isEqualTo(value == 0 ? 0.0 : value);
        assertThat(PlainNumber.of(value).precision()).isLessThanOrEqualTo(17);
      }
      BigDecimal typed = new BigDecimal(random.nextInt()).movePointLeft(random.nextInt(12));
      assertThat(PlainNumber.of(typed.doubleValue())).isEqualByComparingTo(typed);
    }
  }

  @Test
  void roundsHalvesAwayFromZero() {
    assertThat(PlainNumber.text(0.125, 2)).isEqualTo("0.13");
    assertThat(PlainNumber.text(-0.125, 2)).isEqualTo("-0.13");
    assertThat(PlainNumber.text(-0.001, 2)).isEqualTo("0.00");
    assertThat(PlainNumber.text(1.005, 2)).isEqualTo("1.01");
    assertThat(PlainNumber.text(12, 0)).isEqualTo("12");
    assertThat(PlainNumber.text(Double.NaN, 2)).isEqualTo("NaN");
    assertThatThrownBy(() -> PlainNumber.of(Double.NEGATIVE_INFINITY)).hasMessageContaining("-Infinity");
  }
}
