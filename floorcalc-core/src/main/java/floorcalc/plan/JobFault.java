package floorcalc.plan;

import java.io.Serializable;
import java.util.Objects;

/**
 * Something in a job that keeps it from being planned.
 *
 * @param room the room's place in the job, from 0; -1 if the fault is not in a room
 * @param message one sentence for people: what, where, the value, the bound and what to do; not null
 */
public record JobFault(int room, String message) implements Serializable {
  /** Checks that the message is not null. */
  public JobFault {
    Objects.requireNonNull(message, "message");
  }
}
