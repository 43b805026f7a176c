package floorcalc.examples.explain;

import floorcalc.outline.survey.Angle;
import floorcalc.outline.survey.ClosingLimit;
import floorcalc.outline.survey.Traverse;
import floorcalc.working.Calculated;
import floorcalc.working.Source;
import java.io.PrintStream;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Shows how a walk round a room closes. */
@Command(name = "traverse", mixinStandardHelpOptions = true,
    description = "Shows how a walk round a room closes, its closing error and its outline closed by the compass rule.")
final class ExplainTraverse extends Explaining {
  @Option(names = "--walls", required = true, paramLabel = "LENGTHS", converter = Typed.OfLengths.class,
      description = "Walls in the order in which they are walked, the room on the left, with commas between them.")
  private Typed.Lengths walls;

  @Option(names = "--turns", paramLabel = "ANGLES", description = "Degrees to the left at the end of each wall, negative to the right,"
      + " with commas between them: 90 or 89-59-30. All 90 if not given.")
  private String turns;

  @Option(names = "--limit", paramLabel = "N", description = "It must close to 1 in N; 2000 if not given.")
  private Long limit;

  ExplainTraverse(PrintStream out) {
    super(out);
  }

  @Override
  Calculated<Traverse> calculate() {
    List<Angle> angles = turns == null ? Collections.nCopies(walls.list().size(), Angle.ofDegrees(90))
        : Arrays.stream(turns.split(",", -1)).map(Angle::parse).toList();
    return Traverse.ofTurns(walls.list(), angles, limit == null ? ClosingLimit.FLOOR : new ClosingLimit(limit, Source.GIVEN));
  }

  @Override
  String below(Object value) {
    Traverse walk = (Traverse) value;
    return "\ncorners: " + walk.outline() + "\narea: " + walk.area();
  }
}
