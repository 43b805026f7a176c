package floorcalc.flatness;

import floorcalc.measure.Length;
import floorcalc.working.Source;
import java.io.Serializable;
import java.util.Objects;

/**
 * The gap allowed under an edge of one span.
 *
 * @param span the length of the edge, not null, more than zero
 * @param gap the greatest gap allowed, not null, more than zero
 * @param percent how many of a hundred placements must keep it: 100 for all of them
 * @param source whose limit it is, not null
 * @since 0.1
 */
public record SpanLimit(Length span, Length gap, int percent, Source source) implements Serializable {
  private static final int ALL = 100;

  /** Checks every part. */
  public SpanLimit {
    Objects.requireNonNull(source, "source");
    if (!span.isPositive() || !gap.isPositive()) {
      throw new IllegalArgumentException("span and gap of a limit must be more than 0 mm, but were " + span + " and "
          + gap);
    }
    if (percent < 1 || percent > ALL) {
      throw new IllegalArgumentException("a share must be 1 to 100 percent, but was " + percent);
    }
  }

  /**
   * Returns a limit that every placement must keep.
   *
   * @param span the length of the edge, not null, more than zero
   * @param gap the greatest gap allowed, not null, more than zero
   * @param source whose limit it is, not null
   * @return the limit, not null
   * @throws IllegalArgumentException if a length is not more than zero
   */
  public static SpanLimit of(Length span, Length gap, Source source) {
    return new SpanLimit(span, gap, ALL, source);
  }

  /**
   * Tells whether every placement must keep the limit.
   *
   * @return true if no share of the placements is let off
   */
  public boolean isForAll() {
    return percent == ALL;
  }

  @Override
  public String toString() {
    return gap + " under " + span + (isForAll() ? "" : " at " + percent + " % of the placements");
  }
}
