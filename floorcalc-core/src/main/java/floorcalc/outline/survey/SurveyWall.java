package floorcalc.outline.survey;

import floorcalc.measure.Length;
import java.io.Serializable;
import java.util.Objects;

/**
 * A wall as it was measured: from corner to corner in a straight line, and how the next wall turns at its end.
 *
 * @param length from corner to corner, not null, more than zero
 * @param turn how the next wall turns, not null
 * @param rise how far the middle of the wall stands off the straight line if the wall is an arc, to the outside positive;
 *     zero if it is straight; not null
 * @since 0.1
 */
public record SurveyWall(Length length, Turn turn, Length rise) implements Serializable {
  /**
   * Checks that no part is null and that the wall has a length.
   *
   * @throws IllegalArgumentException if the length is not more than zero
   */
  public SurveyWall {
    if (!Objects.requireNonNull(length, "length").isPositive()) {
      throw new IllegalArgumentException("a wall must be longer than 0 mm, but was " + length);
    }
    Objects.requireNonNull(turn, "turn");
    Objects.requireNonNull(rise, "rise");
  }

  /**
   * Returns a straight wall at whose end the turn was not measured.
   *
   * @param length from corner to corner, not null, more than zero
   * @return the wall, not null
   * @throws IllegalArgumentException if the length is not more than zero
   */
  public static SurveyWall of(Length length) {
    return new SurveyWall(length, Turn.UNKNOWN, Length.ZERO);
  }

  /**
   * Returns the same wall with a turn at its end.
   *
   * @param next how the next wall turns, not null
   * @return the wall, not null
   */
  public SurveyWall then(Turn next) {
    Objects.requireNonNull(next, "next");
    return new SurveyWall(length, next, rise);
  }

  /**
   * Returns the same wall as an arc over its chord.
   *
   * @param middle how far the middle of the arc stands off the chord, to the outside positive, not null
   * @return the wall, not null
   */
  public SurveyWall arched(Length middle) {
    Objects.requireNonNull(middle, "middle");
    return new SurveyWall(length, turn, middle);
  }
}
