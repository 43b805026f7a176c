package floorcalc.laying;

import floorcalc.boards.Run;
import floorcalc.outline.Direction;
import floorcalc.outline.ExpansionGap;
import floorcalc.outline.Outline;
import floorcalc.plan.FloorJob;
import floorcalc.plan.Room;
import floorcalc.rows.StartLine;
import floorcalc.rows.Stop;
import floorcalc.rules.LayingRules;
import floorcalc.working.Calculated;
import java.util.ArrayList;
import java.util.List;

/** A room less its gap, turned to its boards and cut into bays, rows and runs. */
record RoomLaying(Room room, Direction direction, Calculated<ExpansionGap> gap, List<BayPlan> bays) {

  /**
   * Lays out the rows of a room.
   *
   * @param rows how the boards run and where the rows begin
   * @param runs the runs of the job so far, to which the room's are added
   */
  static RoomLaying of(FloorJob job, Room room, String name, RoomRows rows, int firstJobRow, List<Run> runs) {
    Calculated<ExpansionGap> gap = ExpansionGap.inset(room.outline(), job.rules().value(LayingRules.EXPANSION_GAP));
    List<BayPlan> bays = new ArrayList<>();
    long pitch = job.board().laidPitch().toNanometres();
    int jobRow = firstJobRow;
    for (Outline laid : gap.value().laid()) {
      Frame frame = Frame.of(laid, rows.direction(), pitch);
      List<Stop> stops = MeasuredStops.of(room, frame);
      Calculated<StartLine> start = MeasuredStops.withRisk(rows.startLine(bays.size(), stops, frame.low(), job));
      FrameBay bay = FrameBay.cut(name + "-" + (bays.size() + 1), room.name(), frame,
          start.value().firstRowWidth().toNanometres(), pitch, jobRow, runs);
      bays.add(new BayPlan(bay, start));
      jobRow += bay.rows().size();
    }
    return new RoomLaying(room, rows.direction(), gap, bays);
  }

  int rowCount() {
    return bays.stream().mapToInt(plan -> plan.bay().rows().size()).sum();
  }
}
