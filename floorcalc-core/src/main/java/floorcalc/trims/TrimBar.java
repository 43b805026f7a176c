package floorcalc.trims;

import floorcalc.measure.Length;
import java.util.List;

/**
 * One bar and the pieces that are cut from it, from its one end on, longest first. Immutable and thread-safe.
 * <p>
 * After each piece the saw takes a kerf. If what is left beyond the last piece is no longer than a kerf, all of it is dust;
 * if the last piece ends where the bar does, it needs no cut.
 *
 * @since 0.1
 */
public final class TrimBar {
  private final TrimStock stock;
  private final List<TrimPiece> pieces;
  private final Length rest;
  private final Length kerf;

  TrimBar(TrimStock stock, List<TrimPiece> pieces, Length kerf) {
    this.stock = stock;
    this.pieces = List.copyOf(pieces);
    this.kerf = kerf;
    Length left = stock.length().minus(kerf.multipliedBy(pieces.size() - 1L));
    for (TrimPiece piece : pieces) {
      left = left.minus(piece.cutLength());
    }
    this.rest = left;
  }

  /**
   * Returns the kind of bar.
   *
   * @return the stock that it is taken from, not null
   */
  public TrimStock stock() {
    return stock;
  }

  /**
   * Returns the pieces in the order of cutting; each has a count of 1.
   *
   * @return an unmodifiable list, not null, not empty
   */
  public List<TrimPiece> pieces() {
    return pieces;
  }

  /**
   * Returns how many cuts are made.
   *
   * @return one for each piece, one less if the last piece ends with the bar
   */
  public int cuts() {
    return rest.isZero() ? pieces.size() - 1 : pieces.size();
  }

  /**
   * Returns what the saw turns to dust.
   *
   * @return a kerf for each cut, less where the last cut has less than a kerf left; not null
   */
  public Length dust() {
    return kerf.multipliedBy(pieces.size() - 1L).plus(rest.min(kerf));
  }

  /**
   * Returns what is left of the bar in one piece, beyond the last cut.
   *
   * @return the length, 0 mm if nothing is; not null
   */
  public Length leftover() {
    return rest.minus(rest.min(kerf));
  }
}
