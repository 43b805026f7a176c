package floorcalc.trims;

import floorcalc.measure.Length;
import floorcalc.measure.Price;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleValue;
import floorcalc.working.Calculated;
import floorcalc.working.Source;
import floorcalc.working.Step;
import java.math.BigDecimal;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * Which piece of skirting, profile or casing is cut from which bar, so that as little as possible is bought.
 * <p>
 * With one length sold, the fewest bars; with several, the least length bought in all, or the least cost if prices are given.
 * Bars on hand are not bought and count nothing. Of cuttings that buy as little, the one with the longest single leftover
 * that the same bars can give is looked for, and then few cuts. A bound shows what no cutting can do without; where it is
 * reached, the cutting is {@linkplain #isLeast() proven} to buy the least.
 * <pre>{@code
 * TrimCutting cutting = TrimCutting.of(
 *     List.of(TrimPiece.of("long wall", Length.parse("1290 mm")).times(3), TrimPiece.of("niche", Length.parse("520 mm"))),
 *     List.of(TrimStock.sold(Length.parse("2400 mm"))), Length.parse("3 mm")).value();
 * cutting.bars().size();   // 3
 * }</pre>
 * Lengths are exact; nothing here rounds. The search takes counted steps, never time, so the result is the same everywhere.
 * Immutable and thread-safe. See {@code docs/trims.md}.
 *
 * @since 0.1
 */
public final class TrimCutting {
  private final List<TrimBar> bars;
  private final Length leastLength;
  private final Price leastPrice;
  private final long leastBars;
  private final boolean least;
  private final boolean longest;

  TrimCutting(List<TrimBar> bars, Length leastLength, Price leastPrice, long leastBars, Proof proof) {
    this.bars = List.copyOf(bars);
    this.leastLength = leastLength;
    this.leastPrice = leastPrice;
    this.leastBars = leastBars;
    this.least = proof.ofTheLeast();
    this.longest = proof.ofTheLongestLeftover();
  }

  /** What has been proven. */
  record Proof(boolean ofTheLeast, boolean ofTheLongestLeftover) {}

  /**
   * Cuts pieces from bars.
   *
   * @param pieces the pieces wanted, not null, 1 to 20 000 with their counts, of at most 500
   *     different lengths
   * @param stock the bars that can be had, not null, not empty; prices are given for all that are sold or for none
   * @param sawKerf what one cut turns to dust, not null, 0 to 20 mm
   * @return the cutting with its working: bounds, bars, what becomes of their length; finding {@code fewest-not-proven} where
   *     bound and cutting differ; not null
   * @throws IllegalArgumentException if a piece is longer than each bar, bars of limited number do not suffice as far as
   *     was found, or a value is out of range
   */
  public static Calculated<TrimCutting> of(List<TrimPiece> pieces, List<TrimStock> stock, Length sawKerf) {
    Objects.requireNonNull(pieces, "pieces");
    Objects.requireNonNull(stock, "stock");
    return of(pieces, stock, new RuleValue<>(LayingRules.SAW_KERF, sawKerf, Source.GIVEN));
  }

  /**
   * Cuts pieces from bars, with the saw kerf of a rule.
   *
   * @param pieces the pieces wanted, not null, 1 to 20 000 with their counts, of at most 500
   *     different lengths
   * @param stock the bars that can be had, not null, not empty
   * @param sawKerf the rule on the saw kerf, see {@link LayingRules#SAW_KERF}; not null
   * @return the cutting, as {@link #of(List, List, Length)}; not null
   * @throws IllegalArgumentException as {@link #of(List, List, Length)}
   */
  public static Calculated<TrimCutting> of(List<TrimPiece> pieces, List<TrimStock> stock, RuleValue<Length> sawKerf) {
    Objects.requireNonNull(pieces, "pieces");
    Objects.requireNonNull(stock, "stock");
    return new TrimBench(pieces, stock, sawKerf).cut();
  }

  /**
   * Returns the bars in the order of cutting.
   *
   * @return an unmodifiable list, not null, not empty
   */
  public List<TrimBar> bars() {
    return bars;
  }

  /**
   * Returns how many bars of each kind are cut, longest first.
   *
   * @return an unmodifiable map, not null
   */
  public Map<TrimStock, Integer> barsByStock() {
    Map<TrimStock, Integer> number = new LinkedHashMap<>();
    bars.forEach(bar -> number.merge(bar.stock(), 1, Integer::sum));
    return Collections.unmodifiableMap(number);
  }

  /**
   * Returns how many bars are bought.
   *
   * @return the number, without those on hand
   */
  public int barsBought() {
    return (int) bars.stream().filter(bar -> !bar.stock().isOnHand()).count();
  }

  /**
   * Returns a number of bars bought that no cutting can be below.
   *
   * @return the bound, not negative
   */
  public long leastBarsBought() {
    return leastBars;
  }

  /**
   * Returns the length bought in all.
   *
   * @return the length, not null
   */
  public Length lengthBought() {
    return bars.stream().filter(bar -> !bar.stock().isOnHand()).map(bar -> bar.stock().length())
        .reduce(Length.ZERO, Length::plus);
  }

  /**
   * Returns a length bought that no cutting can be below. Where prices are given the bound is on them instead.
   *
   * @return the bound, empty if prices are given; not null
   */
  public Optional<Length> leastLengthBought() {
    return Optional.ofNullable(leastLength);
  }

  /**
   * Returns the price of the bars bought, if prices are given.
   *
   * @return the total, exact, not null
   */
  public Optional<Price> price() {
    return leastPrice == null ? Optional.empty()
        : Optional.of(new Price(bars.stream().flatMap(bar -> bar.stock().price().stream()).map(Price::amount)
            .reduce(BigDecimal.ZERO, BigDecimal::add), leastPrice.currency()));
  }

  /**
   * Returns a price that no cutting can be below, if prices are given.
   *
   * @return the bound, exact, not null
   */
  public Optional<Price> leastPrice() {
    return Optional.ofNullable(leastPrice);
  }

  /**
   * Tells whether it is proven that no cutting buys less: fewer bars of the one length, less length, or for less.
   *
   * @return true if the bound is reached
   */
  public boolean isLeast() {
    return least;
  }

  /**
   * Returns the longest leftover.
   *
   * @return the length of the longest single one, 0 mm if nothing is left; not null
   */
  public Length longestLeftover() {
    return bars.stream().map(TrimBar::leftover).reduce(Length.ZERO, Length::max);
  }

  /**
   * Tells whether it is proven that no cutting of the same bars gives a longer single leftover.
   *
   * @return true if it is proven
   */
  public boolean isLongestLeftoverProven() {
    return longest;
  }

  /**
   * Returns the number of cuts.
   *
   * @return the cuts of all bars
   */
  public int cuts() {
    return bars.stream().mapToInt(TrimBar::cuts).sum();
  }

  /**
   * Returns which piece is cut from which bar as a step in words, lengths to a tenth of a millimetre, for those who saw.
   *
   * @param id what the step is called, not null
   * @param bar what a bar is called, such as {@code "bar"} or {@code "roll"}; not null
   * @return the step, empty for more than 200 bars, of which {@link #bars()} tells; not null
   */
  public Optional<Step> cutList(String id, String bar) {
    return CutWords.step(Objects.requireNonNull(id, "id"), Objects.requireNonNull(bar, "bar"), this);
  }
}
