package floorcalc.outline;

import floorcalc.measure.Length;
import java.io.Serializable;
import java.util.Objects;

/**
 * A straight line from one point to another.
 *
 * @param from where it begins, not null
 * @param to where it ends, not the same point, not null
 * @since 0.1
 */
public record Line(Point from, Point to) implements Serializable {
  /** Checks that no part is null and that the ends differ. */
  public Line {
    Objects.requireNonNull(from, "from");
    Objects.requireNonNull(to, "to");
    if (from.equals(to)) {
      throw new IllegalArgumentException("a line must be longer than 0 mm, but both its ends lie at " + from
          + "; give two ends that differ");
    }
  }

  /**
   * Returns its length.
   *
   * @return the length, rounded to the nearest nanometre; more than zero
   */
  public Length length() {
    return from.distanceTo(to);
  }

  @Override
  public String toString() {
    return from + " to " + to;
  }
}
