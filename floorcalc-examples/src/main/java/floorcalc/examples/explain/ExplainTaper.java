package floorcalc.examples.explain;

import floorcalc.measure.Length;
import floorcalc.rows.TaperedRows;
import floorcalc.rows.WallFace;
import floorcalc.working.Calculated;
import java.io.PrintStream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Shows which rows a wall cuts off at a taper. */
@Command(name = "taper", mixinStandardHelpOptions = true,
    description = "Shows which rows a wall cuts off at a taper, how wide they are ripped at both ends, and what a trim hides.")
final class ExplainTaper extends Explaining {
  @Option(names = "--wall", required = true, paramLabel = "WALL", converter = Typed.OfWall.class,
      description = "Distances of the wall from the line that the rows are laid from: \"place,distance place,distance ...\".")
  private WallFace wall;

  @Option(names = "--pitch", required = true, paramLabel = "LENGTH", converter = Typed.OfLength.class,
      description = "Distance from row to row as laid.")
  private Length pitch;

  @Mixin
  private TrimTyped trim;

  ExplainTaper(PrintStream out) {
    super(out);
  }

  @Override
  Calculated<TaperedRows> calculate() {
    return trim.cover().map(cover -> TaperedRows.of(wall, pitch, cover)).orElseGet(() -> TaperedRows.of(wall, pitch, trim.gap()));
  }

  @Override
  String below(Object value) {
    StringBuilder text = new StringBuilder();
    TaperedRows rows = (TaperedRows) value;
    rows.straightRow().ifPresent(width -> text.append("\nlast row: ").append(width).append(" all along"));
    for (TaperedRows.Rip rip : rows.rips()) {
      text.append("\nrow ").append(rip.row()).append(" from ").append(rip.from()).append(" to ").append(rip.to()).append(": ripped from ")
          .append(rip.widthFrom()).append(" to ").append(rip.widthTo());
    }
    return text.toString();
  }
}
