package floorcalc.examples.explain;

import floorcalc.measure.Length;
import floorcalc.transitions.Casing;
import floorcalc.transitions.CasingWork;
import floorcalc.transitions.DoorLeaf;
import floorcalc.transitions.DoorSet;
import floorcalc.transitions.FireRating;
import floorcalc.transitions.HeightStack;
import floorcalc.transitions.Layer;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Judgement;
import floorcalc.working.Step;
import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Shows how high a floor stands, what is cut off casings, and what is left under a door leaf. */
@Command(name = "heights", mixinStandardHelpOptions = true,
    description = "Adds up the layers of a floor: its height, the undercut of casings, the space under the leaf of a door.")
final class ExplainHeights extends Explaining {
  @Option(names = "--layer", required = true, paramLabel = "LAYER", converter = LayerTyped.class,
      description = "A layer from below, such as \"underlay: 2\". Give --layer once for each.")
  private List<Layer> layers;

  @Option(names = "--clearance", paramLabel = "LENGTH", converter = Typed.OfLength.class,
      description = "What is left between floor and casing; 1 mm if not given.")
  private Length clearance = CasingWork.CLEARANCE;

  @Option(names = "--frame-stays", description = "The frame cannot be cut: steel, stone.")
  private boolean frameStays;

  @Option(names = "--leaf", paramLabel = "LENGTH", converter = Typed.OfLength.class,
      description = "How high the bottom of the leaf is above the bare subfloor.")
  private Length leaf;

  @Option(names = "--limits", paramLabel = "NAME",
      description = "Limits on the space under the leaf: \"common practice\", \"UK ventilation\" or \"UK warranty\"; all if not given.")
  private String limits;

  @Option(names = "--fire-door", description = "It is a fire door: nothing is cut.")
  private boolean fireDoor;

  ExplainHeights(PrintStream out) {
    super(out);
  }

  @Override
  Calculated<List<Judgement>> calculate() {
    HeightStack stack = HeightStack.of(layers);
    FireRating fire = fireDoor ? FireRating.FIRE_DOOR : FireRating.NOT_STATED;
    Calculated<CasingWork> casing =
        CasingWork.of(stack, clearance, frameStays ? Casing.CANNOT_BE_CUT : Casing.NOT_STATED, fire);
    List<Step> steps = new ArrayList<>(casing.steps().isEmpty() ? stack.calculated().steps() : casing.steps());
    List<Finding> findings = new ArrayList<>(casing.findings());
    if (leaf == null) {
      return Calculated.of(List.of(), steps, findings);
    }
    Calculated<DoorLeaf> door =
        DoorLeaf.of(leaf, stack, limits == null ? DoorSet.all() : List.of(DoorSet.named(limits)), fire);
    door.steps().stream().filter(step -> !steps.contains(step)).forEach(steps::add);
    door.findings().stream().filter(finding -> !findings.contains(finding)).forEach(findings::add);
    return Calculated.of(door.value().judgements(), steps, findings);
  }

  @Override
  String below(Object value) {
    return JudgementLines.of((List<?>) value);
  }
}
