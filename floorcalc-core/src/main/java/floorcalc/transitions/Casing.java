package floorcalc.transitions;

/**
 * Whether the casings and linings of a door can be cut at the foot so that the floor runs under them.
 *
 * @since 0.1
 */
public enum Casing {
  /** They can: wood or the like. */
  CUT,
  /** They cannot: steel, stone, or a frame that must stay whole. */
  CANNOT_BE_CUT,
  /** Not stated. */
  NOT_STATED
}
