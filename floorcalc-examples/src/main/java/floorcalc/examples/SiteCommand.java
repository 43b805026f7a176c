package floorcalc.examples;

import floorcalc.FloorPlanner;
import floorcalc.examples.job.JobFile;
import floorcalc.flatness.ToleranceSet;
import floorcalc.plan.FloorJob;
import floorcalc.plan.UnsoundJobException;
import floorcalc.site.Readiness;
import floorcalc.site.SiteReadings;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Says whether the rooms of a job are fit for laying. */
@Command(name = "site", mixinStandardHelpOptions = true,
    description = "Judges the site readings of one job: what is not kept, what was not measured, what is kept, with whose limit"
        + " it is and what to do.")
final class SiteCommand implements Callable<Integer> {
  private final Console console;

  @ArgGroup(exclusive = true, multiplicity = "1")
  private What what;

  /** What to show. */
  private static final class What {
    @Parameters(paramLabel = "JOB", description = "Job file (floorcalc-job/1), or - for standard input.")
    private String job;

    @Option(names = "--sets", description = "List the named tolerance sets that flatness can be judged by.")
    private boolean sets;
  }

  @Option(names = "--heights", paramLabel = "ROOM=FILE",
      description = "Heights of a room as CSV with the header \"x (m),y (m),z (mm)\", as explain levels reads it; for each room"
          + " once.")
  private List<String> heights = List.of();

  SiteCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    if (what.sets) {
      if (!heights.isEmpty()) {
        throw new Refusal("--heights goes with a job, not with --sets");
      }
      ToleranceSet.all().forEach(set -> new SiteReport(console).set(set));
      return Main.OK;
    }
    List<String> lines = new ArrayList<>();
    List<JobFile> files = new ArrayList<>(JobInput.of(what.job).read(console.in(), lines));
    if (!lines.isEmpty()) {
      throw new Refusal(lines);
    }
    FloorJob job = SiteHeights.added(files.get(0).job(), heights);
    List<Readiness> rooms;
    try {
      rooms = Heartbeat.during(console, "judging " + what.job,
          () -> FloorPlanner.readiness(job, FloorPlanner.plan(withoutSites(job))));
    } catch (UnsoundJobException unsound) {
      lines.add(what.job + ": cannot be planned");
      unsound.faults().forEach(fault -> lines.add(PlanCommand.place(fault) + ": " + fault.message()));
      throw new Refusal(lines);
    }
    console.say(job.title());
    rooms.forEach(room -> new SiteReport(console).room(room));
    return Main.OK;
  }

  /** So that sites are judged once. */
  private static FloorJob withoutSites(FloorJob job) {
    return job.withRooms(job.rooms().stream().map(room -> room.withSite(SiteReadings.NONE)).toList());
  }
}
