package floorcalc.bays;

import floorcalc.rules.LayingRules;
import floorcalc.working.Finding;
import floorcalc.working.Severity;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** The working of a split: the length of each break, and their sum. */
final class SplitWorking {
  private SplitWorking() {}

  static List<Step> steps(BaySplit split) {
    List<Step> steps = new ArrayList<>();
    List<Term> lengths = new ArrayList<>();
    for (int i = 0; i < split.breaks().size(); i++) {
      ExpansionBreak line = split.breaks().get(i);
      String symbol = "l" + (i + 1);
      steps.add(new Step("break-" + (i + 1), "How long is break " + (i + 1) + "? " + line.because(),
          symbol + " = sqrt((bx - ax) * (bx - ax) + (by - ay) * (by - ay)), rounded to the nearest nanometre",
          List.of(Term.of("ax", "it begins", line.from().x()), Term.of("ay", "it begins", line.from().y()),
              Term.of("bx", "it ends", line.to().x()), Term.of("by", "it ends", line.to().y())),
          line.length(), Source.DEFINITION));
      lengths.add(Term.of(symbol, "length of break " + (i + 1), line.length()));
    }
    String sum = lengths.isEmpty() ? "value as stated"
        : "L = " + IntStream.rangeClosed(1, lengths.size()).mapToObj(i -> "l" + i).collect(Collectors.joining(" + "));
    steps.add(new Step("length-of-breaks", "How long are the breaks in all?", sum, lengths, split.length(), Source.DEFINITION));
    return steps;
  }

  static List<Finding> findings(BaySplit split, LayingRules rules) {
    List<Finding> findings = new ArrayList<>();
    if (!split.isProvenLeast()) {
      findings.add(new Finding("breaks-not-proven-least", Severity.NOTE, "",
          "the room has too many corners or lines to try all breaks: " + split.length() + " of profiles is not proven to be the least;"
              + " look at the drawing for a shorter way", Source.DEFINITION));
    }
    for (int i = 0; i < split.parts().size(); i++) {
      findings.addAll(BayFreedom.of("bay " + (i + 1), split.parts().get(i), rules).findings());
    }
    return findings;
  }
}
