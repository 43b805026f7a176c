package floorcalc.examples.explain;

import floorcalc.measure.Length;
import floorcalc.rows.StripRisk;
import floorcalc.working.Calculated;
import floorcalc.working.Step;
import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Shows how likely a strip is too narrow. */
@Command(name = "strip-risk", mixinStandardHelpOptions = true,
    description = "Shows how likely a strip is narrower than asked, when its wall and the pitch are known to a standard deviation.")
final class ExplainStripRisk extends Explaining {
  @Option(names = "--strip", required = true, paramLabel = "LENGTH", converter = Typed.OfLength.class,
      description = "The strip as measured.")
  private Length strip;

  @Option(names = "--pitch", required = true, paramLabel = "LENGTH", converter = Typed.OfLength.class,
      description = "Distance from row to row as laid.")
  private Length pitch;

  @Option(names = "--minimum", paramLabel = "LENGTH", defaultValue = "70", converter = Typed.OfLength.class,
      description = "Narrowest strip; 70 mm if not given.")
  private Length minimum;

  @Option(names = "--deviation", required = true, paramLabel = "LENGTH", converter = Typed.OfLength.class,
      description = "Standard deviation of the place of the wall.")
  private Length deviation;

  @Option(names = "--rows", paramLabel = "N", defaultValue = "0", description = "Rows up to the wall.")
  private long rows;

  @Option(names = "--pitch-deviation", paramLabel = "LENGTH", defaultValue = "0", converter = Typed.OfLength.class,
      description = "Standard deviation of the pitch; 0 mm if not given.")
  private Length pitchDeviation;

  ExplainStripRisk(PrintStream out) {
    super(out);
  }

  @Override
  Calculated<StripRisk> calculate() {
    if (pitchDeviation.isZero()) {
      return StripRisk.of(strip, pitch, minimum, deviation);
    }
    Calculated<Length> together = StripRisk.withDrift(deviation, rows, pitchDeviation);
    Calculated<StripRisk> risk = StripRisk.of(strip, pitch, minimum, together.value());
    List<Step> steps = new ArrayList<>(together.steps());
    steps.addAll(risk.steps());
    return Calculated.of(risk.value(), steps, risk.findings());
  }
}
