package floorcalc.materials;

import floorcalc.boards.BoardGoods;
import floorcalc.boards.PackContent;
import floorcalc.measure.Length;
import floorcalc.measure.Mass;
import floorcalc.measure.Price;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleValue;
import floorcalc.working.Calculated;
import floorcalc.working.Source;
import java.math.BigDecimal;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * How many packs to order for the boards that a plan uses, and what will be left over.
 * <p>
 * With {@code u} boards used, {@code q} the spare share and {@code k} boards in a pack, {@code s = ceil(q * u)} boards
 * are kept spare and {@code P = ceil((u + s) / k)} packs are ordered. Of packs with several lengths there must also be
 * enough for each length: {@code P >= ceil(ui / ki)}. What is in the packs beyond the boards used is left over: first
 * the spare boards, the longest ones, since a long board can stand in for any other; the rest is pack rounding.
 * <pre>{@code
 * PackOrder order = PackOrder.of(goods, Map.of(Length.ofMillimetres(2200), 57), new BigDecimal("0.02")).value();
 * order.packs();   // 10 packs of 6: 57 used, 2 spare, 1 over
 * }</pre>
 * Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class PackOrder {
  private final BoardGoods goods;
  private final Map<Length, Integer> usedByLength;
  private final Map<Length, Integer> spareByLength;
  private final int boardsUsed;
  private final int spare;
  private final int packs;

  PackOrder(BoardGoods goods, Map<Length, Integer> usedByLength, int boardsUsed, int spare, int packs) {
    this.goods = goods;
    this.usedByLength = usedByLength;
    this.boardsUsed = boardsUsed;
    this.spare = spare;
    this.packs = packs;
    Map<Length, Integer> spares = new LinkedHashMap<>();
    int toFind = spare;
    for (PackContent content : goods.pack()) {
      int kept = Math.min(toFind, packs * content.perPack() - usedByLength.get(content.length()));
      spares.put(content.length(), kept);
      toFind -= kept;
    }
    this.spareByLength = Collections.unmodifiableMap(spares);
  }

  /**
   * Works out the packs, with a spare share of the caller's own.
   *
   * @param goods the boards as they are sold, not null
   * @param boardsUsed how many boards of each length are used; a length that is sold and not named counts as none; not
   *     null
   * @param spareShare the spare boards as a share of those used, from 0 to 1, not null
   * @return the order with the steps {@code boards-used}, {@code spare-boards}, {@code packs}, {@code boards-in-packs},
   *     {@code pack-rounding}, and {@code order-price} and {@code order-mass} where known; findings
   *     {@code packs-for-one-length}; not null
   * @throws IllegalArgumentException if a length is not sold, a number is negative or too large, or the share is out
   *     of bounds
   */
  public static Calculated<PackOrder> of(BoardGoods goods, Map<Length, Integer> boardsUsed, BigDecimal spareShare) {
    return of(goods, boardsUsed, new RuleValue<>(LayingRules.SPARE_SHARE, spareShare, Source.GIVEN));
  }

  /**
   * Works out the packs, with the spare share of a rule.
   *
   * @param goods the boards as they are sold, not null
   * @param boardsUsed how many boards of each length are used; a length that is sold and not named counts as none; not
   *     null
   * @param spareShare the rule on spare boards, see {@link LayingRules#SPARE_SHARE}; not null
   * @return the order, as {@link #of(BoardGoods, Map, BigDecimal)}; not null
   * @throws IllegalArgumentException if a length is not sold, or a number is negative or too large
   */
  public static Calculated<PackOrder> of(BoardGoods goods, Map<Length, Integer> boardsUsed,
      RuleValue<BigDecimal> spareShare) {
    Objects.requireNonNull(goods, "goods");
    Objects.requireNonNull(spareShare, "spareShare");
    Map<Length, Integer> used = new LinkedHashMap<>();
    goods.lengths().forEach(length -> used.put(length, 0));
    boardsUsed.forEach((length, number) -> {
      if (!used.containsKey(length)) {
        throw new IllegalArgumentException("boards of " + length + " are used but not sold; sold are " + used.keySet());
      }
      if (number < 0) {
        throw new IllegalArgumentException("boards of " + length + " used must be 0 or more, but was " + number);
      }
      used.put(length, number);
    });
    return new PackWorking(goods, Collections.unmodifiableMap(used), spareShare).order();
  }

  /**
   * Returns the boards that the plan uses, all lengths together.
   *
   * @return not negative
   */
  public int boardsUsed() {
    return boardsUsed;
  }

  /**
   * Returns the boards used of each length sold, longest first.
   *
   * @return an unmodifiable map, not null
   */
  public Map<Length, Integer> usedByLength() {
    return usedByLength;
  }

  /**
   * Returns the boards kept for mistakes and repairs.
   *
   * @return not negative
   */
  public int spare() {
    return spare;
  }

  /**
   * Returns the spare boards of each length sold, longest first: the longest boards that are left over.
   *
   * @return an unmodifiable map, not null
   */
  public Map<Length, Integer> spareByLength() {
    return spareByLength;
  }

  /**
   * Returns the whole packs to order.
   *
   * @return not negative
   */
  public int packs() {
    return packs;
  }

  /**
   * Returns the boards in these packs.
   *
   * @return not negative
   */
  public int boardsInPacks() {
    return packs * goods.boardsPerPack();
  }

  /**
   * Returns the boards over because packs are sold whole: neither used nor kept as spare.
   *
   * @return not negative
   */
  public int packRounding() {
    return boardsInPacks() - boardsUsed - spare;
  }

  /**
   * Returns the boards of each length sold, longest first, that are in the packs and not used, spare ones included.
   *
   * @return an unmodifiable map, not null
   */
  public Map<Length, Integer> leftOver() {
    Map<Length, Integer> over = new LinkedHashMap<>();
    goods.pack().forEach(content -> over.put(content.length(),
        packs * content.perPack() - usedByLength.get(content.length())));
    return Collections.unmodifiableMap(over);
  }

  /**
   * Returns the price of the packs, if the price of one is known.
   *
   * @return the total, exact, may be empty, not null
   */
  public Optional<Price> price() {
    return goods.packPrice().map(one -> new Price(one.amount().multiply(BigDecimal.valueOf(packs)), one.currency()));
  }

  /**
   * Returns the mass of the packs, if the mass of one is known.
   *
   * @return the total, exact, may be empty, not null
   */
  public Optional<Mass> mass() {
    return goods.packMass().map(one -> new Mass(one.kilograms().multiply(BigDecimal.valueOf(packs))));
  }

  /**
   * Returns how much more is ordered than used, as a percentage of the boards used; for display beside the numbers.
   *
   * @param decimals the decimals to round to, half away from zero; not negative
   * @return spare boards and pack rounding in % of the boards used; 0 if none are used; not null
   */
  public BigDecimal perCentOverUsed(int decimals) {
    return PerCent.of(BigDecimal.valueOf(spare + packRounding()), BigDecimal.valueOf(boardsUsed), decimals);
  }
}
