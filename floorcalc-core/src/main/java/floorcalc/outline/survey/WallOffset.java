package floorcalc.outline.survey;

import floorcalc.measure.Length;
import java.io.Serializable;
import java.util.Objects;

/**
 * A point of a wall's face that lies off the straight line between the wall's corners.
 * <p>
 * The face runs straight from one such point to the next, in the order given. Two at one place make a step square to
 * the wall: four make a niche or a chimney breast, several along a wall a bow.
 *
 * @param wall the wall, from 1
 * @param at how far along the straight line from the wall's first corner, not null, not negative
 * @param distance how far off that line, square to it: to the inside of the room positive; not null
 * @since 0.1
 */
public record WallOffset(int wall, Length at, Length distance) implements Serializable {
  /**
   * Checks that no part is null and in range.
   *
   * @throws IllegalArgumentException if the wall is less than 1 or the place is negative
   */
  public WallOffset {
    if (wall < 1) {
      throw new IllegalArgumentException("the wall of an offset must be counted from 1, but was " + wall);
    }
    if (Objects.requireNonNull(at, "at").isNegative()) {
      throw new IllegalArgumentException("an offset of wall " + wall
          + " must not lie before the wall's first corner, but was at " + at + "; measure from that corner");
    }
    Objects.requireNonNull(distance, "distance");
  }
}
