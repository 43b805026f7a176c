package floorcalc.rows;

import floorcalc.measure.Length;
import java.util.Objects;

/**
 * How wide the row at a stop is where it is narrowest.
 *
 * @param stop the stop, not null
 * @param width the narrowest width, not null; zero if the strip comes to nothing
 */
public record Strip(Stop stop, Length width) {
  /** Checks that no part is null. */
  public Strip {
    Objects.requireNonNull(stop, "stop");
    Objects.requireNonNull(width, "width");
  }
}
