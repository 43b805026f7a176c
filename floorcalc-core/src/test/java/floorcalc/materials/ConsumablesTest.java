package floorcalc.materials;

import static floorcalc.working.StepChecks.assertStepsHold;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import floorcalc.boards.BoardGoods;
import floorcalc.measure.Length;
import floorcalc.measure.Mass;
import floorcalc.outline.Outline;
import floorcalc.outline.Wkt;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import java.math.BigDecimal;
import org.junit.jupiter.api.Test;

class ConsumablesTest {
  private static Length mm(long millimetres) {
    return Length.ofMillimetres(millimetres);
  }

  @Test
  void wedgesStandNoFartherApartThanTheSpacing() {
    // 4200 / 500 = 8.4: 9; 3500 / 500 = 7: 7; twice each: 32
    Outline room = Wkt.parse("POLYGON ((0 0, 4200 0, 4200 3500, 0 3500, 0 0))");
    Calculated<Long> wedges = Consumables.wedges("Study", room, Consumables.WEDGE_SPACING);
    assertThat(wedges.value()).isEqualTo(32);
    assertStepsHold(wedges);
    assertThat(wedges.explain()).contains("a = 500 mm  (spacing at most; common practice, no source)");
    // a column of 400 x 300: one at each corner, 4 more
    Outline column = Wkt.parse("POLYGON ((0 0, 4200 0, 4200 3500, 0 3500, 0 0), (2000 1000, 2400 1000, 2400 1300, 2000 1300,"
        + " 2000 1000))");
    assertThat(Consumables.wedges("Study", column, mm(500)).value()).isEqualTo(36);
    assertThatThrownBy(() -> Consumables.wedges("Study", room, Length.ZERO)).hasMessageContaining("more than 0 mm");
  }

  @Test
  void wholeUnits() {
    // 32 wedges in bags of 30: 2; 12.6 m of tape in rolls of 25 m: 1; exactly two rolls: 2
    assertThat(Consumables.whole("bags", "How many bags?", 32, 30).value()).isEqualTo(2);
    assertThat(Consumables.whole("tape", "How many rolls?", mm(12_600), mm(25_000)).value()).isEqualTo(1);
    Calculated<Long> two = Consumables.whole("tape", "How many rolls?", mm(50_000), mm(25_000));
    assertThat(two.value()).isEqualTo(2);
    assertStepsHold(two);
    assertThat(Consumables.whole("tape", "How many rolls?", Length.ZERO, mm(25_000)).value()).isZero();
  }

  @Test
  void cartridgesOfABead() {
    // 12 m of 10 x 6 mm: 1200 * 1 * 0.6 = 720 ml; a cartridge gives 310 * 0.9 = 279: 2.58, so 3
    Calculated<Long> sealant = Consumables.sealant(mm(12_000), mm(10), mm(6), Consumables.CARTRIDGE_MILLILITRES, Consumables.SEALANT_LOSS);
    assertThat(sealant.value()).isEqualTo(3);
    assertStepsHold(sealant);
    assertThatThrownBy(() -> Consumables.sealant(mm(1), mm(10), mm(6), BigDecimal.TEN, BigDecimal.ONE))
        .hasMessage("the loss must be a share from 0 to less than 1, but was 1");
  }

  @Test
  void packsAsTheyStand() {
    // 6 boards of 14 mm: 84 mm high; 2.2 * 0.185 * 0.084 = 0.034188 m³ a pack, 10 packs 0.34188; 1000 / 84 = 11 packs in a stack: one
    // stack of 2.2 * 0.185 = 0.407 m²; 10 * 19.4 = 194 kg
    BoardGoods goods = BoardGoods.of(mm(2200), mm(185), mm(14), 6).withPackMass(new Mass(new BigDecimal("19.4")));
    Calculated<PackStack> stack = PackStack.of(goods, 10, PackStack.STACK_HEIGHT);
    assertThat(stack.value().cubicMetres()).isEqualByComparingTo("0.34188");
    assertThat(stack.value().stacks()).isEqualTo(1);
    assertThat(stack.value().floorSpace()).hasToString("0.407 m²");
    assertThat(stack.value().mass().orElseThrow().kilograms()).isEqualByComparingTo("194");
    assertThat(stack.findings()).isEmpty();
    assertStepsHold(stack);
    // not above 200 mm: two packs in a stack, five stacks
    assertThat(PackStack.of(goods, 10, mm(200)).value().stacks()).isEqualTo(5);
    // and one by one where a pack is higher than the stack may be
    assertThat(PackStack.of(goods, 10, mm(50)).value().stacks()).isEqualTo(10);
  }

  @Test
  void aPackTooHeavyForOne() {
    BoardGoods goods = BoardGoods.of(mm(2200), mm(185), mm(14), 6);
    assertThat(PackStack.of(goods.withPackMass(new Mass(new BigDecimal("25"))), 3, mm(1000)).findings()).isEmpty();
    assertThat(PackStack.of(goods.withPackMass(new Mass(new BigDecimal("25.1"))), 3, mm(1000)).findings())
        .extracting(Finding::code).containsExactly("heavy-pack");
  }
}
