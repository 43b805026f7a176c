package floorcalc.finishing;

import floorcalc.plan.Door;
import floorcalc.plan.Profile;
import floorcalc.transitions.CasingWork;
import floorcalc.transitions.DoorLeaf;
import floorcalc.transitions.ProfileChoice;
import java.util.Objects;
import java.util.Optional;

/**
 * A door of a room with all that the floor asks for there.
 *
 * @param room the name of the room, not null
 * @param door the door, not null
 * @param choice which profile lies there, by the heights as they are seen from this room; not null
 * @param profile the profile, empty if the one of the room beyond serves both; not null
 * @param shared room and door that share the profile, empty if none does; not null
 * @param casing what becomes of the casings, not null
 * @param leaf the space under the leaf, empty if its height is not stated; not null
 * @since 0.1
 */
public record DoorEdge(String room, Door door, ProfileChoice choice, Optional<Profile> profile, String shared, CasingWork casing,
    Optional<DoorLeaf> leaf) {
  /** Checks that no part is null. */
  public DoorEdge {
    Objects.requireNonNull(room, "room");
    Objects.requireNonNull(door, "door");
    Objects.requireNonNull(choice, "choice");
    Objects.requireNonNull(profile, "profile");
    Objects.requireNonNull(shared, "shared");
    Objects.requireNonNull(casing, "casing");
    Objects.requireNonNull(leaf, "leaf");
  }
}
