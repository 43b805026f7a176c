package floorcalc.examples;

import floorcalc.Alternative;
import floorcalc.FloorPlanner;
import floorcalc.examples.job.JobFile;
import floorcalc.measure.Length;
import floorcalc.plan.PlanFigures;
import floorcalc.plan.UnsoundJobException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Shows what a wider joint offset costs in boards, packs and cuts, and what it brings. */
@Command(name = "compare", mixinStandardHelpOptions = true,
    description = "Plans one job with wider and wider joint offsets and shows what each way worth choosing takes and how"
        + " nice its floor is. 'no dearer': it takes no more packs than the way with the fewest.")
final class CompareCommand implements Callable<Integer> {
  private final Console console;

  @Parameters(paramLabel = "JOB", description = "Job file (floorcalc-job/1), or - for standard input.")
  private String job;

  CompareCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    List<String> lines = new ArrayList<>();
    List<JobFile> files = new ArrayList<>(JobInput.of(job).read(console.in(), lines));
    if (!lines.isEmpty()) {
      throw new Refusal(lines);
    }
    List<Alternative> found;
    try {
      found = Heartbeat.during(console, "comparing " + job, () -> FloorPlanner.alternatives(files.get(0).job()));
    } catch (UnsoundJobException unsound) {
      lines.add(job + ": cannot be planned");
      unsound.faults().forEach(fault -> lines.add(fault.message()));
      throw new Refusal(lines);
    }
    console.say("joints asked for  smallest found  boards  packs  cuts  H and stair patterns  longest leftover");
    for (Alternative one : found) {
      PlanFigures figures = one.figures();
      console.say(String.format(Locale.ROOT, "%16s  %14s  %6d  %5d  %4d  %20d  %16s  %s", millimetres(one.offsetAsked()),
          figures.smallestOffset().map(CompareCommand::millimetres).orElse("none"), one.boards(), one.packs(), figures.cuts(),
          figures.patterns(), millimetres(figures.longestLeftover()),
          one.isNoDearer() ? "no dearer" : one.packsMore() == 1 ? "1 pack more" : one.packsMore() + " packs more"));
    }
    return Main.OK;
  }

  /** Whole millimetres, rounded down: no less is there. */
  static String millimetres(Length length) {
    return length.toNanometres() / Length.ofMillimetres(1).toNanometres() + " mm";
  }
}
