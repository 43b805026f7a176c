package floorcalc.plan;

/**
 * What a piece is in its run, in laying order.
 *
 * @since 0.1
 */
public enum PieceKind {
  /** The right-hand part of a board: its left end is sawn and faces the gap, its right end meets the next board. */
  START,
  /** A whole board length. */
  FULL,
  /** The left-hand part of a board: its left end meets the board before, its right end is sawn and faces the gap. */
  END,
  /** A piece whose ends both face a gap: it fills its run alone, or a notch parts it from what lies beside it. */
  SINGLE
}
