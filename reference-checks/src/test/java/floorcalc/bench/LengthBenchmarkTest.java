package floorcalc.bench;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.measure.Length;
import org.junit.jupiter.api.Test;

/** What is timed gives the right answer. */
class LengthBenchmarkTest {

  /** 3480 = 18 * 185 + 150, by hand. */
  @Test
  void remainderOfAClearWidth() {
    LengthBenchmark benchmark = new LengthBenchmark();
    benchmark.width = 3480;
    benchmark.lengths();
    assertThat(benchmark.remainder()).isEqualTo(Length.ofMillimetres(150));
  }
}
