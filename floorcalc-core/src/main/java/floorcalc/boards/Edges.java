package floorcalc.boards;

/**
 * Which edges of a piece meet a neighbouring row and must be factory edges, not sawn ones.
 *
 * @since 0.1
 */
public enum Edges {
  /** Both edges face a gap and may be sawn. */
  NONE,
  /** The edge at low y meets the row before: the piece is the low part of a board, as in a last row. */
  LOW,
  /** The edge at high y meets the row after: the piece is the high part of a board, as in a first row. */
  HIGH,
  /** Both edges meet rows: the piece has the full width of a board. */
  BOTH
}
