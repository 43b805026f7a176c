package floorcalc.boards;

/**
 * Which ends of a piece meet the next board of the row and must be factory ends, not sawn ones.
 *
 * @since 0.1
 */
public enum Ends {
  /** Both ends face a gap and may be sawn. */
  NONE,
  /** The end at low x meets a board: the piece is a left-hand part. */
  LOW,
  /** The end at high x meets a board: the piece is a right-hand part. */
  HIGH,
  /** Both ends meet boards: the piece is a whole board length. */
  BOTH;

  /**
   * Tells whether the end at low x must be a factory end.
   *
   * @return true for {@link #LOW} and {@link #BOTH}
   */
  public boolean low() {
    return this == LOW || this == BOTH;
  }

  /**
   * Tells whether the end at high x must be a factory end.
   *
   * @return true for {@link #HIGH} and {@link #BOTH}
   */
  public boolean high() {
    return this == HIGH || this == BOTH;
  }
}
