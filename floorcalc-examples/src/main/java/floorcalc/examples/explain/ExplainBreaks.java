package floorcalc.examples.explain;

import floorcalc.examples.job.BadJobException;
import floorcalc.examples.job.JobReader;
import floorcalc.measure.Length;
import floorcalc.moisture.Percent;
import floorcalc.movement.BayMovement;
import floorcalc.movement.BreakAdvice;
import floorcalc.movement.MovementForecast;
import floorcalc.outline.Direction;
import floorcalc.plan.FloorJob;
import floorcalc.rules.LayingRules;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Step;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Shows how far a floor runs across its boards, through its doors, and where it needs an expansion break. */
@Command(name = "breaks", mixinStandardHelpOptions = true,
    description = "Shows how wide a floor is across its boards, counted through doors without a break, what its gap takes of the"
        + " movement, and where a break is needed.")
final class ExplainBreaks extends Explaining {
  @Parameters(paramLabel = "JOB.json", description = "A job whose rooms are in the same coordinates; doors that lead to each other and have"
      + " the same floor beyond join them.")
  private Path file;

  @ArgGroup(exclusive = false, multiplicity = "1")
  private Wood wood;

  @Option(names = "--now", required = true, paramLabel = "PERCENT", converter = Typed.OfPercent.class,
      description = "Moisture content of the boards when laid, in per cent.")
  private Percent now;

  @Option(names = "--driest", required = true, paramLabel = "PERCENT", converter = Typed.OfPercent.class,
      description = "Moisture content in the driest season, in per cent.")
  private Percent driest;

  @Option(names = "--dampest", required = true, paramLabel = "PERCENT", converter = Typed.OfPercent.class,
      description = "Moisture content in the dampest season, in per cent.")
  private Percent dampest;

  @Option(names = "--direction", paramLabel = "DEGREES",
      description = "The way the boards run, anticlockwise from x; 0 and 90 are compared if not given.")
  private Double degrees;

  ExplainBreaks(PrintStream out) {
    super(out);
  }

  /** What was found for one way to run the boards. */
  private record Found(Direction boards, Calculated<BreakAdvice> advice, Length gap) {
  }

  @Override
  Calculated<List<Found>> calculate() {
    FloorJob job = ReadingInput.read(file, bytes -> {
      try {
        return JobReader.read(bytes).job();
      } catch (BadJobException bad) {
        int count = bad.mistakes().size();
        throw new IllegalArgumentException(file + ": " + count + (count == 1 ? " mistake" : " mistakes")
            + ", nothing was worked out\n" + bad.getMessage(), bad);
      }
    });
    MovementForecast forecast = MovementForecast.of(now, driest, dampest, wood.coefficient());
    List<Found> found = new ArrayList<>();
    List<Step> steps = new ArrayList<>();
    List<Finding> findings = new ArrayList<>();
    for (double angle : degrees == null ? new double[] {0, 90} : new double[] {degrees}) {
      Direction boards = Direction.fromDegrees(angle);
      Calculated<BreakAdvice> advice = BreakAdvice.of(forecast, JoinedRooms.of(job, boards), job.rules());
      found.add(new Found(boards, advice, job.rules().value(LayingRules.EXPANSION_GAP)));
      if (degrees != null) {
        steps.addAll(advice.steps());
        findings.addAll(advice.findings());
      }
    }
    return Calculated.of(found, steps, findings);
  }

  @Override
  String below(Object value) {
    StringBuilder text = new StringBuilder();
    for (Object each : (List<?>) value) {
      Found found = (Found) each;
      text.append("\nboards at ").append(found.boards()).append(", a gap of ").append(found.gap()).append(" on each side");
      BreakAdvice advice = found.advice().value();
      advice.asOne().forEach(bay -> text.append("\n  ").append(bay).append(shortfall(bay, found.gap())));
      advice.breaks().forEach(at -> text.append("\n  break at ").append(at.opening().name()).append(": ").append(at.width())
          .append(" in total; then"));
      if (!advice.breaks().isEmpty()) {
        advice.withBreaks().forEach(bay -> text.append("\n    ").append(bay).append(shortfall(bay, found.gap())));
      }
      found.advice().findings().stream().filter(finding -> finding.code().equals("break-within-room"))
          .forEach(finding -> text.append("\n  ").append(finding.where()).append(": ").append(finding.message()));
    }
    return steps(text.toString());
  }

  /** Without working above there is no line to end. */
  private String steps(String text) {
    return degrees == null ? text.substring(1) : text;
  }

  private static String shortfall(BayMovement bay, Length gap) {
    StringBuilder text = new StringBuilder(bay.needed().compareTo(gap) > 0 ? ", " + bay.needed().minus(gap) + " short" : "");
    bay.judgements().stream().filter(judgement -> !judgement.isMet() && judgement.code().endsWith("-within-run"))
        .forEach(judgement -> text.append("; ").append(judgement.code().startsWith("width") ? "too wide" : "too long").append(", ")
            .append(judgement.limit()));
    return text.toString();
  }
}
