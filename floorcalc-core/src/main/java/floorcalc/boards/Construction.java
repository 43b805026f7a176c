package floorcalc.boards;

/** How a board is made. */
public enum Construction {
  /** Layers glued across each other. */
  ENGINEERED,
  /** One piece of wood. */
  SOLID
}
