package floorcalc.examples.explain;

import floorcalc.outline.InscribedCircle;
import floorcalc.outline.LeastWidth;
import floorcalc.outline.Outline;
import floorcalc.working.Calculated;
import floorcalc.working.Step;
import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Shows how wide a room is: the widest circle on its floor, and the least width between parallels. */
@Command(name = "widths", mixinStandardHelpOptions = true,
    description = "How wide a room is: the widest circle clear of walls and voids, and the nearest two parallels that hold the room.")
final class ExplainWidths extends Explaining {
  @Option(names = "--outline", required = true, paramLabel = "CORNERS", converter = Typed.OfOutline.class,
      description = "Corners \"x,y x,y x,y\", or well-known text \"POLYGON ((...))\" in millimetres.")
  private Outline outline;

  ExplainWidths(PrintStream out) {
    super(out);
  }

  @Override
  Calculated<InscribedCircle> calculate() {
    Calculated<InscribedCircle> circle = InscribedCircle.of(outline);
    List<Step> steps = new ArrayList<>(circle.steps());
    steps.addAll(LeastWidth.of(outline).steps());
    return Calculated.of(circle.value(), steps);
  }
}
