package floorcalc.outline;

/**
 * Where a point lies with regard to a ring or an outline.
 *
 * @since 0.1
 */
public enum Containment {
  /** On the floor, off every wall. */
  INSIDE,
  /** Exactly on a wall or a corner. */
  ON_EDGE,
  /** Off the floor: beyond the walls or within a void. */
  OUTSIDE
}
