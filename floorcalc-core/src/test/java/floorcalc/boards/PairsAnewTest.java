package floorcalc.boards;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.measure.Length;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleSet;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Boards of 2000 by 200 mm, kerf 3 mm: a pair may be 1997 long. All figures by hand. */
class PairsAnewTest {
  private static final BoardGoods GOODS =
      BoardGoods.of(Length.ofMillimetres(2000), Length.ofMillimetres(200), Length.ofMillimetres(14), 5);
  private static final LayingRules RULES = RuleSet.COMMON_PRACTICE.forBoard(GOODS.thickness(), GOODS.coverWidth());

  private static PieceWanted end(long length) {
    return piece(length, Ends.LOW);
  }

  private static PieceWanted start(long length) {
    return piece(length, Ends.HIGH);
  }

  private static PieceWanted piece(long length, Ends ends) {
    return PieceWanted.of(0, Length.ofMillimetres(length), Length.ZERO, Length.ofMillimetres(200), ends);
  }

  private static void assertFound(List<PieceWanted> pieces, int boards, int cuts, long leftover) {
    CuttingPlan plan = CuttingPlan.of(pieces, GOODS, RULES);
    assertThat(plan.boardCount()).isEqualTo(boards);
    assertThat(plan.cuts()).isEqualTo(cuts);
    assertThat(plan.longestLeftover()).isEqualTo(Length.ofMillimetres(leftover));
  }

  @Test
  void aPairThatFillsItsBoardSavesACut() {
    List<PieceWanted> pieces = List.of(end(500), end(797), start(1000), start(1200));
    // As laid, 1000 takes the shorter offcut, that of 797, and 1200 that of 500: four cuts, 2000 - 500 - 1200 - 6 = 294 left.
    CuttingPlan asLaid = CuttingPlan.shortestOffcutFirst(pieces, new Stock(GOODS, RULES));
    assertThat(asLaid.cuts()).isEqualTo(4);
    assertThat(asLaid.longestLeftover()).isEqualTo(Length.ofMillimetres(294));
    // 797 + 3 + 1200 = 2000, one cut; 500 and 1000, two; 2000 - 500 - 1000 - 6 = 494.
    assertFound(pieces, 2, 3, 494);
  }

  @Test
  void theShortestPieceThatCanBeAloneLeavesMost() {
    // As laid, 400 takes the offcut of 1050, and 900 leaves 2000 - 900 - 3 = 1097.
    // 900 with 1050, since 1950 is no more than 1997; 400 alone leaves 2000 - 400 - 3 = 1597. Three cuts either way.
    assertFound(List.of(start(1050), end(400), end(900)), 2, 3, 1597);
  }

  @Test
  void aPieceThatAloneCanBeAPartnerIsNotLeftAlone() {
    // 1500 and 400 both fit beside one start piece of 450 each, but beside 1000 only 400 does: both starts need a partner
    // each for two boards. 400 + 1000, 1500 + 450: 2000 - 1400 - 6 = 594, 2000 - 1950 - 6 = 44.
    assertFound(List.of(end(400), end(1500), start(450), start(1000)), 2, 4, 594);
  }

  @Test
  void twoShortPiecesTogetherLeaveMostWhereNoneIsAlone() {
    // As laid, 500 takes the offcut of 700 and 800 that of 300: 2000 - 1200 - 6 = 794 and 2000 - 1100 - 6 = 894.
    // 300 with 500 leaves 2000 - 800 - 6 = 1194.
    assertFound(List.of(end(300), end(700), start(500), start(800)), 2, 4, 1194);
  }

  @Test
  void theTwoShortestStayApartWhereThatTakesABoardMore() {
    // 1400 + 600 = 2000 is more than 1997, so 1400 needs 590, and 300 gets 600: 2000 - 900 - 6 = 1094.
    // 300 with 590 would leave 1104, from three boards.
    assertFound(List.of(end(300), end(1400), start(590), start(600)), 2, 4, 1094);
  }

  @Test
  void aLongerLeftoverOfAnotherBoardCounts() {
    // A single piece of 150 shares a board with neither 1999 nor 1990; it leaves 2000 - 150 - 3 = 1847 of its own.
    assertFound(List.of(start(1999), end(1990), piece(150, Ends.NONE)), 3, 3, 1847);
  }

  @Test
  void ripsCount() {
    // Ripped to 80 and crosscut to 700: two cuts. The board's rest of 2000 - 700 - 3 has full width, the strip beside has not.
    List<PieceWanted> pieces = List.of(PieceWanted.of(0, Length.ofMillimetres(700), Length.ZERO, Length.ofMillimetres(80), Ends.LOW));
    assertFound(pieces, 1, 2, 1297);
    // A whole board is laid as it comes, and nothing is left.
    assertFound(List.of(piece(2000, Ends.BOTH)), 1, 0, 0);
  }
}
