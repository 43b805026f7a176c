package floorcalc.examples.explain;

import floorcalc.measure.Length;
import floorcalc.outline.survey.Arc;
import floorcalc.working.Calculated;
import java.io.PrintStream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Shows an arc by its chord and its rise. */
@Command(name = "arc", mixinStandardHelpOptions = true,
    description = "Shows radius, length and area of an arc by its chord and its rise: a bay, a bowed wall.")
final class ExplainArc extends Explaining {
  @Option(names = "--chord", required = true, paramLabel = "LENGTH", converter = Typed.OfLength.class,
      description = "Straight line from end to end.")
  private Length chord;

  @Option(names = "--rise", required = true, paramLabel = "LENGTH", converter = Typed.OfLength.class,
      description = "From the middle of that line to the arc.")
  private Length rise;

  ExplainArc(PrintStream out) {
    super(out);
  }

  @Override
  Calculated<Arc> calculate() {
    return Arc.of(chord, rise);
  }
}
