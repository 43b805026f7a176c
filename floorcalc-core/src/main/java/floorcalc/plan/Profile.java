package floorcalc.plan;

import floorcalc.measure.Length;
import floorcalc.outline.Point;
import java.util.Objects;

/**
 * A transition profile.
 *
 * @param kind {@code "T"}, {@code "reducer"}, {@code "end"} or {@code "nosing"}; not null
 * @param from its one end in room coordinates, not null
 * @param to its other end in room coordinates, not null
 * @param length its length, not null
 * @param because why it is there, not null
 */
public record Profile(String kind, Point from, Point to, Length length, String because) {
  /** Checks that no part is null. */
  public Profile {
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(from, "from");
    Objects.requireNonNull(to, "to");
    Objects.requireNonNull(length, "length");
    Objects.requireNonNull(because, "because");
  }
}
