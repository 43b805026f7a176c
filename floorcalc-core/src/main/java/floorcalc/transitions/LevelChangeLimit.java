package floorcalc.transitions;

import floorcalc.measure.Length;
import floorcalc.working.Source;
import java.util.Objects;
import java.util.Optional;

/**
 * Up to which difference of height something does.
 *
 * @param treatment what does, not null
 * @param upTo the greatest difference, itself included, empty for any; not null
 * @param slope the steepest slope allowed, empty if none is named; not null
 * @param space where it may be used, not null
 * @param source whose limit it is, not null
 * @since 0.1
 */
public record LevelChangeLimit(LevelTreatment treatment, Optional<Length> upTo, Optional<Slope> slope, Space space, Source source) {
  /**
   * Where a limit may be used.
   *
   * @since 0.1
   */
  public enum Space {
    /** Anywhere. */
    ANY,
    /** Only where space does not allow the gentler slope. */
    LIMITED
  }

  /** Checks that no part is null. */
  public LevelChangeLimit {
    Objects.requireNonNull(treatment, "treatment");
    Objects.requireNonNull(upTo, "upTo");
    Objects.requireNonNull(slope, "slope");
    Objects.requireNonNull(space, "space");
    Objects.requireNonNull(source, "source");
  }

  boolean covers(Length difference) {
    return upTo.isEmpty() || difference.compareTo(upTo.get()) <= 0;
  }
}
