package floorcalc.plan;

import floorcalc.measure.Length;
import floorcalc.outline.Point;
import java.io.Serializable;
import java.util.Objects;

/**
 * A pipe that comes up through the floor.
 *
 * @param at its middle, not null
 * @param diameter its outer diameter, not null, more than zero
 * @since 0.1
 */
public record Pipe(Point at, Length diameter) implements Serializable {
  /** Checks that no part is null and that the diameter is more than zero. */
  public Pipe {
    Objects.requireNonNull(at, "at");
    if (!Objects.requireNonNull(diameter, "diameter").isPositive()) {
      throw new IllegalArgumentException("the diameter of a pipe must be more than 0 mm, but was " + diameter);
    }
  }
}
