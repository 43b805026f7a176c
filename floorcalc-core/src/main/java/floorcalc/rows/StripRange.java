package floorcalc.rows;

import floorcalc.measure.Length;
import java.util.Objects;

/**
 * The strip at a stop when the floor there ends sooner, as measured, or later.
 *
 * @param stop the stop, not null
 * @param sooner the strip if the floor ends sooner by the error, not null
 * @param measured the strip if the measurement is right, not null
 * @param later the strip if the floor ends later by the error, not null
 * @param worst the narrowest strip for any error in between; zero if the strip passes through nothing; not null
 * @since 0.1
 */
public record StripRange(Stop stop, Length sooner, Length measured, Length later, Length worst) {
  /** Checks that no part is null. */
  public StripRange {
    Objects.requireNonNull(stop, "stop");
    Objects.requireNonNull(sooner, "sooner");
    Objects.requireNonNull(measured, "measured");
    Objects.requireNonNull(later, "later");
    Objects.requireNonNull(worst, "worst");
  }
}
