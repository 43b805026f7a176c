package floorcalc.underlay;

import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.trims.TrimCutting;
import floorcalc.working.Calculated;
import java.util.List;
import java.util.Objects;

/**
 * How many rolls of an underlay or a barrier to order for some floors, and which strip is cut from which roll.
 * <p>
 * Each floor is laid in the direction, of those allowed, and from the side that takes the fewest rolls in all; of equals the one with the
 * least seam, then the one with the least length cut. Strips of all floors are cut from the same rolls, the rest of a roll
 * serves the next floor. The number of rolls stands beside a bound that no cutting of these strips can be below.
 * <pre>{@code
 * RollOrder order = RollOrder.of(RollGoods.underlay("foam", Length.parse("1 m"), Length.parse("15 m")),
 *     List.of(CoveredRoom.bothWays("Study", outline, Direction.ALONG_X))).value();
 * order.rolls();
 * }</pre>
 * Immutable and thread-safe. See {@code docs/underlay.md}.
 *
 * @since 0.1
 */
public final class RollOrder {
  private final RollGoods roll;
  private final List<StripLayout> layouts;
  private final TrimCutting cutting;

  RollOrder(RollGoods roll, List<StripLayout> layouts, TrimCutting cutting) {
    this.roll = roll;
    this.layouts = List.copyOf(layouts);
    this.cutting = cutting;
  }

  /**
   * Covers floors with strips and cuts them from rolls.
   *
   * @param roll the goods, not null
   * @param rooms the floors in laying order, not null, not empty
   * @return the order with the steps of each {@link StripLayout}, then {@code net-area}, the bounds on rolls, {@code rolls}, {@code strips-from-rolls},
   *     {@code area-bought} and {@code over-net}; findings {@code strip-lengths-rounded} and {@code fewest-not-proven}; not null
   * @throws IllegalArgumentException if there is no floor, or more than 20 000 strips would be needed
   */
  public static Calculated<RollOrder> of(RollGoods roll, List<CoveredRoom> rooms) {
    Objects.requireNonNull(rooms, "rooms");
    return new RollSearch(roll, rooms).order();
  }

  /**
   * Returns the goods.
   *
   * @return the goods, not null
   */
  public RollGoods roll() {
    return roll;
  }

  /**
   * Returns the strips of each floor.
   *
   * @return an unmodifiable list in the order of the floors, not null
   */
  public List<StripLayout> layouts() {
    return layouts;
  }

  /**
   * Returns which strip is cut from which roll.
   *
   * @return the cutting, not null
   */
  public TrimCutting cutting() {
    return cutting;
  }

  /**
   * Returns the whole rolls to order.
   *
   * @return at least 1
   */
  public int rolls() {
    return cutting.barsBought();
  }

  /**
   * Returns a number of rolls that no cutting of these strips can be below.
   *
   * @return the bound
   */
  public long rollsAtLeast() {
    return cutting.leastBarsBought();
  }

  /**
   * Tells whether it is proven that these strips cannot be cut from fewer rolls.
   *
   * @return true if the bound is reached
   */
  public boolean isProvenFewest() {
    return cutting.isLeast();
  }

  /**
   * Returns the length of all seams, which is what tape along them takes.
   *
   * @return the length, not null
   */
  public Length seamLength() {
    return layouts.stream().map(StripLayout::seamLength).reduce(Length.ZERO, Length::plus);
  }

  /**
   * Returns the length of all walls and voids, which is what tape along the edges takes.
   *
   * @return the length, not null
   */
  public Length edgeLength() {
    return layouts.stream().map(layout -> layout.room().outline().perimeter()).reduce(Length.ZERO, Length::plus);
  }

  /**
   * Returns the area of the floors, without laps and upturns: what glue covers.
   *
   * @return the area, not null
   */
  public Area netArea() {
    return layouts.stream().map(StripLayout::netArea).reduce(Area.ZERO, Area::plus);
  }

  /**
   * Returns the area of the rolls to order.
   *
   * @return the area, not null
   */
  public Area boughtArea() {
    return roll.area().multipliedBy(rolls());
  }
}
