package floorcalc.examples.explain;

import floorcalc.measure.Length;
import floorcalc.outline.ExpansionGap;
import floorcalc.outline.Outline;
import floorcalc.working.Calculated;
import java.io.PrintStream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Shows what the expansion gap takes off a room. */
@Command(name = "gap", mixinStandardHelpOptions = true,
    description = "Takes the expansion gap off a room: perimeter it runs along, area it takes, area left to lay.")
final class ExplainGap extends Explaining {
  @Option(names = "--outline", required = true, paramLabel = "CORNERS", converter = Typed.OfOutline.class,
      description = "Corners \"x,y x,y x,y\", or well-known text \"POLYGON ((...))\" in millimetres.")
  private Outline outline;

  @Option(names = "--gap", paramLabel = "LENGTH", defaultValue = "10", converter = Typed.OfLength.class,
      description = "Gap at everything fixed; 10 mm if not given.")
  private Length gap;

  ExplainGap(PrintStream out) {
    super(out);
  }

  @Override
  Calculated<ExpansionGap> calculate() {
    return ExpansionGap.inset(outline, gap);
  }
}
