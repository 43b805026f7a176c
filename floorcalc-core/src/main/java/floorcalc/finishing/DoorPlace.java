package floorcalc.finishing;

import floorcalc.plan.Door;
import floorcalc.plan.Room;
import java.util.Optional;

/**
 * A door of a room, and the door of another room of the job that it is the same as, seen from the other side.
 *
 * @param room the room
 * @param door its door
 * @param back the other room's side of it, if that room has one
 */
record DoorPlace(Room room, Door door, Optional<DoorPlace> back) {
  String name() {
    return room.name() + ", door " + door.name();
  }

  /** The same opening from its other side. */
  DoorPlace turned() {
    DoorPlace other = back.orElseThrow();
    return new DoorPlace(other.room(), other.door(), Optional.of(new DoorPlace(room, door, Optional.empty())));
  }
}
