package floorcalc.drawing;

import floorcalc.outline.Direction;
import floorcalc.outline.Outline;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import floorcalc.plan.Bay;
import floorcalc.plan.Beyond;
import floorcalc.plan.Door;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.Pipe;
import floorcalc.plan.Profile;
import floorcalc.plan.Room;
import java.util.ArrayList;
import java.util.List;

/** Invented rooms split by hand, with profiles, laid by habit bay by bay. */
final class SplitRooms {
  private SplitRooms() {
  }

  /** An L of 6400 mm by 5600 mm with a column, split at its inner corner; a door onto tiles 12 mm lower and one level. */
  static Room lShaped() {
    return Rooms.lWithColumn().withPipes(List.of(new Pipe(Point.ofMillimetres(300, 200), Rooms.mm(15)),
        new Pipe(Point.ofMillimetres(350, 200), Rooms.mm(15))));
  }

  static FloorPlan lSplit(FloorJob job) {
    Room room = job.rooms().get(0);
    return plan(job, List.of(room), List.of(
        List.of(Rooms.ring(0, 0, 6400, 0, 6400, 3100, 3900, 3100, 0, 3100), Rooms.ring(2600, 2700, 3000, 2700, 3000, 3090, 2600, 3090)),
        List.of(Rooms.ring(0, 3100, 3900, 3100, 3900, 5600, 0, 5600))), List.of("Living & dining", "Living & dining"),
        List.of(profile("T", 0, 3100, 3900, 3100, "inner corner 4"),
            profile("reducer", 4500, 0, 6000, 0, "the floor beyond is 12 mm lower"),
            profile("T", 0, 4000, 0, 4900, "doorway D1")));
  }

  /** Three rooms side by side in one frame: a hall above, two rooms below, doors between them. */
  static FloorJob flat() {
    Room left = Room.of("Left", Outline.of(Rooms.ring(0, 0, 4000, 0, 4000, 3000, 0, 3000)))
        .withDoors(List.of(door("D1", 1000, 3000, 1900, 3000, "Hall", Beyond.UNKNOWN)));
    Room right = Room.of("Right", Outline.of(Rooms.ring(4120, 0, 8000, 0, 8000, 3000, 4120, 3000)))
        .withDoors(List.of(door("D2", 6000, 3000, 6900, 3000, "Hall", new Beyond("same floor", Rooms.mm(-6)))));
    Room hall = Room.of("Hall", Outline.of(Rooms.ring(0, 3100, 8000, 3100, 8000, 4300, 0, 4300)))
        .withDoors(List.of(door("D1", 1000, 3100, 1900, 3100, "Left", Beyond.UNKNOWN),
            door("D2", 6000, 3100, 6900, 3100, "Right", new Beyond("", Rooms.mm(6))),
            door("Entrance", 8000, 3300, 8000, 4200, "Stairs", new Beyond("stone", Rooms.mm(0)))));
    return FloorJob.of("Invented flat", Rooms.job(left).board()).room(left).room(right).room(hall).build();
  }

  static FloorPlan flatPlan(FloorJob job) {
    FloorPlan laid = NaiveFloor.plan(job, Direction.ALONG_X);
    return with(laid, List.of(profile("T", 1000, 3050, 1900, 3050, "doorway D1"),
        profile("reducer", 6000, 3050, 6900, 3050, "6 mm lower"), profile("end", 8000, 3300, 8000, 4200, "stone beyond")));
  }

  private static Door door(String name, long x1, long y1, long x2, long y2, String leadsTo, Beyond beyond) {
    return new Door(name, Point.ofMillimetres(x1, y1), Point.ofMillimetres(x2, y2), leadsTo, beyond);
  }

  static Profile profile(String kind, long x1, long y1, long x2, long y2, String because) {
    Point from = Point.ofMillimetres(x1, y1);
    Point to = Point.ofMillimetres(x2, y2);
    return new Profile(kind, from, to, Ring.of(from, to, Point.ofMillimetres(x2 + 1, y2 + 1)).wallLength(0), because);
  }

  /** Lays each part of a room as a bay of its own. */
  private static FloorPlan plan(FloorJob job, List<Room> rooms, List<List<Ring>> parts, List<String> of, List<Profile> profiles) {
    List<Bay> bays = new ArrayList<>();
    FloorPlan last = NaiveFloor.plan(job, Direction.ALONG_X);
    for (int i = 0; i < parts.size(); i++) {
      Room part = Room.of(of.get(i), Outline.of(parts.get(i).get(0), parts.get(i).subList(1, parts.get(i).size())));
      FloorPlan one = NaiveFloor.plan(FloorJob.of(job.title(), job.board()).room(part).build(), Direction.ALONG_X);
      Bay bay = one.bays().get(0);
      bays.add(new Bay("living-" + (i + 1), rooms.get(0).name(), bay.direction(), bay.laid(), bay.rows()));
    }
    return with(Rooms.plan(job, bays, last.boards()), profiles);
  }

  /** Adds a profile of each kind in turn in each door of a room. */
  static FloorPlan withProfiles(FloorPlan plan, Room room) {
    List<String> kinds = List.of("reducer", "T", "end", "nosing");
    List<Profile> profiles = new ArrayList<>();
    for (Door door : room.doors()) {
      profiles.add(new Profile(kinds.get(profiles.size() % 4), door.from(), door.to(),
          Ring.of(door.from(), door.to(), Point.ofMillimetres(-1, -1)).wallLength(0), "doorway " + door.name()));
    }
    return with(plan, profiles);
  }

  static FloorPlan with(FloorPlan plan, List<Profile> profiles) {
    return new FloorPlan(plan.title(), plan.bays(), plan.boards(), plan.order(), plan.ledger(), plan.materials(), profiles,
        plan.checks(), plan.compromises(), plan.findings(), plan.cautions(), plan.working());
  }
}
