package floorcalc.examples.sheet;

import floorcalc.finishing.PieceCut;
import floorcalc.measure.Length;
import floorcalc.plan.Bay;
import floorcalc.plan.LaidPiece;
import floorcalc.plan.PieceKind;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * One piece on the cut card: what to cut from which board, and what is left of it. Left and right are those of someone
 * who stands with the starting wall behind them: left is low x in the frame of the bay.
 *
 * @param bay the bay, not null
 * @param row the row, from 1
 * @param piece the piece, not null
 * @param boardLength the length of the board that it is cut from, not null
 * @param boardWidth the width of that board, not null
 * @param opens whether this is the first piece of its board
 * @param shape the corners of the piece, if it is not a rectangle, from the near left corner of its rectangle
 * @param rests what is left of the board beside this piece and the pieces cut before, longest first;
 *     not null
 * @param cut what is cut out of its rectangle and for pipes, if anything is; not null
 */
public record CutLine(Bay bay, int row, LaidPiece piece, Length boardLength, Length boardWidth, boolean opens,
    Optional<PieceShape> shape, List<Rest> rests, Optional<PieceCut> cut) {
  /** Checks that no part is null and copies the list. */
  public CutLine {
    Objects.requireNonNull(bay, "bay");
    Objects.requireNonNull(piece, "piece");
    Objects.requireNonNull(boardLength, "boardLength");
    Objects.requireNonNull(boardWidth, "boardWidth");
    Objects.requireNonNull(shape, "shape");
    rests = List.copyOf(rests);
    Objects.requireNonNull(cut, "cut");
  }

  /**
   * Returns the length to cut.
   *
   * @return the length of the rectangle that encloses the piece, not null
   */
  public Length length() {
    return piece.from().length();
  }

  /**
   * Returns the width to rip to.
   *
   * @return the width of the rectangle that encloses the piece, not null
   */
  public Length width() {
    return piece.from().width();
  }

  /**
   * Tells whether the board is laid as it comes from the pack.
   *
   * @return true if nothing is sawn
   */
  public boolean isWholeBoard() {
    return piece.kind() == PieceKind.FULL && shape.isEmpty() && piece.holes().isEmpty() && !isDrilled()
        && length().equals(boardLength) && width().equals(boardWidth);
  }

  /**
   * Tells whether a hole for a pipe is bored in it.
   *
   * @return true if a pipe comes through it
   */
  public boolean isDrilled() {
    return cut.isPresent() && !cut.get().holes().isEmpty();
  }

  /**
   * Returns from which end of the board the piece is cut.
   *
   * @return {@code "whole length"}, {@code "left end"}, {@code "right end"} or {@code "middle"}, not null
   */
  public String end() {
    boolean left = piece.from().alongFrom().isZero();
    boolean right = piece.from().alongTo().equals(boardLength);
    return left && right ? "whole length" : left ? "left end" : right ? "right end" : "middle";
  }

  /**
   * Returns which edge of the board the piece keeps.
   *
   * @return {@code "both edges"}, {@code "near edge"}, {@code "far edge"} or {@code "neither edge"}, near being towards
   *     the starting wall; not null
   */
  public String edge() {
    boolean near = piece.from().acrossFrom().isZero();
    boolean far = piece.from().acrossTo().equals(boardWidth);
    return near && far ? "both edges" : near ? "near edge" : far ? "far edge" : "neither edge";
  }
}
