package floorcalc.boards;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.measure.Length;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleSet;
import floorcalc.working.Source;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/**
 * Lengths of published lists, any two of which may share a bar. The file's optimum was found by matching among all of them.
 * With m pairs at most, the 2 m shortest can be paired, each of the m shortest with one of the others: so dividing the lengths,
 * shortest first, into end pieces and start pieces at each place in turn, the best division gives the optimum.
 */
class TwoFromABoardReferenceTest {
  @ParameterizedTest(name = "{0}")
  @CsvFileSource(resources = "/reference/two_per_bin_from_published.csv", useHeadersInDisplayName = true)
  void bestDivisionGivesTheOptimum(String instance, long board, int count, int optimum, int unlimited) throws IOException {
    long[] lengths = lengths(instance);
    Arrays.sort(lengths);
    assertThat(lengths).hasSize(count);

    int fewest = Integer.MAX_VALUE;
    for (int ends = 0; ends <= count; ends++) {
      fewest = Math.min(fewest, boards(lengths, ends, board));
    }
    assertThat(fewest).isEqualTo(optimum).isGreaterThanOrEqualTo(unlimited);
  }

  private static int boards(long[] lengths, int ends, long board) {
    Length width = Length.ofMillimetres(100);
    BoardGoods goods = BoardGoods.of(Length.ofMillimetres(board), width, Length.ofMillimetres(14), 1);
    LayingRules rules = RuleSet.COMMON_PRACTICE.forBoard(goods.thickness(), width)
        .with(LayingRules.SAW_KERF, Length.ZERO, Source.GIVEN);
    List<PieceWanted> pieces = new ArrayList<>();
    for (int i = 0; i < lengths.length; i++) {
      pieces.add(PieceWanted.of(i, Length.ofMillimetres(lengths[i]), Length.ZERO, width, i < ends ? Ends.LOW : Ends.HIGH));
    }
    return CuttingPlan.of(pieces, goods, rules).boardCount();
  }

  private static long[] lengths(String instance) throws IOException {
    for (String file : List.of("small", "falkenauer", "scholl")) {
      try (BufferedReader reader = new BufferedReader(new InputStreamReader(Objects.requireNonNull(
          TwoFromABoardReferenceTest.class.getResourceAsStream("/reference/bpp_instances_" + file + ".txt")),
          StandardCharsets.UTF_8))) {
        for (String line = reader.readLine(); line != null; line = reader.readLine()) {
          if (line.startsWith(instance + ",")) {
            return Arrays.stream(line.split(",")[3].trim().split(" ")).mapToLong(Long::parseLong).toArray();
          }
        }
      }
    }
    throw new IllegalArgumentException("there is no list " + instance);
  }
}
