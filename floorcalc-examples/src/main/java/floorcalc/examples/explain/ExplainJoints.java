package floorcalc.examples.explain;

import floorcalc.joints.JointLayout;
import floorcalc.measure.Length;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleValue;
import floorcalc.working.Calculated;
import floorcalc.working.Source;
import java.io.PrintStream;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Shows how far apart the end joints of neighbouring rows fall. */
@Command(name = "joints", mixinStandardHelpOptions = true,
    description = "Compares the end joints of neighbouring rows: smallest offset, H pattern, stair pattern.")
final class ExplainJoints extends Explaining {
  @Option(names = "--row", required = true, paramLabel = "JOINTS", converter = Typed.OfLengths.class,
      description = "End joints of a row, with commas between them, from one wall; give --row once for each row.")
  private List<Typed.Lengths> rows;

  @Option(names = "--minimum", paramLabel = "LENGTH", defaultValue = "300", converter = Typed.OfLength.class,
      description = "Least distance between joints of neighbouring rows; 300 mm if not given.")
  private Length minimum;

  ExplainJoints(PrintStream out) {
    super(out);
  }

  @Override
  Calculated<JointLayout> calculate() {
    return JointLayout.of(rows.stream().map(Typed.Lengths::list).toList())
        .check("", new RuleValue<>(LayingRules.MINIMUM_JOINT_OFFSET, minimum, Source.GIVEN));
  }
}
