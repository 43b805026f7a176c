package floorcalc.examples.explain;

import floorcalc.measure.Length;
import floorcalc.outline.Outline;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleValue;
import floorcalc.trims.BarGoods;
import floorcalc.trims.BarGoods.InsideCorners;
import floorcalc.trims.BarOrder;
import floorcalc.trims.TrimEnd;
import floorcalc.trims.TrimOpening;
import floorcalc.trims.TrimRun;
import floorcalc.trims.TrimRuns;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Source;
import floorcalc.working.Step;
import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Shows how much skirting a room takes, wall by wall, and from which bars it is cut. */
@Command(name = "skirting", mixinStandardHelpOptions = true,
    description = "Skirting or quadrant of a room: runs wall by wall less openings, mitres, and how few bars do.")
final class ExplainSkirting extends Explaining {
  private TrimRuns runs;

  @Option(names = "--outline", required = true, paramLabel = "OUTLINE", converter = Typed.OfOutline.class,
      description = "The room: corners as x,y x,y x,y or well-known text, voids in it.")
  private Outline outline;

  @Option(names = "--opening", paramLabel = "POINTS", converter = Typed.OfTwoPoints.class,
      description = "What is left out of a wall, as \"x,y x,y\". May be given several times.")
  private List<Typed.TwoPoints> openings = List.of();

  @Option(names = "--bar", required = true, paramLabel = "LENGTH", converter = Typed.OfLength.class,
      description = "A length that is sold. May be given several times.")
  private List<Length> bars;

  @Option(names = "--thickness", paramLabel = "LENGTH", defaultValue = "15", converter = Typed.OfLength.class,
      description = "How far it stands out from the wall; 15 mm if not given.")
  private Length thickness;

  @Option(names = "--scribed", description = "Inside corners are scribed; mitred if not given.")
  private boolean scribed;

  @Option(names = "--kerf", paramLabel = "LENGTH", defaultValue = "3", converter = Typed.OfLength.class,
      description = "Width of a saw cut; 3 mm if not given.")
  private Length kerf;

  ExplainSkirting(PrintStream out) {
    super(out);
  }

  @Override
  Calculated<BarOrder> calculate() {
    BarGoods goods = BarGoods.of("skirting", bars, thickness)
        .withInsideCorners(scribed ? InsideCorners.SCRIBED : InsideCorners.MITRED);
    List<TrimOpening> left = new ArrayList<>();
    for (Typed.TwoPoints opening : openings) {
      left.add(TrimOpening.of("opening " + (left.size() + 1), opening.from(), opening.to()));
    }
    Calculated<TrimRuns> walked = TrimRuns.of("room", outline, left, goods);
    runs = walked.value();
    Calculated<BarOrder> order = BarOrder.ofRuns(goods, List.of(runs), new RuleValue<>(LayingRules.SAW_KERF, kerf, Source.GIVEN));
    List<Step> steps = new ArrayList<>(walked.steps());
    steps.addAll(order.steps());
    List<Finding> findings = new ArrayList<>(walked.findings());
    findings.addAll(order.findings());
    return Calculated.of(order.value(), steps, findings);
  }

  @Override
  String below(Object value) {
    StringBuilder text = new StringBuilder("\nruns, the room on the left: at the wall, at the face, of the bar");
    for (TrimRun run : runs.runs()) {
      text.append("\n  ").append(run.name()).append(": ").append(run.back()).append(", ").append(run.front()).append(", ")
          .append(run.cut()).append("; from ").append(end(run.start())).append(" to ").append(end(run.end()));
    }
    text.append("\nbars:");
    ((BarOrder) value).cutting().bars().forEach(bar -> {
      text.append("\n  ").append(bar.stock().length()).append(": ");
      bar.pieces().forEach(piece -> text.append(piece.cutLength()).append(" (").append(piece.name()).append(") + "));
      text.setLength(text.length() - 3);
      text.append(", left ").append(bar.leftover());
    });
    return text.toString();
  }

  private static String end(TrimEnd end) {
    return end.kind().words() + (end.sawDegrees().signum() == 0 ? "" : ", saw at " + end.sawDegrees().stripTrailingZeros().toPlainString() + "°");
  }
}
