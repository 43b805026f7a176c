package floorcalc.outline.survey;

import java.util.Objects;

/**
 * A measurement that may be the one that does not fit.
 *
 * @param measured the measurement, not null
 * @param expected what the others say that it should be: millimetres, of a turn degrees
 * @param expectedDeviation the standard deviation of that
 * @param slip what may have happened, such as {@code "read 100 mm too much"}; empty if no usual slip fits; not null
 * @since 0.1
 */
public record Suspect(Measured measured, double expected, double expectedDeviation, String slip) {
  /** Checks that no part is null. */
  public Suspect {
    Objects.requireNonNull(measured, "measured");
    Objects.requireNonNull(slip, "slip");
  }

  /**
   * Returns the residual divided by its standard deviation.
   *
   * @return beyond {@link Misfit#LIMIT} either way
   */
  public double normalisedResidual() {
    return measured.result().normalisedResidual().orElse(0);
  }
}
