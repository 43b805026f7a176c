package floorcalc.laying;

import floorcalc.plan.Door;
import floorcalc.plan.FloorJob;
import floorcalc.plan.Room;
import floorcalc.rules.AtDoorways;
import floorcalc.rules.LayingRules;
import floorcalc.working.Finding;
import floorcalc.working.Severity;
import java.util.ArrayList;
import java.util.List;

/** Doors between rooms of a job through which its rules let the floor run: rooms are laid one by one, so it does not. */
final class Doorways {
  private Doorways() {}

  static List<Finding> notRunThrough(FloorJob job) {
    List<Finding> findings = new ArrayList<>();
    if (job.rules().value(LayingRules.AT_DOORWAYS) == AtDoorways.BREAK) {
      return findings;
    }
    for (Room room : job.rooms()) {
      for (Door door : room.doors()) {
        if (job.rooms().stream().anyMatch(other -> other != room && other.name().equals(door.leadsTo()))) {
          findings.add(new Finding("doorway-not-run-through", Severity.WARNING, room.name(), "at door " + door.name()
              + " the floor could run on into " + door.leadsTo() + ", but rooms with outlines of their own are laid as floors of their"
              + " own; to lay through, give both in one outline and the doorway among its openings, so that their runs are"
              + " summed", job.rules().get(LayingRules.AT_DOORWAYS).source()));
        }
      }
    }
    return findings;
  }
}
