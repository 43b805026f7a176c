package floorcalc.examples.explain;

import floorcalc.measure.Length;
import floorcalc.rows.RowDrift;
import floorcalc.working.Calculated;
import java.io.PrintStream;
import java.math.RoundingMode;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Shows how far the last row drifts when boards are laid at another pitch than their nominal width. */
@Command(name = "drift", mixinStandardHelpOptions = true,
    description = "Shows how far the last row drifts when a measured stack of boards differs from the nominal width.")
final class ExplainDrift extends Explaining {
  @Option(names = "--width", required = true, paramLabel = "LENGTH", converter = Typed.OfLength.class,
      description = "Nominal cover width of a board.")
  private Length nominal;

  @Option(names = "--stack", required = true, paramLabel = "LENGTH", converter = Typed.OfLength.class,
      description = "Measured width over boards pushed together.")
  private Length stack;

  @Option(names = "--boards", required = true, paramLabel = "N", description = "How many boards that was measured over.")
  private int boards;

  @Option(names = "--rows", required = true, paramLabel = "N", description = "Rows to be laid.")
  private long rows;

  ExplainDrift(PrintStream out) {
    super(out);
  }

  @Override
  Calculated<RowDrift> calculate() {
    if (boards < 1) {
      throw new IllegalArgumentException("--boards must be at least 1, but was " + boards);
    }
    return RowDrift.of(nominal, stack.dividedBy(boards, RoundingMode.FLOOR), rows);
  }
}
