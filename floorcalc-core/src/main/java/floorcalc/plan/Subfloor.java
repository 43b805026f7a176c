package floorcalc.plan;

/**
 * What the floor is laid on.
 *
 * @since 0.1
 */
public enum Subfloor {
  /** A concrete slab. */
  CONCRETE,
  /** A screed. */
  SCREED,
  /** Timber boards or joists. */
  TIMBER,
  /** Wood-based sheets. */
  SHEET,
  /** An old floor that stays. */
  OLD_FLOOR,
  /** Not stated. */
  NOT_STATED
}
