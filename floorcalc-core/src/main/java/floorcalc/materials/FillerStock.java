package floorcalc.materials;

import floorcalc.levels.FillerGoods;
import floorcalc.measure.UnitPrice;
import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;

/**
 * Filler for the subfloor as it is ordered.
 *
 * @param name what the order list calls it, not null, not blank
 * @param goods its yield and its bag, not null
 * @param price a price of a bag, empty if not stated; not null
 * @since 0.1
 */
public record FillerStock(String name, FillerGoods goods, Optional<UnitPrice> price) implements Serializable {
  /** Checks that no part is null and that the name is not blank. */
  public FillerStock {
    if (Objects.requireNonNull(name, "name").isBlank()) {
      throw new IllegalArgumentException("a filler needs a name that is not blank");
    }
    Objects.requireNonNull(goods, "goods");
    Objects.requireNonNull(price, "price");
  }

  private Object writeReplace() {
    return new Form(name, goods, price.orElse(null));
  }

  /** What is written: an optional part by itself, or null. Reading goes through the constructor and its checks. */
  private record Form(String name, FillerGoods goods, UnitPrice price) implements Serializable {

    private Object readResolve() {
      return new FillerStock(name, goods, Optional.ofNullable(price));
    }
  }
}
