package floorcalc.outline.survey;

import floorcalc.working.Source;
import floorcalc.working.Standing;
import java.util.List;
import java.util.Objects;

/**
 * A measurement that does not fit the others, or several of which one does not fit and the rest cannot tell which.
 *
 * @param oneOf the measurements under suspicion, the most likely first, not empty
 * @since 0.1
 */
public record Misfit(List<Suspect> oneOf) {
  /**
   * Beyond this normalised residual a measurement does not fit: of a thousand sound ones about one lies beyond. The two-sided
   * 99.9 % point of the normal distribution, as used for tests of single observations (Baarda 1968, from memory).
   */
  public static final double LIMIT = 3.29;

  /** Whose limit that is. */
  public static final Source SOURCE = new Source("A testing procedure for use in geodetic networks", "Netherlands"
      + " Geodetic Commission", 1968, "tests of single observations, 99.9 % point", Standing.FROM_MEMORY);

  /**
   * Checks that something is under suspicion.
   *
   * @throws IllegalArgumentException if the list is empty
   */
  public Misfit {
    Objects.requireNonNull(oneOf, "oneOf");
    oneOf = List.copyOf(oneOf);
    if (oneOf.isEmpty()) {
      throw new IllegalArgumentException("a misfit needs at least one measurement under suspicion");
    }
  }

  /**
   * Returns the measurement that is most likely the one.
   *
   * @return the first under suspicion, not null
   */
  public Suspect first() {
    return oneOf.get(0);
  }
}
