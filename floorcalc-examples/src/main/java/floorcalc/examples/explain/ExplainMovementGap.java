package floorcalc.examples.explain;

import floorcalc.measure.Length;
import floorcalc.moisture.Percent;
import floorcalc.movement.GapAdvice;
import floorcalc.movement.GapAdvice.StaysPut;
import floorcalc.movement.MovementForecast;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleValue;
import floorcalc.working.Calculated;
import floorcalc.working.Source;
import java.io.PrintStream;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Shows which gap a floor needs for its movement, or how wide a bay may be. */
@Command(name = "movement-gap", mixinStandardHelpOptions = true,
    description = "Shows which gap a floor needs on each side for its movement, and how wide a bay may be with a given gap.")
final class ExplainMovementGap extends Explaining {
  @Option(names = "--width", required = true, paramLabel = "LENGTH", converter = Typed.OfLength.class,
      description = "The floor across the boards, through all openings without a break.")
  private Length width;

  @ArgGroup(exclusive = false, multiplicity = "1")
  private Wood wood;

  @Option(names = "--now", required = true, paramLabel = "PERCENT", converter = Typed.OfPercent.class,
      description = "Moisture content of the boards when laid, in per cent.")
  private Percent now;

  @Option(names = "--dampest", required = true, paramLabel = "PERCENT", converter = Typed.OfPercent.class,
      description = "Moisture content in the dampest season, in per cent.")
  private Percent dampest;

  @Option(names = "--gap", paramLabel = "LENGTH", defaultValue = "10", converter = Typed.OfLength.class,
      description = "Gap on each side, square to the wall; 10 mm if not given.")
  private Length gap;

  @Option(names = "--one-side", description = "The floor is held at one side, so that the other takes all.")
  private boolean oneSide;

  ExplainMovementGap(PrintStream out) {
    super(out);
  }

  @Override
  Calculated<GapAdvice> calculate() {
    Percent driest = now.compareTo(dampest) < 0 ? now : dampest;
    return GapAdvice.of(MovementForecast.of(now, driest, dampest, wood.coefficient()), width,
        new RuleValue<>(LayingRules.EXPANSION_GAP, gap, Source.GIVEN),
        oneSide ? StaysPut.AT_ONE_SIDE : StaysPut.IN_THE_MIDDLE);
  }
}
