package floorcalc.boards;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.measure.Length;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleSet;
import floorcalc.working.Source;
import org.junit.jupiter.api.Test;

class KnotsTest {
  private static final Length WIDTH = Length.ofMillimetres(185);

  /** Boards of 1000 mm, end pieces of at least 200 mm. */
  private static Stock stock(int kerf) {
    return new Stock(BoardGoods.of(Length.ofMillimetres(1000), WIDTH, Length.ofMillimetres(14), 6),
        RuleSet.COMMON_PRACTICE.forBoard(Length.ofMillimetres(14), WIDTH)
            .with(LayingRules.MINIMUM_END_PIECE, Length.ofMillimetres(200), Source.GIVEN)
            .with(LayingRules.SAW_KERF, Length.ofMillimetres(kerf), Source.GIVEN));
  }

  @Test
  void aWholeNumberOfSpacingsMakesTheLength() {
    // From just below 200 to 1000 - 4 - 200 = 796 there are 596; a 32nd is 18.6, so 100 has 5 parts of 20, and 596 has 29 of them;
    // and one knot at 796, the longest piece that can have a partner.
    Knots knots = Knots.every(stock(4), 100e6, 32);
    assertThat(knots.count()).isEqualTo(31);
    assertThat(knots.at(30)).isEqualTo(796_000_000);
    assertThat(knots.at(5) - knots.at(0)).isEqualTo(100_000_000);
  }

  @Test
  void aLengthOfNextToNothingMakesNoMoreKnotsThanCanBeHeld() {
    // Runs three nanometres longer than whole boards, no kerf: 600 mm over 3 nm would be 200 million knots.
    assertThat(Knots.every(stock(0), 3, 32).count()).isBetween(2, 1025);
    assertThat(Knots.every(stock(0), 3, 1).count()).isBetween(2, 1025);
  }

  @Test
  void aPlaceIsToldByTheKnotsBelowItAndTheShareOfTheWayToTheNext() {
    // Knots every 20 mm from just below 200 mm on, the last at 780 mm and at 796; pieces longer than 1000 - 4 - 200 = 796 have no partner.
    Knots knots = Knots.every(stock(4), 100e6, 32);
    assertThat(knots.place(knots.at(7))).isEqualTo(7);
    assertThat(knots.share(knots.at(7))).isEqualTo(1);
    assertThat(knots.place(knots.at(7) + 1)).isEqualTo(8);
    assertThat(knots.share(knots.at(7) + 5_000_000)).isEqualTo(0.25);
    assertThat(knots.place(1)).isEqualTo(0);
    assertThat(knots.place(796_000_000)).isEqualTo(knots.count() - 1);
    assertThat(knots.share(796_000_000)).isEqualTo(1);
    assertThat(knots.place(796_000_001)).isEqualTo(knots.count() + 1);
  }
}
