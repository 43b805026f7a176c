package floorcalc.trims;

import floorcalc.measure.Length;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleValue;
import floorcalc.working.Calculated;
import floorcalc.working.Source;
import java.util.List;
import java.util.Objects;

/**
 * Between which numbers the fewest bars of one length lie, without looking for them: what no cutting can do without, and what two
 * quick ways of the bench need, longest piece first.
 * <p>
 * {@link TrimCutting} looks for the fewest bars and which piece comes from which. This is the sum beforehand, each line of which can be
 * done with pencil and paper. Lengths are exact; nothing here rounds. Immutable and thread-safe. See {@code docs/trims.md}.
 *
 * @since 0.1
 */
public final class TrimEstimate {
  private final long byLength;
  private final long byLongPieces;
  private final long byPrices;
  private final long intoFirst;
  private final long intoFullest;

  TrimEstimate(Bounds least, long intoFirst, long intoFullest) {
    this.byLength = least.byLength();
    this.byLongPieces = least.byLongPieces();
    this.byPrices = least.byPrices();
    this.intoFirst = intoFirst;
    this.intoFullest = intoFullest;
  }

  /** What no cutting can do without, three ways. */
  record Bounds(long byLength, long byLongPieces, long byPrices) {
  }

  /**
   * Estimates how many bars pieces take.
   *
   * @param pieces the pieces wanted, not null, 1 to 20 000 with their counts, of at most 500 different lengths
   * @param bar the length of the bars sold, not null, as long as the longest piece or longer, at most 100 m
   * @param sawKerf what one cut turns to dust, not null, 0 to 20 mm
   * @return the estimate with its working; not null
   * @throws IllegalArgumentException if a piece is longer than the bar, or a value is out of range
   */
  public static Calculated<TrimEstimate> of(List<TrimPiece> pieces, Length bar, Length sawKerf) {
    Objects.requireNonNull(pieces, "pieces");
    Objects.requireNonNull(bar, "bar");
    return new TrimBench(pieces, List.of(TrimStock.sold(bar)), new RuleValue<>(LayingRules.SAW_KERF, sawKerf, Source.GIVEN)).estimate();
  }

  /**
   * Returns how many bars the pieces and the cuts between them fill, with nothing left over.
   *
   * @return a number that no cutting can be below, at least 1
   */
  public long byLength() {
    return byLength;
  }

  /**
   * Returns how many bars pieces of more than half a bar take, with the others filled in.
   *
   * @return a number that no cutting can be below, not less than {@link #byLength()}
   */
  public long byLongPieces() {
    return byLongPieces;
  }

  /**
   * Returns how many bars the worth of all pieces takes, at prices such that no bar holds much: the value of the linear program over
   * all ways to fill a bar, rounded up to whole bars.
   *
   * @return a number that no cutting can be below
   */
  public long byPrices() {
    return byPrices;
  }

  /**
   * Returns the greatest of the three bounds.
   *
   * @return a number that no cutting can be below
   */
  public long atLeast() {
    return Math.max(byLongPieces, byPrices);
  }

  /**
   * Returns how many bars are cut if the longest piece comes first and each goes into the first bar that has room for it.
   *
   * @return the number of bars
   */
  public long longestIntoFirst() {
    return intoFirst;
  }

  /**
   * Returns how many bars are cut if the longest piece comes first and each goes into the fullest bar that has room for it.
   *
   * @return the number of bars
   */
  public long longestIntoFullest() {
    return intoFullest;
  }

  /**
   * Returns the fewer bars of the two quick ways.
   *
   * @return a number that suffices
   */
  public long atMost() {
    return Math.min(intoFirst, intoFullest);
  }
}
