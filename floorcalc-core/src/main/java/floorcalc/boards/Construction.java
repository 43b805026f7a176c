package floorcalc.boards;

/**
 * How a board is made.
 *
 * @since 0.1
 */
public enum Construction {
  /** Layers glued across each other. */
  ENGINEERED,
  /** One piece of wood. */
  SOLID
}
