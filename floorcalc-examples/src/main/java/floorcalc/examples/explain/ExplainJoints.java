package floorcalc.examples.explain;

import floorcalc.joints.JointLayout;
import floorcalc.joints.JointSpread;
import floorcalc.measure.Length;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleValue;
import floorcalc.working.Calculated;
import floorcalc.working.Source;
import floorcalc.working.Step;
import java.io.PrintStream;
import java.util.ArrayList;
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

  @Option(names = "--board", paramLabel = "LENGTH", converter = Typed.OfLength.class,
      description = "Length of the boards; says how evenly all joints are spread over it, whole boards taken off.")
  private Length board;

  ExplainJoints(PrintStream out) {
    super(out);
  }

  @Override
  Calculated<JointLayout> calculate() {
    List<List<Length>> joints = rows.stream().map(Typed.Lengths::list).toList();
    Calculated<JointLayout> checked = JointLayout.of(joints)
        .check("", new RuleValue<>(LayingRules.MINIMUM_JOINT_OFFSET, minimum, Source.GIVEN));
    if (board == null) {
      return checked;
    }
    List<Step> steps = new ArrayList<>(checked.steps());
    steps.addAll(JointSpread.of(joints.stream().flatMap(List::stream).toList(), board).steps());
    return Calculated.of(checked.value(), steps, checked.findings());
  }
}
