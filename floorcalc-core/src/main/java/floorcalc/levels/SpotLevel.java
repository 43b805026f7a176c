package floorcalc.levels;

import floorcalc.measure.Length;
import floorcalc.outline.Point;
import java.io.Serializable;
import java.util.Objects;

/**
 * The height of a floor at one place: a spot level. Heights count upwards from any datum, the same for all readings of a
 * floor; a reading of a staff that counts downwards from a laser line has to be given negated.
 *
 * @param place where it was read, not null
 * @param height the height above the datum, positive, zero or negative; not null
 * @since 0.1
 */
public record SpotLevel(Point place, Length height) implements Serializable {
  /** Checks that no part is null. */
  public SpotLevel {
    Objects.requireNonNull(place, "place");
    Objects.requireNonNull(height, "height");
  }

  /**
   * Returns a spot level.
   *
   * @param x the place to the right, not null
   * @param y the place upwards, not null
   * @param height the height above the datum, not null
   * @return the level, not null
   */
  public static SpotLevel of(Length x, Length y, Length height) {
    return new SpotLevel(Point.of(x, y), height);
  }
}
