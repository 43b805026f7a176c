package floorcalc.examples.explain;

import floorcalc.measure.Length;
import floorcalc.outline.survey.RunningDimensions;
import floorcalc.outline.survey.Slip;
import floorcalc.outline.survey.SurveyUncertainty;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Shows the lengths between readings off one tape. */
@Command(name = "running", mixinStandardHelpOptions = true,
    description = "Shows the lengths between readings off one tape laid along a wall, and holds the last against the whole wall.")
final class ExplainRunning extends Explaining {
  @Option(names = "--readings", required = true, paramLabel = "LENGTHS", converter = Typed.OfLengths.class,
      description = "Readings in order, with commas between them.")
  private Typed.Lengths readings;

  @Option(names = "--overall", paramLabel = "LENGTH", converter = Typed.OfLength.class,
      description = "The whole wall measured another time.")
  private Length overall;

  @Option(names = "--feet", description = "The tape is marked in feet and inches.")
  private boolean feet;

  ExplainRunning(PrintStream out) {
    super(out);
  }

  @Override
  Calculated<RunningDimensions> calculate() {
    Slip.Marks marks = feet ? Slip.Marks.FEET_AND_INCHES : Slip.Marks.METRIC;
    Calculated<RunningDimensions> calculated = RunningDimensions.of(readings.list(), marks);
    List<Finding> findings = new ArrayList<>(calculated.findings());
    if (overall != null) {
      calculated.value().against(overall, marks, SurveyUncertainty.TAPE).ifPresent(findings::add);
    }
    return Calculated.of(calculated.value(), calculated.steps(), findings);
  }

  @Override
  String below(Object value) {
    return "\n" + ((RunningDimensions) value).echo();
  }
}
