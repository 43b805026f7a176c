package floorcalc.outline.survey;

import floorcalc.measure.Length;
import java.io.Serializable;
import java.util.Objects;

/**
 * A straight length measured between two corners: a diagonal, or a wall a second time.
 *
 * @param from the corner at one end, from 1
 * @param to the corner at the other end, from 1, another one
 * @param length how long, not null, more than zero
 * @since 0.1
 */
public record Tie(int from, int to, Length length) implements Serializable {
  /**
   * Checks that the tie has two ends and a length.
   *
   * @throws IllegalArgumentException if a corner is less than 1, both are the same, or the length is not more than zero
   */
  public Tie {
    Objects.requireNonNull(length, "length");
    if (from < 1 || to < 1 || from == to) {
      throw new IllegalArgumentException("a tie runs between two different corners counted from 1, but was from " + from
          + " to " + to);
    }
    if (!Objects.requireNonNull(length, "length").isPositive()) {
      throw new IllegalArgumentException("the tie from corner " + from + " to corner " + to
          + " must be longer than 0 mm, but was " + length);
    }
  }
}
