package floorcalc.transitions;

/**
 * Which way a profile falls: from the higher floor to the lower.
 *
 * @since 0.1
 */
public enum Fall {
  /** Both floors are of one height. */
  LEVEL,
  /** The floor beyond is lower: down from this floor to it. */
  TO_BEYOND,
  /** The floor beyond is higher: down from it to this floor. */
  TO_HERE
}
