package floorcalc.materials;

import floorcalc.measure.UnitPrice;
import java.io.Serializable;
import java.math.BigDecimal;
import java.util.Objects;
import java.util.Optional;

/**
 * Glue in bottles, for the pieces behind pipes.
 *
 * @param name what the order list calls it, not null, not blank
 * @param millilitres what a bottle holds, not null, more than 0
 * @param perPiece what a piece takes in millilitres, not null, more than 0
 * @param price a price of a bottle, empty if not stated; not null
 * @since 0.1
 */
public record GlueGoods(String name, BigDecimal millilitres, BigDecimal perPiece, Optional<UnitPrice> price)
    implements Serializable {
  /** Checks that no part is null or out of range. */
  public GlueGoods {
    if (Objects.requireNonNull(name, "name").isBlank()) {
      throw new IllegalArgumentException("a glue needs a name that is not blank");
    }
    if (millilitres.signum() <= 0 || perPiece.signum() <= 0) {
      throw new IllegalArgumentException(name + ": a bottle must hold and a piece take more than 0 ml, but they were "
          + millilitres.toPlainString() + " and " + perPiece.toPlainString() + " ml");
    }
    Objects.requireNonNull(price, "price");
  }

  private Object writeReplace() {
    return new Form(name, millilitres, perPiece, price.orElse(null));
  }

  /** What is written: an optional part by itself, or null. Reading goes through the constructor and its checks. */
  private record Form(String name, BigDecimal millilitres, BigDecimal perPiece, UnitPrice price) implements Serializable {

    private Object readResolve() {
      return new GlueGoods(name, millilitres, perPiece, Optional.ofNullable(price));
    }
  }
}
