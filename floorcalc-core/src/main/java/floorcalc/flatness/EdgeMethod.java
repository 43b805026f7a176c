package floorcalc.flatness;

/**
 * How a tolerance is measured.
 *
 * @since 0.1
 */
public enum EdgeMethod {
  /** The gap under an edge of the stated span, between the two points that it rests on. */
  SPAN,
  /** The same, but the limit is that of the distance between the two points, whatever the length of the edge. */
  CONTACT_DISTANCE,
  /**
   * The edge is held on two equal blocks at its ends; the floor may lie above or below the line between its heights there, by
   * the same figure either way.
   */
  EQUAL_OFFSETS
}
