package floorcalc.plan;

import java.io.Serializable;
import java.util.Objects;

/**
 * Something in a job that keeps it from being planned.
 *
 * @param room the room's place in the job, from 0; -1 if the fault is not in a room
 * @param code a stable name in lower case with hyphens, for programs, explained in {@code docs/errors.md}; that of the
 *     {@linkplain floorcalc.outline.OutlineFault fault} where an outline is unsound; not null
 * @param message one sentence for people: what, where, the value, the bound and what to do; not null
 * @since 0.1
 */
public record JobFault(int room, String code, String message) implements Serializable {
  /** Checks that no part is null. */
  public JobFault {
    Objects.requireNonNull(code, "code");
    Objects.requireNonNull(message, "message");
  }
}
