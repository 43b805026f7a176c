package floorcalc.drawing;

import floorcalc.measure.Length;
import floorcalc.outline.Containment;
import floorcalc.outline.Point;
import floorcalc.plan.Bay;
import floorcalc.plan.Door;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.Profile;
import floorcalc.plan.Room;
import floorcalc.plan.RoomBreak;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The profiles of a plan that lie in a room. A plan lists them for all rooms together, each in the coordinates of its own
 * room: a profile is a room's if it lies on one of its breaks, at one of its doors, or inside its walls where none of its bays is
 * laid.
 */
final class RoomProfiles {
  /** A profile at most so far from the middle of a door lies in that door: half a door, or a thick wall. */
  static final double NEAR_DOOR = 400e6;

  private RoomProfiles() {
  }

  /**
   * A profile of a room.
   *
   * @param room the room
   * @param profile the profile
   * @param label its letter and its number in the plan's list
   * @param door the door that it lies in, if any
   */
  record Shown(Room room, Profile profile, String label, Optional<Door> door) {
    /** The side that a reducer falls to: 1 out of the room, -1 into it, 0 where nobody said. */
    int fall() {
      Length higher = door.map(d -> d.beyond().higherBy()).orElse(Length.ZERO);
      return !profile.kind().equals("reducer") || higher.isZero() ? 0 : higher.isNegative() ? 1 : -1;
    }

    Mark mark() {
      return switch (profile.kind()) {
        case "reducer" -> Mark.REDUCER;
        case "end" -> Mark.END_PROFILE;
        case "nosing" -> Mark.NOSING;
        default -> Mark.T_PROFILE;
      };
    }

    /** Says in words what is drawn. */
    String sentence(Measures measures) {
      String words = switch (profile.kind()) {
        case "reducer" -> "Reducer";
        case "end" -> "End profile";
        case "nosing" -> "Nosing";
        case "T" -> "T profile";
        default -> "Profile";
      };
      String at = door.map(d -> " in door " + TextSize.cut(d.name(), 1, 60)).orElse("");
      String fall = fall() == 0 ? "" : fall() > 0 ? ", falling out of the room" : ", falling into the room";
      return words + ' ' + label + at + " is " + measures.withUnit(profile.length()) + " long" + fall + '.';
    }
  }

  static List<Shown> of(FloorPlan plan, Room room) {
    List<Shown> found = new ArrayList<>();
    for (int i = 0; i < plan.profiles().size(); i++) {
      Profile profile = plan.profiles().get(i);
      Point middle = middle(profile.from(), profile.to());
      List<RoomBreak> lines = plan.breaks().stream().filter(one -> isAt(one, profile)).toList();
      Optional<Door> door = lines.isEmpty() ? door(room, middle) : Optional.empty();
      if (lines.isEmpty() ? door.isPresent() || isBetweenBays(plan.bays(), room, middle)
          : lines.stream().anyMatch(one -> one.room().equals(room.name()))) {
        found.add(new Shown(room, profile, profile.letter() + (i + 1), door));
      }
    }
    return found;
  }

  /** Returns the profiles of several rooms of one frame, each once. */
  static List<Shown> of(FloorPlan plan, List<Room> rooms) {
    Map<String, Shown> found = new LinkedHashMap<>();
    rooms.forEach(room -> of(plan, room).forEach(shown -> found.putIfAbsent(shown.label(), shown)));
    return List.copyOf(found.values());
  }

  private static Optional<Door> door(Room room, Point middle) {
    return room.doors().stream().filter(door -> distance(door, middle) <= NEAR_DOOR)
        .min(Comparator.comparingDouble(door -> distance(door, middle)));
  }

  static double distance(Door door, Point place) {
    Point middle = middle(door.from(), door.to());
    double dx = (double) middle.xNanometres() - place.xNanometres();
    double dy = (double) middle.yNanometres() - place.yNanometres();
    return Math.sqrt(dx * dx + dy * dy);
  }

  private static boolean isAt(RoomBreak line, Profile profile) {
    return line.line().from().equals(profile.from()) && line.line().to().equals(profile.to());
  }

  private static boolean isBetweenBays(List<Bay> bays, Room room, Point middle) {
    return room.outline().locate(middle) == Containment.INSIDE && bays.stream()
        .filter(bay -> bay.room().equals(room.name())).noneMatch(bay -> bay.laid().locate(middle) == Containment.INSIDE);
  }

  static Point middle(Point from, Point to) {
    return Point.ofNanometres(from.xNanometres() + (to.xNanometres() - from.xNanometres()) / 2,
        from.yNanometres() + (to.yNanometres() - from.yNanometres()) / 2);
  }
}
