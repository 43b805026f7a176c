package floorcalc.examples.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;

class ShownTest {
  /** 12 times ten to the 2147483648: 1.2 times ten to the 2147483649, more digits than an int counts. */
  @Test
  void aNumberWithTheLargestExponentKeepsIt() {
    assertThat(Shown.number(BigDecimal.valueOf(12, Integer.MIN_VALUE))).isEqualTo("1.2E+2147483649");
    assertThat(Shown.number(BigDecimal.valueOf(12, -3))).isEqualTo("12000");
  }
}
