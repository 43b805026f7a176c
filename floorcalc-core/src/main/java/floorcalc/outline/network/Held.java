package floorcalc.outline.network;

/**
 * Which coordinates of a point an adjustment leaves as they are.
 *
 * @since 0.1
 */
public enum Held {
  /** Neither: both are worked out. */
  NONE,
  /** The distance to the right. */
  X,
  /** The distance up. */
  Y,
  /** Both. */
  BOTH
}
