package floorcalc.measure;

import java.io.Serializable;
import java.util.Objects;

/**
 * A price as it is quoted: so much for a pack, a square metre, a metre or a piece. Kept as typed.
 *
 * @param price the amount and its currency, not null
 * @param per what it is for one of, not null
 * @since 0.1
 */
public record UnitPrice(Price price, Per per) implements Serializable {
  /**
   * What a price is for.
   *
   * @since 0.1
   */
  public enum Per {
    /** One unit as it is sold: a pack, a roll, a bar, a cartridge. */
    UNIT("unit"),
    /** One square metre. */
    SQUARE_METRE("m²"),
    /** One metre. */
    METRE("m");

    private final String words;

    Per(String words) {
      this.words = words;
    }

    /**
     * Returns what it is for in short.
     *
     * @return for example {@code "m²"}, not null
     */
    public String words() {
      return words;
    }
  }

  /** Checks that no part is null. */
  public UnitPrice {
    Objects.requireNonNull(price, "price");
    Objects.requireNonNull(per, "per");
  }

  /**
   * Returns a price of one unit as it is sold.
   *
   * @param price the amount and its currency, not null
   * @return the price, not null
   */
  public static UnitPrice each(Price price) {
    return new UnitPrice(price, Per.UNIT);
  }

  @Override
  public String toString() {
    return price + " / " + per.words();
  }
}
