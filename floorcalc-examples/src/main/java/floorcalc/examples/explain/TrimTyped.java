package floorcalc.examples.explain;

import floorcalc.measure.Length;
import floorcalc.rows.TrimCover;
import java.util.Optional;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Option;

/** The gap at a wall, and a trim above it if there is one. */
final class TrimTyped {
  @Option(names = "--gap", paramLabel = "LENGTH", defaultValue = "10", converter = Typed.OfLength.class,
      description = "Least gap to the wall, across the rows; 10 mm if not given.")
  private Length gap;

  @ArgGroup(exclusive = false)
  private Trim trim;

  /** The trim. */
  static final class Trim {
    @Option(names = "--cover", required = true, paramLabel = "LENGTH", converter = Typed.OfLength.class,
        description = "How far the skirting or beading reaches from the wall over the floor.")
    private Length cover;

    @Option(names = "--bearing", paramLabel = "LENGTH", defaultValue = "3", converter = Typed.OfLength.class,
        description = "Least that it is to rest on the boards; 3 mm if not given.")
    private Length bearing;
  }

  Length gap() {
    return gap;
  }

  Optional<TrimCover> cover() {
    return Optional.ofNullable(trim).map(typed -> new TrimCover(typed.cover, typed.bearing, gap));
  }
}
