package floorcalc.bays;

import floorcalc.measure.Length;
import floorcalc.outline.Point;
import java.util.Objects;

/**
 * Something fixed that a bay bends or lies round.
 *
 * @param kind what it is, not null
 * @param at the inner corner, or the lowest corner of the void (of equally low ones the leftmost), not null
 * @param size how deep the corner lies inside the line across its recess, or the smaller width of the void; not negative, not null
 * @param closing how much of the gap beside it is taken when the floor shrinks by 1.5 mm per metre towards its far end; not null
 * @since 0.1
 */
public record Obstacle(Kind kind, Point at, Length size, Length closing) {
  /**
   * What stands in the way.
   *
   * @since 0.1
   */
  public enum Kind {
    /** An inner corner of the walls. */
    INNER_CORNER,
    /** A column, hearth or island. */
    VOID
  }

  /** Checks that no part is null. */
  public Obstacle {
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(at, "at");
    Objects.requireNonNull(size, "size");
    Objects.requireNonNull(closing, "closing");
  }

  /** Beyond the limit by more than corners may be off that were rounded. */
  boolean isBeyond(Length limit) {
    return size.toNanometres() > limit.toNanometres() + SplitLimits.ROUNDING;
  }
}
