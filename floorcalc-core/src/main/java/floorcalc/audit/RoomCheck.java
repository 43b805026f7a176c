package floorcalc.audit;

import floorcalc.outline.Direction;
import floorcalc.plan.Bay;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.Room;
import floorcalc.plan.RoomBreak;
import floorcalc.rules.LayingRules;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Checks that each bay belongs to a room and that each room has its bays. */
final class RoomCheck {
  /** The code of the finding that explains a room without a bay. */
  private static final String SWALLOWED = "gap-swallows-floor";

  private RoomCheck() {
  }

  static void check(FloorJob job, FloorPlan plan, Breaches breaches) {
    Map<String, List<Bay>> byRoom = new HashMap<>();
    for (Room room : job.rooms()) {
      byRoom.put(room.name(), new ArrayList<>());
    }
    Set<String> names = new HashSet<>();
    Optional<Direction> asked = job.direction().fixed();
    for (Bay bay : plan.bays()) {
      if (bay.bay().isBlank() || !names.add(bay.bay())) {
        breaches.add(Code.BAY_NAME, bay.bay().isBlank() ? "bays" : bay.bay(), "bay '" + bay.bay() + "' needs a name of its own that is not blank");
      }
      if (!byRoom.containsKey(bay.room())) {
        breaches.add(Code.ROOM_UNKNOWN, bay.bay(), "bay " + bay.bay() + " is said to be in room '" + bay.room()
            + "', which the job does not have");
      } else {
        byRoom.get(bay.room()).add(bay);
      }
      if (asked.isPresent() && !asked.get().equals(bay.direction())) {
        breaches.add(Code.DIRECTION, bay.bay(), "the boards of bay " + bay.bay() + " run at " + bay.direction()
            + ", but the job asks for " + asked.get());
      }
    }
    BreakCheck.check(job, plan, breaches);
    double gap = CutList.clamped(job.rules().value(LayingRules.EXPANSION_GAP).toNanometres());
    for (Room room : job.rooms()) {
      if (GapCheck.rings(room.outline()).stream().allMatch(ring -> ring.size() >= 3 && BayFrame.inRange(ring))) {
        checkRoom(room, byRoom.get(room.name()), gap, plan, breaches);
      } else {
        breaches.add(Code.OUT_OF_RANGE, room.name(), "a ring of room '" + room.name()
            + "' has fewer than three corners or lies further than 1000 km away; it was not checked");
      }
    }
  }

  private static void checkRoom(Room room, List<Bay> bays, double gap, FloorPlan plan, Breaches breaches) {
    List<RoomBreak> lines = plan.breaks().stream().filter(line -> line.room().equals(room.name())).toList();
    boolean missing = GapCheck.check(room, lines, bays, gap, breaches);
    if (bays.isEmpty() && missing) {
      breaches.add(Code.ROOM_WITHOUT_BAY, room.name(), "room '" + room.name()
          + "' has no bay, though the gap does not swallow it");
    } else if (bays.isEmpty() && plan.findings().stream().noneMatch(finding -> finding.code().equals(SWALLOWED)
        && finding.where().startsWith(room.name()))) {
      breaches.add(Code.ROOM_WITHOUT_BAY, room.name(), "room '" + room.name() + "' has no bay, and no finding '"
          + SWALLOWED + "' says why");
    }
  }
}
