package floorcalc.materials;

import static floorcalc.working.StepChecks.assertHolds;
import static floorcalc.working.StepChecks.assertStepsHold;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import floorcalc.boards.BoardGoods;
import floorcalc.boards.PackContent;
import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.measure.Price;
import floorcalc.measure.UnitPrice;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CostSheetTest {
  private static Price price(String amount, String currency) {
    return new Price(new BigDecimal(amount), currency);
  }

  private static OrderLine line(String item, String quantity, String amount, String currency) {
    return OrderLine.of(item, "", new BigDecimal(quantity), "m", List.of())
        .at(new UnitPrice(price(amount, currency), UnitPrice.Per.METRE), new BigDecimal(quantity));
  }

  @Test
  void linesAreExactAndTheTotalIsRoundedOnce() {
    // 7 * 0.335 = 2.345 and 3 * 0.335 = 1.005; each rounded alone would be 2.35 + 1.01 = 3.36, the sum is 3.350
    Calculated<CostSheet> sheet = CostSheet.of(List.of(line("a", "7", "0.335", "EUR"), line("b", "3", "0.335", "EUR")));
    assertThat(sheet.value().total("EUR")).contains(price("3.35", "EUR"));
    assertStepsHold(sheet);
    OrderLine first = line("a", "7", "0.335", "EUR");
    assertThat(first.price()).contains(price("2.345", "EUR"));
    first.working().forEach(step -> assertHolds(step));
  }

  @ParameterizedTest
  @CsvSource({
      // half up to the decimals of the currency
      "2.345, EUR, 2.35",
      "2.344999, EUR, 2.34",
      "2.5, JPY, 3",
      "2.4995, KWD, 2.500",
      "2.3, USD, 2.30",
  })
  void roundsToTheDecimalsOfTheCurrency(String exact, String currency, String rounded) {
    assertThat(CostSheet.rounded(price(exact, currency))).isEqualTo(price(rounded, currency));
  }

  @Test
  void currenciesStayApartAndMissingPricesAreNamed() {
    Calculated<CostSheet> sheet = CostSheet.of(List.of(line("a", "2", "10", "USD"), line("b", "1", "5", "EUR"),
        OrderLine.of("wedges", "", BigDecimal.TEN, "piece", List.of())));
    assertThat(sheet.value().totals()).containsExactly(Map.entry("EUR", price("5.00", "EUR")), Map.entry("USD", price("20.00", "USD")));
    assertThat(sheet.value().unpriced()).containsExactly("wedges");
    assertThat(sheet.findings()).extracting(Finding::code).containsExactly("price-missing", "several-currencies");
    // no price at all: no total, and nothing missing
    assertThat(CostSheet.of(List.of(OrderLine.of("wedges", "", BigDecimal.TEN, "piece", List.of()))).findings()).isEmpty();
  }

  @Property(tries = 100)
  void linesAddUpExactly(@ForAll @Size(min = 1, max = 20) List<@IntRange(max = 100_000) Integer> thousandths) {
    List<OrderLine> lines = new ArrayList<>();
    BigDecimal sum = BigDecimal.ZERO;
    for (int i = 0; i < thousandths.size(); i++) {
      BigDecimal amount = BigDecimal.valueOf(thousandths.get(i), 3);
      lines.add(line("item " + i, Integer.toString(i), amount.toPlainString(), "EUR"));
      sum = sum.add(amount.multiply(BigDecimal.valueOf(i)));
    }
    Calculated<CostSheet> sheet = CostSheet.of(lines);
    assertThat(sheet.value().total("EUR").orElseThrow().amount()).isEqualTo(sum.setScale(2, RoundingMode.HALF_UP));
    assertStepsHold(sheet);
  }

  private static final Length LENGTH = Length.ofMillimetres(2000);
  private static final BoardGoods BOARDS = BoardGoods.of(LENGTH, Length.ofMillimetres(200), Length.ofMillimetres(14), 5);

  @Test
  void moneyInTheBoards() {
    // 38 boards used, 4 spare (10 %), 9 packs of 5 = 45 boards of 0.4 m² = 18 m²; the floor is 13.5 m². 9 * 99.90 = 899.10;
    // 4.5 of 18 m² are not on the floor: a quarter, 224.775, rounded 224.78. 7 boards over: 1 pack stays closed, 80 % of 99.90 = 79.92
    PackOrder order = PackOrder.of(BOARDS, Map.of(LENGTH, 38), new BigDecimal("0.1")).value();
    assertThat(order.packs()).isEqualTo(9);
    WasteLedger ledger = new WasteLedger(Area.ofSquareMetres("18"), Area.ofSquareMetres("13.5"), Area.ZERO, Area.ZERO,
        Area.ofSquareMetres("4.5"), Area.ZERO, Area.ZERO, Area.ZERO);
    Calculated<BoardMoney> money = BoardMoney.of(order, BOARDS.pack(), price("99.90", "EUR"), ledger, 1, new BigDecimal("0.8"));
    assertThat(money.value()).isEqualTo(new BoardMoney(price("899.10", "EUR"), price("224.78", "EUR"), 1, price("79.92", "EUR"),
        price("99.90", "EUR")));
    assertStepsHold(money);
  }

  @Test
  void roundsMoneyOffTheFloorOnce() {
    // 21 * 99.995 = 2099.895; 34 of 100 of it are 713.9643. Of 2099.90, which is rounded, it would be 713.966.
    PackOrder order = PackOrder.of(BOARDS, Map.of(BOARDS.longest(), 21 * BOARDS.boardsPerPack()), BigDecimal.ZERO).value();
    WasteLedger ledger = new WasteLedger(Area.ofSquareMillimetres(100), Area.ofSquareMillimetres(66), Area.ofSquareMillimetres(34), Area.ZERO, Area.ZERO,
        Area.ZERO, Area.ZERO, Area.ZERO);
    Calculated<BoardMoney> money = BoardMoney.of(order, BOARDS.pack(), price("99.995", "EUR"), ledger, 0, BigDecimal.ZERO);
    assertThat(money.value().boards()).isEqualTo(price("2099.90", "EUR"));
    assertThat(money.value().waste()).isEqualTo(price("713.96", "EUR"));
    assertStepsHold(money);
  }

  @Test
  void aMixedPackStaysClosedOnlyWhole() {
    // packs of 3 long and 2 short boards; 4 packs for 10 long and 3 short: over 2 long and 5 short, but no pack is whole
    Length shorter = Length.ofMillimetres(1200);
    BoardGoods mixed = BoardGoods.mixed(List.of(new PackContent(LENGTH, 3), new PackContent(shorter, 2)), Length.ofMillimetres(200),
        Length.ofMillimetres(14));
    PackOrder order = PackOrder.of(mixed, Map.of(LENGTH, 10, shorter, 3), BigDecimal.ZERO).value();
    Calculated<BoardMoney> money = BoardMoney.of(order, mixed.pack(), price("50", "GBP"), new WasteLedger(Area.ZERO, Area.ZERO, Area.ZERO,
        Area.ZERO, Area.ZERO, Area.ZERO, Area.ZERO, Area.ZERO), 0, BigDecimal.ONE);
    assertThat(money.value().unopened()).isZero();
    assertThat(money.value().waste()).isEqualTo(price("0.00", "GBP"));
    assertStepsHold(money);
  }

  @Test
  void outOfRangeIsRefused() {
    PackOrder order = PackOrder.of(BOARDS, Map.of(LENGTH, 38), BigDecimal.ZERO).value();
    WasteLedger none = new WasteLedger(Area.ZERO, Area.ZERO, Area.ZERO, Area.ZERO, Area.ZERO, Area.ZERO, Area.ZERO, Area.ZERO);
    assertThatThrownBy(() -> BoardMoney.of(order, BOARDS.pack(), price("1", "EUR"), none, -1, BigDecimal.ZERO))
        .hasMessage("packs kept back must be from 0 to 10000, but were -1");
    assertThatThrownBy(() -> BoardMoney.of(order, BOARDS.pack(), price("1", "EUR"), none, 0, new BigDecimal("1.1")))
        .hasMessage("the return value must be a share of the price from 0 to 1, but was 1.1");
    assertThatThrownBy(() -> OrderLine.of("x", "", new BigDecimal("-1"), "m", List.of()))
        .hasMessage("x: a quantity must be 0 or more, but was -1");
  }
}
