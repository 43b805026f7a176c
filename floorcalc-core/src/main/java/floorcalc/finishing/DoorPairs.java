package floorcalc.finishing;

import floorcalc.measure.Length;
import floorcalc.outline.Point;
import floorcalc.plan.Door;
import floorcalc.plan.FloorJob;
import floorcalc.plan.Room;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedList;
import java.util.List;
import java.util.Map;
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
    Map<List<String>, List<DoorPlace>> free = new HashMap<>(); // only asked, never walked through
    all.forEach(place -> free.computeIfAbsent(List.of(place.room().name(), place.door().leadsTo()), way -> new LinkedList<>()).add(place));
    for (DoorPlace place : all) {
      String room = place.room().name();
      String next = place.door().leadsTo();
      if (free.get(List.of(room, next)).remove(place)) {
        List<DoorPlace> others = free.getOrDefault(List.of(next, room), List.of());
        Optional<DoorPlace> back = others.stream().filter(other -> other.room() != place.room()).min(likeness(place.door()));
        back.ifPresent(others::remove);
        places.add(new DoorPlace(place.room(), place.door(), back));
      }
    }
  }

  /** All openings, each once, in the order of the job. */
  List<DoorPlace> places() {
    return places;
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
