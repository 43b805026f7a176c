package floorcalc.boards;

import floorcalc.measure.Area;
import floorcalc.measure.Length;
import java.math.BigInteger;

/**
 * A rectangle of a board that no piece has been cut from: along from the board's low end, across from its low edge.
 * Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class Offcut {
  private final int board;
  final long alongFrom;
  final long alongTo;
  final long acrossFrom;
  final long acrossTo;

  Offcut(int board, long alongFrom, long alongTo, long acrossFrom, long acrossTo) {
    this.board = board;
    this.alongFrom = alongFrom;
    this.alongTo = alongTo;
    this.acrossFrom = acrossFrom;
    this.acrossTo = acrossTo;
  }

  /**
   * Returns the board that it is left of.
   *
   * @return the board, from 0 in the order of opening
   */
  public int board() {
    return board;
  }

  /**
   * Returns the length along the board.
   *
   * @return the length, not null
   */
  public Length length() {
    return Length.ofNanometres(span());
  }

  /**
   * Returns the width across the board.
   *
   * @return the width, not null
   */
  public Length width() {
    return Length.ofNanometres(acrossTo - acrossFrom);
  }

  /**
   * Returns the exact area.
   *
   * @return the area, not null
   */
  public Area area() {
    return Area.ofSquareNanometres(BigInteger.valueOf(span()).multiply(BigInteger.valueOf(acrossTo - acrossFrom)));
  }

  /** The same rectangle of another board. */
  Offcut onBoard(int other) {
    return new Offcut(other, alongFrom, alongTo, acrossFrom, acrossTo);
  }

  long span() {
    return alongTo - alongFrom;
  }

  boolean holds(PieceWanted piece, long boardLength) {
    if (piece.ends() == Ends.BOTH && span() != piece.span()) {
      return false;
    }
    return span() >= piece.span() && acrossFrom <= piece.low() && acrossTo >= piece.high()
        && (!piece.ends().low() || alongFrom == 0) && (!piece.ends().high() || alongTo == boardLength);
  }
}
