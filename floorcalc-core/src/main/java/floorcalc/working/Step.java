package floorcalc.working;

import java.io.Serializable;
import java.util.List;
import java.util.Objects;

/**
 * One step of a calculation, made in the same pass that computes it.
 *
 * @param id a stable name in lower case with hyphens, such as {@code "number-of-rows"}; not null
 * @param question what the step answers, not null
 * @param formula the formula in the symbols of the terms, not null
 * @param terms the numbers put in, in the order of the formula; not null
 * @param result the result with its unit, not null
 * @param source where the formula comes from, not null
 * @since 0.1
 */
public record Step(String id, String question, String formula, List<Term> terms, Object result, Source source)
    implements Serializable {

  /** Checks that no part is null and copies the list. */
  public Step {
    Objects.requireNonNull(terms, "terms");
    Objects.requireNonNull(id, "id");
    Objects.requireNonNull(question, "question");
    Objects.requireNonNull(formula, "formula");
    terms = List.copyOf(terms);
    Objects.requireNonNull(result, "result");
    Objects.requireNonNull(source, "source");
  }

  /**
   * Returns the step as a few lines: question, formula, each term with its unit and source, the result and its source.
   *
   * @return lines separated by {@code \n}, without one at the end; not null
   */
  public String explain() {
    StringBuilder text = new StringBuilder(id).append(": ").append(question).append("\n  ").append(formula);
    for (Term term : terms) {
      text.append("\n    ").append(term.symbol()).append(" = ").append(term.value());
      text.append("  (").append(term.meaning());
      if (term.source().standing() != Standing.GIVEN && term.source().standing() != Standing.DEFINITION) {
        text.append("; ").append(term.source());
      }
      text.append(')');
    }
    return text.append("\n  = ").append(result).append("  [").append(source).append(']').toString();
  }
}
