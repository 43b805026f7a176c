package floorcalc.trims;

import floorcalc.measure.Length;
import floorcalc.rules.RuleValue;
import floorcalc.working.Calculated;
import java.util.List;
import java.util.Objects;

/**
 * How many bars of a skirting, a quadrant or a profile to order, and which piece is cut from which bar. Pieces of all rooms are cut
 * together, so the rest of a bar serves the next room. Immutable and thread-safe. See {@code docs/skirting.md}.
 *
 * @since 0.1
 */
public final class BarOrder {
  private final BarGoods bars;
  private final TrimCutting cutting;
  private final Length net;

  BarOrder(BarGoods bars, TrimCutting cutting, Length net) {
    this.bars = bars;
    this.cutting = cutting;
    this.net = net;
  }

  /**
   * Orders skirting for rooms.
   *
   * @param bars the goods, not null
   * @param rooms the runs of each room, not null; at least one run in all
   * @param sawKerf the rule on the saw kerf, not null
   * @return the order; its steps are those of each run made up of parts, of the cutting, {@code bars-to-order} and {@code pieces-from-bars}; findings
   *     {@code no-bar-long-enough}, {@code fewest-not-proven}; not null
   * @throws IllegalArgumentException if there is no run or there are too many pieces, see {@link TrimCutting}
   */
  public static Calculated<BarOrder> ofRuns(BarGoods bars, List<TrimRuns> rooms, RuleValue<Length> sawKerf) {
    Objects.requireNonNull(sawKerf, "sawKerf");
    return new BarSearch(bars, sawKerf).ofRuns(rooms);
  }

  /**
   * Orders bars for pieces of given lengths, such as profiles.
   *
   * @param bars the goods, not null
   * @param pieces the pieces wanted, to which the allowance of the goods is added; not null, not empty
   * @param sawKerf the rule on the saw kerf, not null
   * @return the order, as {@link #ofRuns}; not null
   * @throws IllegalArgumentException if there is no piece or there are too many, see {@link TrimCutting}
   */
  public static Calculated<BarOrder> ofPieces(BarGoods bars, List<TrimPiece> pieces, RuleValue<Length> sawKerf) {
    Objects.requireNonNull(sawKerf, "sawKerf");
    return new BarSearch(bars, sawKerf).ofPieces(pieces);
  }

  /**
   * Returns the goods.
   *
   * @return the goods, not null
   */
  public BarGoods bars() {
    return bars;
  }

  /**
   * Returns which piece is cut from which bar.
   *
   * @return the cutting, not null
   */
  public TrimCutting cutting() {
    return cutting;
  }

  /**
   * Returns the length that the rooms take, at the walls.
   *
   * @return the length, not null
   */
  public Length net() {
    return net;
  }

  /**
   * Returns the bars to order, all lengths together.
   *
   * @return at least 1
   */
  public int number() {
    return cutting.barsBought();
  }

  /**
   * Returns the length of the bars to order.
   *
   * @return the length, not null
   */
  public Length lengthBought() {
    return cutting.lengthBought();
  }
}
