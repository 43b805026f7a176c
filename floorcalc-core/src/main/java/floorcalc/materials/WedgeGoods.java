package floorcalc.materials;

import floorcalc.measure.Length;
import floorcalc.measure.UnitPrice;
import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;

/**
 * Wedges or spacers that hold the gap while a floor is laid.
 *
 * @param name what the order list calls them, not null, not blank
 * @param perPack how many are sold together, at least 1
 * @param spacing how far apart they stand at most, not null, more than 0 mm
 * @param price a price of a pack of them, empty if not stated; not null
 * @since 0.1
 */
public record WedgeGoods(String name, int perPack, Length spacing, Optional<UnitPrice> price) implements Serializable {
  /** Checks that no part is null or out of range. */
  public WedgeGoods {
    if (Objects.requireNonNull(name, "name").isBlank()) {
      throw new IllegalArgumentException("wedges need a name that is not blank");
    }
    if (perPack < 1) {
      throw new IllegalArgumentException(name + ": a pack must hold at least 1, but held " + perPack);
    }
    if (!spacing.isPositive()) {
      throw new IllegalArgumentException("the spacing of wedges must be more than 0 mm, but was " + spacing);
    }
    Objects.requireNonNull(price, "price");
  }

  private Object writeReplace() {
    return new Form(name, perPack, spacing, price.orElse(null));
  }

  /** What is written: an optional part by itself, or null. Reading goes through the constructor and its checks. */
  private record Form(String name, int perPack, Length spacing, UnitPrice price) implements Serializable {

    private Object readResolve() {
      return new WedgeGoods(name, perPack, spacing, Optional.ofNullable(price));
    }
  }
}
