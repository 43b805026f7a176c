package floorcalc.boards;

/**
 * How hard to look for joints that need few boards. Effort is bounded by steps, never by time.
 *
 * @since 0.1
 */
public enum SearchEffort {
  /** One way, improved for some thousand steps: enough to follow a slider. The bound is by length and area alone. */
  QUICK,
  /** As long as the boards are not proven the fewest, from many beginnings, with a bound by prices. */
  FULL
}
