package floorcalc.plan;

import floorcalc.outline.Point;
import java.util.Objects;

/**
 * A door opening in a wall of a room.
 *
 * @param name its name, not null
 * @param from one side of the opening, not null
 * @param to the other side of the opening, not null
 * @param leadsTo the name of the room beyond, not null, empty if not known
 * @param beyond the floor beyond, not null
 */
public record Door(String name, Point from, Point to, String leadsTo, Beyond beyond) {
  /** Checks that no part is null. */
  public Door {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(from, "from");
    Objects.requireNonNull(to, "to");
    Objects.requireNonNull(leadsTo, "leadsTo");
    Objects.requireNonNull(beyond, "beyond");
  }
}
