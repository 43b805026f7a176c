package floorcalc.examples;

import floorcalc.Alternative;
import floorcalc.FloorPlanner;
import floorcalc.examples.job.JobFile;
import floorcalc.measure.Length;
import floorcalc.plan.UnsoundJobException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Shows what a wider joint offset costs in boards, packs and cuts. */
@Command(name = "compare", mixinStandardHelpOptions = true,
    description = "Plans one job with wider and wider joint offsets and shows boards, packs and cut pieces of each way"
        + " worth choosing.")
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
    int fewest = found.stream().mapToInt(Alternative::packs).min().orElseThrow();
    console.say("joints at least  boards  packs  cut pieces");
    for (Alternative one : found) {
      console.say(String.format(Locale.ROOT, "%12s mm  %6d  %5d  %10d%s", millimetres(one.jointOffset()), one.boards(),
          one.packs(), one.cutPieces(), one.packs() == fewest ? "" : "  more packs"));
    }
    return Main.OK;
  }

  private static String millimetres(Length length) {
    return BigDecimal.valueOf(length.toNanometres(), 6).stripTrailingZeros().toPlainString();
  }
}
