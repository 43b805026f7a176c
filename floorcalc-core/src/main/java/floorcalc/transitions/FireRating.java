package floorcalc.transitions;

/**
 * Whether a door, with its frame, holds back fire or smoke.
 *
 * @since 0.1
 */
public enum FireRating {
  /** It does: nothing on it is cut, planed or sealed before whoever answers for fire safety has said how. */
  FIRE_DOOR,
  /** It does not. */
  NO_FIRE_DOOR,
  /** Not stated: look for a label on its edge and ask. */
  NOT_STATED
}
