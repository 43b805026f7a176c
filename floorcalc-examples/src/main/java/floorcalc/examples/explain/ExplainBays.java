package floorcalc.examples.explain;

import floorcalc.bays.BayFreedom;
import floorcalc.bays.BaySplit;
import floorcalc.bays.Opening;
import floorcalc.measure.Length;
import floorcalc.outline.Direction;
import floorcalc.outline.Outline;
import floorcalc.rules.AtDoorways;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleKey;
import floorcalc.rules.RuleSet;
import floorcalc.working.Calculated;
import floorcalc.working.Source;
import floorcalc.working.Step;
import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Shows where a room is split so that each bay can move. */
@Command(name = "bays", mixinStandardHelpOptions = true,
    description = "Shows how deep each recess of a room is, and where the floor is split so that each bay can move, with the least length"
        + " of profiles.")
final class ExplainBays extends Explaining {
  @Option(names = "--outline", required = true, paramLabel = "CORNERS", converter = Typed.OfOutline.class,
      description = "Corners \"x,y x,y x,y\" or a POLYGON in well-known text, in millimetres; voids as inner rings.")
  private Outline outline;

  @Option(names = "--direction", paramLabel = "DEGREES", defaultValue = "0",
      description = "The way the boards run, anticlockwise from x; 0 if not given.")
  private double degrees;

  @Option(names = "--opening", paramLabel = "JAMBS", converter = Typed.OfJambs.class,
      description = "A doorway inside the outline, from jamb to jamb: \"x,y x,y\"; may be given more than once.")
  private List<Typed.Jambs> openings = List.of();

  @Option(names = "--run-through", description = "Doorways need no break of their own.")
  private boolean runThrough;

  @Option(names = "--recess", paramLabel = "LENGTH", converter = Typed.OfLength.class,
      description = "Deepest recess without a break; 500 mm if not given.")
  private Length recess;

  @Option(names = "--void", paramLabel = "LENGTH", converter = Typed.OfLength.class,
      description = "Widest column, hearth or island without a break, by its smaller width; 1000 mm if not given.")
  private Length widest;

  @Option(names = "--along", paramLabel = "LENGTH", converter = Typed.OfLength.class,
      description = "Longest bay along the boards; 12 m if not given.")
  private Length along;

  @Option(names = "--across", paramLabel = "LENGTH", converter = Typed.OfLength.class,
      description = "Widest bay across the boards; 8 m if not given.")
  private Length across;

  ExplainBays(PrintStream out) {
    super(out);
  }

  @Override
  Calculated<BaySplit> calculate() {
    LayingRules rules = RuleSet.COMMON_PRACTICE.forBoard(Length.ofMillimetres(14), Length.ofMillimetres(185));
    rules = given(rules, LayingRules.DEEPEST_RECESS, recess);
    rules = given(rules, LayingRules.WIDEST_VOID, widest);
    rules = given(rules, LayingRules.MAXIMUM_RUN_ALONG, along);
    rules = given(rules, LayingRules.MAXIMUM_RUN_ACROSS, across);
    rules = runThrough ? rules.with(LayingRules.AT_DOORWAYS, AtDoorways.RUN_THROUGH, Source.GIVEN) : rules;
    List<Opening> doors = new ArrayList<>();
    for (Typed.Jambs jambs : openings) {
      doors.add(new Opening(Integer.toString(doors.size() + 1), jambs.from(), jambs.to()));
    }
    List<Step> steps = new ArrayList<>(BayFreedom.of("the room", outline, rules).steps());
    Calculated<BaySplit> split = BaySplit.of(outline, Direction.fromDegrees(degrees), doors, rules);
    steps.addAll(split.steps());
    return Calculated.of(split.value(), steps, split.findings());
  }

  private static LayingRules given(LayingRules rules, RuleKey<Length> key, Length value) {
    return value == null ? rules : rules.with(key, value, Source.GIVEN);
  }

  @Override
  String below(Object value) {
    BaySplit split = (BaySplit) value;
    StringBuilder text = new StringBuilder("\n").append(split.parts().size()).append(split.parts().size() == 1 ? " bay" : " bays");
    if (!split.breaks().isEmpty()) {
      text.append(split.isProvenLeast() ? ", no shorter breaks along the lines tried" : ", not proven least");
    }
    for (int i = 0; i < split.parts().size(); i++) {
      text.append("\n  bay ").append(i + 1).append(": ").append(split.parts().get(i).area()).append(", ")
          .append(split.parts().get(i).shell());
    }
    return text.toString();
  }
}
