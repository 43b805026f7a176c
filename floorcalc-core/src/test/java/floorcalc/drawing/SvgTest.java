package floorcalc.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SvgTest {
  @ParameterizedTest
  @CsvSource({"0, 0", "-0.001, 0", "-0.004, 0", "1, 1", "12.3, 12.3", "0.05, 0.05", "-3.25, -3.25", "99.999, 100",
      "1234567.891, 1234567.89", "-0.5, -0.5"})
  void writesNumbersToHundredths(double value, String text) {
    assertThat(Svg.number(value)).isEqualTo(text);
  }

  @Test
  void escapesMarkupAndReplacesWhatXmlForbids() {
    assertThat(Svg.escaped("a<b>&\"'")).isEqualTo("a&lt;b&gt;&amp;&quot;&#39;");
    assertThat(Svg.escaped("\u0000\n\u007f\uD800x\uFFFE\u202E\u2028"))
        .isEqualTo("\uFFFD\uFFFD\uFFFD\uFFFDx\uFFFD\uFFFD\uFFFD");
    assertThat(Svg.escaped("K\u00fcche \uD83D\uDEC1")).isEqualTo("K\u00fcche \uD83D\uDEC1");
  }

  @Test
  void makesIdentifiersThatNeverMeet() {
    assertThat(Svg.identifier("study-1")).isEqualTo("bay-study-1");
    assertThat(Svg.identifier("K\u00fcche 1")).isEqualTo("bay-K_fc_che_20_1");
    assertThat(Svg.identifier("K_fc_che_20_1")).isNotEqualTo(Svg.identifier("K\u00fcche 1"));
  }
}
