package floorcalc.examples.explain;

import floorcalc.measure.Length;
import floorcalc.rows.RowsBothWays;
import floorcalc.working.Calculated;
import java.io.PrintStream;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Shows rows laid both ways from a line. */
@Command(name = "both-ways", mixinStandardHelpOptions = true,
    description = "Shows rows laid both ways from the middle of a floor or from a line through it: a row line or a row on it.")
final class ExplainBothWays extends Explaining {
  @ArgGroup(multiplicity = "1")
  private Widths widths;

  @Option(names = "--pitch", required = true, paramLabel = "LENGTH", converter = Typed.OfLength.class,
      description = "Distance from row to row as laid.")
  private Length pitch;

  @Option(names = "--minimum", paramLabel = "LENGTH", defaultValue = "70", converter = Typed.OfLength.class,
      description = "Narrowest outer strip; 70 mm if not given.")
  private Length minimum;

  /** From the middle of a width, or from a line in it. */
  static final class Widths {
    @Option(names = "--width", required = true, paramLabel = "LENGTH", converter = Typed.OfLength.class,
        description = "Laid width, from the middle of which the rows go both ways.")
    private Length width;

    @ArgGroup(exclusive = false, multiplicity = "1")
    private FromLine line;
  }

  /** The widths on both sides of a line. */
  static final class FromLine {
    @Option(names = "--before", required = true, paramLabel = "LENGTH", converter = Typed.OfLength.class,
        description = "From the line to the edge of the floor on one side.")
    private Length before;

    @Option(names = "--beyond", required = true, paramLabel = "LENGTH", converter = Typed.OfLength.class,
        description = "From the line to the edge of the floor on the other side.")
    private Length beyond;
  }

  ExplainBothWays(PrintStream out) {
    super(out);
  }

  @Override
  Calculated<RowsBothWays> calculate() {
    return widths.line == null ? RowsBothWays.fromMiddle(widths.width, pitch, minimum)
        : RowsBothWays.from(widths.line.before, widths.line.beyond, pitch, minimum);
  }
}
