package floorcalc.underlay;

/**
 * How a room is used, as far as it decides whether a wood floor may lie there.
 *
 * @since 0.1
 */
public enum RoomUse {
  /** A room that is not wet in use. */
  DRY,
  /** A bathroom, a wet room, a sauna: water comes onto its floor. */
  WET
}
