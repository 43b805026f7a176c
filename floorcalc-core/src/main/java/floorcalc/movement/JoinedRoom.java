package floorcalc.movement;

import floorcalc.outline.Outline;
import java.util.Objects;

/**
 * A room of a floor that runs on through openings, in coordinates that all rooms of the floor share.
 *
 * @param name its name, such as {@code "hall"}, not null, not blank
 * @param outline its walls and what stands in it, without faults, not null
 * @since 0.1
 */
public record JoinedRoom(String name, Outline outline) {
  /**
   * Checks that no part is null and that there is a name.
   *
   * @throws IllegalArgumentException if the name is blank
   */
  public JoinedRoom {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(outline, "outline");
    if (name.isBlank()) {
      throw new IllegalArgumentException("a room needs a name; give one, such as 'hall'");
    }
  }
}
