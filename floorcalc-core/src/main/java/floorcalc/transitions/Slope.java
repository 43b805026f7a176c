package floorcalc.transitions;

import floorcalc.measure.Length;

/**
 * A slope of one in a whole number.
 *
 * @param run the length that it takes to rise by one, at least 1
 * @since 0.1
 */
public record Slope(int run) {
  /** Checks that the run is at least 1. */
  public Slope {
    if (run < 1) {
      throw new IllegalArgumentException("the run of a slope must be at least 1, but was " + run + "; give 1:12 as 12");
    }
  }

  /**
   * Returns how long a bevel or a ramp of this slope is along the floor.
   *
   * @param rise the difference of height that it takes up, not null
   * @return the length, exact, not null
   */
  public Length runOf(Length rise) {
    return rise.multipliedBy(run);
  }

  /**
   * Returns the slope.
   *
   * @return such as {@code "1:12"}, not null
   */
  @Override
  public String toString() {
    return "1:" + run;
  }
}
