package floorcalc.trims;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.measure.Length;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Constructed instances, solved by looking through all cuttings: fewest bars, then the longest single leftover. */
class LongestLeftoverReferenceTest {
  @ParameterizedTest(name = "{0}")
  @CsvFileSource(resources = "/reference/usable_leftover_constructed.csv", useHeadersInDisplayName = true)
  void fewestBarsThenTheLongestLeftover(String id, long bar, String lengths, int bars, long longest, long total) {
    List<TrimPiece> pieces = Arrays.stream(Instances.numbers(lengths))
        .mapToObj(length -> TrimPiece.of("", Length.ofMillimetres(length))).toList();
    TrimCutting cutting =
        TrimCutting.of(pieces, List.of(TrimStock.sold(Length.ofMillimetres(bar))), Length.ZERO).value();

    assertThat(cutting.bars()).hasSize(bars);
    assertThat(cutting.isLeast()).isTrue();
    assertThat(cutting.longestLeftover()).isEqualTo(Length.ofMillimetres(longest));
    assertThat(cutting.isLongestLeftoverProven()).isTrue();
    assertThat(cutting.bars().stream().map(TrimBar::leftover).reduce(Length.ZERO, Length::plus))
        .isEqualTo(Length.ofMillimetres(total));
  }
}
