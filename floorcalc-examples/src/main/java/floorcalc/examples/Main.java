package floorcalc.examples;

import floorcalc.examples.explain.ExplainCommand;
import floorcalc.examples.job.JobReader;
import floorcalc.examples.lines.JobLines;
import floorcalc.examples.lines.ProgramFault;
import floorcalc.examples.planfile.PlanWriter;
import java.io.InputStream;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The command-line runner: plans jobs and explains calculations. */
@Command(name = "floorcalc", mixinStandardHelpOptions = true, versionProvider = Main.Version.class,
    description = "Works out how to lay wood plank floors: rows, joints, cuts, boards and packs.",
    footer = {"", "Exit: 0 done; 2 refused, with everything that is wrong said and nothing written; 1 a fault in the program."})
public final class Main implements Runnable {
  static final int OK = 0;
  static final int FAULT = 1;
  static final int REFUSED = 2;

  @Spec
  private CommandSpec spec;

  @Option(names = "--trace", scope = CommandLine.ScopeType.INHERIT,
      description = "If the program itself fails, print where.")
  private boolean trace;

  private Main() {
  }

  /** Says which version this is. */
  static final class Version implements CommandLine.IVersionProvider {
    @Override
    public String[] getVersion() {
      String version = Main.class.getPackage().getImplementationVersion();
      return new String[] {"floorcalc " + (version == null ? "(not packaged)" : version),
          "reads " + JobReader.FORMAT + "; writes " + PlanWriter.FORMAT + ", " + JobLines.REFUSAL_FORMAT};
    }
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
   * @param in what {@code -} reads, not null
   * @param out where results go, not null
   * @param err where mistakes and progress go, not null
   * @return the exit code: 0 done, 2 refused, 1 a fault in the program
   */
  public static int run(String[] args, InputStream in, PrintStream out, PrintStream err) {
    Console console = new Console(in, out, err);
    Main main = new Main();
    CommandLine line = new CommandLine(main);
    line.addSubcommand(new PlanCommand(console, () -> main.trace)).addSubcommand(new SiteCommand(console))
        .addSubcommand(new SurveyCommand(console)).addSubcommand(new CompareCommand(console)).addSubcommand(new SchemaCommand(console))
        .addSubcommand(mayExplain(args) ? ExplainCommand.of(console.out()) : ExplainCommand.bare());
    line.setOut(new PrintWriter(console.out(), true, StandardCharsets.UTF_8));
    line.setErr(new PrintWriter(console.err(), true, StandardCharsets.UTF_8));
    line.setUsageHelpAutoWidth(false).setUsageHelpWidth(100);
    line.getSubcommands().values().forEach(sub -> sub.setUsageHelpWidth(100));
    line.setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF));
    line.setExecutionExceptionHandler((fault, command, parsed) -> failed(fault, console, main.trace));
    line.setParameterExceptionHandler((fault, typed) -> {
      console.warn(fault.getMessage());
      console.warn("For help: " + fault.getCommandLine().getCommandSpec().qualifiedName() + " --help");
      return REFUSED;
    });
    try {
      return line.execute(args);
    } catch (StackOverflowError | OutOfMemoryError fault) {
      return failed(fault, console, main.trace);
    }
  }

  /** Whether the calculations that can be explained are needed: there are many, and making them takes longer than all else at the start. */
  private static boolean mayExplain(String[] args) {
    // A file of arguments may name the command.
    return Arrays.stream(args).anyMatch(arg -> arg.equals(ExplainCommand.NAME) || arg.startsWith("@"));
  }

  private static int failed(Throwable fault, Console console, boolean trace) {
    if (fault instanceof Refusal refusal) {
      refusal.lines().forEach(console::warn);
      return REFUSED;
    }
    console.warn(ProgramFault.message(fault));
    if (trace) {
      fault.printStackTrace(console.err());
    }
    return FAULT;
  }

  @Override
  public void run() {
    throw new ParameterException(spec.commandLine(), "say what to do: plan, site, survey, compare, schema or explain");
  }
}
