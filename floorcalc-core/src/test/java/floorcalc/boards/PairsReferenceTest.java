package floorcalc.boards;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.measure.Length;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleSet;
import floorcalc.working.Source;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/**
 * Constructed instances: left-hand and right-hand pieces, at most one of each from a board. The optimum in the file was
 * found by maximum matching and, for the small ones, by enumeration.
 */
class PairsReferenceTest {
  @ParameterizedTest(name = "{0}")
  @CsvFileSource(resources = "/reference/two_per_bin_left_right_constructed.csv", useHeadersInDisplayName = true)
  void boardsEqualTheOptimum(String id, long board, long kerf, String left, String right, int pairs, int boards) {
    Length width = Length.ofMillimetres(100);
    BoardGoods goods = BoardGoods.of(Length.ofMillimetres(board), width, Length.ofMillimetres(14), 1);
    LayingRules rules = RuleSet.COMMON_PRACTICE.forBoard(goods.thickness(), width)
        .with(LayingRules.SAW_KERF, Length.ofMillimetres(kerf), Source.GIVEN);
    List<PieceWanted> pieces = new ArrayList<>();
    add(pieces, left, Ends.LOW, width);
    add(pieces, right, Ends.HIGH, width);

    CuttingPlan plan = CuttingPlan.of(pieces, goods, rules);

    assertThat(plan.boardCount()).isEqualTo(boards);
    assertThat(pieces).hasSize(boards + pairs);
  }

  private static void add(List<PieceWanted> pieces, String lengths, Ends ends, Length width) {
    for (String length : lengths.trim().split(" ")) {
      pieces.add(PieceWanted.of(pieces.size(), Length.ofMillimetres(Long.parseLong(length)), Length.ZERO, width, ends));
    }
  }
}
