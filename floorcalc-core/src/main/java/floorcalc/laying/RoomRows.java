package floorcalc.laying;

import floorcalc.measure.Length;
import floorcalc.outline.Direction;
import floorcalc.plan.FloorJob;
import floorcalc.plan.Room;
import floorcalc.rows.StartLine;
import floorcalc.rows.Stop;
import floorcalc.rules.LayingRules;
import floorcalc.working.Calculated;
import floorcalc.working.Step;
import java.util.ArrayList;
import java.util.List;

/**
 * How the boards of a room run and where its rows begin.
 *
 * @param direction the way the boards run
 * @param floor the room's floor for that way
 * @param firstRows the width of the first row of each bay; none if they follow the job's way
 * @param why what was compared, none if nothing was
 */
record RoomRows(Direction direction, RoomFloor floor, List<Length> firstRows, List<Step> why) {

  /** Rows that begin as the job's way says. */
  static RoomRows byWay(FloorJob job, Room room, Direction direction) {
    return new RoomRows(direction, RoomFloor.of(job, room, direction), List.of(), List.of());
  }

  /** The same rows, begun as the job's way says. */
  RoomRows byWay() {
    return new RoomRows(direction, floor, List.of(), why);
  }

  Calculated<StartLine> startLine(int bay, List<Stop> stops, long low, FloorJob job) {
    var minimum = job.rules().get(LayingRules.MINIMUM_ROW_WIDTH);
    Length bayLow = Length.ofNanometres(low);
    Length pitch = job.board().laidPitch();
    Calculated<StartLine> line = firstRows.isEmpty() ? StartLine.choose(stops, bayLow, pitch, minimum, job.rowWay())
        : StartLine.at(stops, bayLow, pitch, minimum, firstRows.get(bay));
    List<Step> steps = new ArrayList<>(why);
    steps.addAll(line.steps());
    return Calculated.of(line.value(), steps, line.findings());
  }

  RoomRows because(List<Step> steps) {
    return new RoomRows(direction, floor, firstRows, steps);
  }

  /** First rows of the bays with that of one bay replaced. */
  RoomRows with(List<Length> rows, int bay, Length firstRow) {
    List<Length> others = new ArrayList<>(rows);
    others.set(bay, firstRow);
    return new RoomRows(direction, floor, List.copyOf(others), why);
  }
}
