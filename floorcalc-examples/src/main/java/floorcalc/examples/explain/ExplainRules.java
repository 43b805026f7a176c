package floorcalc.examples.explain;

import floorcalc.measure.Length;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleSet;
import floorcalc.working.Calculated;
import java.io.PrintStream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Shows what a rule set asks of boards of a size, and whose rules these are. */
@Command(name = "rules", mixinStandardHelpOptions = true,
    description = "Shows what a rule set asks of boards of a size, and whose rule each is.")
final class ExplainRules extends Explaining {
  @Option(names = "--set", paramLabel = "NAME", defaultValue = "common practice",
      description = "Rule set; \"common practice\" if not given. A wrong name lists the sets.")
  private String set;

  @Option(names = "--thickness", required = true, paramLabel = "LENGTH", converter = Typed.OfLength.class,
      description = "Thickness of the boards.")
  private Length thickness;

  @Option(names = "--width", required = true, paramLabel = "LENGTH", converter = Typed.OfLength.class,
      description = "Cover width of the boards.")
  private Length width;

  ExplainRules(PrintStream out) {
    super(out);
  }

  @Override
  Calculated<LayingRules> calculate() {
    return RuleSet.named(set).resolve(thickness, width);
  }
}
