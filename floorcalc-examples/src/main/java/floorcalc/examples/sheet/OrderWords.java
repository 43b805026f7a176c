package floorcalc.examples.sheet;

import floorcalc.materials.OrderLine;
import java.math.BigDecimal;
import java.util.Set;

/** How much to order, as one says it: 19 packs, 1 roll, 14.70 m. */
final class OrderWords {
  private static final Set<String> COUNTED = Set.of("pack", "roll", "bar", "bottle", "cartridge", "bag", "piece");

  private OrderWords() {
  }

  static String of(OrderLine line) {
    String first = line.unit().split(" ", 2)[0];
    boolean isOne = line.quantity().compareTo(BigDecimal.ONE) == 0;
    String unit = COUNTED.contains(first) && !isOne ? first + "s" + line.unit().substring(first.length()) : line.unit();
    return line.quantity().toPlainString() + " " + unit;
  }
}
