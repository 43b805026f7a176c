package floorcalc.examples;

import floorcalc.drawing.SurveyDrawing;
import floorcalc.examples.job.JobReader;
import floorcalc.examples.job.MeasuredRoom;
import floorcalc.examples.job.SurveyFile;
import floorcalc.examples.job.Tape;
import floorcalc.outline.survey.SurveyReport;
import floorcalc.working.Calculated;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
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

  @Option(names = "--svg", paramLabel = "FILE", description = "Also draw the survey of one room to this file, ending in .svg; a file that"
      + " is there is written over.")
  private Path svg;

  @Option(names = "--rows", description = "Plan the job too, and say of each bay how sure its narrowest strip is; every room must have a"
      + " shape for it.")
  private boolean rows;

  private byte[] bytes;

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
    if (svg != null && !svg.toString().endsWith(".svg")) {
      throw new Refusal("--svg " + svg + ": the name must end in .svg");
    }
    List<String> lines = new ArrayList<>();
    Optional<SurveyFile> read = JobInput.of(job).read(console.in(), lines, this::surveys);
    if (read.isEmpty()) {
      throw new Refusal(lines);
    }
    SurveyFile file = read.get();
    List<MeasuredRoom> rooms = asked(file);
    if (svg != null && rooms.size() > 1) {
      throw new Refusal("--svg " + svg + ": draws one room, but " + rooms.size() + " have a survey; name one with --room");
    }
    Map<MeasuredRoom, Calculated<SurveyReport>> reports = worked(rooms);
    Optional<SurveyRows> strips = rows ? Optional.of(SurveyRows.of(console, job, bytes)) : Optional.empty();
    if (svg != null) {
      reports.forEach((one, report) -> draw(one, report.value(), file.tape()));
    }
    console.say(file.title());
    SurveyText text = new SurveyText(console, file.tape(), datum);
    reports.forEach((one, report) -> {
      text.room(one, report);
      strips.ifPresent(found -> text.rows(found.of(one.name())));
    });
    return Main.OK;
  }

  private SurveyFile surveys(byte[] utf8) {
    bytes = utf8;
    return JobReader.surveys(utf8);
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

  private void draw(MeasuredRoom one, SurveyReport report, Tape tape) {
    try {
      Files.writeString(svg, SurveyDrawing.of(report).titled(one.name()).in(tape.measures()).toSvg(), StandardCharsets.UTF_8);
    } catch (IOException fault) {
      throw new Refusal("--svg " + svg + ": cannot be written: "
          + (fault.getMessage() == null || fault.getMessage().equals(svg.toString()) ? fault.getClass().getSimpleName()
              : fault.getMessage()));
    }
  }
}
