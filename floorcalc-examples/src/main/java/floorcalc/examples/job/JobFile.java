package floorcalc.examples.job;

import floorcalc.plan.FloorJob;
import java.util.Objects;
import java.util.Set;

/**
 * A job as read from a file. Immutable.
 *
 * @param job the job, not null
 * @param tape in which units the job was measured, not null
 * @param inFeet the names of the surveyed rooms that were measured in feet or inches, not null
 */
public record JobFile(FloorJob job, Tape tape, Set<String> inFeet) {
  /** Checks that no part is null and copies the set given. */
  public JobFile {
    Objects.requireNonNull(job, "job");
    Objects.requireNonNull(tape, "tape");
    inFeet = Set.copyOf(inFeet);
  }

  /**
   * A job of which every room was measured alike.
   *
   * @param job the job, not null
   * @param tape in which units the job was measured, not null
   */
  public JobFile(FloorJob job, Tape tape) {
    this(job, tape, Set.of());
  }

  /**
   * Returns in which units a room was measured.
   *
   * @param room the name of the room, not null
   * @return the tape of the job, or feet and inches for a surveyed room that was measured so; not null
   */
  public Tape tapeOf(String room) {
    return inFeet.contains(room) ? Tape.FEET_AND_INCHES : tape;
  }
}
