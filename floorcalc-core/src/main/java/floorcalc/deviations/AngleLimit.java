package floorcalc.deviations;

import floorcalc.measure.Length;
import floorcalc.working.Source;
import java.util.Objects;
import java.util.Optional;

/**
 * How far out of its angle a wall of some length may be.
 *
 * @param over walls longer than this, the bound itself not among them; not negative, not null
 * @param upTo walls up to this length, itself among them; empty if there is no such bound; not null
 * @param most how far the wall's end may lie off the line that it should be on, itself allowed; not negative, not null
 * @param source whose limit it is, not null
 * @since 0.1
 */
public record AngleLimit(Length over, Optional<Length> upTo, Length most, Source source) {
  /**
   * Checks every part.
   *
   * @throws IllegalArgumentException if a length is negative or the range is empty
   */
  public AngleLimit {
    Objects.requireNonNull(upTo, "upTo");
    Objects.requireNonNull(source, "source");
    if (over.isNegative() || most.isNegative()) {
      throw new IllegalArgumentException("a limit of angles must not be negative, but was " + most + " over " + over);
    }
    if (upTo.filter(bound -> bound.compareTo(over) <= 0).isPresent()) {
      throw new IllegalArgumentException("a limit of angles for walls over " + over + " cannot end at " + upTo.get() + "; give the lesser first");
    }
  }

  /**
   * Tells whether the limit is for walls of a length.
   *
   * @param length the length, not null
   * @return true if it is
   */
  public boolean covers(Length length) {
    Objects.requireNonNull(length, "length");
    return length.compareTo(over) > 0 && upTo.filter(bound -> length.compareTo(bound) > 0).isEmpty();
  }

  /** Which walls it is for. */
  String walls() {
    return ((over.isZero() && upTo.isPresent() ? "" : "over " + over) + upTo.map(bound -> " up to " + bound).orElse("")).strip();
  }

  /**
   * Returns the limit as text.
   *
   * @return for example {@code "at most 12 mm for walls over 3000 mm up to 6000 mm"}, not null
   */
  @Override
  public String toString() {
    return "at most " + most + " for walls " + walls();
  }
}
