package floorcalc.examples.job;

import floorcalc.plan.FloorJob;
import java.util.Objects;

/**
 * A job as read from a file. Immutable.
 *
 * @param job the job, not null
 * @param tape in which units the job was measured, not null
 */
public record JobFile(FloorJob job, Tape tape) {
  /** Checks that no part is null. */
  public JobFile {
    Objects.requireNonNull(job, "job");
    Objects.requireNonNull(tape, "tape");
  }
}
