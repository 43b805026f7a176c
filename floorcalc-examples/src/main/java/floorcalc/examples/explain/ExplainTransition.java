package floorcalc.examples.explain;

import floorcalc.measure.Length;
import floorcalc.outline.Point;
import floorcalc.transitions.EdgeType;
import floorcalc.transitions.HeightDifference;
import floorcalc.transitions.HeightStack;
import floorcalc.transitions.Layer;
import floorcalc.transitions.LevelChangeSet;
import floorcalc.transitions.ProfileChoice;
import floorcalc.transitions.ProfileLine;
import floorcalc.transitions.ProfilePiece;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
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

/** Shows which profile lies at an edge of a floor, and how it is cut. */
@Command(name = "transition", mixinStandardHelpOptions = true,
    description = "Says which profile lies at an edge, which way it falls, how long a bevel or a ramp is, and how it is cut.")
final class ExplainTransition extends Explaining {
  @Option(names = "--edge", required = true, paramLabel = "EDGE", converter = OfEdge.class,
      description = "What lies beyond: same-floor, other-finish, fixed-edge, step or not-stated.")
  private EdgeType edge;

  @Option(names = "--higher-by", paramLabel = "LENGTH", converter = Typed.OfLength.class,
      description = "How much higher it is beyond, negative if lower. Or give the layers of both floors.")
  private Length higherBy;

  @Option(names = "--layer", paramLabel = "LAYER", converter = LayerTyped.class,
      description = "A layer of this floor from below, such as \"underlay: 2\". Give --layer once for each.")
  private List<Layer> layers = List.of();

  @Option(names = "--beyond", paramLabel = "LAYER", converter = LayerTyped.class,
      description = "A layer of the floor beyond, likewise.")
  private List<Layer> beyond = List.of();

  @Option(names = "--subfloor-beyond", paramLabel = "LENGTH", converter = Typed.OfLength.class,
      description = "How much higher the bare subfloor is beyond, negative if lower; 0 mm if not given.")
  private Length subfloorBeyond = Length.ZERO;

  @Option(names = "--set", paramLabel = "NAME", defaultValue = "common practice",
      description = "By whose limits: \"common practice\" (if not given), \"ADA and ANSI\" or \"NF DTU 51.11\".")
  private String set;

  @Option(names = "--along", paramLabel = "POINTS", converter = OfPoints.class,
      description = "Points \"x,y x,y ...\" that the middle of the profile runs along.")
  private Points along;

  @Option(names = "--width", paramLabel = "LENGTH", defaultValue = "40", converter = Typed.OfLength.class,
      description = "Width of the profile, for its mitres; 40 mm if not given.")
  private Length width;

  ExplainTransition(PrintStream out) {
    super(out);
  }

  /** Which profile, and its pieces if its line was given. */
  private record Answer(ProfileChoice choice, List<ProfilePiece> pieces) {
  }

  @Override
  Calculated<Answer> calculate() {
    if ((higherBy != null) == !(layers.isEmpty() && beyond.isEmpty())) {
      throw new IllegalArgumentException("give either --higher-by, or the layers of both floors with --layer and --beyond");
    }
    List<Step> steps = new ArrayList<>();
    HeightDifference difference = new HeightDifference(higherBy == null ? Length.ZERO : higherBy);
    if (higherBy == null) {
      Calculated<HeightDifference> stacks = HeightDifference.between(HeightStack.of(layers),
          HeightStack.of(beyond).fromSubfloorAt(subfloorBeyond));
      steps.addAll(stacks.steps());
      difference = stacks.value();
    }
    Calculated<ProfileChoice> choice = ProfileChoice.of(edge, difference, LevelChangeSet.named(set));
    steps.addAll(choice.steps());
    List<Finding> findings = new ArrayList<>(choice.findings());
    if (along == null) {
      return Calculated.of(new Answer(choice.value(), List.of()), steps, findings);
    }
    Calculated<ProfileLine> line = ProfileLine.of(along.list(), width);
    steps.addAll(line.steps());
    findings.addAll(line.findings());
    return Calculated.of(new Answer(choice.value(), line.value().pieces()), steps, findings);
  }

  @Override
  String below(Object value) {
    Answer answer = (Answer) value;
    StringBuilder text = new StringBuilder("\nprofile: ").append(answer.choice().kind().word()).append(", ")
        .append(answer.choice().because()).append("  [").append(answer.choice().source()).append(']');
    for (int i = 0; i < answer.pieces().size(); i++) {
      ProfilePiece piece = answer.pieces().get(i);
      text.append("\npiece ").append(i + 1).append(": ").append(piece.longPoint()).append(" off the bar, ").append(piece.length())
          .append(" along its middle; sawn ").append(piece.cutAtFrom().abs().stripTrailingZeros().toPlainString()).append(" and ")
          .append(piece.cutAtTo().abs().stripTrailingZeros().toPlainString()).append(" degrees from square");
    }
    return text.toString();
  }

  /** Several points in one option. */
  private record Points(List<Point> list) {
  }

  private static final class OfPoints implements ITypeConverter<Points> {
    @Override
    public Points convert(String text) {
      Typed.OfPoint point = new Typed.OfPoint();
      List<Point> points = new ArrayList<>();
      for (String one : text.strip().split("\\s+")) {
        points.add(point.convert(one));
      }
      return new Points(points);
    }
  }

  private static final class OfEdge implements ITypeConverter<EdgeType> {
    @Override
    public EdgeType convert(String text) {
      return Arrays.stream(EdgeType.values()).filter(one -> name(one).equals(text)).findFirst()
          .orElseThrow(() -> new TypeConversionException("found [" + text + "]; must be one of "
              + Arrays.stream(EdgeType.values()).map(OfEdge::name).collect(Collectors.joining(", "))));
    }

    private static String name(EdgeType edge) {
      return edge.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }
}
