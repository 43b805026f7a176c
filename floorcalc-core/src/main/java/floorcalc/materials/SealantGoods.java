package floorcalc.materials;

import floorcalc.measure.Length;
import floorcalc.measure.UnitPrice;
import java.io.Serializable;
import java.math.BigDecimal;
import java.util.Objects;
import java.util.Optional;

/**
 * Sealant in cartridges, for joints at frames that cannot be cut, at pipes and at end profiles.
 *
 * @param name what the order list calls it, not null, not blank
 * @param millilitres what a cartridge holds, not null, more than 0
 * @param loss what of it is lost, a share from 0 to less than 1; not null
 * @param width how wide the bead is, not null, more than 0 mm
 * @param depth how deep the bead is, not null, more than 0 mm
 * @param beads how long the beads are beside those along end profiles, as at frames that cannot be cut; not null, not negative
 * @param price a price of a cartridge, empty if not stated; not null
 * @since 0.1
 */
public record SealantGoods(String name, BigDecimal millilitres, BigDecimal loss, Length width, Length depth, Length beads,
    Optional<UnitPrice> price) implements Serializable {
  /** Checks that no part is null or out of range. */
  public SealantGoods {
    Objects.requireNonNull(millilitres, "millilitres");
    if (Objects.requireNonNull(name, "name").isBlank()) {
      throw new IllegalArgumentException("a sealant needs a name that is not blank");
    }
    Consumables.sealant(Length.ZERO, width, depth, millilitres, loss);
    if (beads.isNegative()) {
      throw new IllegalArgumentException(name + ": the beads must be 0 mm or longer, but were " + beads);
    }
    Objects.requireNonNull(price, "price");
  }

  private Object writeReplace() {
    return new Form(name, millilitres, loss, width, depth, beads, price.orElse(null));
  }

  /** What is written: an optional part by itself, or null. Reading goes through the constructor and its checks. */
  private record Form(String name, BigDecimal millilitres, BigDecimal loss, Length width, Length depth, Length beads,
      UnitPrice price) implements Serializable {

    private Object readResolve() {
      return new SealantGoods(name, millilitres, loss, width, depth, beads, Optional.ofNullable(price));
    }
  }
}
