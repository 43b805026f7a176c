package floorcalc.differential;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** The results of all comparisons with the usual number of cases, each run once for all tests that ask. */
public final class DifferentialRuns {
  private static final Map<String, DifferentialResult> RESULTS = new ConcurrentHashMap<>();

  private DifferentialRuns() {}

  /**
   * Runs a comparison, or hands out what an earlier run found.
   *
   * @param differential the comparison, one of {@link Differentials#all()}
   * @return what was found
   */
  public static DifferentialResult of(Differential differential) {
    return RESULTS.computeIfAbsent(differential.toString(), name -> differential.run(1));
  }
}
