package floorcalc.trims;

import static floorcalc.working.StepChecks.assertStepsHold;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import floorcalc.measure.Length;
import floorcalc.measure.Price;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleSet;
import floorcalc.working.Calculated;
import floorcalc.working.Step;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class TrimCuttingTest {
  private static final TrimStock BAR = TrimStock.sold(mm(2400));

  private static Length mm(long millimetres) {
    return Length.ofMillimetres(millimetres);
  }

  private static List<TrimPiece> pieces(long... lengths) {
    List<TrimPiece> pieces = new ArrayList<>();
    for (long length : lengths) {
      pieces.add(TrimPiece.of("piece " + (pieces.size() + 1), mm(length)));
    }
    return pieces;
  }

  private static TrimCutting cut(List<TrimPiece> pieces, List<TrimStock> stock, long kerf) {
    Calculated<TrimCutting> calculated = TrimCutting.of(pieces, stock, mm(kerf));
    assertStepsHold(calculated);
    return calculated.value();
  }

  private static Object result(Calculated<?> calculated, String id) {
    return calculated.steps().stream().filter(step -> step.id().equals(id)).map(Step::result).findFirst().orElseThrow();
  }

  /** 1197 + 3 + 1200 = 2400: the saw needs its kerf between the two. One millimetre more and they do not fit. */
  @Test
  void theKerfCountsBetweenTwoPieces() {
    TrimCutting fits = cut(pieces(1200, 1197), List.of(BAR), 3);
    assertThat(fits.bars()).hasSize(1);
    assertThat(fits.cuts()).isEqualTo(1);
    assertThat(fits.bars().get(0).dust()).isEqualTo(mm(3));
    assertThat(fits.bars().get(0).leftover()).isEqualTo(mm(0));

    assertThat(cut(pieces(1200, 1198), List.of(BAR), 3).bars()).hasSize(2);
  }

  /** 2400 - 2398 = 2 mm, less than the kerf of 3 mm: the cut turns it to dust. Of 2396 mm 4 mm are left, 3 of them dust. */
  @Test
  void lessThanAKerfIsDust() {
    TrimBar bar = cut(pieces(2398), List.of(BAR), 3).bars().get(0);
    assertThat(bar.cuts()).isEqualTo(1);
    assertThat(bar.dust()).isEqualTo(mm(2));
    assertThat(bar.leftover()).isEqualTo(mm(0));

    TrimBar other = cut(pieces(2396), List.of(BAR), 3).bars().get(0);
    assertThat(other.dust()).isEqualTo(mm(3));
    assertThat(other.leftover()).isEqualTo(mm(1));
  }

  @Test
  void aWholeBarNeedsNoCut() {
    TrimCutting cutting = cut(pieces(2400, 2400), List.of(BAR), 3);
    assertThat(cutting.cuts()).isZero();
    assertThat(cutting.bars()).allMatch(bar -> bar.dust().isZero() && bar.leftover().isZero());
    assertThat(cutting.longestLeftover()).isEqualTo(mm(0));
    assertThat(cutting.isLongestLeftoverProven()).isTrue();
  }

  /** 1300 + 1000 + 100 = 2400 and 900 + 800 + 700 = 2400, no kerf: three pieces and two cuts from each bar. */
  @Test
  void twoBarsFilledToTheEnd() {
    TrimCutting cutting = cut(pieces(1300, 1000, 900, 800, 700, 100), List.of(BAR), 0);
    assertThat(cutting.bars()).hasSize(2);
    assertThat(cutting.isLeast()).isTrue();
    assertThat(cutting.cuts()).isEqualTo(4);
  }

  /** Three of 1290 mm: two take 1290 + 3 + 1290 = 2583 mm, more than a bar, so each has a bar of its own. */
  @Test
  void longPiecesHaveABarEach() {
    List<TrimPiece> wanted = List.of(TrimPiece.of("long wall", mm(1290)).times(3), TrimPiece.of("niche", mm(520)));
    Calculated<TrimCutting> calculated = TrimCutting.of(wanted, List.of(BAR), mm(3));
    TrimCutting cutting = calculated.value();

    assertThat(cutting.barsBought()).isEqualTo(3);
    assertThat(cutting.leastBarsBought()).isEqualTo(3);
    assertThat(cutting.isLeast()).isTrue();
    // (3 * 1290 + 520 + 4 * 3) / 2403 = 4402 / 2403 = 1.8
    assertThat(result(calculated, "bars-by-length")).isEqualTo(2L);
    assertThat(result(calculated, "bars-by-long-pieces")).isEqualTo(3L);
    assertThat(cutting.lengthBought()).isEqualTo(mm(7200));
    assertThat(cutting.leastLengthBought()).contains(mm(7200));
    assertThat(cutting.price()).isEmpty();
    // 2400 - 1290 - 3 = 1107 mm are left of two bars, 2400 - 1290 - 3 - 520 - 3 = 584 mm of the third
    assertThat(cutting.longestLeftover()).isEqualTo(mm(1107));
    // 7200 - 4390 - 4 * 3
    assertThat(result(calculated, "length-left-over")).isEqualTo(mm(2798));
  }

  /**
   * Seven pieces of 810 mm, no kerf: two to a bar, as three take 2430 mm. By length 5670 / 2400 = 2.4. With a price of 1 for
   * each a bar holds 2, so 7 / 2 = 3.5.
   */
  @Test
  void pricesSeeWhatLengthDoesNot() {
    Calculated<TrimCutting> calculated =
        TrimCutting.of(List.of(TrimPiece.of("door", mm(810)).times(7)), List.of(BAR), mm(0));

    assertThat(result(calculated, "bars-by-length")).isEqualTo(3L);
    assertThat(result(calculated, "worth-of-pieces")).isEqualTo(7L);
    assertThat(result(calculated, "bars-by-prices")).isEqualTo(4L);
    assertThat(calculated.value().barsBought()).isEqualTo(4);
    assertStepsHold(calculated);
  }

  /**
   * Bars of 2400 mm: a piece of 1500 mm leaves 897 mm, too little for the 910 mm, which go two to a bar: 4 bars for the 1500,
   * 2 for three of 910. With 910 mm as the limit, all lengths a kerf more: n1 = 4, n2 = 0, ceil(3 * 913 / 2403) = 2.
   */
  @Test
  void shortPiecesThatFitBesideNoLongOne() {
    List<TrimPiece> wanted = List.of(TrimPiece.of("wall", mm(1500)).times(4), TrimPiece.of("door", mm(910)).times(3),
        TrimPiece.of("end", mm(40)));
    Calculated<TrimCutting> calculated = TrimCutting.of(wanted, List.of(BAR), mm(3));
    assertThat(result(calculated, "bars-by-long-pieces")).isEqualTo(6L);
    assertThat(calculated.explain()).contains("those shorter than 913 mm left aside").contains("n1 = 4  (");
    assertThat(calculated.value().barsBought()).isEqualTo(6);
    assertStepsHold(calculated);
  }

  /** 1290 + 50 for mitres is 1340: beside it 1057 + 3 of kerf fill the bar. */
  @Test
  void theAllowanceIsCut() {
    List<TrimPiece> wanted = List.of(TrimPiece.of("wall", mm(1290)).withAllowance(mm(50)), TrimPiece.of("sill", mm(1057)));
    TrimBar bar = cut(wanted, List.of(BAR), 3).bars().get(0);
    assertThat(bar.pieces()).extracting(TrimPiece::cutLength).containsExactly(mm(1340), mm(1057));
    assertThat(bar.leftover()).isEqualTo(mm(0));
    assertThat(bar.cuts()).isEqualTo(1);
  }

  /** 2 x 1500 from 3000 mm is less than 2 x 1500 from two bars of 2400 mm; one of 900 more asks for 2400 mm. */
  @Test
  void theLeastLengthOfSeveralLengths() {
    List<TrimStock> stock = List.of(BAR, TrimStock.sold(mm(3000)));
    TrimCutting two = cut(pieces(1500, 1500), stock, 0);
    assertThat(two.barsByStock()).isEqualTo(Map.of(stock.get(1), 1));
    assertThat(two.isLeast()).isTrue();

    TrimCutting three = cut(pieces(1500, 1500, 900), stock, 0);
    assertThat(three.lengthBought()).isEqualTo(mm(4800));
    assertThat(three.barsByStock()).isEqualTo(Map.of(BAR, 2));
    assertThat(three.isLeast()).isTrue();
  }

  /** At 7.80 and 12.50 EUR two bars of 2400 mm cost 15.60 EUR, one of 3000 mm 12.50; at 15.70 EUR it is the other way round. */
  @Test
  void theLeastCost() {
    TrimStock bar = BAR.at(eur("7.80"));
    TrimCutting cheap = cut(pieces(1500, 1500), List.of(bar, TrimStock.sold(mm(3000)).at(eur("12.50"))), 0);
    assertThat(cheap.price()).contains(eur("12.50"));
    assertThat(cheap.leastPrice()).contains(eur("12.50"));
    assertThat(cheap.leastLengthBought()).isEmpty();

    TrimCutting dear = cut(pieces(1500, 1500), List.of(bar, TrimStock.sold(mm(3000)).at(eur("15.70"))), 0);
    assertThat(dear.price()).contains(eur("15.60"));
    assertThat(dear.isLeast()).isTrue();
  }

  private static Price eur(String amount) {
    return new Price(new BigDecimal(amount), "EUR");
  }

  /** Two offcuts of 1300 mm take two of the pieces of 1290 mm; the third, and the 900 mm, share a bar: 1290 + 3 + 900. */
  @Test
  void whatIsOnHandIsUsedFirst() {
    TrimCutting cutting = cut(pieces(1290, 1290, 1290, 900), List.of(BAR, TrimStock.onHand(mm(1300), 2)), 3);
    assertThat(cutting.barsBought()).isEqualTo(1);
    assertThat(cutting.bars()).hasSize(3);
    assertThat(cutting.lengthBought()).isEqualTo(mm(2400));
    assertThat(cutting.leastLengthBought()).contains(mm(2400));
    assertThat(cutting.isLeast()).isTrue();
  }

  /** 10 + 2 + 6 = 18: one bar of 20 mm, which must be bought in any case as 15 mm do not hold both, spares the offcut. */
  @Test
  void anOffcutThatSavesNothingIsSpared() {
    TrimCutting cutting = cut(pieces(10, 6), List.of(TrimStock.sold(mm(20)), TrimStock.onHand(mm(15), 1)), 2);
    assertThat(cutting.bars()).hasSize(1);
    assertThat(cutting.barsBought()).isEqualTo(1);
    assertThat(cutting.isLeast()).isTrue();
    assertThat(cutting.longestLeftover()).isEqualTo(mm(0));
  }

  @Test
  void onlyBarsOnHandBuyNothing() {
    TrimCutting cutting = cut(pieces(1290, 900), List.of(TrimStock.onHand(mm(1300), 2), TrimStock.onHand(mm(2400), 1)), 3);
    assertThat(cutting.barsBought()).isZero();
    assertThat(cutting.leastBarsBought()).isZero();
    assertThat(cutting.lengthBought()).isEqualTo(mm(0));
    assertThat(cutting.leastLengthBought()).contains(mm(0));
    assertThat(cutting.isLeast()).isTrue();
    assertThat(cutting.bars()).hasSize(1);
  }

  /** The one bar of 3000 mm takes 1500 + 1500, so the third of 1500 mm and the 900 mm are cut from a bar of 2400 mm. */
  @Test
  void aLimitedNumberIsKept() {
    TrimCutting cutting = cut(pieces(1500, 1500, 1500, 900), List.of(BAR, TrimStock.sold(mm(3000)).atMost(1)), 0);
    assertThat(cutting.lengthBought()).isEqualTo(mm(5400));
    assertThat(cutting.isLeast()).isTrue();
  }

  @Test
  void identicalPiecesKeepTheirNames() {
    TrimCutting cutting = cut(List.of(TrimPiece.of("left", mm(800)), TrimPiece.of("right", mm(800)).times(2)),
        List.of(BAR), 0);
    assertThat(cutting.bars()).hasSize(1);
    assertThat(cutting.bars().get(0).pieces()).extracting(TrimPiece::name).containsExactly("left", "right", "right");
    assertThat(cutting.bars().get(0).pieces()).extracting(TrimPiece::count).containsOnly(1);
  }

  @Test
  void theKerfOfARuleIsShownWithItsSource() {
    LayingRules rules = RuleSet.COMMON_PRACTICE.forBoard(mm(14), mm(185));
    String text = TrimCutting.of(pieces(1000), List.of(BAR), rules.get(LayingRules.SAW_KERF)).explain();
    assertThat(text).contains("c = 3 mm  (saw kerf; common practice, no source)");
  }

  /** Thousands of pieces of some lengths: bars filled by groups; whole floors of casings. Regression: proven fewest. */
  @Test
  void thousandsOfPieces() {
    List<TrimPiece> many = new ArrayList<>();
    for (int i = 0; i < 40; i++) {
      many.add(TrimPiece.of("length " + i, mm(310 + 47L * i)).times(60 + 3 * (i % 7)));
    }
    TrimCutting cutting = cut(many, List.of(BAR), 3);
    assertThat(cutting.isLeast()).isTrue();
    assertThat(cutting.bars().stream().mapToInt(bar -> bar.pieces().size()).sum())
        .isEqualTo(many.stream().mapToInt(TrimPiece::count).sum());
  }

  @Test
  void theSameAgain() {
    List<TrimPiece> wanted = pieces(1290, 985, 760, 760, 655, 640, 480, 480, 330, 2100, 1870, 1540);
    String once = TrimCutting.of(wanted, List.of(BAR), mm(3)).explain();
    assertThat(TrimCutting.of(wanted, List.of(BAR), mm(3)).explain()).isEqualTo(once);
  }

  @Test
  void badInputIsRefused() {
    assertThatThrownBy(() -> TrimCutting.of(List.of(), List.of(BAR), mm(3)))
        .isInstanceOf(IllegalArgumentException.class).hasMessage("there is no piece to cut; give at least one");
    assertThatThrownBy(() -> TrimCutting.of(pieces(100), List.of(), mm(3)))
        .hasMessage("there is no bar to cut from; give at least one length");
    assertThatThrownBy(() -> TrimCutting.of(List.of(TrimPiece.of("north wall", mm(2390)).withAllowance(mm(20))), List.of(BAR),
        mm(3))).hasMessage("piece 'north wall' is 2410 mm long with its allowance, the longest bar is 2400 mm; give longer"
            + " bars or have the piece made up of several, see TrimPiecing");
    assertThatThrownBy(() -> TrimCutting.of(pieces(100), List.of(BAR), mm(21))).hasMessageContaining("sawKerf");
    assertThatThrownBy(() -> TrimCutting.of(pieces(100), List.of(BAR, BAR), mm(3)))
        .hasMessage("the same bars are given twice; add their numbers up");
    assertThatThrownBy(() -> TrimCutting.of(pieces(100), List.of(BAR.at(eur("7")), TrimStock.sold(mm(3000))), mm(3)))
        .hasMessage("a price is missing; give the price of each length that is sold, or of none");
    assertThatThrownBy(() -> TrimCutting.of(pieces(100),
        List.of(BAR.at(eur("7")), TrimStock.sold(mm(3000)).at(new Price(BigDecimal.TEN, "AUD"))), mm(3)))
        .hasMessage("prices must be in one currency, but were in [AUD, EUR]");
    assertThatThrownBy(() -> TrimCutting.of(pieces(100), List.of(BAR.at(eur("1000001"))), mm(3)))
        .hasMessageContaining("must be at most 1000000 with at most 4 decimals, but was 1000001 EUR");
    assertThatThrownBy(() -> TrimCutting.of(pieces(100), List.of(TrimStock.sold(mm(100_001))), mm(3)))
        .hasMessage("a bar must be at most 100000 mm long, but was 100001 mm");
    assertThatThrownBy(() -> TrimCutting.of(List.of(TrimPiece.of("", mm(1)).times(20_001)), List.of(BAR), mm(3)))
        .hasMessageContaining("pieces must be at most 20000 in all, but were 20001");
    assertThatThrownBy(() -> TrimCutting.of(manyLengths(501), List.of(BAR), mm(3)))
        .hasMessageContaining("at most 500 different lengths, but were of 501");
  }

  private static List<TrimPiece> manyLengths(int number) {
    List<TrimPiece> pieces = new ArrayList<>();
    for (int i = 0; i < number; i++) {
      pieces.add(TrimPiece.of("", mm(500L + i)));
    }
    return pieces;
  }

  /** Two bars of 2400 mm hold no three pieces of 1290 mm. */
  @Test
  void tooFewBarsAreSaid() {
    assertThatThrownBy(() -> TrimCutting.of(pieces(1290, 1290, 1290), List.of(BAR.atMost(2)), mm(3)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("the bars that can be had do not suffice for all pieces, as far as was found; give more bars, or a"
            + " length that is sold without limit");
  }

  @Test
  void badStockAndPiecesAreRefused() {
    assertThatThrownBy(() -> TrimStock.sold(mm(0))).hasMessage("length of a bar must be more than 0 mm, but was 0 mm");
    assertThatThrownBy(() -> TrimStock.onHand(mm(5), 0))
        .hasMessage("number of bars of 5 mm must be at least 1, but was 0");
    assertThatThrownBy(() -> TrimStock.onHand(mm(5), 1).at(eur("1")))
        .hasMessage("bars of 5 mm are on hand and not bought; give them no price");
    assertThatThrownBy(() -> BAR.at(eur("0.00"))).hasMessageContaining("must be more than 0");
    assertThatThrownBy(() -> TrimPiece.of("sill", mm(-1)))
        .hasMessage("length of piece 'sill' must be more than 0 mm, but was -1 mm");
    assertThatThrownBy(() -> TrimPiece.of("sill", mm(1)).withAllowance(mm(-1)))
        .hasMessage("allowance of piece 'sill' must be 0 mm or more, but was -1 mm");
    assertThatThrownBy(() -> TrimPiece.of("sill", mm(1)).times(0))
        .hasMessage("count of piece 'sill' must be at least 1, but was 0");
  }

  @Test
  void stockSaysWhatItIs() {
    assertThat(BAR).hasToString("2400 mm, sold");
    assertThat(BAR.atMost(12).at(eur("7.80"))).hasToString("2400 mm, sold, at most 12, 7.80 EUR");
    assertThat(TrimStock.onHand(mm(1300), 2)).hasToString("1300 mm, on hand, 2");
    assertThat(BAR.limit()).isEmpty();
    assertThat(BAR.atMost(3).limit()).hasValue(3);
    assertThat(BAR).isEqualTo(TrimStock.sold(mm(2400))).hasSameHashCodeAs(TrimStock.sold(mm(2400)))
        .isNotEqualTo(TrimStock.onHand(mm(2400), 1));
  }
}
