package floorcalc.recheck;

import floorcalc.recheck.AskedJob.Door;
import floorcalc.recheck.AskedJob.Room;
import floorcalc.recheck.AskedJob.Segment;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;

/** Reads the rooms of a job: walls and voids, where doors and breaks are. Walls are numbered from 1 in the order in which they are given. */
final class AskedRoomReader {
  private static final Set<String> ROOM = Set.of("name", "outline", "survey", "voids", "doors", "pipes", "subfloor", "wet", "site",
      "openings", "breaks");

  private AskedRoomReader() {}

  static Room read(Cursor room) {
    room.only(ROOM);
    String name = room.get("name").text();
    boolean surveyed = room.find("survey").isPresent();
    Optional<List<Coordinate>> corners =
        surveyed ? Optional.empty() : Optional.of(Shapes.corners(room.get("outline"), Cursor::pointOnTape));
    List<List<Coordinate>> voids = room.find("voids").map(Cursor::items).orElse(List.of()).stream()
        .map(ring -> Shapes.corners(ring, Cursor::pointOnTape)).toList();
    Optional<Polygon> walls = corners.filter(outline -> outline.size() >= 3).map(outline -> Shapes.polygon(outline, voids));
    if (walls.isPresent() && !walls.get().isValid()) {
      room.get("outline").fault(Rule.FORMAT, "an outline or voids that cross", "walls and voids must not cross or touch");
    }
    List<Door> doors = new ArrayList<>();
    for (Cursor door : room.find("doors").map(Cursor::items).orElse(List.of())) {
      doors.add(new Door(door.get("name").text(), segment(door, corners)));
    }
    Optional<List<Segment>> breaks = room.find("breaks").map(Cursor::items).map(lines -> lines.stream()
        .map(line -> segment(line, corners)).filter(Optional::isPresent).map(Optional::get).toList());
    return new Room(name, walls, doors, surveyed ? Optional.empty() : breaks);
  }

  private static Optional<Segment> segment(Cursor line, Optional<List<Coordinate>> corners) {
    Optional<Coordinate> from = place(line.get("from"), corners);
    Optional<Coordinate> to = place(line.get("to"), corners);
    return from.isPresent() && to.isPresent() ? Optional.of(new Segment(from.get(), to.get())) : Optional.empty();
  }

  /** A point, or how far along a wall from its first corner. */
  private static Optional<Coordinate> place(Cursor place, Optional<List<Coordinate>> corners) {
    if (!place.isThere()) {
      return Optional.empty();
    }
    if (!place.isObject()) {
      return Optional.of(place.pointOnTape());
    }
    int wall = place.get("wall").whole(1);
    double at = place.get("at").length() / Lengths.PER_MILLIMETRE;
    if (corners.isEmpty()) {
      return Optional.empty();
    }
    List<Coordinate> ring = corners.get();
    if (wall > ring.size()) {
      place.get("wall").fault(Rule.FORMAT, "wall " + wall, "the room has " + ring.size() + " walls");
      return Optional.empty();
    }
    Coordinate from = ring.get(wall - 1);
    Coordinate to = ring.get(wall % ring.size());
    double share = at / from.distance(to);
    return Optional.of(new Coordinate(from.x + share * (to.x - from.x), from.y + share * (to.y - from.y)));
  }
}
