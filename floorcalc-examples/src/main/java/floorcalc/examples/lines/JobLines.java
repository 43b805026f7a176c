package floorcalc.examples.lines;

import floorcalc.FloorPlanner;
import floorcalc.examples.job.BadJobException;
import floorcalc.examples.job.JobReader;
import floorcalc.examples.planfile.PlanWriter;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.UnsoundJobException;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;

/**
 * Answers jobs, one a line, with one line each: the plan, or what is wrong. Each answer is on its way before the next one is
 * begun, so that another program may wait for it. What is said to a line depends on that line alone.
 */
public final class JobLines {
  /** The first field of what is answered to a job that gets no plan. */
  public static final String REFUSAL_FORMAT = RefusalWriter.FORMAT;

  private final Function<FloorJob, FloorPlan> planner;
  private final Consumer<Throwable> faults;

  JobLines(Function<FloorJob, FloorPlan> planner, Consumer<Throwable> faults) {
    this.planner = planner;
    this.faults = faults;
  }

  /**
   * Makes what answers with the library's plans.
   *
   * @param faults told what was thrown when the program itself fails at a line; may be called by several threads; not null
   * @return what answers, not null
   */
  public static JobLines tellingFaults(Consumer<Throwable> faults) {
    return new JobLines(FloorPlanner::plan, faults);
  }

  /**
   * Answers all lines up to the end of the input, or until nobody reads the answers any more.
   *
   * @param jobs the input, not null
   * @param answers where answers go, flushed after each; not null
   * @param threads how many jobs are planned at once, 1 and more; the answers are the same for any number
   * @return the worst that became of a line that was answered, not null
   * @throws IOException if the input cannot be read
   */
  public Outcome answer(InputStream jobs, PrintStream answers, int threads) throws IOException {
    LineReader lines = new LineReader(jobs, JobReader.MOST_BYTES);
    return threads == 1 ? oneByOne(lines, answers) : new Window(this, lines, threads).answer(answers);
  }

  private Outcome oneByOne(LineReader lines, PrintStream answers) throws IOException {
    Outcome worst = Outcome.PLANNED;
    for (Optional<Line> line = lines.next(); line.isPresent(); line = lines.next()) {
      Answer answer = answer(line.get());
      if (!sent(answer, answers)) {
        break;
      }
      worst = worst.worse(answer.outcome());
    }
    return worst;
  }

  /** Sends an answer and tells whether anybody is there to read it. */
  static boolean sent(Answer answer, PrintStream answers) {
    answers.write(answer.line(), 0, answer.line().length);
    answers.flush();
    return !answers.checkError();
  }

  /** Answers one line; whatever happens, there is an answer. */
  Answer answer(Line line) {
    try {
      FloorPlan plan = planner.apply(JobReader.read(line.bytes()).job());
      return new Answer(Outcome.PLANNED, PlanWriter.writeOnOneLine(plan));
    } catch (BadJobException bad) {
      return new Answer(Outcome.REFUSED, RefusalWriter.mistakes(line.number(), bad.mistakes()));
    } catch (UnsoundJobException unsound) {
      return new Answer(Outcome.REFUSED, RefusalWriter.faultsOfJob(line.number(), unsound.faults()));
    } catch (RuntimeException | Error fault) {
      faults.accept(fault);
      return new Answer(Outcome.FAULT, RefusalWriter.faultOfProgram(line.number(), fault));
    }
  }
}
