package floorcalc.boards;

import floorcalc.measure.Length;
import java.util.Objects;

/**
 * A piece that the floor needs, as the rectangle that encloses it. Immutable and thread-safe.
 * <p>
 * Across the board a piece keeps its place in the row: an edge that meets the neighbouring row is then a factory edge
 * of its board.
 *
 * @since 0.1
 */
public final class PieceWanted {
  private final int row;
  private final long length;
  private final long acrossFrom;
  private final long acrossTo;
  private final Ends ends;

  private PieceWanted(int row, long length, long acrossFrom, long acrossTo, Ends ends) {
    this.row = row;
    this.length = length;
    this.acrossFrom = acrossFrom;
    this.acrossTo = acrossTo;
    this.ends = ends;
  }

  /**
   * Returns a piece.
   *
   * @param row its row, from 0, counted over the whole job in laying order
   * @param length its length along the row, not null, more than zero
   * @param acrossFrom its edge at low y, from the low edge of the row; not null, not negative
   * @param acrossTo its edge at high y, measured likewise; not null, more than {@code acrossFrom}
   * @param ends which of its ends meet boards, not null
   * @return the piece, not null
   * @throws IllegalArgumentException if a size is out of range
   */
  public static PieceWanted of(int row, Length length, Length acrossFrom, Length acrossTo, Ends ends) {
    Objects.requireNonNull(ends, "ends");
    return ofNanometres(row, length.toNanometres(), acrossFrom.toNanometres(), acrossTo.toNanometres(), ends);
  }

  /**
   * Returns a piece with its sizes in whole nanometres.
   *
   * @param row its row, from 0, counted over the whole job in laying order
   * @param length its length along the row, more than zero
   * @param acrossFrom its edge at low y, from the low edge of the row; not negative
   * @param acrossTo its edge at high y, measured likewise; more than {@code acrossFrom}
   * @param ends which of its ends meet boards, not null
   * @return the piece, not null
   * @throws IllegalArgumentException if a size is out of range
   */
  public static PieceWanted ofNanometres(int row, long length, long acrossFrom, long acrossTo, Ends ends) {
    Objects.requireNonNull(ends, "ends");
    if (length <= 0 || acrossFrom < 0 || acrossTo <= acrossFrom) {
      throw new IllegalArgumentException("a piece must be longer and wider than nothing, but is "
          + Length.ofNanometres(length) + " long and lies from " + Length.ofNanometres(acrossFrom) + " to "
          + Length.ofNanometres(acrossTo) + " across");
    }
    return new PieceWanted(row, length, acrossFrom, acrossTo, Objects.requireNonNull(ends, "ends"));
  }

  /**
   * Returns the row, counted over the whole job in laying order.
   *
   * @return the row, from 0
   */
  public int row() {
    return row;
  }

  /**
   * Returns the length along the row.
   *
   * @return the length, not null
   */
  public Length length() {
    return Length.ofNanometres(length);
  }

  /**
   * Returns which ends meet boards.
   *
   * @return the ends, not null
   */
  public Ends ends() {
    return ends;
  }

  long span() {
    return length;
  }

  long low() {
    return acrossFrom;
  }

  long high() {
    return acrossTo;
  }
}
