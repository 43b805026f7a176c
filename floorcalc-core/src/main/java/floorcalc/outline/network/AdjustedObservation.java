package floorcalc.outline.network;

import java.util.Objects;
import java.util.OptionalDouble;

/**
 * An observation after the adjustment. All in the unit of the observation.
 *
 * @param observation what was observed, not null
 * @param adjusted what the adjusted points make it
 * @param residual adjusted less observed
 * @param deviation standard deviation of the adjusted value, not negative
 * @param redundancy the share of it that the other observations control: 0 if nothing else says what it should be, near 1
 *     if they say it as well without it
 * @since 0.1
 */
public record AdjustedObservation(Observation observation, double adjusted, double residual, double deviation,
    double redundancy) {
  /**
   * How many of its own standard deviations a slip must move what the others control, so that four of five such slips are
   * seen where one of a thousand sound observations is taken for one (Baarda 1968, from memory).
   */
  private static final double SEEN = 4.13;
  /** Below this share nothing controls an observation: what is left is rounding. */
  private static final double UNCONTROLLED = 1e-6;

  /** Checks that it has an observation. */
  public AdjustedObservation {
    Objects.requireNonNull(observation, "observation");
  }

  /**
   * Tells whether other observations control this one, so that a slip in it could be seen at all.
   *
   * @return false for exact observations and for those without which some point could move
   */
  public boolean isControlled() {
    return !observation.isExact() && redundancy > UNCONTROLLED;
  }

  /**
   * Returns the residual divided by its own standard deviation: if the observation has no slip, it is rarely beyond 3.
   *
   * @return {@code v / (s * sqrt(r))}; empty if nothing controls the observation
   */
  public OptionalDouble normalisedResidual() {
    return isControlled() ? OptionalDouble.of(residual / (observation.deviation() * StrictMath.sqrt(redundancy)))
        : OptionalDouble.empty();
  }

  /**
   * Returns what the other observations alone say it should be.
   *
   * @return {@code l + v / r}; empty if nothing controls the observation
   */
  public OptionalDouble expected() {
    return isControlled() ? OptionalDouble.of(observation.value() + residual / redundancy) : OptionalDouble.empty();
  }

  /**
   * Returns the standard deviation of what the others say it should be.
   *
   * @return {@code s * sqrt((1 - r) / r)}; empty if nothing controls the observation
   */
  public OptionalDouble expectedDeviation() {
    return isControlled()
        ? OptionalDouble.of(observation.deviation() * StrictMath.sqrt(Math.max(0, 1 - redundancy) / redundancy))
        : OptionalDouble.empty();
  }

  /**
   * Returns the least slip that would be seen: four of five of this size show as a normalised residual beyond 3.29.
   *
   * @return {@code 4.13 * s / sqrt(r)}; empty if nothing controls the observation, so that no slip is seen
   */
  public OptionalDouble leastSlipSeen() {
    return isControlled() ? OptionalDouble.of(SEEN * observation.deviation() / StrictMath.sqrt(redundancy))
        : OptionalDouble.empty();
  }
}
