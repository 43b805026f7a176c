package floorcalc.examples.explain;

import floorcalc.measure.Length;
import floorcalc.rows.RowDivision;
import floorcalc.rows.RowWay;
import floorcalc.working.Calculated;
import java.io.PrintStream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Shows how a width is divided into rows. */
@Command(name = "rows", mixinStandardHelpOptions = true, description = "Divides a width into rows: how many, first and last row.")
final class ExplainRows extends Explaining {
  @Option(names = "--width", required = true, paramLabel = "LENGTH", converter = Typed.OfLength.class,
      description = "Laid width across the rows: the room less a gap on each side.")
  private Length width;

  @Option(names = "--pitch", required = true, paramLabel = "LENGTH", converter = Typed.OfLength.class,
      description = "Distance from row to row as laid.")
  private Length pitch;

  @Option(names = "--minimum", paramLabel = "LENGTH", defaultValue = "70", converter = Typed.OfLength.class,
      description = "Narrowest first or last row; 70 mm if not given.")
  private Length minimum;

  @Option(names = "--way", paramLabel = "WAY", defaultValue = "as-needed", converter = Typed.OfWay.class,
      description = "as-needed, least-cut, balanced, widest-strip or fewest-boards (for one width the same as as-needed); as-needed if not given.")
  private RowWay way;

  ExplainRows(PrintStream out) {
    super(out);
  }

  @Override
  Calculated<RowDivision> calculate() {
    return RowDivision.of(width, pitch, minimum, way);
  }
}
