package floorcalc.flatness;

/**
 * Which two high points an edge is taken to rest on.
 *
 * @since 0.1
 */
public enum RestRule {
  /**
   * Those that gravity chooses: the two between which the middle of the edge lies. If the middle lies on a high point, the edge
   * may tip to either side; the side with the greater gap counts.
   */
  GRAVITY,
  /** Those that the edge can be rocked onto so that the gap is greatest. */
  WORST
}
