package floorcalc.examples.explain;

import floorcalc.measure.Length;
import floorcalc.rows.RightAngle;
import floorcalc.working.Calculated;
import floorcalc.working.Step;
import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Shows how a line square to another is set out with a tape. */
@Command(name = "right-angle", mixinStandardHelpOptions = true,
    description = "Shows the largest 3-4-5 triangle that fits a floor, and how far off square a measured diagonal says it is.")
final class ExplainRightAngle extends Explaining {
  @Option(names = "--along", required = true, paramLabel = "LENGTH", converter = Typed.OfLength.class,
      description = "How far the line goes on from the corner of the angle.")
  private Length along;

  @Option(names = "--square", required = true, paramLabel = "LENGTH", converter = Typed.OfLength.class,
      description = "How far there is room square to it.")
  private Length square;

  @Option(names = "--unit", paramLabel = "LENGTH", defaultValue = "100", converter = Typed.OfLength.class,
      description = "What the sides are multiples of, such as 1 ft; 100 mm if not given.")
  private Length unit;

  @Option(names = "--diagonal", paramLabel = "LENGTH", converter = Typed.OfLength.class,
      description = "What the tape reads from mark to mark, if it was measured.")
  private Length diagonal;

  ExplainRightAngle(PrintStream out) {
    super(out);
  }

  @Override
  Calculated<?> calculate() {
    Calculated<RightAngle> angle = RightAngle.largest(along, square, unit);
    if (diagonal == null) {
      return angle;
    }
    Calculated<Length> off = RightAngle.offSquare(angle.value().along(), angle.value().square(), diagonal);
    List<Step> steps = new ArrayList<>(angle.steps());
    steps.addAll(off.steps());
    return Calculated.of(off.value(), steps);
  }
}
