package floorcalc.reference.report;

import floorcalc.reference.check.Kind;
import java.util.List;
import java.util.Map;

/** What checks one public calculation: figures by kind, comparisons with other libraries, the second check of whole plans. */
record CoverageRow(CoreCalculation calculation, List<String> questions, Map<Kind, Integer> figures, List<Comparison> comparisons) {

  /** Whether nothing from outside checks it. Figures from memory alone prove nothing. */
  boolean isUnchecked() {
    return comparisons.isEmpty() && figures.keySet().stream().allMatch(kind -> kind == Kind.FROM_MEMORY || kind == Kind.COMMON_PRACTICE);
  }
}
