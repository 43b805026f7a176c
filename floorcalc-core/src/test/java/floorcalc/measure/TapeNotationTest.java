package floorcalc.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.math.RoundingMode;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TapeNotationTest {

  // ---- reading; the third column is the working by hand, 25 400 000 nm to the inch

  @ParameterizedTest(name = "{0}: {2}")
  @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
      185 mm                    | 185000000   | 185
      2405.5 mm                 | 2405500000  | 2405.5
      0.000001 mm               | 1           | the smallest step
      1.0000000 mm              | 1000000     | a seventh decimal of zero is whole
      185mm                     | 185000000   | no blank
      007 mm                    | 7000000     | leading zeros
      18.5 cm                   | 185000000   | 185 mm
      3.2 m                     | 3200000000  | 3200 mm
      .5 m                      | 500000000   | 500 mm
      0.000000001 m             | 1           | nine decimals of a metre
      9223372036854.775807 mm   | 9223372036854775807  | the longest
      -9223372036854.775808 mm  | -9223372036854775808 | the most negative
      5 in                      | 127000000   | 5 x 25.4
      5 inch                    | 127000000   | the same
      5 inches                  | 127000000   | the same
      5"                        | 127000000   | the same
      5″                        | 127000000   | double prime
      5”                        | 127000000   | closing quotation mark
      5“                        | 127000000   | opening quotation mark
      5''                       | 127000000   | two apostrophes
      5′′                       | 127000000   | two primes
      5’’                       | 127000000   | two typographic apostrophes
      5 IN.                     | 127000000   | capitals and a point
      5 3/8"                    | 136525000   | 5.375 x 25.4 = 136.525
      5-3/8 in                  | 136525000   | the same
      5‑3/8 in                  | 136525000   | no-break hyphen
      5‐3/8 in                  | 136525000   | typographic hyphen
      5⅜″                       | 136525000   | the same
      5 ⅜ inches                | 136525000   | the same
      5-⅜"                      | 136525000   | the same
      5 3⁄8"                    | 136525000   | fraction slash
      5 3∕8"                    | 136525000   | division slash
      5.375 in                  | 136525000   | the same
      ½"                        | 12700000    | 25.4 / 2
      ¼"                        | 6350000     | 25.4 / 4
      ¾"                        | 19050000    | 3 x 6.35
      ⅛"                        | 3175000     | 25.4 / 8
      ⅝"                        | 15875000    | 5 x 3.175
      ⅞"                        | 22225000    | 7 x 3.175
      ⅗"                        | 15240000    | 3 x 5.08
      3/8 in                    | 9525000     | 3 x 3.175
      1/64"                     | 396875      | 25.4 / 64
      63/64"                    | 25003125    | 25.4 - 0.396875
      2/128"                    | 396875      | 1/64
      19/16 in                  | 30162500    | 1.1875 x 25.4
      0/8 in                    | 0           | nothing
      1/10 in                   | 2540000     | 25.4 / 10
      0.001 in                  | 25400       | 25.4 / 1000
      107.625 in                | 2733675000  | 107 5/8 x 25.4
      100 in                    | 2540000000  | inches alone may be any number
      12'                       | 3657600000  | 144 in x 25.4
      12 ft                     | 3657600000  | the same
      12 foot                   | 3657600000  | the same
      12 feet                   | 3657600000  | the same
      12 Ft.                    | 3657600000  | the same
      12′                       | 3657600000  | prime
      12’                       | 3657600000  | typographic apostrophe
      12‘                       | 3657600000  | opening quotation mark
      12.5 ft                   | 3810000000  | twelve and a half feet, 150 in
      12.5'                     | 3810000000  | the same
      12½'                      | 3810000000  | the same
      12.7'                     | 3870960000  | 12.7 x 304.8, not 12 ft 7 in = 3835.4
      1/3 ft                    | 101600000   | 4 in
      ⅙ ft                      | 50800000    | 2 in
      12' 7 5/8"                | 3851275000  | 144 + 7.625 = 151.625 in
      12' 7-5/8"                | 3851275000  | the same
      12'7-5/8"                 | 3851275000  | the same
      12'7 5/8"                 | 3851275000  | the same
      12'-7 5/8"                | 3851275000  | the same
      12' - 7 5/8"              | 3851275000  | the same
      12' 7⅝"                   | 3851275000  | the same
      12′ 7⅝″                   | 3851275000  | the same
      12’ 7 5/8”                | 3851275000  | the same
      12' 7 5/8''               | 3851275000  | the same
      12 ft 7 5/8 in            | 3851275000  | the same
      12ft7-5/8in               | 3851275000  | the same
      12 FT. 7 5/8 IN.          | 3851275000  | the same
      12 feet 7.625 inches      | 3851275000  | the same
      12' 7"                    | 3835400000  | 151 in
      12' 5/8"                  | 3673475000  | 144.625 in
      12' 0 5/8"                | 3673475000  | the same
      12' 0"                    | 3657600000  | 144 in
      0' 7"                     | 177800000   | 7 in
      5' 11 63/64"              | 1828403125  | 71.984375 x 25.4 = 1828.403125
      -5 mm                     | -5000000    | minus
      −5 mm                     | -5000000    | minus sign
      - 5 mm                    | -5000000    | blank after the minus
      -12' 7 5/8"               | -3851275000 | minus the whole
      -5-3/8"                   | -136525000  | minus the whole
      0                         | 0           | zero needs no unit
      -0                        | 0           | and no sign
      0.0                       | 0           | nor decimals
      0 mm                      | 0           | but may have them
      """)
  void parse(String text, long nm, String working) {
    assertThat(TapeNotation.parse(text).toNanometres()).isEqualTo(nm);
    assertThat(Length.parse(new StringBuilder(text))).isEqualTo(Length.ofNanometres(nm));
  }

  @ParameterizedTest
  @ValueSource(strings = {"12' 7 5/8\"", "12'\u00A07\u20095/8\"", " 12 ' 7 5/8 \" ", "\t12'\t7 5/8\"",
      "12'\u202F7\u00A05/8\u200A\"", "12'  7   5/8\""})
  void parse_blanks(String text) {
    assertThat(TapeNotation.parse(text)).isEqualTo(Length.ofNanometres(3_851_275_000L));
  }

  @ParameterizedTest(name = "[{0}]")
  @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
      `` | at its end: the text is empty; write a number and its unit, such as 3851.5 mm, 3.2 m, 5 3/8" or 12' 7 5/8"
      `  ` | at its end: the text is empty; write a number and its unit, such as 3851.5 mm, 3.2 m, 5 3/8" or 12' 7 5/8"
      - | at its end: a number is missing; write digits 0 to 9, such as 3851.5 mm, 3.2 m, 5 3/8" or 12' 7 5/8"
      --5 mm | at character 2 [-]: a number is missing; write digits 0 to 9, such as 3851.5 mm, 3.2 m, 5 3/8" or 12' 7 5/8"
      mm | at character 1 [m]: a number is missing; write digits 0 to 9, such as 3851.5 mm, 3.2 m, 5 3/8" or 12' 7 5/8"
      / | at character 1 [/]: a number is missing; write digits 0 to 9, such as 3851.5 mm, 3.2 m, 5 3/8" or 12' 7 5/8"
      NaN | at character 1 [N]: a number is missing; write digits 0 to 9, such as 3851.5 mm, 3.2 m, 5 3/8" or 12' 7 5/8"
      +5 mm | at character 1 [+]: leave out the plus sign
      5 | at its end: a unit is missing; write mm, cm, m, in or ft after the number
      12.5 | at its end: a unit is missing; write mm, cm, m, in or ft after the number
      5 3/8 | at its end: a unit is missing; write mm, cm, m, in or ft after the number
      0/8 | at its end: a unit is missing; write mm, cm, m, in or ft after the number
      5 MM | at character 3 [MM]: this is no unit of length known here; write the unit as mm, cm, m, in or ft
      5 yd | at character 3 [yd]: this is no unit of length known here; write the unit as mm, cm, m, in or ft
      1e3 mm | at character 2 [e]: this is no unit of length known here; write the unit as mm, cm, m, in or ft
      5 µm | at character 3 [µ]: write the unit as mm, cm, m, in or ft
      5 ın | at character 3 [ı]: write the unit as mm, cm, m, in or ft
      5 /8 in | at character 3 [/]: write the unit as mm, cm, m, in or ft
      5 - 3/8" | at character 3 [-]: write a mixed number with one blank or one hyphen, as in 5 3/8 or 5-3/8
      3,2 m | at character 2 [,]: write the decimal sign as a point; a comma could also group thousands
      1,000 mm | at character 2 [,]: write the decimal sign as a point; a comma could also group thousands
      ,5 m | at character 1 [,]: write the decimal sign as a point; a comma could also group thousands
      ٣ mm | at character 1 [٣]: write numbers with the digits 0 to 9
      ５ mm | at character 1 [５]: write numbers with the digits 0 to 9
      5𝟓 mm | at character 2 [𝟓]: write numbers with the digits 0 to 9
      5. mm | at character 3 [ ]: a digit is missing after the decimal point
      5. | at its end: a digit is missing after the decimal point
      . mm | at character 2 [ ]: a digit is missing after the decimal point
      1.2.3 mm | at character 4 [.]: a decimal number has one decimal point and takes neither a fraction nor grouped digits
      1.5 3/8" | at character 5 [3]: a decimal number has one decimal point and takes neither a fraction nor grouped digits
      1.5½" | at character 4 [½]: a decimal number has one decimal point and takes neither a fraction nor grouped digits
      0.000 001 mm | at character 7 [0]: a decimal number has one decimal point and takes neither a fraction nor grouped digits
      3 200 mm | at character 3 [200]: two numbers stand side by side; digits are not grouped, a fraction is written 5 3/8, and feet have their mark or unit before the inches
      12-7 5/8" | at character 4 [7]: two numbers stand side by side; digits are not grouped, a fraction is written 5 3/8, and feet have their mark or unit before the inches
      5/" | at character 3 ["]: the denominator of the fraction is missing; write for example 3/8
      5/ | at its end: the denominator of the fraction is missing; write for example 3/8
      5 3/0" | at character 5 [0]: the denominator of a fraction must be at least 1
      5 8/8" | at character 3 [8/8]: a fraction beside a whole number must be less than 1
      5-9/8" | at character 3 [9/8]: a fraction beside a whole number must be less than 1
      1/2 m | at character 1 [1/2]: write millimetres, centimetres and metres with decimals, not as a fraction
      2½ mm | at character 1 [2½]: write millimetres, centimetres and metres with decimals, not as a fraction
      ½½" | at character 2 [½]: write the unit as mm, cm, m, in or ft
      1/2/3" | at character 4 [/]: write the unit as mm, cm, m, in or ft
      1/3 in | at character 1 [1/3]: this is not a whole number of nanometres; the nearest is 8.466667 mm; halves to sixty-fourths of an inch and six decimals of a millimetre are whole
      ⅓" | at character 1 [⅓]: this is not a whole number of nanometres; the nearest is 8.466667 mm; halves to sixty-fourths of an inch and six decimals of a millimetre are whole
      1/128 in | at character 1 [1/128]: this is not a whole number of nanometres; the nearest is 0.198438 mm; halves to sixty-fourths of an inch and six decimals of a millimetre are whole
      -12' 7 1/3" | at character 2 [12' 7 1/3]: this is not a whole number of nanometres; the nearest is -3843.866667 mm; halves to sixty-fourths of an inch and six decimals of a millimetre are whole
      0.0000001 mm | at character 1 [0.0000001]: this is not a whole number of nanometres; the nearest is 0 mm; halves to sixty-fourths of an inch and six decimals of a millimetre are whole
      9223372036854.775808 mm | at character 1 [9223372036854.775808]: this is outside the range of a length, about 9.2 million km either way
      99999999999999999999 ft | at character 1 [99999999999999999999]: this is outside the range of a length, about 9.2 million km either way
      12.7' 3" | at character 1 [12.7]: beside inches the feet must be a whole number; 12.7 ft is a decimal number of feet, never feet and inches
      12.0' 3" | at character 1 [12.0]: beside inches the feet must be a whole number; 12.0 ft is a decimal number of feet, never feet and inches
      12½' 3" | at character 1 [12½]: beside inches the feet must be a whole number
      5' 14" | at character 4 [14]: beside feet the inches must be less than 12; carry them into the feet, or write inches alone
      5' 12" | at character 4 [12]: beside feet the inches must be less than 12; carry them into the feet, or write inches alone
      12' 7 | at its end: the inch mark or unit is missing after the inches; write for example 12' 7"
      12' 0 | at its end: the inch mark or unit is missing after the inches; write for example 12' 7"
      12'- | at its end: a number is missing; write digits 0 to 9, such as 3851.5 mm, 3.2 m, 5 3/8" or 12' 7 5/8"
      12' 7' | at character 6 [']: only inches may follow feet, as in 12' 7 5/8"
      12' 30 cm | at character 8 [cm]: only inches may follow feet, as in 12' 7 5/8"
      7" 12' | at character 4 [1]: nothing may follow here; a length is one number with its unit, or feet and then inches
      12' x | at character 5 [x]: nothing may follow here; a length is one number with its unit, or feet and then inches
      12''7" | at character 5 [7]: nothing may follow here; a length is one number with its unit, or feet and then inches
      12''' | at character 5 [']: nothing may follow here; a length is one number with its unit, or feet and then inches
      5 in 3/8 | at character 6 [3]: nothing may follow here; a length is one number with its unit, or feet and then inches
      3 m 20 cm | at character 5 [2]: nothing may follow here; a length is one number with its unit, or feet and then inches
      3 m, | at character 4 [,]: write the decimal sign as a point; a comma could also group thousands
      5 mm. | at character 5 [.]: nothing may follow here; a length is one number with its unit, or feet and then inches
      """)
  void parse_refused(String text, String message) {
    assertThatThrownBy(() -> TapeNotation.parse(text)).isExactlyInstanceOf(TapeNotationException.class)
        .hasMessage("cannot read [" + text + "] as a length: " + message);
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {"5\\n mm|\\u{a}|2", "\\u2028|\\u{2028}|1", "5\\u202e mm|\\u{202e}|2"})
  void parse_refused_showsHiddenCharactersAsTheirCode(String escaped, String shown, int character) {
    String text = escaped.replace("\\n", "\n").replace("\\u2028", "\u2028").replace("\\u202e", "\u202e");
    assertThatThrownBy(() -> TapeNotation.parse(text)).hasMessageContaining("at character " + character + " [" + shown
        + "]: ").hasMessageStartingWith("cannot read [").message().doesNotContain("\n", "\u2028", "\u202e");
  }

  @Test
  void parse_refused_loneSurrogate() {
    assertThatThrownBy(() -> TapeNotation.parse("5 \uD835")).hasMessage("cannot read [5 \\u{d835}] as a length: "
        + "at character 3 [\\u{d835}]: write the unit as mm, cm, m, in or ft");
  }

  @Test
  void parse_refused_tooLong() {
    assertThat(TapeNotation.parse("5" + " ".repeat(97) + "mm")).isEqualTo(Length.ofMillimetres(5));
    assertThatThrownBy(() -> TapeNotation.parse("5" + " ".repeat(98) + "mm")).isInstanceOf(TapeNotationException.class)
        .hasMessage("cannot read [5" + " ".repeat(39)
            + " …] as a length: a length has at most 100 characters, but there are 101");
  }

  @Test
  void parse_null() {
    assertThatNullPointerException().isThrownBy(() -> TapeNotation.parse(null)).withMessage("text");
    assertThatNullPointerException().isThrownBy(() -> Length.parse(null)).withMessage("text");
    assertThatNullPointerException().isThrownBy(() -> TapeReading.of(null)).withMessage("text");
  }

  @Test
  void exceptionCarriesTextPlaceAndReason() {
    TapeNotationException e = catchThrowableOfType(TapeNotationException.class, () -> TapeNotation.parse(" 3,2 m"));
    assertThat(e.text()).isEqualTo(" 3,2 m");
    assertThat(e.position()).isEqualTo(2);
    assertThat(e.reason()).isEqualTo("write the decimal sign as a point; a comma could also group thousands");
    assertThat(catchThrowableOfType(TapeNotationException.class, () -> TapeNotation.parse("5 ")).position())
        .isEqualTo(2);
  }

  // ---- writing

  @ParameterizedTest
  @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
      151 5/8 in    | 16 | 12' 7 5/8"    | 151 5/8"
      151 5/8 in    | 8  | 12' 7 5/8"    | 151 5/8"
      151 5/8 in    | 4  | 12' 7 1/2"    | 151 1/2"
      151 5/8 in    | 1  | 12' 8"        | 152"
      143 63/64 in  | 64 | 11' 11 63/64" | 143 63/64"
      143 63/64 in  | 32 | 12' 0"        | 144"
      143 31/32 in  | 16 | 12' 0"        | 144"
      143 15/32 in  | 16 | 11' 11 1/2"   | 143 1/2"
      143 13/32 in  | 16 | 11' 11 3/8"   | 143 3/8"
      15 31/32 in   | 16 | 1' 4"         | 16"
      11 31/32 in   | 16 | 1' 0"         | 12"
      12 in         | 16 | 1' 0"         | 12"
      12 1/2 in     | 16 | 1' 0 1/2"     | 12 1/2"
      7 3/4 in      | 16 | 7 3/4"        | 7 3/4"
      3/4 in        | 16 | 3/4"          | 3/4"
      12/16 in      | 16 | 3/4"          | 3/4"
      0 in          | 16 | 0"            | 0"
      1/64 in       | 16 | 0"            | 0"
      -1/64 in      | 16 | 0"            | 0"
      -1/16 in      | 16 | -1/16"        | -1/16"
      -151 5/8 in   | 16 | -12' 7 5/8"   | -151 5/8"
      -143 63/64 in | 32 | -12' 0"       | -144"
      3851.275 mm   | 64 | 12' 7 5/8"    | 151 5/8"
      3657 mm       | 64 | 11' 11 31/32" | 143 31/32"
      """)   // the last: 3657 / 25.4 = 143.97638 in; x 64 = 9214.488, so 9214/64 = 143 62/64
  void format_inches(String text, int denominator, String feetAndInches, String inches) {
    Length length = Length.parse(text);
    assertThat(TapeNotation.feetAndInches(denominator).format(length)).isEqualTo(feetAndInches);
    assertThat(TapeNotation.inches(denominator).format(length)).isEqualTo(inches);
  }

  @Test
  void format_metric_exact() {
    Length length = Length.parse("12' 7 5/8\"");
    assertThat(TapeNotation.millimetres().format(length)).isEqualTo("3851.275 mm");
    assertThat(TapeNotation.centimetres().format(length)).isEqualTo("385.1275 cm");
    assertThat(TapeNotation.metres().format(length)).isEqualTo("3.851275 m");
    assertThat(TapeNotation.metres().format(Length.ofNanometres(-1))).isEqualTo("-0.000000001 m");
    assertThat(TapeNotation.metres().format(Length.parse("100 m"))).isEqualTo("100 m");
    assertThat(TapeNotation.centimetres().format(Length.ZERO)).isEqualTo("0 cm");
  }

  @ParameterizedTest
  @CsvSource({"3851.275, 2, 3851.28 mm, 385.13 cm, 3.85 m", "3851.275, 0, 3851 mm, 385 cm, 4 m",
      "3851.265, 2, 3851.26 mm, 385.13 cm, 3.85 m", "-0.004, 2, 0.00 mm, 0.00 cm, 0.00 m",
      "-3851.275, 2, -3851.28 mm, -385.13 cm, -3.85 m", "3200, 2, 3200.00 mm, 320.00 cm, 3.20 m",
      "999.999, 2, 1000.00 mm, 100.00 cm, 1.00 m"})
  void format_metric_decimals(String mm, int decimals, String inMm, String inCm, String inM) {
    Length length = Length.ofMillimetres(mm);
    assertThat(TapeNotation.millimetres(decimals).format(length)).isEqualTo(inMm);
    assertThat(TapeNotation.centimetres(decimals).format(length)).isEqualTo(inCm);
    assertThat(TapeNotation.metres(decimals).format(length)).isEqualTo(inM);
  }

  @Test
  void format_rounding() {
    TapeNotation eighths = TapeNotation.feetAndInches(8);
    Length length = Length.parse("7 11/16\"");           // between 5/8 and 3/4, as far from either
    assertThat(eighths.format(length)).isEqualTo("7 3/4\"");    // 62/8 is even, 61/8 odd
    assertThat(eighths.withRounding(RoundingMode.DOWN).format(length)).isEqualTo("7 5/8\"");
    assertThat(eighths.withRounding(RoundingMode.UP).format(length)).isEqualTo("7 3/4\"");
    assertThat(eighths.withRounding(RoundingMode.FLOOR).format(length.negated())).isEqualTo("-7 3/4\"");
    assertThat(eighths.withRounding(RoundingMode.CEILING).format(length.negated())).isEqualTo("-7 5/8\"");
    assertThat(TapeNotation.metres(2).withRounding(RoundingMode.UP).format(Length.ofNanometres(1)))
        .isEqualTo("0.01 m");
    assertThat(length).isEqualTo(Length.parse("7 11/16\""));
  }

  @Test
  void format_rounding_unnecessary() {
    Length length = Length.parse("7 11/16\"");
    assertThat(TapeNotation.inches(16).withRounding(RoundingMode.UNNECESSARY).format(length)).isEqualTo("7 11/16\"");
    assertThatThrownBy(() -> TapeNotation.inches(8).withRounding(RoundingMode.UNNECESSARY).format(length))
        .isInstanceOf(ArithmeticException.class).hasMessage("195.2625 mm in steps of 1/8 in is not exact;"
            + " choose another rounding than UNNECESSARY");
    assertThatThrownBy(() -> TapeNotation.metres(2).withRounding(RoundingMode.UNNECESSARY).format(length))
        .isInstanceOf(ArithmeticException.class).hasMessage("195.2625 mm in steps of 0.01 m is not exact;"
            + " choose another rounding than UNNECESSARY");
  }

  @Test
  void format_refused() {
    assertThatNullPointerException().isThrownBy(() -> TapeNotation.metres().format(null)).withMessage("length");
    assertThatNullPointerException().isThrownBy(() -> TapeNotation.metres().withRounding(null)).withMessage("mode");
    for (int denominator : new int[] {0, -8, 3, 12, 128, Integer.MIN_VALUE}) {
      assertThatIllegalArgumentException().isThrownBy(() -> TapeNotation.inches(denominator))
          .withMessage("denominator must be 1, 2, 4, 8, 16, 32 or 64, but was " + denominator);
      assertThatIllegalArgumentException().isThrownBy(() -> TapeNotation.feetAndInches(denominator));
    }
    assertThatIllegalArgumentException().isThrownBy(() -> TapeNotation.millimetres(7))
        .withMessage("decimals of mm must be 0 to 6, but was 7");
    assertThatIllegalArgumentException().isThrownBy(() -> TapeNotation.centimetres(8))
        .withMessage("decimals of cm must be 0 to 7, but was 8");
    assertThatIllegalArgumentException().isThrownBy(() -> TapeNotation.metres(-1))
        .withMessage("decimals of m must be 0 to 9, but was -1");
  }

  @Test
  void format_atTheEndsOfTheRange() {
    // 30260406945 ft are 9223372036836000000 nm; the 18775807 nm that are left of 2^63 - 1 are 0.739 in
    Length most = Length.ofNanometres(Long.MAX_VALUE);
    assertThat(TapeNotation.feetAndInches(1).format(most)).isEqualTo("30260406945' 1\"");
    assertThat(TapeNotation.feetAndInches(1).format(Length.ofNanometres(Long.MIN_VALUE)))
        .isEqualTo("-30260406945' 1\"");
    assertThat(TapeNotation.millimetres().format(most)).isEqualTo("9223372036854.775807 mm");
    assertThat(TapeNotation.metres(0).format(most)).isEqualTo("9223372037 m");
  }

  // ---- what was typed, and where

  @Test
  void readingKeepsWhatWasTyped() {
    TapeReading reading = TapeReading.of(" 12'-7⅝\"");
    assertThat(reading.text()).isEqualTo(" 12'-7⅝\"");
    assertThat(reading.length()).isEqualTo(Length.ofMillimetres("3851.275"));
    assertThat(reading).hasToString(" 12'-7⅝\" (3851.275 mm)");
    assertThat(reading).isEqualTo(TapeReading.of(" 12'-7⅝\"")).hasSameHashCodeAs(TapeReading.of(" 12'-7⅝\""));
    assertThat(TapeReading.of("12\"")).isNotEqualTo(TapeReading.of("1' 0\"")).isNotEqualTo("12\"").isNotEqualTo(null);
    assertThat(TapeReading.of("12\"").length()).isEqualTo(TapeReading.of("1' 0\"").length());
    assertThatThrownBy(() -> TapeReading.of("12")).isInstanceOf(TapeNotationException.class);
  }

  @ParameterizedTest
  @ValueSource(strings = {"ar-EG", "de-DE", "tr-TR", "hi-IN-u-nu-deva"})
  void sameInEveryLocale(String tag) {
    Locale before = Locale.getDefault();
    Locale.setDefault(Locale.forLanguageTag(tag));
    try {
      Length length = Length.parse("12 FT 7 5/8 INCHES");
      assertThat(length).isEqualTo(Length.ofNanometres(3_851_275_000L)).hasToString("3851.275 mm");
      assertThat(TapeNotation.feetAndInches(8).format(length)).isEqualTo("12' 7 5/8\"");
      assertThat(TapeNotation.metres(3).format(length)).isEqualTo("3.851 m");
      assertThat(Area.ofSquareMetres("12.345")).hasToString("12.345 m²");
      assertThat(Area.ofSquareMetres("12.345").toSquareMetreString(2)).isEqualTo("12.35");
      assertThatThrownBy(() -> Length.parse("5' 14\"")).hasMessageContaining("at character 4 [14]");
      assertThatThrownBy(() -> TapeNotation.metres(-1)).hasMessage("decimals of m must be 0 to 9, but was -1");
    } finally {
      Locale.setDefault(before);
    }
  }
}
