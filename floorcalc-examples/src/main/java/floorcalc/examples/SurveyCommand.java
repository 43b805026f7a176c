package floorcalc.examples;

import floorcalc.examples.job.MeasuredRoom;
import floorcalc.examples.job.SurveyFile;
import floorcalc.outline.survey.SurveyReport;
import floorcalc.working.Calculated;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.TypeConversionException;

/** Says what the measurements of the rooms of a job come to. */
@Command(name = "survey", mixinStandardHelpOptions = true,
    description = "Works out the surveys of one job: what does not fit and is to be measured again, what is missing for a shape,"
        + " where the corners are and how sure that is.")
final class SurveyCommand implements Callable<Integer> {
  private final Console console;

  @Parameters(paramLabel = "JOB", description = "Job file (floorcalc-job/1), or - for standard input.")
  private String job;

  @Option(names = "--room", paramLabel = "NAME", description = "Only this room.")
  private String room;

  @Option(names = "--datum", paramLabel = "free|first-wall", converter = Datum.class, defaultValue = "first-wall",
      description = "What the ± of a corner is against: the middle of all corners, or corner 1 and wall 1 (if left out).")
  private SurveyDatum datum;

  SurveyCommand(Console console) {
    this.console = console;
  }

  /** Reads what stands behind {@code --datum}. */
  static final class Datum implements ITypeConverter<SurveyDatum> {
    @Override
    public SurveyDatum convert(String typed) {
      for (SurveyDatum datum : SurveyDatum.values()) {
        if (datum.toString().equals(typed)) {
          return datum;
        }
      }
      throw new TypeConversionException("found [" + typed + "]; must be free or first-wall");
    }
  }

  @Override
  public Integer call() {
    List<String> lines = new ArrayList<>();
    Optional<SurveyFile> read = JobInput.of(job).surveys(console.in(), lines);
    if (read.isEmpty()) {
      throw new Refusal(lines);
    }
    SurveyFile file = read.get();
    List<MeasuredRoom> rooms = asked(file);
    Map<MeasuredRoom, Calculated<SurveyReport>> reports = worked(rooms);
    console.say(file.title());
    SurveyText text = new SurveyText(console, file.tape(), datum);
    reports.forEach(text::room);
    return Main.OK;
  }

  private List<MeasuredRoom> asked(SurveyFile file) {
    if (file.rooms().isEmpty()) {
      throw new Refusal(job + ": no room has a survey; give one in place of its outline");
    }
    if (room == null) {
      return file.rooms();
    }
    List<MeasuredRoom> found = file.rooms().stream().filter(one -> one.name().equals(room)).toList();
    if (found.isEmpty()) {
      throw new Refusal("--room " + room + ": " + (file.others().contains(room) ? "this room has no survey"
          : "there is no such room") + "; those with a survey are: "
          + String.join(", ", file.rooms().stream().map(MeasuredRoom::name).toList()));
    }
    return found;
  }

  private Map<MeasuredRoom, Calculated<SurveyReport>> worked(List<MeasuredRoom> rooms) {
    Map<MeasuredRoom, Calculated<SurveyReport>> reports = new LinkedHashMap<>();
    List<String> lines = new ArrayList<>();
    for (MeasuredRoom one : rooms) {
      try {
        reports.put(one, Heartbeat.during(console, "fitting " + one.name(), () -> SurveyReport.of(one.survey())));
      } catch (IllegalArgumentException fault) {
        lines.add(one.name() + ": " + fault.getMessage());
      }
    }
    if (!lines.isEmpty()) {
      throw new Refusal(lines);
    }
    return reports;
  }
}
