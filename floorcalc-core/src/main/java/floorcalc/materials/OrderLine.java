package floorcalc.materials;

import floorcalc.measure.Price;
import floorcalc.measure.UnitPrice;
import floorcalc.working.Step;
import java.io.Serializable;
import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * One line of an order list: what to buy, how much the floor takes, how much is ordered, what that costs, and how it was worked out.
 *
 * @param item what to buy, not null, not blank
 * @param net what the floor takes, with its unit; not null
 * @param quantity how much to buy, not null, not negative
 * @param unit the unit of the quantity, such as {@code "roll"}; not null
 * @param unitPrice the price as quoted, empty if not stated; not null
 * @param price the price of the quantity, exact, empty if not stated; not null
 * @param working how quantity and price were worked out, not null
 * @since 0.1
 */
public record OrderLine(String item, String net, BigDecimal quantity, String unit, Optional<UnitPrice> unitPrice,
    Optional<Price> price, List<Step> working) implements Serializable {
  /** Checks that no part is null or negative and copies the list. */
  public OrderLine {
    Objects.requireNonNull(working, "working");
    if (Objects.requireNonNull(item, "item").isBlank()) {
      throw new IllegalArgumentException("an order line needs an item that is not blank");
    }
    Objects.requireNonNull(net, "net");
    if (Objects.requireNonNull(quantity, "quantity").signum() < 0) {
      throw new IllegalArgumentException(item + ": a quantity must be 0 or more, but was " + quantity.toPlainString());
    }
    Objects.requireNonNull(unit, "unit");
    Objects.requireNonNull(unitPrice, "unitPrice");
    Objects.requireNonNull(price, "price");
    working = List.copyOf(working);
  }

  /**
   * Returns a line of which no price is stated.
   *
   * @param item what to buy, not null, not blank
   * @param net what the floor takes, with its unit; not null
   * @param quantity how much to buy, not null, not negative
   * @param unit the unit of the quantity, not null
   * @param working how the quantity was worked out, not null
   * @return the line, not null
   */
  public static OrderLine of(String item, String net, BigDecimal quantity, String unit, List<Step> working) {
    Objects.requireNonNull(working, "working");
    return new OrderLine(item, net, quantity, unit, Optional.empty(), Optional.empty(), working);
  }

  /**
   * Returns the same line with a price, worked out exactly and not rounded.
   *
   * @param quoted the price as quoted, not null
   * @param sold how much is sold in the unit that the price is for: rolls, square metres, metres; not null, not negative
   * @return the line with a step {@code line-price} more, not null
   */
  public OrderLine at(UnitPrice quoted, BigDecimal sold) {
    return PriceLine.priced(this, quoted, sold);
  }

  private Object writeReplace() {
    return new Form(item, net, quantity, unit, unitPrice.orElse(null), price.orElse(null), working);
  }

  /** What is written: an optional part by itself, or null. Reading goes through the constructor and its checks. */
  private record Form(String item, String net, BigDecimal quantity, String unit, UnitPrice unitPrice, Price price,
      List<Step> working) implements Serializable {

    private Object readResolve() {
      return new OrderLine(item, net, quantity, unit, Optional.ofNullable(unitPrice), Optional.ofNullable(price), working);
    }
  }
}
