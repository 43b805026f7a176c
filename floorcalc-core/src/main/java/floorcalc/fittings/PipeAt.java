package floorcalc.fittings;

import floorcalc.measure.Length;
import floorcalc.outline.Point;
import java.util.Objects;

/**
 * A pipe that comes up through the floor, in the frame of the boards.
 *
 * @param name what it is called, not null
 * @param at its middle, x along the boards; not null
 * @param diameter its outer diameter, with its lagging if that comes through the floor; not null, more than zero, at most 1 m
 * @since 0.1
 */
public record PipeAt(String name, Point at, Length diameter) {
  /**
   * Checks that no part is null and that the diameter is in range.
   *
   * @throws IllegalArgumentException if the diameter is out of range
   */
  public PipeAt {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(at, "at");
    PipeAllowance.requireDiameter(diameter, "diameter of " + name);
  }
}
