package floorcalc.plan;

import floorcalc.outline.Direction;
import floorcalc.outline.Outline;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;

/**
 * One continuous piece of floor that moves as one.
 *
 * @param bay its name, such as {@code "study-1"}; not null
 * @param room the name of its room, not null
 * @param direction the way its boards run, not null
 * @param laid the laid area: the room less the expansion gap, in room coordinates; not null
 * @param rows its rows, from the starting wall on; not null
 * @since 0.1
 */
public record Bay(String bay, String room, Direction direction, Outline laid, List<Row> rows) implements Serializable {
  /** Checks that no part is null and copies the lists given. */
  public Bay {
    Objects.requireNonNull(rows, "rows");
    Objects.requireNonNull(bay, "bay");
    Objects.requireNonNull(room, "room");
    Objects.requireNonNull(direction, "direction");
    Objects.requireNonNull(laid, "laid");
    rows = List.copyOf(rows);
  }
}
