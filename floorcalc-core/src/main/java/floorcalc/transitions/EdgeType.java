package floorcalc.transitions;

/**
 * What lies beyond an edge of a floor.
 *
 * @since 0.1
 */
public enum EdgeType {
  /** The same floor goes on, as behind an expansion break. */
  SAME_FLOOR,
  /** A floor with another finish: tiles, carpet. */
  OTHER_FINISH,
  /** Something fixed that the floor ends at: a hearth, a sill, the track of a window. */
  FIXED_EDGE,
  /** A step. */
  STEP,
  /** Nothing is known about it. */
  NOT_STATED
}
