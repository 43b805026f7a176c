package floorcalc.flatness;

import floorcalc.measure.Length;
import java.util.List;
import java.util.Objects;

/**
 * An edge laid at one place of a profile: every pair of neighbouring high points that it can rest on.
 * <p>
 * Both ends of the edge are on the line. An end between two readings may itself be a contact. Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class EdgePlacement {
  private final Length start;
  private final Length span;
  private final List<EdgeRest> rests;
  private final List<EdgeRest> held;
  private final int lies;

  /** The rests that gravity may choose, and of how many ways the edge may lie they are. */
  EdgePlacement(Length start, Length span, List<EdgeRest> rests, List<EdgeRest> held, int lies) {
    this.start = start;
    this.span = span;
    this.rests = List.copyOf(rests);
    this.held = List.copyOf(held);
    this.lies = lies;
  }

  /**
   * Returns where the left end of the edge lies.
   *
   * @return the place, not null
   */
  public Length start() {
    return start;
  }

  /**
   * Returns where the right end of the edge lies.
   *
   * @return the place, not null
   */
  public Length end() {
    return start.plus(span);
  }

  /**
   * Returns every rest, from left to right: the edges of the upper convex hull of the part of the floor covered, from each point that
   * the edge can touch to the next. Where the floor touches in three points and more at once there is a rest between each two.
   *
   * @return an unmodifiable list, not null, at least one
   */
  public List<EdgeRest> rests() {
    return rests;
  }

  /**
   * Returns the rest of a rule.
   *
   * @param rule which rest, not null
   * @return the rest, of equal gaps the leftmost; not null
   */
  public EdgeRest rest(RestRule rule) {
    Objects.requireNonNull(rule, "rule");
    List<EdgeRest> from = rule == RestRule.WORST ? rests : held;
    EdgeRest found = from.get(0);
    for (EdgeRest rest : from) {
      found = rest.gap().compareTo(found.gap()) > 0 ? rest : found;
    }
    return found;
  }

  /**
   * Returns the rest that gravity chooses.
   *
   * @return the same as {@code rest(RestRule.GRAVITY)}, not null
   */
  public EdgeRest gravity() {
    return rest(RestRule.GRAVITY);
  }

  /**
   * Returns the rest with the greatest gap.
   *
   * @return the same as {@code rest(RestRule.WORST)}, not null
   */
  public EdgeRest worst() {
    return rest(RestRule.WORST);
  }

  /**
   * Tells whether the middle of the edge lies on a high point, so that it may tip to either side.
   *
   * @return true if gravity does not choose one rest alone
   */
  public boolean isTipping() {
    return lies > 1;
  }

  @Override
  public String toString() {
    return "from " + start + " to " + end() + ": " + gravity();
  }
}
