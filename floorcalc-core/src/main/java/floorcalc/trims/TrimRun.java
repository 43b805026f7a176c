package floorcalc.trims;

import floorcalc.measure.Length;
import java.util.Objects;

/**
 * A run of skirting along one wall, or along several that are nearly in line. It runs with the room on its left: seen from the room its
 * start is on the right.
 *
 * @param name where it is, such as {@code "Study, wall 3"}; not null
 * @param back its length at the wall, not null
 * @param front its length at the face towards the room, not null
 * @param cut what it takes of a bar, from its foremost to its last point; not null
 * @param start how it starts, not null
 * @param end how it ends, not null
 * @since 0.1
 */
public record TrimRun(String name, Length back, Length front, Length cut, TrimEnd start, TrimEnd end) {
  /** Checks that no part is null. */
  public TrimRun {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(back, "back");
    Objects.requireNonNull(front, "front");
    Objects.requireNonNull(cut, "cut");
    Objects.requireNonNull(start, "start");
    Objects.requireNonNull(end, "end");
  }
}
