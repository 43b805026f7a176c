package floorcalc.examples.explain;

import floorcalc.measure.Length;
import floorcalc.rows.Scribe;
import floorcalc.rows.WallFace;
import floorcalc.working.Calculated;
import java.io.PrintStream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Shows how deep the boards along a crooked wall are scribed. */
@Command(name = "scribe", mixinStandardHelpOptions = true,
    description = "Shows how deep the boards along a crooked wall are scribed, and where the row line must lie.")
final class ExplainScribe extends Explaining {
  @Option(names = "--wall", required = true, paramLabel = "WALL", converter = Typed.OfWall.class,
      description = "Distances of the wall from a straight string line: \"place,distance place,distance ...\", away from the floor"
          + " positive.")
  private WallFace wall;

  @Option(names = "--pitch", required = true, paramLabel = "LENGTH", converter = Typed.OfLength.class,
      description = "Distance from row to row as laid.")
  private Length pitch;

  @Option(names = "--minimum", paramLabel = "LENGTH", defaultValue = "70", converter = Typed.OfLength.class,
      description = "Narrowest that the row may get; 70 mm if not given.")
  private Length minimum;

  @Mixin
  private TrimTyped trim;

  ExplainScribe(PrintStream out) {
    super(out);
  }

  @Override
  Calculated<Scribe> calculate() {
    return trim.cover().map(cover -> Scribe.of(wall, pitch, minimum, cover))
        .orElseGet(() -> Scribe.of(wall, pitch, minimum, trim.gap()));
  }

  @Override
  String below(Object value) {
    StringBuilder text = new StringBuilder();
    for (Scribe.Depth depth : ((Scribe) value).depths()) {
      text.append("\nat ").append(depth.at()).append(": scribe ").append(depth.depth()).append(", width left ").append(depth.width());
    }
    return text.toString();
  }
}
