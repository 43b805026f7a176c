package floorcalc.deviations;

/**
 * When deviations are looked at.
 *
 * @since 0.1
 */
public enum Stage {
  /** Boards as they are delivered, before they are laid. */
  GOODS,
  /** The floor as it is handed over. */
  LAID
}
