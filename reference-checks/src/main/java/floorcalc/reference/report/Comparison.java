package floorcalc.reference.report;

import java.util.List;
import java.util.Objects;

/**
 * A comparison of a calculation with a general-purpose library on many made-up cases.
 *
 * @param calculation what was compared, not null
 * @param underTest full names of the core's classes, not null
 * @param library the other library and its version, not null
 * @param cases how many cases
 * @param tolerance how near the two must come, and why, not null
 * @param worst the largest difference, rounded up so that it is the same everywhere, not null
 */
public record Comparison(String calculation, List<String> underTest, String library, long cases, String tolerance, String worst) {
  /** Checks that nothing is null. */
  public Comparison {
    Objects.requireNonNull(calculation, "calculation");
    underTest = List.copyOf(underTest);
    Objects.requireNonNull(library, "library");
    Objects.requireNonNull(tolerance, "tolerance");
    Objects.requireNonNull(worst, "worst");
  }
}
