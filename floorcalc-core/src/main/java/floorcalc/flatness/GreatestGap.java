package floorcalc.flatness;

import floorcalc.measure.Length;
import java.util.Objects;

/**
 * The greatest gap under an edge of one span, wherever it is laid along a profile.
 *
 * @param span the length of the edge, not null
 * @param rule which two high points it rests on, not null
 * @param start where the left end of the edge lies when the gap is found, not null
 * @param rest the contacts and the gap, not null
 * @since 0.1
 */
public record GreatestGap(Length span, RestRule rule, Length start, EdgeRest rest) {
  /** Checks that no part is null. */
  public GreatestGap {
    Objects.requireNonNull(span, "span");
    Objects.requireNonNull(rule, "rule");
    Objects.requireNonNull(start, "start");
    Objects.requireNonNull(rest, "rest");
  }

  /**
   * Returns the gap.
   *
   * @return the same as {@code rest().gap()}, not null
   */
  public Length gap() {
    return rest.gap();
  }

  @Override
  public String toString() {
    return rest + ", under " + span;
  }
}
