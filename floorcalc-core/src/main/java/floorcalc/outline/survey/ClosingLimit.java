package floorcalc.outline.survey;

import floorcalc.working.Source;
import java.io.Serializable;
import java.util.Objects;

/**
 * How well a walk round a room must close: its closing error at most one part in so many of the way.
 *
 * @param ratio the number of parts, at least 1
 * @param source whose limit it is, not null
 * @since 0.1
 */
public record ClosingLimit(long ratio, Source source) implements Serializable {
  /**
   * One in 2000: 10 mm on a walk of 20 m, as wide as a common expansion gap. A floor needs no better, since boards are cut
   * to the walls as they are; with less the gap may vanish somewhere. Common practice, no source.
   */
  public static final ClosingLimit FLOOR = new ClosingLimit(2000, Source.COMMON_PRACTICE);

  /**
   * Checks that no part is null and in range.
   *
   * @throws IllegalArgumentException if the ratio is less than 1
   */
  public ClosingLimit {
    Objects.requireNonNull(source, "source");
    if (ratio < 1) {
      throw new IllegalArgumentException("the ratio of a closing limit must be at least 1, but was " + ratio);
    }
  }
}
