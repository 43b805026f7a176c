package floorcalc.examples.sheet;

import floorcalc.working.Step;
import floorcalc.working.Term;
import java.util.List;
import java.util.stream.Collectors;

/** Working in words: question, formula, numbers put in, result. */
final class WorkingWords {
  private WorkingWords() {}

  /** Step after step on one line. */
  static String of(List<Step> working) {
    return working.stream().map(WorkingWords::words).collect(Collectors.joining(" | "));
  }

  private static String words(Step step) {
    String terms = step.terms().stream().map(WorkingWords::words).collect(Collectors.joining(", "));
    return step.question() + " " + (terms.isEmpty() ? "" : step.formula() + ", with " + terms + ": ") + step.result();
  }

  private static String words(Term term) {
    return term.symbol() + " = " + term.value() + " (" + term.meaning() + ")";
  }
}
