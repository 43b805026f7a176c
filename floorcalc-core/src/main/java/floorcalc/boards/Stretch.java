package floorcalc.boards;

import floorcalc.measure.Length;
import java.util.Objects;

/**
 * A stretch of a run that pieces of at least some width must cover.
 *
 * @param length the length of the stretch, not null, not negative
 * @param width the least width across of any piece that covers part of it, not null, more than zero
 */
public record Stretch(Length length, Length width) {
  /** Checks that the sizes are not negative. */
  public Stretch {
    if (Objects.requireNonNull(length, "length").isNegative() || !Objects.requireNonNull(width, "width").isPositive()) {
      throw new IllegalArgumentException("a stretch must not be shorter than 0 mm or of no width, but is " + length
          + " by " + width);
    }
  }
}
