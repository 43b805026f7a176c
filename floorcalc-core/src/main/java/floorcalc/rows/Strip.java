package floorcalc.rows;

import floorcalc.measure.Length;
import java.util.Objects;

/**
 * How wide the row at a stop is where it is narrowest.
 *
 * @param stop the stop, not null
 * @param width the narrowest width with the stop as measured, not null; zero if the strip comes to nothing
 * @param certain the width that it keeps wherever within its error the stop lies, not null; {@code width} if the stop has no
 *     error, zero if somewhere within it the strip comes to nothing
 * @since 0.1
 */
public record Strip(Stop stop, Length width, Length certain) {
  /** Checks that no part is null. */
  public Strip {
    Objects.requireNonNull(stop, "stop");
    Objects.requireNonNull(width, "width");
    Objects.requireNonNull(certain, "certain");
  }
}
