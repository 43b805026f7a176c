package floorcalc.materials;

import static floorcalc.working.StepChecks.assertStepsHold;
import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.boards.BoardGoods;
import floorcalc.boards.PackContent;
import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;

class PackOrderPropertyTest {

  @Property
  void packsAreEnoughAndOneLessWouldNotBe(@ForAll @Size(min = 1, max = 4) List<@IntRange(min = 1, max = 8) Integer> perPack,
      @ForAll @Size(4) List<@IntRange(max = 60) Integer> numbers, @ForAll @IntRange(max = 100) int perCent) {
    List<PackContent> pack = new ArrayList<>();
    Map<Length, Integer> used = new LinkedHashMap<>();
    for (int i = 0; i < perPack.size(); i++) {
      Length length = Length.ofMillimetres(600L + 300L * i);
      pack.add(new PackContent(length, perPack.get(i)));
      used.put(length, numbers.get(i));
    }
    BoardGoods goods = BoardGoods.mixed(pack, Length.ofMillimetres(185), Length.ofMillimetres(14));
    Calculated<PackOrder> calculated = PackOrder.of(goods, used, BigDecimal.valueOf(perCent, 2));
    PackOrder order = calculated.value();

    int total = used.values().stream().mapToInt(Integer::intValue).sum();
    assertThat(order.boardsUsed()).isEqualTo(total);
    assertThat(order.spare() * 100).isBetween(total * perCent, total * perCent + 99);
    assertThat(enough(goods, used, total + order.spare(), order.packs())).isTrue();
    assertThat(order.packs() > 0 && enough(goods, used, total + order.spare(), order.packs() - 1)).isFalse();
    assertThat(order.boardsUsed() + order.spare() + order.packRounding()).isEqualTo(order.boardsInPacks());
    assertThat(order.packRounding()).isNotNegative();
    assertThat(order.leftOver().values()).allMatch(over -> over >= 0);
    assertThat(order.leftOver().values().stream().mapToInt(Integer::intValue).sum())
        .isEqualTo(order.spare() + order.packRounding());
    assertThat(order.spareByLength().values().stream().mapToInt(Integer::intValue).sum()).isEqualTo(order.spare());
    order.spareByLength().forEach((length, kept) -> assertThat(kept).isBetween(0, order.leftOver().get(length)));
    assertStepsHold(calculated);
  }

  private static boolean enough(BoardGoods goods, Map<Length, Integer> used, int boards, int packs) {
    return packs * goods.boardsPerPack() >= boards && goods.pack().stream()
        .allMatch(content -> packs * content.perPack() >= used.get(content.length()));
  }
}
