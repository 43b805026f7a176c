package floorcalc.examples.explain;

import floorcalc.fittings.BoardPiece;
import floorcalc.fittings.BoardSide;
import floorcalc.fittings.CutOutLimits;
import floorcalc.fittings.HoleCut;
import floorcalc.fittings.PipeAllowance;
import floorcalc.fittings.PipeAt;
import floorcalc.fittings.PipeHoles;
import floorcalc.measure.Length;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import floorcalc.working.Calculated;
import floorcalc.working.Source;
import floorcalc.working.Step;
import java.io.PrintStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** Shows how a board is cut for pipes. */
@Command(name = "pipe", mixinStandardHelpOptions = true,
    description = "Shows the hole for a pipe in a board, how the board is got round it, and what is glued back.")
final class ExplainPipe extends Explaining {
  @Option(names = "--length", required = true, paramLabel = "LENGTH", converter = Typed.OfLength.class, description = "Length of the piece.")
  private Length length;

  @Option(names = "--width", required = true, paramLabel = "LENGTH", converter = Typed.OfLength.class, description = "Width of the piece.")
  private Length width;

  @Option(names = "--at", required = true, paramLabel = "POINT", converter = Typed.OfPoint.class,
      description = "Middle of the pipe, from the start end and the start edge of the piece, face up, \"x,y\"; may be given again.")
  private List<Point> points;

  @Option(names = "--diameter", required = true, paramLabel = "LENGTH", converter = Typed.OfLength.class,
      description = "Outer diameter of the pipes.")
  private Length diameter;

  @Option(names = "--joint", paramLabel = "SIDE", converter = OfSide.class,
      description = "A side that meets another board: start-end, far-end, start-edge, far-edge; may be given again. Others face the gap.")
  private List<BoardSide> joints = List.of();

  @Option(names = "--gap", paramLabel = "LENGTH", converter = Typed.OfLength.class,
      description = "Clear space on each side of the pipe; a hole 20 mm wider than the pipe if not given.")
  private Length gap;

  @Option(names = "--least-wood", paramLabel = "LENGTH", converter = Typed.OfLength.class,
      description = "Least wood between two holes or from a hole to a side; 20 mm if not given.")
  private Length leastWood;

  @Option(names = "--collar", paramLabel = "LENGTH", converter = Typed.OfLength.class,
      description = "Outer diameter of the collar that is to cover the hole.")
  private Length collar;

  ExplainPipe(PrintStream out) {
    super(out);
  }

  /** Reads a side of a board. */
  static final class OfSide implements ITypeConverter<BoardSide> {
    @Override
    public BoardSide convert(String text) {
      return Arrays.stream(BoardSide.values()).filter(side -> name(side).equals(text)).findFirst()
          .orElseThrow(() -> new TypeConversionException("found [" + text + "]; must be one of "
              + Arrays.stream(BoardSide.values()).map(OfSide::name).collect(Collectors.joining(", "))));
    }

    private static String name(BoardSide side) {
      return side.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }

  @Override
  Calculated<List<HoleCut>> calculate() {
    PipeAllowance allowance = gap == null ? PipeAllowance.TWENTY_WIDER : PipeAllowance.of(gap, Source.GIVEN);
    CutOutLimits limits = leastWood == null ? CutOutLimits.COMMON_PRACTICE
        : CutOutLimits.COMMON_PRACTICE.withLeastWood(leastWood, Source.GIVEN);
    List<PipeAt> pipes = new ArrayList<>();
    for (Point point : points) {
      pipes.add(new PipeAt("pipe " + (pipes.size() + 1), point, diameter));
    }
    List<BoardPiece> pieces = new ArrayList<>(List.of(piece("piece", Length.ZERO, Length.ZERO)));
    for (BoardSide side : joints) {
      pieces.add(switch (side) {
        case START_END -> piece("piece before", length.negated(), Length.ZERO);
        case FAR_END -> piece("piece after", length, Length.ZERO);
        case START_EDGE -> piece("row before", Length.ZERO, width.negated());
        case FAR_EDGE -> piece("row after", Length.ZERO, width);
      });
    }
    Calculated<List<HoleCut>> cuts = PipeHoles.of(pipes, pieces, allowance, limits);
    if (collar == null) {
      return cuts;
    }
    List<Step> steps = new ArrayList<>(cuts.steps());
    steps.add(allowance.collarOverlap(diameter, collar).steps().get(1));
    return Calculated.of(cuts.value(), steps, cuts.findings());
  }

  private BoardPiece piece(String name, Length x, Length y) {
    return BoardPiece.of(name, Ring.of(Point.of(x, y), Point.of(x.plus(length), y), Point.of(x.plus(length), y.plus(width)),
        Point.of(x, y.plus(width))));
  }
}
