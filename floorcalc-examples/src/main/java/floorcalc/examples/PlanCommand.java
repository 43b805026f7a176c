package floorcalc.examples;

import floorcalc.FloorPlanner;
import floorcalc.examples.job.JobFile;
import floorcalc.examples.planfile.PlanWriter;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.JobFault;
import floorcalc.plan.UnsoundJobException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.BooleanSupplier;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Plans jobs: all of them are read, and planned, before anything is written. */
@Command(name = "plan", mixinStandardHelpOptions = true,
    description = "Plans jobs and writes for each a folder with plan.json, job-sheet.html, a drawing per bay,"
        + " cut-card.csv and order.csv; or answers jobs line by line, for other programs.")
final class PlanCommand implements Callable<Integer> {
  private final Console console;
  private final BooleanSupplier trace;

  @Parameters(paramLabel = "JOB", arity = "0..*", description = "Job files (floorcalc-job/1), or - for standard input. With --lines"
      + " one file, standard input if there is none.")
  private List<String> jobs = List.of();

  @ArgGroup(exclusive = true, multiplicity = "1")
  private Where where;

  /** Where the results go. */
  private static final class Where {
    @Option(names = "--out", paramLabel = "DIR",
        description = "Folder to write to; each job gets a folder in it, named after its file without .json.")
    private String out;

    @Option(names = "--json", description = "Write the plan of one job to standard output, and no files.")
    private boolean json;

    @Option(names = "--lines", description = "Read one job a line and write for each, in the same order, one line to standard"
        + " output: its plan, or what is wrong with it (floorcalc-refusal/1). Each answer is sent before the next job is begun.")
    private boolean lines;
  }

  @Option(names = "--threads", paramLabel = "N",
      description = "With --lines: plan up to N jobs at once, 1 to 256; 1 if left out. The answers are the same.")
  private Integer threads;

  PlanCommand(Console console, BooleanSupplier trace) {
    this.console = console;
    this.trace = trace;
  }

  @Override
  public Integer call() {
    if (threads != null && !where.lines) {
      throw new Refusal("--threads goes with --lines");
    }
    if (where.lines) {
      return new LinesOfJobs(console, trace).answer(jobs, threads == null ? 1 : threads);
    }
    if (jobs.isEmpty()) {
      throw new Refusal("name the jobs to plan, or - for standard input");
    }
    if (where.json && jobs.size() > 1) {
      throw new Refusal("--json writes one plan, but there are " + jobs.size() + " jobs; plan them one by one or use --out");
    }
    List<JobInput> inputs = inputs();
    Path out = where.json ? Path.of("") : path(where.out);
    if (!where.json) {
      Results.checkPlace(out);
    }
    List<JobFile> files = read(inputs);
    List<FloorPlan> plans = plan(inputs, files);
    if (where.json) {
      byte[] json = PlanWriter.write(plans.get(0));
      console.out().write(json, 0, json.length);
      console.out().flush();
      return Main.OK;
    }
    List<Results> results = new ArrayList<>();
    for (int i = 0; i < inputs.size(); i++) {
      JobFile file = files.get(i);
      FloorPlan plan = plans.get(i);
      Path folder = out.resolve(inputs.get(i).folder());
      results.add(Heartbeat.during(console, "drawing " + inputs.get(i).typed(), () -> Results.of(folder, file, plan)));
    }
    results.forEach(Results::write);
    for (int i = 0; i < inputs.size(); i++) {
      new Summary(console).print(inputs.get(i).typed(), plans.get(i), results.get(i));
    }
    return Main.OK;
  }

  private List<JobInput> inputs() {
    List<JobInput> inputs = new ArrayList<>();
    for (String job : jobs) {
      path(job);
      inputs.add(JobInput.of(job));
    }
    List<String> lines = where.json ? List.of() : JobInput.clashes(inputs);
    if (!lines.isEmpty()) {
      throw new Refusal(lines);
    }
    return inputs;
  }

  static Path path(String typed) {
    try {
      return Path.of(typed);
    } catch (InvalidPathException fault) {
      throw new Refusal("[" + typed.replaceAll("\\p{Cc}", "?") + "] is not the name of a file or folder here");
    }
  }

  private List<JobFile> read(List<JobInput> inputs) {
    List<String> lines = new ArrayList<>();
    List<JobFile> files = new ArrayList<>();
    for (JobInput input : inputs) {
      files.addAll(input.read(console.in(), lines));
    }
    if (!lines.isEmpty()) {
      throw new Refusal(lines);
    }
    return files;
  }

  private List<FloorPlan> plan(List<JobInput> inputs, List<JobFile> files) {
    List<FloorPlan> plans = new ArrayList<>();
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < files.size(); i++) {
      JobFile file = files.get(i);
      String doing = "planning " + inputs.get(i).typed() + ", job " + (i + 1) + " of " + files.size();
      try {
        plans.add(Heartbeat.during(console, doing, () -> FloorPlanner.plan(file.job())));
      } catch (UnsoundJobException unsound) {
        lines.add(inputs.get(i).typed() + ": cannot be planned, nothing was written");
        unsound.faults().forEach(fault -> lines.add(place(fault) + ": " + fault.message()));
      }
    }
    if (!lines.isEmpty()) {
      throw new Refusal(lines);
    }
    return plans;
  }

  static String place(JobFault fault) {
    return fault.room() < 0 ? "/rooms" : "/rooms/" + fault.room();
  }
}
