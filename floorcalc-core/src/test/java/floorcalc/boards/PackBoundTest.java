package floorcalc.boards;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleSet;
import floorcalc.working.Calculated;
import floorcalc.working.Source;
import java.math.BigDecimal;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Packs of two boards of 1800 mm and one of 1000 mm, kerf 3 mm; all figures by hand. */
class PackBoundTest {
  private static final Length WIDTH = Length.ofMillimetres(200);
  private static final BoardGoods GOODS = BoardGoods.mixed(List.of(new PackContent(Length.ofMillimetres(1800), 2),
      new PackContent(Length.ofMillimetres(1000), 1)), WIDTH, Length.ofMillimetres(14));

  private static Calculated<Integer> packs(int rows, long length, String spareShare, int boardsAtLeast) {
    LayingRules rules = RuleSet.COMMON_PRACTICE.forBoard(GOODS.thickness(), GOODS.coverWidth())
        .with(LayingRules.SPARE_SHARE, new BigDecimal(spareShare), Source.GIVEN);
    Length row = Length.ofMillimetres(length);
    return PackBound.of(Collections.nCopies(rows, List.of(Stretch.full(row, WIDTH))), Area.ZERO, row.times(WIDTH).multipliedBy(rows), GOODS,
        rules, boardsAtLeast);
  }

  @Test
  void theLongestBoardsOfTooFewPacksDoNotReach() {
    // Ten rows of 3600 in two pieces each: 36000 + 20 * 3 = 36060.
    // Seven packs hold 14 * 1803 + 7 * 1003 = 32263, too little. Eight: 16 * 1803 = 28848, 7212 to go, 7212 / 1003 = 7.2, so all
    // eight short ones: 24 boards of 24, enough with none to spare.
    assertThat(packs(10, 3600, "0", 0).value()).isEqualTo(8);
    // One to spare, ceil(0.02 * 24): 25 boards are more than 24. Nine: 18 * 1803 = 32454, 3606 / 1003 = 3.6, 22 boards and one spare.
    Calculated<Integer> withSpare = packs(10, 3600, "0.02", 0);
    assertThat(withSpare.value()).isEqualTo(9);
    assertThat(withSpare.steps()).singleElement().satisfies(step -> {
      assertThat(step.id()).isEqualTo("packs-at-least");
      assertThat(step.result()).isEqualTo(9);
      assertThat(step.terms()).filteredOn(term -> term.symbol().equals("u")).extracting("value").containsExactly(22);
    });
  }

  @Test
  void boardsThatNoPlanCanDoWithoutAreInThePacks() {
    // 25 boards are in nine packs of three, whatever their lengths.
    assertThat(packs(10, 3600, "0", 25).value()).isEqualTo(9);
  }

  @Test
  void byAreaAWideFloorTakesMore() {
    // Ten rows of 100 in one piece each, 203 wide with a kerf, so by length 1030 / 1803, one board. A floor of odd shape of
    // 2 m² beside it: (10 * 103 * 203 + 2 000 000) / 203 = 10882 long, 6 * 1803 = 10818 of three packs and one short board more.
    LayingRules rules = RuleSet.COMMON_PRACTICE.forBoard(GOODS.thickness(), GOODS.coverWidth())
        .with(LayingRules.SPARE_SHARE, BigDecimal.ZERO, Source.GIVEN);
    List<List<Stretch>> stretches = Collections.nCopies(10, List.of(Stretch.full(Length.ofMillimetres(100), WIDTH)));
    Area odd = Area.ofSquareMillimetres(2_000_000);
    Calculated<Integer> packs = PackBound.of(stretches, odd, odd, GOODS, rules, 0);
    assertThat(packs.value()).isEqualTo(3);
    assertThat(packs.steps().get(0).terms()).filteredOn(term -> term.symbol().equals("u")).extracting("value").containsExactly(7);
  }

  @Test
  void noFloorTakesNoPack() {
    assertThat(PackBound.of(List.of(), Area.ZERO, Area.ZERO, GOODS,
        RuleSet.COMMON_PRACTICE.forBoard(GOODS.thickness(), GOODS.coverWidth()), 0).value()).isZero();
  }
}
