package floorcalc.examples.explain;

import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import java.io.PrintStream;
import java.util.concurrent.Callable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** A calculation whose working is printed. */
abstract class Explaining implements Callable<Integer> {
  @Spec
  private CommandSpec spec;

  private final PrintStream out;

  Explaining(PrintStream out) {
    this.out = out;
  }

  /** Does the calculation with what was typed. */
  abstract Calculated<?> calculate();

  /** What is printed below the working, each line with a line break before it. */
  String below(Object value) {
    return "";
  }

  /** What is kept beside the working, such as a drawing, once the calculation is done. */
  void keep(Object value) {
  }

  @Override
  public Integer call() {
    Calculated<?> calculated;
    try {
      calculated = calculate();
      keep(calculated.value());
    } catch (IllegalArgumentException | ArithmeticException fault) {
      throw new ParameterException(spec.commandLine(), fault.getMessage(), fault);
    }
    StringBuilder text = new StringBuilder(calculated.explain());
    for (Finding finding : calculated.findings()) {
      text.append('\n').append(finding.severity().name().toLowerCase(java.util.Locale.ROOT)).append(": ")
          .append(finding.where().isEmpty() ? "" : finding.where() + ": ").append(finding.message());
    }
    out.print(text.append(below(calculated.value())).append('\n'));
    out.flush();
    return 0;
  }
}
