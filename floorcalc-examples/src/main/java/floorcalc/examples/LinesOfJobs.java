package floorcalc.examples;

import floorcalc.examples.lines.JobLines;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.function.BooleanSupplier;

/** What {@code plan --lines} does: a conversation in lines over standard input and output. */
final class LinesOfJobs {
  private static final int MOST_THREADS = 256;

  private final Console console;
  private final BooleanSupplier trace;

  LinesOfJobs(Console console, BooleanSupplier trace) {
    this.console = console;
    this.trace = trace;
  }

  /** Answers all lines and returns the exit code: that of the worst of them. */
  int answer(List<String> jobs, int threads) {
    if (jobs.size() > 1) {
      throw new Refusal("--lines reads one file of jobs, but there are " + jobs.size() + "; join them or answer them one by one");
    }
    if (threads < 1 || threads > MOST_THREADS) {
      throw new Refusal("--threads " + threads + ": must be a whole number from 1 to " + MOST_THREADS);
    }
    String typed = jobs.isEmpty() ? JobInput.STANDARD_INPUT : jobs.get(0);
    PlanCommand.path(typed);
    JobInput input = JobInput.of(typed);
    try (InputStream in = input.open(console.in())) {
      return switch (JobLines.tellingFaults(this::tell).answer(in, console.out(), threads)) {
        case PLANNED -> Main.OK;
        case REFUSED -> Main.REFUSED;
        case FAULT -> Main.FAULT;
      };
    } catch (IOException fault) {
      throw new Refusal(input.unreadable(fault));
    }
  }

  private synchronized void tell(Throwable fault) {
    if (trace.getAsBoolean()) {
      fault.printStackTrace(console.err());
    }
  }
}
