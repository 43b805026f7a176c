package floorcalc.working;

import java.io.Serializable;
import java.util.List;
import java.util.Objects;

/**
 * The working of one part of a larger result.
 *
 * @param about what it is about, such as {@code "study-1: rows"}; not null
 * @param steps its steps in order, not null
 * @since 0.1
 */
public record Worked(String about, List<Step> steps) implements Serializable {
  /** Checks that no part is null and copies the list. */
  public Worked {
    Objects.requireNonNull(steps, "steps");
    Objects.requireNonNull(about, "about");
    steps = List.copyOf(steps);
  }
}
