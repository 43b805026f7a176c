package floorcalc.finishing;

import floorcalc.measure.Length;
import floorcalc.outline.Point;
import floorcalc.plan.Door;
import floorcalc.plan.FloorJob;
import floorcalc.plan.Room;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Finds the doors that are given twice, once in each of the two rooms that they join: the one leads to the room of the other, by
 * name. Of several, doors of one name belong together; then those that lie nearest to each other, if that is within a metre, which
 * no wall is thicker than, so that the rooms seem to be drawn in the same coordinates; then those whose widths differ least.
 */
final class DoorPairs {
  private static final Length TOO_FAR = Length.ofMillimetres(1000);

  private final List<DoorPlace> places = new ArrayList<>();

  DoorPairs(FloorJob job) {
    List<DoorPlace> all = new ArrayList<>();
    for (Room room : job.rooms()) {
      room.doors().forEach(door -> all.add(new DoorPlace(room, door, Optional.empty())));
    }
    List<DoorPlace> free = new ArrayList<>(all);
    for (DoorPlace place : all) {
      if (free.remove(place)) {
        Optional<DoorPlace> back = free.stream().filter(other -> joins(place, other)).min(likeness(place.door()));
        back.ifPresent(free::remove);
        places.add(new DoorPlace(place.room(), place.door(), back));
      }
    }
  }

  /** All openings, each once, in the order of the job. */
  List<DoorPlace> places() {
    return places;
  }

  private static boolean joins(DoorPlace one, DoorPlace other) {
    return one.room() != other.room() && one.door().leadsTo().equals(other.room().name())
        && other.door().leadsTo().equals(one.room().name());
  }

  private static Comparator<DoorPlace> likeness(Door door) {
    Comparator<DoorPlace> byName = Comparator.comparing(other -> !other.door().name().equals(door.name()));
    Comparator<DoorPlace> byPlace = Comparator.comparing(other -> apart(other.door(), door));
    Comparator<DoorPlace> byWidth = Comparator.comparing(other -> other.door().width().minus(door.width()).abs());
    return byName.thenComparing(byPlace).thenComparing(byWidth);
  }

  /** From middle to middle; all that are too far apart to be one opening are as far. */
  private static Length apart(Door one, Door other) {
    return middle(one).distanceTo(middle(other)).min(TOO_FAR);
  }

  private static Point middle(Door door) {
    return Point.ofNanometres(middle(door.from().xNanometres(), door.to().xNanometres()),
        middle(door.from().yNanometres(), door.to().yNanometres()));
  }

  private static long middle(long a, long b) {
    return a / 2 + b / 2;
  }
}
