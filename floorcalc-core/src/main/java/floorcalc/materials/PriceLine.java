package floorcalc.materials;

import floorcalc.measure.Price;
import floorcalc.measure.UnitPrice;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Puts a price on an order line. */
final class PriceLine {
  private PriceLine() {}

  static OrderLine priced(OrderLine line, UnitPrice quoted, BigDecimal sold) {
    if (sold.signum() < 0) {
      throw new IllegalArgumentException(line.item() + ": what is sold must be 0 or more, but was " + sold.toPlainString());
    }
    Price total = new Price(quoted.price().amount().multiply(sold), quoted.price().currency());
    String unit = quoted.per() == UnitPrice.Per.UNIT ? line.unit() : quoted.per().words();
    List<Step> working = new ArrayList<>(line.working());
    working.add(new Step("line-price", "What does it cost, " + line.item() + "?", "C = n * c",
        List.of(Term.of("n", "how many: " + unit, sold), Term.of("c", "price of one " + unit, quoted.price())), total,
        Source.DEFINITION));
    return new OrderLine(line.item(), line.net(), line.quantity(), line.unit(), Optional.of(quoted), Optional.of(total), working);
  }
}
