package floorcalc.working;

import floorcalc.measure.Length;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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

  /** Different lengths that a sum lists one by one. */
  private static final int MOST_LISTED = 40;

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
   * Returns the step of a sum of lengths, with equal ones counted: {@code S = n1 * x1 + n2 * x2}. Where more than 40 different
   * lengths are added, and where there is none, the sum is stated without its terms.
   *
   * @param id what the step is called, not null
   * @param question what the sum answers, not null
   * @param symbol the letter of the sum in the formula, not null
   * @param lengths what is added, not null
   * @param each what one of them is, before its length, such as {@code "walls of "}; not null
   * @return the step, exact, not null
   */
  public static Step sum(String id, String question, String symbol, List<Length> lengths, String each) {
    Objects.requireNonNull(symbol, "symbol");
    Objects.requireNonNull(lengths, "lengths");
    Objects.requireNonNull(each, "each");
    Map<Length, Integer> counted = new LinkedHashMap<>();
    lengths.forEach(length -> counted.merge(length, 1, Integer::sum));
    StringBuilder formula = new StringBuilder(symbol).append(" = ");
    List<Term> terms = new ArrayList<>();
    counted.forEach((length, number) -> {
      int i = terms.size() / 2 + 1;
      formula.append(i == 1 ? "" : " + ").append("n").append(i).append(" * x").append(i);
      terms.add(Term.of("n" + i, "how many", number));
      terms.add(Term.of("x" + i, each + "this length", length));
    });
    Length sum = lengths.stream().reduce(Length.ZERO, Length::plus);
    boolean isListed = !counted.isEmpty() && counted.size() <= MOST_LISTED;
    return new Step(id, question, isListed ? formula.toString() : "value as stated", isListed ? terms : List.of(), sum,
        Source.DEFINITION);
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
