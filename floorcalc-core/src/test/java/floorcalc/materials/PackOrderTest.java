package floorcalc.materials;

import static floorcalc.working.StepChecks.assertStepsHold;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import floorcalc.boards.BoardGoods;
import floorcalc.boards.PackContent;
import floorcalc.measure.Length;
import floorcalc.measure.Mass;
import floorcalc.measure.Price;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleSet;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PackOrderTest {
  private static final Length LONG = Length.ofMillimetres(2200);
  private static final Length MIDDLE = Length.ofMillimetres(1800);
  private static final Length SHORT = Length.ofMillimetres(1200);
  private static final Length WIDTH = Length.ofMillimetres(185);
  private static final Length THICKNESS = Length.ofMillimetres(14);
  private static final BoardGoods SIX = BoardGoods.of(LONG, WIDTH, THICKNESS, 6);
  private static final BoardGoods MIXED = BoardGoods.mixed(
      List.of(new PackContent(MIDDLE, 3), new PackContent(SHORT, 2), new PackContent(LONG, 1)), WIDTH, THICKNESS);
  private static final BigDecimal TWO_PER_CENT = new BigDecimal("0.02");

  @ParameterizedTest
  @CsvSource({
      // used, share, spare = ceil(used * share), packs = ceil((used + spare) / 6), over
      "57,  0.02, 2, 10, 1",
      "50,  0.02, 1, 9,  3",
      "51,  0.02, 2, 9,  1",
      "58,  0.02, 2, 10, 0",
      "60,  0,    0, 10, 0",
      "60,  1,    60, 20, 0",
      "1,   0.001, 1, 1, 4",
      "0,   0.5,  0, 0,  0",
  })
  void packsOfOneLength(int used, BigDecimal share, int spare, int packs, int over) {
    Calculated<PackOrder> order = PackOrder.of(SIX, Map.of(LONG, used), share);
    assertThat(order.value().boardsUsed()).isEqualTo(used);
    assertThat(order.value().spare()).isEqualTo(spare);
    assertThat(order.value().packs()).isEqualTo(packs);
    assertThat(order.value().boardsInPacks()).isEqualTo(packs * 6);
    assertThat(order.value().packRounding()).isEqualTo(over);
    assertThat(order.value().leftOver()).containsExactly(Map.entry(LONG, spare + over));
    assertThat(order.findings()).isEmpty();
    assertStepsHold(order);
  }

  @Test
  void spareShareOfARuleIsNamedInTheWorking() {
    Calculated<PackOrder> order = PackOrder.of(SIX, Map.of(LONG, 57),
        RuleSet.COMMON_PRACTICE.forBoard(THICKNESS, WIDTH).get(LayingRules.SPARE_SHARE));
    assertThat(order.explain()).isEqualTo("""
        boards-used: How many boards are used?
          u = u1
            u1 = 57  (boards of 2200 mm used)
          = 57  [definition]
        spare-boards: How many boards are kept for mistakes and repairs?
          s = ceil(q * u)
            q = 0.02  (spare share; common practice, no source)
            u = 57  (boards used)
          = 2  [definition]
        packs: How many whole packs hold the boards used and the spare ones?
          P = ceil((u + s) / k)
            u = 57  (boards used)
            s = 2  (spare boards)
            k = 6  (boards in a pack)
          = 10  [definition]
        boards-in-packs: How many boards are in the packs?
          b = P * k
            P = 10  (packs)
            k = 6  (boards in a pack)
          = 60  [definition]
        pack-rounding: How many boards are over because packs are sold whole?
          o = b - u - s
            b = 60  (boards in the packs)
            u = 57  (boards used)
            s = 2  (spare boards)
          = 1  [definition]""");
  }

  @Test
  void mixedPacksCoverEachLength() {
    // 6 boards a pack: ceil((20 + 1) / 6) = 4 packs hold the number, but 6 long boards at one a pack need 6
    Calculated<PackOrder> order = PackOrder.of(MIXED, Map.of(LONG, 6, MIDDLE, 10, SHORT, 4), TWO_PER_CENT);
    assertThat(order.value().packs()).isEqualTo(6);
    assertThat(order.value().usedByLength()).containsExactly(Map.entry(LONG, 6), Map.entry(MIDDLE, 10), Map.entry(SHORT, 4));
    assertThat(order.value().leftOver()).containsExactly(Map.entry(LONG, 0), Map.entry(MIDDLE, 8), Map.entry(SHORT, 8));
    assertThat(order.value().spareByLength()).containsExactly(Map.entry(LONG, 0), Map.entry(MIDDLE, 1), Map.entry(SHORT, 0));
    assertThat(order.value().packRounding()).isEqualTo(15);
    assertThat(order.findings()).singleElement().satisfies(finding -> {
      assertThat(finding.code()).isEqualTo("packs-for-one-length");
      assertThat(finding.message()).isEqualTo("6 packs are needed for the 6 boards of 2200 mm, 4 would hold the number of"
          + " boards; use longer boards for some of these or ask for single boards");
    });
    assertStepsHold(order);
  }

  @Test
  void mixedPacksThatTheTotalGoverns() {
    // 12 + 1 spare = 13 in packs of 6: 3; each length would do with 2
    Calculated<PackOrder> order = PackOrder.of(MIXED, Map.of(MIDDLE, 6, SHORT, 4, LONG, 2), TWO_PER_CENT);
    assertThat(order.value().packs()).isEqualTo(3);
    assertThat(order.value().spareByLength().get(LONG)).isEqualTo(1);
    assertThat(order.findings()).isEmpty();
    assertStepsHold(order);
  }

  @Test
  void lengthsNotUsedCountAsNone() {
    PackOrder order = PackOrder.of(MIXED, Map.of(MIDDLE, 3), BigDecimal.ZERO).value();
    assertThat(order.packs()).isEqualTo(1);
    assertThat(order.leftOver()).containsExactly(Map.entry(LONG, 1), Map.entry(MIDDLE, 0), Map.entry(SHORT, 2));
  }

  @Test
  void priceAndMassWhereKnown() {
    BoardGoods priced = SIX.withPackPrice(new Price(new BigDecimal("118.40"), "EUR"))
        .withPackMass(new Mass(new BigDecimal("19.4")));
    Calculated<PackOrder> order = PackOrder.of(priced, Map.of(LONG, 57), TWO_PER_CENT);
    assertThat(order.value().price()).contains(new Price(new BigDecimal("1184.00"), "EUR"));
    assertThat(order.value().mass()).contains(new Mass(new BigDecimal("194.0")));
    assertThat(order.steps()).hasSize(7);
    assertThat(order.steps().get(5).question()).isEqualTo("What do the packs cost?");
    assertStepsHold(order);
    assertThat(PackOrder.of(SIX, Map.of(LONG, 57), TWO_PER_CENT).value().price()).isEmpty();
    assertThat(PackOrder.of(SIX, Map.of(LONG, 57), TWO_PER_CENT).value().mass()).isEmpty();
  }

  @Test
  void percentageStandsBeside() {
    // 3 of 57 over: 5.263...
    PackOrder order = PackOrder.of(SIX, Map.of(LONG, 57), TWO_PER_CENT).value();
    assertThat(order.perCentOverUsed(1)).isEqualTo(new BigDecimal("5.3"));
    assertThat(order.perCentOverUsed(0)).isEqualTo(new BigDecimal("5"));
    assertThat(PackOrder.of(SIX, Map.of(), TWO_PER_CENT).value().perCentOverUsed(1)).isEqualTo(new BigDecimal("0.0"));
    assertThatThrownBy(() -> order.perCentOverUsed(13)).hasMessage("decimals must be 0 to 12, but was 13");
  }

  @Test
  void wrongNumbersAreRefused() {
    assertThatThrownBy(() -> PackOrder.of(SIX, Map.of(SHORT, 1), TWO_PER_CENT)).isInstanceOf(IllegalArgumentException.class)
        .hasMessage("boards of 1200 mm are used but not sold; sold are [2200 mm]");
    assertThatThrownBy(() -> PackOrder.of(SIX, Map.of(LONG, -1), TWO_PER_CENT))
        .hasMessage("boards of 2200 mm used must be 0 or more, but was -1");
    assertThatThrownBy(() -> PackOrder.of(SIX, Map.of(LONG, 1), new BigDecimal("2")))
        .hasMessage("spareShare must be from 0 to 1, but was 2; give 2 % as 0.02");
    assertThatThrownBy(() -> PackOrder.of(SIX, Map.of(LONG, Integer.MAX_VALUE), TWO_PER_CENT)).hasMessage(
        "boards used would be 2147483647, more than can be counted; check the boards used");
  }
}
