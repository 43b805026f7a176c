package floorcalc.recheck;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/**
 * The command {@code recheck}: checks a plan file against its job file, for programs in any language. It ends with {@value #SOUND} if
 * nothing was found, with {@value #FAULTY} if there is a fault or a file cannot be read, and with {@value #BROKEN} if the program itself is at
 * fault.
 */
@Command(name = "recheck", mixinStandardHelpOptions = true,
    description = "Checks a plan against its job from the two files alone: what is laid, cut, counted and said in them.",
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {"0:nothing found", "2:faults found, or a file that cannot be read", "1:a fault in this program"})
public final class RecheckCommand implements Callable<Integer> {
  /** Nothing was found. */
  public static final int SOUND = 0;
  /** A fault in the program itself. */
  public static final int BROKEN = 1;
  /** Faults were found, or a file could not be read. */
  public static final int FAULTY = 2;

  @Spec
  private CommandSpec spec;

  @Parameters(index = "0", paramLabel = "JOB", description = "Job file (floorcalc-job/1).")
  private Path job;

  @Parameters(index = "1", paramLabel = "PLAN", description = "Plan file (floorcalc-plan/1).")
  private Path plan;

  @Parameters(index = "2", arity = "0..1", paramLabel = "AGAIN",
      description = "The same job planned once more: both plans must be the same, byte for byte.")
  private Optional<Path> again = Optional.empty();

  @Option(names = "--json", description = "Write the report as JSON.")
  private boolean asJson;

  /** Makes the command for a command line. */
  public RecheckCommand() {
    // Its fields are set by picocli.
  }

  /**
   * Runs the command alone and ends the process.
   *
   * @param args the arguments, not null
   */
  public static void main(String[] args) {
    PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
    PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
    System.exit(run(out, err, args));
  }

  /** Runs the command and returns its exit code. */
  static int run(PrintWriter out, PrintWriter err, String... args) {
    return new CommandLine(new RecheckCommand()).setOut(out).setErr(err)
        .setExecutionExceptionHandler((fault, line, parsed) -> {
          line.getErr().println("a fault in the program: " + fault);
          return BROKEN;
        }).execute(args);
  }

  @Override
  public Integer call() {
    List<String> refused = new ArrayList<>();
    String jobText = read(job, refused);
    String planText = read(plan, refused);
    String againText = again.map(path -> read(path, refused)).orElse("");
    if (!refused.isEmpty()) {
      refused.forEach(spec.commandLine().getErr()::println);
      return FAULTY;
    }
    RecheckReport report = again.isPresent() ? PlanRecheck.of(jobText, planText, againText) : PlanRecheck.of(jobText, planText);
    PrintWriter out = spec.commandLine().getOut();
    if (asJson) {
      out.println(ReportText.json(report));
    } else {
      report.lines().forEach(out::println);
    }
    out.flush();
    return report.isSound() ? SOUND : FAULTY;
  }

  /** A file as text, or a line that says why not. */
  private static String read(Path file, List<String> refused) {
    try {
      return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(Files.readAllBytes(file))).toString();
    } catch (NoSuchFileException none) {
      refused.add(file + ": there is no such file");
    } catch (CharacterCodingException other) {
      refused.add(file + ": is not UTF-8");
    } catch (IOException fault) {
      refused.add(file + ": cannot be read: " + fault.getMessage());
    }
    return "";
  }
}
