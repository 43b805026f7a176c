package floorcalc.rows;

import floorcalc.outline.Outline;
import java.util.Objects;

/**
 * A part of a floor that is laid through several rooms: a room, or the floor of an opening. All parts are in the same coordinates.
 *
 * @param name what people call it, such as {@code "hall"}, not null, not blank
 * @param outline where boards lie: the room less its gap; not null
 * @since 0.1
 */
public record FloorPart(String name, Outline outline) {
  /**
   * Checks that no part is null and that there is a name.
   *
   * @throws IllegalArgumentException if the name is blank
   */
  public FloorPart {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(outline, "outline");
    if (name.isBlank()) {
      throw new IllegalArgumentException("a part of a floor needs a name; give one, such as 'hall'");
    }
  }
}
