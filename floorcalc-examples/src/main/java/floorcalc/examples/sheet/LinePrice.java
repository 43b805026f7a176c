package floorcalc.examples.sheet;

import floorcalc.measure.Price;
import floorcalc.plan.MaterialLine;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The money in a line of the order list, as its working says.
 *
 * @param each the price as quoted
 * @param all the price of the line, exact
 */
record LinePrice(String each, Price all) {

  static Optional<LinePrice> of(MaterialLine line) {
    return line.working().stream().filter(step -> step.id().equals("line-price") && step.result() instanceof Price).findFirst()
        .map(step -> new LinePrice(quoted(step), (Price) step.result()));
  }

  private static String quoted(Step step) {
    return step.terms().stream().filter(term -> term.value() instanceof Price).map(term -> term.value().toString()).findFirst()
        .orElse("");
  }

  /** The working of a line in words, step after step: question, formula, numbers put in, result. */
  static String words(List<Step> working) {
    return working.stream().map(LinePrice::words).collect(Collectors.joining(" | "));
  }

  private static String words(Step step) {
    String terms = step.terms().stream().map(LinePrice::words).collect(Collectors.joining(", "));
    return step.question() + " " + (terms.isEmpty() ? "" : step.formula() + ", with " + terms + ": ") + step.result();
  }

  private static String words(Term term) {
    return term.symbol() + " = " + term.value() + " (" + term.meaning() + ")";
  }
}
