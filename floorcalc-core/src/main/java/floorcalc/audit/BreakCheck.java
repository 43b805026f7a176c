package floorcalc.audit;

import floorcalc.measure.Length;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.Room;
import floorcalc.plan.RoomBreak;
import floorcalc.rules.LayingRules;

/** Checks that each expansion break is in a room of the job, is as wide as the rules say and is one that the job gives, if it gives any. */
final class BreakCheck {
  private BreakCheck() {
  }

  static void check(FloorJob job, FloorPlan plan, Breaches breaches) {
    Length own = job.rules().value(LayingRules.BREAK_GAP);
    Length gap = own.isZero() ? job.rules().value(LayingRules.EXPANSION_GAP).plus(job.rules().value(LayingRules.EXPANSION_GAP))
        : own;
    for (RoomBreak line : plan.breaks()) {
      if (job.rooms().stream().noneMatch(room -> room.name().equals(line.room()))) {
        breaches.add(Code.ROOM_UNKNOWN, "breaks", "the break from " + line.line().from() + " to " + line.line().to()
            + " is said to be in room '" + line.room() + "', which the job does not have");
      }
      if (!line.gap().equals(gap)) {
        breaches.add(Code.BREAK_GAP, line.room(), "the gap of the break from " + line.line().from() + " to "
            + line.line().to() + " is " + line.gap() + "; by the rules it is " + gap);
      }
    }
    for (Room room : job.rooms()) {
      room.breaks().ifPresent(given -> {
        if (!given.equals(plan.breaks().stream().filter(line -> line.room().equals(room.name())).map(RoomBreak::line).toList())) {
          breaches.add(Code.BREAKS_GIVEN, room.name(), "the breaks of room '" + room.name() + "' are not those that the job"
              + " gives");
        }
      });
    }
  }
}
