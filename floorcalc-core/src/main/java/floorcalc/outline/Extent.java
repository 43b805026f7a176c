package floorcalc.outline;

import floorcalc.measure.Length;
import java.io.Serializable;
import java.util.Objects;

/**
 * The smallest upright rectangle that holds a ring or an outline, its sides along x and y.
 *
 * @param low the corner with the smallest x and y, not null
 * @param high the corner with the greatest x and y, not null
 * @since 0.1
 */
public record Extent(Point low, Point high) implements Serializable {

  /** Checks that no part is null and that low is not beyond high. */
  public Extent {
    Objects.requireNonNull(low, "low");
    Objects.requireNonNull(high, "high");
    if (low.xNanometres() > high.xNanometres() || low.yNanometres() > high.yNanometres()) {
      throw new IllegalArgumentException("low must not be right of or above high, but was " + low + " and " + high);
    }
  }

  /**
   * Returns the size along x.
   *
   * @return the width, not negative
   */
  public Length width() {
    return high.x().minus(low.x());
  }

  /**
   * Returns the size along y.
   *
   * @return the height, not negative
   */
  public Length height() {
    return high.y().minus(low.y());
  }
}
