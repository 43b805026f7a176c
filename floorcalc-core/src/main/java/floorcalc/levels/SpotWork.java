package floorcalc.levels;

import floorcalc.measure.Length;
import floorcalc.outline.Point;
import java.util.Objects;

/**
 * What is to be done at one spot of a floor.
 *
 * @param place the spot, not null
 * @param found its height as read, not null
 * @param made its height afterwards, above the same datum; not null
 * @since 0.1
 */
public record SpotWork(Point place, Length found, Length made) {
  /** Checks that no part is null. */
  public SpotWork {
    Objects.requireNonNull(place, "place");
    Objects.requireNonNull(found, "found");
    Objects.requireNonNull(made, "made");
  }

  /**
   * Returns how thick the filler is here.
   *
   * @return the depth, 0 mm if nothing is filled; not null
   */
  public Length fill() {
    return made.minus(found).max(Length.ZERO);
  }

  /**
   * Returns how much is ground off here.
   *
   * @return the depth, 0 mm if nothing is ground; not null
   */
  public Length grind() {
    return found.minus(made).max(Length.ZERO);
  }
}
