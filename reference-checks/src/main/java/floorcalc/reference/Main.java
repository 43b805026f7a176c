package floorcalc.reference;

import floorcalc.recheck.RecheckCommand;
import floorcalc.reference.answers.Library;
import floorcalc.reference.check.Check;
import floorcalc.reference.check.Verdict;
import floorcalc.reference.port.AnswerLines;
import floorcalc.reference.port.OtherProgram;
import floorcalc.reference.report.FullReport;
import floorcalc.reference.report.ReferenceReport;
import floorcalc.reference.report.ShortReport;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.OutputStreamWriter;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** The suite from the command line: hold this library, or another program, against every figure. */
@Command(name = "reference-checks", mixinStandardHelpOptions = true, description = "What outside sources say, and whether we agree.",
    subcommands = RecheckCommand.class)
public final class Main {
  static final int OK = 0;
  static final int FAULT = 1;
  static final int DIFFERS = 2;

  private final InputStream in;
  private final PrintStream out;
  private final PrintStream err;

  private Main(InputStream in, PrintStream out, PrintStream err) {
    this.in = in;
    this.out = out;
    this.err = err;
  }

  /**
   * Runs the program and ends the Java machine with its exit code.
   *
   * @param args the command line, not null
   */
  public static void main(String[] args) {
    System.exit(run(args, System.in, System.out, System.err));
  }

  /**
   * Runs the program.
   *
   * @param args the command line, not null
   * @param in questions, for {@code answer}, not null
   * @param out where results go, not null
   * @param err where mistakes go, not null
   * @return the exit code: 0 all figures agree, 2 some do not or the command line is wrong, 1 a fault
   */
  public static int run(String[] args, InputStream in, PrintStream out, PrintStream err) {
    CommandLine line = new CommandLine(new Main(in, out, err));
    line.setOut(new java.io.PrintWriter(out, true, StandardCharsets.UTF_8));
    line.setErr(new java.io.PrintWriter(err, true, StandardCharsets.UTF_8));
    line.setExecutionExceptionHandler((fault, command, parsed) -> {
      err.println(fault.getMessage());
      return FAULT;
    });
    return args.length == 0 ? line.execute("--help") : line.execute(args);
  }

  @Command(name = "check", mixinStandardHelpOptions = true,
      description = "Ask every question and compare with every figure. Exit: 0 all agree, 2 some do not, 1 a fault.")
  int check(@Option(names = "--out", paramLabel = "FOLDER", defaultValue = "target/reference",
      description = "Where the report goes, as HTML and Markdown; default ${DEFAULT-VALUE}.") Path folder,
      @Option(names = "--program", paramLabel = "COMMAND", description = "Another program to ask, with its arguments, parted by spaces: it reads one "
          + "question per line as JSON and writes one answer per line.") String program) throws IOException {
    ReferenceReport report;
    if (program == null) {
      Library library = new Library();
      report = ReferenceReport.of(Suite.topics(), library, library.underTest(), List.of());
    } else {
      try (OtherProgram other = OtherProgram.start(List.of(program.strip().split("\\s+")))) {
        report = ReferenceReport.of(Suite.topics(), other, Map.of(), List.of());
      }
    }
    Files.createDirectories(folder);
    Files.writeString(folder.resolve("reference-report.html"), FullReport.html(report), StandardCharsets.UTF_8);
    Files.writeString(folder.resolve("reference-report.md"), ShortReport.markdown(report), StandardCharsets.UTF_8);
    for (Check check : report.checks()) {
      if (check.verdict() == Verdict.DIFFERS) {
        out.println(check);
      }
    }
    long agree = count(report, Verdict.AGREES);
    out.println(agree + " of " + report.checks().size() + " figures agree, " + count(report, Verdict.DIFFERS) + " differ, "
        + count(report, Verdict.NOT_ANSWERED) + " were not answered: " + folder.resolve("reference-report.html"));
    return report.allAgree() ? OK : DIFFERS;
  }

  private static long count(ReferenceReport report, Verdict verdict) {
    return report.checks().stream().filter(check -> check.verdict() == verdict).count();
  }

  @Command(name = "answer", mixinStandardHelpOptions = true,
      description = "Answer questions with this library: one per line in, one answer per line out, as JSON.")
  int answer() throws IOException {
    AnswerLines.serve(new Library(), new InputStreamReader(in, StandardCharsets.UTF_8), new OutputStreamWriter(out, StandardCharsets.UTF_8));
    return OK;
  }
}
