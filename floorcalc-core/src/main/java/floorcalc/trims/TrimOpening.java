package floorcalc.trims;

import floorcalc.measure.Length;
import floorcalc.outline.Point;
import java.util.Objects;

/**
 * A stretch of wall without skirting: a door opening, or whatever else is to be left out.
 *
 * @param name its name, not null
 * @param from its one end, on a wall to within 1 mm; not null
 * @param to its other end, on the same straight wall; not null
 * @param beside how much more is left out on either side, as for a casing; not null, not negative
 * @since 0.1
 */
public record TrimOpening(String name, Point from, Point to, Length beside) {
  /** Checks that no part is null and that the stretch beside it is not negative. */
  public TrimOpening {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(from, "from");
    Objects.requireNonNull(to, "to");
    if (beside.isNegative()) {
      throw new IllegalArgumentException(name + ": what is left out beside it must be 0 mm or more, but was " + beside);
    }
  }

  /**
   * Returns an opening with nothing left out beside it.
   *
   * @param name its name, not null
   * @param from its one end, on a wall to within 1 mm; not null
   * @param to its other end, on the same straight wall; not null
   * @return the opening, not null
   */
  public static TrimOpening of(String name, Point from, Point to) {
    return new TrimOpening(name, from, to, Length.ZERO);
  }
}
