package floorcalc.movement;

import floorcalc.outline.Outline;
import java.util.Objects;

/**
 * An opening that a floor runs through from one room into another.
 *
 * @param name its name, such as {@code "kitchen door"}, not null, not blank
 * @param one the name of the room on one side, not null
 * @param other the name of the room on the other side, not null, another one
 * @param floor the floor between the linings, from room to room; where the wall is thin it may reach into the rooms; not
 *     null
 * @since 0.1
 */
public record JoinedOpening(String name, String one, String other, Outline floor) {
  /**
   * Checks that no part is null, that there is a name and that the rooms differ.
   *
   * @throws IllegalArgumentException if the name is blank or both rooms are the same
   */
  public JoinedOpening {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(one, "one");
    Objects.requireNonNull(other, "other");
    Objects.requireNonNull(floor, "floor");
    if (name.isBlank()) {
      throw new IllegalArgumentException("an opening needs a name; give one, such as 'kitchen door'");
    }
    if (one.equals(other)) {
      throw new IllegalArgumentException("opening '" + name + "' leads from '" + one + "' into the same room; name the"
          + " room on its other side");
    }
  }
}
