package floorcalc.examples.job;

import floorcalc.measure.Length;
import floorcalc.outline.Point;
import java.util.List;
import java.util.Optional;

/** Reads where something is in a room: a point [x, y], or how far along a wall and off it. */
final class PlaceReader {
  static final String ON_WALL = "a point [x, y] on a wall, or a place such as {\"wall\": 2, \"at\": 812}";
  static final String IN_ROOM =
      "the middle of the pipe as a point [x, y], or a place such as {\"wall\": 2, \"at\": 812, \"off\": 140}";

  private PlaceReader() {
  }

  /** A point on a wall; empty without a note if it is given along a wall and the walls could not be read. */
  static Optional<Point> onWall(Value value, Optional<NumberedWalls> walls) {
    return place(value, walls, ON_WALL, List.of("wall", "at"));
  }

  /** A point in the room; likewise. */
  static Optional<Point> inRoom(Value value, Optional<NumberedWalls> walls) {
    return place(value, walls, IN_ROOM, List.of("wall", "at", "off"));
  }

  private static Optional<Point> place(Value value, Optional<NumberedWalls> walls, String allowed, List<String> known) {
    if (value.isArray()) {
      return RingReader.point(value);
    }
    if (!value.isObject()) {
      return value.refuse(allowed);
    }
    Optional<Fields> fields = value.object(allowed, known);
    return fields.flatMap(place -> alongWall(place, walls, known));
  }

  private static Optional<Point> alongWall(Fields place, Optional<NumberedWalls> walls, List<String> known) {
    int most = walls.map(NumberedWalls::count).orElse(JobLimits.CORNERS);
    Optional<Integer> wall = place.required("wall", "a whole number from 1 to " + most)
        .flatMap(value -> value.wholeNumber(1, most));
    Optional<Length> at = place.requiredLength("at", LengthRange.SIZE_OR_ZERO);
    Optional<Length> off = known.contains("off") ? place.requiredLength("off", LengthRange.SIZE) : Optional.of(Length.ZERO);
    if (wall.isEmpty() || at.isEmpty() || walls.isEmpty()) {
      return Optional.empty();
    }
    Length reach = walls.get().reach(wall.get());
    if (at.get().compareTo(reach) > 0) {
      place.mistake("at", "found " + at.get() + ", beyond the end of wall " + wall.get() + "; must be at most its length, "
          + Shown.tenths(reach) + ", measured from its first corner");
      return Optional.empty();
    }
    return off.map(distance -> walls.get().at(wall.get(), at.get(), distance));
  }
}
