package floorcalc.boards;

import floorcalc.measure.Length;
import java.util.Objects;

/**
 * A part of a run whose pieces all meet the neighbouring rows in the same way: the one before, the one after, both or none.
 *
 * @param length the length of the stretch, not null, not negative
 * @param width the least width across of any piece that covers part of it, not null, more than zero
 * @param edges which factory edges every piece that covers part of it needs, not null
 * @since 0.1
 */
public record Stretch(Length length, Length width, Edges edges) {
  /** Checks that the sizes are not negative. */
  public Stretch {
    Objects.requireNonNull(edges, "edges");
    if (Objects.requireNonNull(length, "length").isNegative() || !Objects.requireNonNull(width, "width").isPositive()) {
      throw new IllegalArgumentException("a stretch must not be shorter than 0 mm or of no width, but is " + length
          + " by " + width);
    }
  }

  /**
   * Returns a stretch of full rows.
   *
   * @param length the length of the stretch, not null, not negative
   * @param width the width of a board, not null, more than zero
   * @return the stretch, not null
   */
  public static Stretch full(Length length, Length width) {
    return new Stretch(length, width, Edges.BOTH);
  }
}
