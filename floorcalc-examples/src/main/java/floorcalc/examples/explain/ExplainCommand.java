package floorcalc.examples.explain;

import java.io.PrintStream;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Shows the working of one calculation. */
@Command(name = ExplainCommand.NAME, mixinStandardHelpOptions = true,
    description = "Shows the working of one calculation: the question, the formula, the numbers put in, the result, the"
        + " source. A length is a number of millimetres or tape notation such as \"12' 7 5/8\\\"\".")
public final class ExplainCommand implements Runnable {
  /** The name of the command. */
  public static final String NAME = "explain";

  @Spec
  private CommandSpec spec;

  private ExplainCommand() {
  }

  /**
   * Returns the command without what it can explain, for a command line that does not name it: help for all commands lists it.
   *
   * @return the command, not null
   */
  public static CommandLine bare() {
    return new CommandLine(new ExplainCommand());
  }

  /**
   * Returns the command with one subcommand for each calculation.
   *
   * @param out where the working is printed, not null
   * @return the command, not null
   */
  public static CommandLine of(PrintStream out) {
    CommandLine line = bare();
    for (Explaining calculation : new Explaining[] {new ExplainLength(out), new ExplainRows(out), new ExplainDrift(out),
        new ExplainStripRisk(out), new ExplainStartLine(out), new ExplainLayingOrder(out), new ExplainClosure(out), new ExplainBothWays(out),
        new ExplainRightAngle(out), new ExplainScribe(out), new ExplainTaper(out), new ExplainAngle(out), new ExplainPipe(out),
        new ExplainBorder(out),
        new ExplainGap(out), new ExplainJoints(out), new ExplainPacks(out), new ExplainTrims(out),
        new ExplainUnderlay(out), new ExplainSkirting(out), new ExplainCost(out),
        new ExplainHeights(out), new ExplainTransition(out), new ExplainRisers(out),
        new ExplainMoistureContent(out), new ExplainMovement(out), new ExplainMovementGap(out), new ExplainBreaks(out), new ExplainBays(out),
        new ExplainRules(out), new ExplainFlatness(out), new ExplainLevels(out), new ExplainAreaRange(out), new ExplainArc(out),
        new ExplainSquareness(out), new ExplainWidths(out), new ExplainTraverse(out), new ExplainRunning(out), new ExplainGoods(out), new ExplainHandover(out),
        new ExplainTape(out)}) {
      line.addSubcommand(calculation);
    }
    return line;
  }

  @Override
  public void run() {
    throw new ParameterException(spec.commandLine(), "say what to explain: " + String.join(", ", spec.subcommands().keySet()));
  }
}
