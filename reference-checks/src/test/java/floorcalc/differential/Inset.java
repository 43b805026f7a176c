package floorcalc.differential;

import floorcalc.outline.Outline;
import floorcalc.outline.Ring;
import org.locationtech.jts.geom.Geometry;

/** A library's way to take a gap off a room. */
interface Inset {
  /** {@return which library} */
  Library library();

  /** {@return what rooms, and how} */
  String rooms();

  /** {@return whether it is asked about convex rooms alone} */
  default boolean isForConvexRooms() {
    return false;
  }

  /** {@return whether the library can do this room} */
  default boolean can(Outline room) {
    return true;
  }

  /** {@return what kind of room is left out} */
  default String leftOut() {
    return "";
  }

  /** {@return what is to be said about its precision} */
  String remark();

  /** {@return the walls of the floor that is left, in nanometres; empty if none is} */
  Geometry walls(Outline room, long gap);

  /** {@return the turn to the right at a reflex corner, in radians; 0 or less at any other} */
  static double turnAtReflex(Ring ring, int corner) {
    return Math.toRadians(ring.angleDegrees(corner) - 180);
  }
}
