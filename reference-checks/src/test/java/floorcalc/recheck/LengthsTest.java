package floorcalc.recheck;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.measure.Length;
import floorcalc.measure.TapeNotation;
import java.math.BigDecimal;
import java.util.OptionalLong;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The second reader of lengths, by sums done by hand and against what the library writes. */
class LengthsTest {

  /** 1 in = 25.4 mm. 12' 7 5/8" = 151.625 in = 3851.275 mm; 12.7' = 12.7 · 304.8 mm = 3870.96 mm; 3/8 in = 9.525 mm. */
  @ParameterizedTest
  @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
      185 mm|185
      18.5 cm|185
      0.185 m|185
      .5m|500
      10 in|254
      5 3/8"|136.525
      5-3/8 in|136.525
      5⅜″|136.525
      5.375 inches|136.525
      42''|1066.8
      12.5 ft|3810
      12½'|3810
      12.7'|3870.96
      12' 7 5/8"|3851.275
      12'-7⅝"|3851.275
      12 ft 7-5/8 in|3851.275
      12’ 7”|3835.4
      -12' 7"|-3835.4
      −12' 7"|-3835.4
      0|0
      ½ in.|12.7
      1/64 IN|0.396875
      3 FEET|914.4
      """)
  void reads(String text, String millimetres) {
    assertThat(Lengths.of(text)).hasValue(new BigDecimal(millimetres).movePointRight(6).longValueExact());
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "185", "3,2 m", "3 200 mm", "12.7' 3\"", "5' 14\"", "1/3 in", "1/128 in", "1/2 m", "12' 7", "5 ' 3 ' 2\"", "mm", "- 5", "--5 mm",
      "1/0 in", "5 mm mm", "１８５ mm", "0.0000001 mm", "11 km", "99999999999 m", "12' -7\" x", "½½ in", "1.5½ in"})
  void refuses(String text) {
    assertThat(Lengths.of(text)).isEmpty();
  }

  @Test
  void numbers() {
    assertThat(Lengths.of(new BigDecimal("3851.275"))).hasValue(3_851_275_000L);
    assertThat(Lengths.of(new BigDecimal("0.000001"))).hasValue(1);
    assertThat(Lengths.of(new BigDecimal("1E+3"))).hasValue(1_000_000_000L);
    assertThat(Lengths.of(new BigDecimal("0.0000001"))).isEmpty();
    assertThat(Lengths.of(new BigDecimal("10000000.000001"))).isEmpty();
    assertThat(Lengths.of(new BigDecimal("1E+999999999"))).isEmpty();
    assertThat(Lengths.of(new BigDecimal("0E-30"))).hasValue(0);
  }

  /** What the library writes in four notations is read as the library reads it. */
  @Test
  void readsWhatTheLibraryWrites() {
    Random random = new Random(5);
    for (int i = 0; i < 2000; i++) {
      Length length = Length.ofNanometres(random.nextLong(9_000_000_000_000L));
      for (TapeNotation notation : new TapeNotation[] {TapeNotation.feetAndInches(16), TapeNotation.inches(64), TapeNotation.metres(3),
          TapeNotation.feetAndInches(64)}) {
        String text = notation.format(length);
        assertThat(Lengths.of(text)).as(text).isEqualTo(OptionalLong.of(Length.parse(text).toNanometres()));
      }
      assertThat(Lengths.of(length.toString())).hasValue(length.toNanometres());
      assertThat(Lengths.of(new BigDecimal(length.toMillimetreString()))).hasValue(length.toNanometres());
    }
  }
}
