package floorcalc.examples.explain;

import floorcalc.deviations.TapeRules;
import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import floorcalc.working.Step;
import java.io.PrintStream;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Shows what a tape measure may be off, and how fine to measure. */
@Command(name = "tape", mixinStandardHelpOptions = true,
    description = "Shows what a metal tape of a length may be off, and how fine to measure what is held against a limit.")
final class ExplainTape extends Explaining {
  @Option(names = "--length", required = true, paramLabel = "LENGTH", converter = Typed.OfLength.class, description = "Length of the tape.")
  private Length length;

  @Option(names = "--limit", paramLabel = "LENGTH", converter = Typed.OfLength.class,
      description = "A limit that something measured is held against.")
  private Length limit;

  ExplainTape(PrintStream out) {
    super(out);
  }

  @Override
  Calculated<Length> calculate() {
    TapeRules.Tolerance row = TapeRules.toleranceFor(length).orElseThrow(() -> new IllegalArgumentException(
        "the source says nothing on tapes of more than 100 ft (30480 mm), but this one is " + length + " long; measure in parts"));
    Step step = new Step("tape-tolerance", "What may a metal tape over " + row.over() + " up to " + row.upTo() + " be off, too long or too short?",
        "value as stated", List.of(), row.most(), row.source());
    if (limit == null) {
      return Calculated.of(row.most(), List.of(step));
    }
    Calculated<Length> fine = TapeRules.precisionFor(limit);
    return Calculated.of(fine.value(), List.of(step, fine.steps().get(0)));
  }
}
