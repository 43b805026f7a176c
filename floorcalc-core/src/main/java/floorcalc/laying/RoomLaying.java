package floorcalc.laying;

import floorcalc.bays.BayFreedom;
import floorcalc.bays.ThroughBreaks;
import floorcalc.boards.Run;
import floorcalc.measure.Length;
import floorcalc.outline.ExpansionGap;
import floorcalc.outline.Outline;
import floorcalc.plan.FloorJob;
import floorcalc.plan.Room;
import floorcalc.rows.StartLine;
import floorcalc.rows.Stop;
import floorcalc.rules.LayingRules;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import java.util.ArrayList;
import java.util.List;

/** A room less its gaps, turned to its boards and cut into bays, rows and runs. */
record RoomLaying(Room room, Calculated<ExpansionGap> gap, RoomBreaks breaks, List<BayPlan> bays) {
  /**
   * Lays out the rows of a room.
   *
   * @param rows how the boards run and where the rows begin
   * @param runs the runs of the job so far, to which the room's are added
   */
  static RoomLaying of(FloorJob job, Room room, String name, RoomRows rows, int firstJobRow, List<Run> runs) {
    long pitch = job.board().laidPitch().toNanometres();
    List<Frame> frames = rows.floor().frames();
    List<Calculated<StartLine>> lines = startLines(job, room, rows, frames);
    List<BayPlan> bays = new ArrayList<>();
    int jobRow = firstJobRow;
    for (int i = 0; i < frames.size(); i++) {
      FrameBay bay = FrameBay.cut(name + "-" + (i + 1), room.name(), frames.get(i),
          lines.get(i).value().firstRowWidth().toNanometres(), pitch, jobRow, runs);
      bays.add(new BayPlan(bay, lines.get(i)));
      jobRow += bay.rows().size();
    }
    return new RoomLaying(room, rows.floor().gap(), rows.floor().breaks(), bays);
  }

  private static List<Calculated<StartLine>> startLines(FloorJob job, Room room, RoomRows rows, List<Frame> frames) {
    List<Calculated<StartLine>> lines = new ArrayList<>();
    if (job.throughBreaks() == ThroughBreaks.ONE_START_LINE && frames.size() > 1) {
      return commonLine(job, room, rows, frames);
    }
    for (Frame frame : frames) {
      lines.add(MeasuredStops.withRisk(rows.startLine(lines.size(), MeasuredStops.of(room, frame), frame.low(), job)));
    }
    return lines;
  }

  /** One start line for all bays, so that their rows are in line; if it is given, it is that of the first bay. */
  private static List<Calculated<StartLine>> commonLine(FloorJob job, Room room, RoomRows rows, List<Frame> frames) {
    long low = rows.firstRows().isEmpty() ? frames.stream().mapToLong(Frame::low).min().orElseThrow() : frames.get(0).low();
    List<Stop> all = frames.stream().flatMap(frame -> MeasuredStops.of(room, frame).stream()).toList();
    long line = low + rows.startLine(0, all, low, job).value().firstRowWidth().toNanometres();
    long pitch = job.board().laidPitch().toNanometres();
    List<Calculated<StartLine>> lines = new ArrayList<>();
    for (Frame frame : frames) {
      long over = Math.floorMod(line - frame.low(), pitch);
      Length first = Length.ofNanometres(over == 0 ? pitch : over);
      lines.add(MeasuredStops.withRisk(StartLine.at(MeasuredStops.of(room, frame), Length.ofNanometres(frame.low()),
          job.board().laidPitch(), job.rules().get(LayingRules.MINIMUM_ROW_WIDTH), first)));
    }
    return lines;
  }

  /** What keeps bays from moving, each judged by the walls and breaks that its part of the room lies between. */
  List<Finding> notFree(LayingRules rules) {
    List<Finding> findings = new ArrayList<>();
    List<Outline> parts = breaks.parts(room.outline());
    for (BayPlan plan : bays) {
      Outline laid = plan.bay().frame().laid;
      Outline part = parts.stream().filter(each -> RoomBreaks.liesIn(each, laid)).findFirst().orElse(laid);
      findings.addAll(BayFreedom.of(plan.bay().name(), part, rules).findings());
    }
    return findings;
  }

  int rowCount() {
    return bays.stream().mapToInt(plan -> plan.bay().rows().size()).sum();
  }
}
