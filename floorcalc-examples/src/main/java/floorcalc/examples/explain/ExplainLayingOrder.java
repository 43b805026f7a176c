package floorcalc.examples.explain;

import floorcalc.measure.Length;
import floorcalc.rows.ControlLine;
import floorcalc.rows.FloorPart;
import floorcalc.rows.LayingOrder;
import floorcalc.working.Calculated;
import java.io.PrintStream;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Shows which parts of a floor are laid back from a row, and where arms meet. */
@Command(name = "laying-order", mixinStandardHelpOptions = true,
    description = "Shows which parts of a floor are laid back from a row on a loose tongue, and where both ways round an obstacle meet.")
final class ExplainLayingOrder extends Explaining {
  @Option(names = "--room", required = true, paramLabel = "NAME: OUTLINE", converter = Typed.OfPart.class,
      description = "A room or the floor of an opening as \"name: x,y x,y x,y ...\"; once for each, all in the same coordinates.")
  private List<FloorPart> rooms;

  @Option(names = "--line", required = true, paramLabel = "LINE", converter = Typed.OfTwoPoints.class,
      description = "The start line as two points, \"x,y x,y\": rows begin at the first, boards run towards the second.")
  private Typed.TwoPoints line;

  @Option(names = "--pitch", required = true, paramLabel = "LENGTH", converter = Typed.OfLength.class,
      description = "Distance from row to row as laid.")
  private Length pitch;

  @Option(names = "--first-row", paramLabel = "LENGTH", converter = Typed.OfLength.class,
      description = "How wide the first row is; the pitch if not given.")
  private Length firstRow;

  ExplainLayingOrder(PrintStream out) {
    super(out);
  }

  @Override
  Calculated<LayingOrder> calculate() {
    return LayingOrder.of(rooms, ControlLine.of(line.from(), line.to()), pitch, firstRow == null ? pitch : firstRow);
  }
}
