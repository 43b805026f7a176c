package floorcalc.flatness;

import floorcalc.measure.Length;
import java.io.Serializable;
import java.util.Objects;

/**
 * A gap read by hand under a straightedge that rests on two high points.
 *
 * @param span the length of the edge; for a set that judges by the distance of the contacts, that distance; not null, more
 *     than zero
 * @param gap the greatest gap between the contacts, not null, not negative
 * @param where the place in words, not null, may be empty
 * @since 0.1
 */
public record GapReading(Length span, Length gap, String where) implements Serializable {
  /** Checks every part. */
  public GapReading {
    Objects.requireNonNull(where, "where");
    if (!span.isPositive()) {
      throw new IllegalArgumentException("span of a straightedge must be more than 0 mm, but was " + span);
    }
    if (gap.isNegative()) {
      throw new IllegalArgumentException("gap under a straightedge must not be negative, but was " + gap);
    }
    if (gap.multipliedBy(2).compareTo(span) > 0) {
      throw new IllegalArgumentException("gap of " + gap + " under a straightedge of " + span
          + " is more than half of it; check the units");
    }
  }
}
