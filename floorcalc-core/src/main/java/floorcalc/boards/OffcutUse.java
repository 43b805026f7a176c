package floorcalc.boards;

/**
 * When a piece may be cut from a board that is opened elsewhere.
 *
 * @since 0.1
 */
public enum OffcutUse {
  /** A piece comes from a board that is opened in its own row or in an earlier one: the layer saws as they go. */
  IN_LAYING_ORDER,
  /** A piece may come from any board: everything is cut before laying starts. */
  CUT_AHEAD
}
