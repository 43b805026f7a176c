package floorcalc.examples.explain;

import floorcalc.deviations.AngleSet;
import floorcalc.measure.Length;
import floorcalc.outline.Outline;
import floorcalc.outline.survey.CornerSquareness;
import floorcalc.outline.survey.Squareness;
import floorcalc.working.Calculated;
import floorcalc.working.Judgement;
import java.io.PrintStream;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Shows how far the corners of a room are from square. */
@Command(name = "squareness", mixinStandardHelpOptions = true,
    description = "Shows how far each corner of a room is from square: by its outline, or by four walls and two diagonals.")
final class ExplainSquareness extends Explaining {
  @Option(names = "--outline", paramLabel = "OUTLINE", converter = Typed.OfOutline.class,
      description = "Corners \"x,y x,y x,y\" or a POLYGON in well-known text, in millimetres.")
  private Outline outline;

  @Option(names = "--walls", paramLabel = "LENGTHS", converter = Typed.OfLengths.class,
      description = "Four walls in order, with commas between them.")
  private Typed.Lengths walls;

  @Option(names = "--diagonals", paramLabel = "LENGTHS", converter = Typed.OfLengths.class,
      description = "The diagonal from corner 1 to 3 and that from 2 to 4, with a comma between them.")
  private Typed.Lengths diagonals;

  @Option(names = "--tolerance", paramLabel = "LENGTH", converter = Typed.OfLength.class, defaultValue = "3",
      description = "How far lengths that are called equal may differ; 3 mm if not given.")
  private Length tolerance;

  @Option(names = "--angles", paramLabel = "NAME", defaultValue = "DIN 18202",
      description = "By whose limits a corner is square enough; \"DIN 18202\" if not given. A wrong name lists the sets.")
  private String angles;

  ExplainSquareness(PrintStream out) {
    super(out);
  }

  /** Corners and what is said of each. */
  record Corners(List<CornerSquareness> corners, List<Judgement> judgements) {
  }

  @Override
  Calculated<Corners> calculate() {
    boolean taped = walls != null || diagonals != null;
    if ((outline != null) == taped || taped && (walls == null || diagonals == null || diagonals.list().size() != 2)) {
      throw new IllegalArgumentException("give either --outline, or --walls with four lengths and --diagonals with two");
    }
    Calculated<List<CornerSquareness>> corners = taped ? Squareness.ofWallsAndDiagonals(walls.list(), diagonals.list().get(0), diagonals.list().get(1), tolerance)
        : Squareness.of(outline.shell());
    Calculated<List<Judgement>> judged = AngleSet.named(angles).judge(corners.value());
    return Calculated.of(new Corners(corners.value(), judged.value()), Stream.concat(corners.steps().stream(), judged.steps().stream()).toList(),
        corners.findings());
  }

  @Override
  String below(Object value) {
    Corners found = (Corners) value;
    return found.corners().stream().map(corner -> "\n" + corner).collect(Collectors.joining()) + JudgementLines.of(found.judgements());
  }
}
