package floorcalc.examples.explain;

import floorcalc.measure.Length;
import floorcalc.moisture.Percent;
import floorcalc.movement.WidthChange;
import floorcalc.working.Calculated;
import java.io.PrintStream;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Shows by how much a width changes with the moisture content of the wood. */
@Command(name = "movement", mixinStandardHelpOptions = true,
    description = "Shows by how much boards change their width from one moisture content to another.")
final class ExplainMovement extends Explaining {
  @Option(names = "--width", required = true, paramLabel = "LENGTH", converter = Typed.OfLength.class,
      description = "A board, or a floor across the boards.")
  private Length width;

  @ArgGroup(exclusive = false, multiplicity = "1")
  private Wood wood;

  @Option(names = "--from", required = true, paramLabel = "PERCENT", converter = Typed.OfPercent.class,
      description = "Moisture content before, in per cent.")
  private Percent from;

  @Option(names = "--to", required = true, paramLabel = "PERCENT", converter = Typed.OfPercent.class,
      description = "Moisture content after, in per cent.")
  private Percent to;

  ExplainMovement(PrintStream out) {
    super(out);
  }

  @Override
  Calculated<Length> calculate() {
    return WidthChange.of(width, wood.coefficient(), from, to);
  }
}
