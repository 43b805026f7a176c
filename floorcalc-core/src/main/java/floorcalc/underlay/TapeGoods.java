package floorcalc.underlay;

import floorcalc.measure.Length;
import floorcalc.measure.UnitPrice;
import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;

/**
 * Tape for an underlay or a barrier.
 *
 * @param name what the order list calls it, not null, not blank
 * @param length what is on a roll, not null, more than 0 mm
 * @param along where it goes, not null
 * @param price a price of a roll or a metre, empty if not stated; not null
 * @since 0.1
 */
public record TapeGoods(String name, Length length, Along along, Optional<UnitPrice> price) implements Serializable {
  /**
   * Where tape goes.
   *
   * @since 0.1
   */
  public enum Along {
    /** Along the seams. */
    SEAMS,
    /** Along the seams, and along the walls and voids. */
    SEAMS_AND_WALLS
  }

  /** Checks that no part is null or out of range. */
  public TapeGoods {
    if (Objects.requireNonNull(name, "name").isBlank()) {
      throw new IllegalArgumentException("a tape needs a name that is not blank");
    }
    if (!Objects.requireNonNull(length, "length").isPositive()) {
      throw new IllegalArgumentException("a roll of tape must be more than 0 mm long, but was " + length);
    }
    Objects.requireNonNull(along, "along");
    Objects.requireNonNull(price, "price");
  }

  private Object writeReplace() {
    return new Form(name, length, along, price.orElse(null));
  }

  /** What is written: an optional part by itself, or null. Reading goes through the constructor and its checks. */
  private record Form(String name, Length length, Along along, UnitPrice price) implements Serializable {

    private Object readResolve() {
      return new TapeGoods(name, length, along, Optional.ofNullable(price));
    }
  }
}
