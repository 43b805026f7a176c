package floorcalc.examples.explain;

import floorcalc.measure.Length;
import floorcalc.transitions.HeightStack;
import floorcalc.transitions.Risers;
import floorcalc.transitions.StairSet;
import floorcalc.working.Calculated;
import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Shows the risers of a stair once floors lie on and around it. */
@Command(name = "risers", mixinStandardHelpOptions = true,
    description = "Says how high each riser of a stair is once the floors lie, and how far they are apart.")
final class ExplainRisers extends Explaining {
  @Option(names = "--riser", required = true, paramLabel = "RISER", converter = Typed.OfLot.class,
      description = "A riser as it is, from below: 180, or \"7 x 190\". Give --riser once for each.")
  private List<Typed.Lot> risers;

  @Option(names = "--foot", paramLabel = "LENGTH", defaultValue = "0", converter = Typed.OfLength.class,
      description = "Height of the floor laid at the foot; 0 mm if not given.")
  private Length foot;

  @Option(names = "--treads", paramLabel = "LENGTH", defaultValue = "0", converter = Typed.OfLength.class,
      description = "Thickness of what is laid on each tread; 0 mm if not given.")
  private Length treads;

  @Option(names = "--top", paramLabel = "LENGTH", defaultValue = "0", converter = Typed.OfLength.class,
      description = "Height of the floor laid at the top; 0 mm if not given.")
  private Length top;

  @Option(names = "--set", paramLabel = "NAME", defaultValue = "common practice, US",
      description = "By whose limits: \"common practice, US\" (if not given) or \"common practice, Canada\".")
  private String set;

  ExplainRisers(PrintStream out) {
    super(out);
  }

  @Override
  Calculated<Risers> calculate() {
    List<Length> before = new ArrayList<>();
    for (Typed.Lot lot : risers) {
      for (int i = 0; i < lot.number().orElse(1) && before.size() <= 100; i++) {
        before.add(lot.length());
      }
    }
    return Risers.of(before, laid(foot), laid(treads), laid(top), StairSet.named(set));
  }

  private static HeightStack laid(Length thickness) {
    return HeightStack.BARE.on("floor", thickness);
  }

  @Override
  String below(Object value) {
    return JudgementLines.of(((Risers) value).judgements()) + "\nStairs are where people fall: the local building code comes first.";
  }
}
