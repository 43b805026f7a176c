package floorcalc.reference.report;

import floorcalc.reference.check.Check;
import floorcalc.reference.check.Kind;
import floorcalc.reference.check.Verdict;
import floorcalc.reference.data.DataFile;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What came of the figures of one file. */
record FileResult(DataFile file, List<Check> checks) {

  /** How many figures there are of each kind that occurs. */
  Map<Kind, Integer> byKind() {
    Map<Kind, Integer> counts = new EnumMap<>(Kind.class);
    checks.forEach(check -> counts.merge(check.of().kind(), 1, Integer::sum));
    return counts;
  }

  long count(Verdict verdict) {
    return checks.stream().filter(check -> check.verdict() == verdict).count();
  }

  /** The figure that is farthest off, in units of its last digit; of equals the first. */
  Optional<Check> worst() {
    return checks.stream().filter(check -> check.lastDigitsOff().isPresent())
        .min(Comparator.comparing((Check check) -> check.lastDigitsOff().orElse(BigDecimal.ZERO)).reversed());
  }

  /** Title, publisher, year, edition, table. */
  String source() {
    StringBuilder line = new StringBuilder(file.head("title")).append(". ").append(file.head("publisher")).append(", ").append(file.head("year"));
    for (String key : List.of("edition", "locator")) {
      if (!file.head(key).isEmpty()) {
        line.append(", ").append(file.head(key));
      }
    }
    return line.toString();
  }
}
