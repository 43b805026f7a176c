package floorcalc.trims;

import floorcalc.measure.Length;
import floorcalc.measure.Price;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A length of bar that pieces can be cut from: one that is sold, with or without a limited number, or one that is on hand,
 * such as an offcut, and need not be bought. Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class TrimStock {
  private final Length length;
  private final int limit;
  private final Price price;
  private final boolean onHand;

  private TrimStock(Length length, int limit, Price price, boolean onHand) {
    if (!Objects.requireNonNull(length, "length").isPositive()) {
      throw new IllegalArgumentException("length of a bar must be more than 0 mm, but was " + length);
    }
    if (limit < 1) {
      throw new IllegalArgumentException("number of bars of " + length + " must be at least 1, but was " + limit);
    }
    this.length = length;
    this.limit = limit;
    this.price = price;
    this.onHand = onHand;
  }

  /**
   * Returns a length that is sold, as many bars as are wanted.
   *
   * @param length the length of a bar, not null, more than zero
   * @return the stock, not null
   */
  public static TrimStock sold(Length length) {
    return new TrimStock(length, Problem.NO_LIMIT, null, false);
  }

  /**
   * Returns bars that are there already: whole bars, or offcuts. They are not bought.
   *
   * @param length the length of a bar, not null, more than zero
   * @param number how many there are, at least 1
   * @return the stock, not null
   */
  public static TrimStock onHand(Length length, int number) {
    return new TrimStock(length, number, null, true);
  }

  /**
   * Returns the same bars in limited number.
   *
   * @param number how many can be had, at least 1
   * @return the stock, not null
   */
  public TrimStock atMost(int number) {
    return new TrimStock(length, number, price, onHand);
  }

  /**
   * Returns the same bars at a price.
   *
   * @param each the price of one bar, not null, more than zero
   * @return the stock, not null
   * @throws IllegalArgumentException if the bars are on hand, or the price is zero
   */
  public TrimStock at(Price each) {
    if (onHand) {
      throw new IllegalArgumentException("bars of " + length + " are on hand and not bought; give them no price");
    }
    if (Objects.requireNonNull(each, "each").amount().signum() == 0) {
      throw new IllegalArgumentException("price of a bar of " + length + " must be more than 0; bars that cost nothing are"
          + " on hand");
    }
    return new TrimStock(length, limit, each, false);
  }

  /**
   * Returns the length of a bar.
   *
   * @return the length, not null
   */
  public Length length() {
    return length;
  }

  /**
   * Returns how many can be had, if their number is limited.
   *
   * @return the number, not null
   */
  public OptionalInt limit() {
    return limit == Problem.NO_LIMIT ? OptionalInt.empty() : OptionalInt.of(limit);
  }

  /**
   * Returns the price of a bar, if it is known.
   *
   * @return the price, not null
   */
  public Optional<Price> price() {
    return Optional.ofNullable(price);
  }

  /**
   * Tells whether the bars are there already and not bought.
   *
   * @return true for bars on hand
   */
  public boolean isOnHand() {
    return onHand;
  }

  int most() {
    return limit;
  }

  @Override
  public boolean equals(Object object) {
    return object instanceof TrimStock other && length.equals(other.length) && limit == other.limit
        && onHand == other.onHand && Objects.equals(price, other.price);
  }

  @Override
  public int hashCode() {
    return Objects.hash(length, limit, onHand, price);
  }

  /**
   * Returns one line.
   *
   * @return such as {@code "2400 mm, sold, at most 12, 7.80 EUR"}, not null
   */
  @Override
  public String toString() {
    String text = length + (onHand ? ", on hand, " + limit : ", sold");
    if (!onHand && limit != Problem.NO_LIMIT) {
      text += ", at most " + limit;
    }
    return price == null ? text : text + ", " + price;
  }
}
