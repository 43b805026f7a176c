package floorcalc.examples.explain;

import floorcalc.outline.survey.AreaRange;
import floorcalc.outline.survey.DiagonalRange;
import floorcalc.working.Calculated;
import java.io.PrintStream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Shows between which areas a room is of which only the walls were measured. */
@Command(name = "area-range", mixinStandardHelpOptions = true,
    description = "Shows between which areas a room is of which only the lengths of the walls are known, and which diagonal to measure.")
final class ExplainAreaRange extends Explaining {
  @Option(names = "--walls", required = true, paramLabel = "LENGTHS", converter = Typed.OfLengths.class,
      description = "Walls in order, with commas between them.")
  private Typed.Lengths walls;

  @Option(names = "--within", paramLabel = "DEGREES",
      description = "Of four walls: every corner is within so many degrees of square.")
  private Double degrees;

  ExplainAreaRange(PrintStream out) {
    super(out);
  }

  @Override
  Calculated<AreaRange> calculate() {
    return degrees == null ? AreaRange.ofSides(walls.list()) : AreaRange.nearSquare(walls.list(), degrees);
  }

  @Override
  String below(Object value) {
    StringBuilder text = new StringBuilder("\narea: " + value);
    for (DiagonalRange diagonal : ((AreaRange) value).diagonals()) {
      text.append("\ndiagonal ").append(diagonal.from()).append('-').append(diagonal.to()).append(": ").append(diagonal.shortest())
          .append(" to ").append(diagonal.longest());
    }
    return text.toString();
  }
}
