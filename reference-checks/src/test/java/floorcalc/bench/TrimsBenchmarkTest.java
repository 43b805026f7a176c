package floorcalc.bench;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.trims.TrimCutting;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is timed gives the right answer: all pieces, cut from the fewest bars. */
class TrimsBenchmarkTest {

  @ParameterizedTest
  @CsvSource({"6, 2", "20, 50", "60, 2"})
  void fewestBars(int lengths, int each) {
    TrimsBenchmark benchmark = new TrimsBenchmark();
    benchmark.lengths = lengths;
    benchmark.each = each;
    benchmark.pieces();

    TrimCutting cutting = benchmark.cutting().value();

    assertThat(cutting.isLeast()).isTrue();
    assertThat(cutting.bars().stream().mapToInt(bar -> bar.pieces().size()).sum()).isEqualTo(lengths * each);
  }
}
