package floorcalc.bays;

import floorcalc.outline.Point;
import java.io.Serializable;
import java.util.Objects;

/**
 * A doorway inside an outline: a line across the floor from one jamb to the other. Immutable and thread-safe.
 *
 * @param name its name, not null
 * @param from one side of the opening, on a wall; not null
 * @param to the other side, on a wall; not null
 * @since 0.1
 */
public record Opening(String name, Point from, Point to) implements Serializable {
  /** Checks that no part is null and that the sides differ. */
  public Opening {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(from, "from");
    Objects.requireNonNull(to, "to");
    if (from.equals(to)) {
      throw new IllegalArgumentException("opening '" + name + "' must be wider than 0 mm, but both its sides lie at " + from
          + "; give its two sides");
    }
  }
}
