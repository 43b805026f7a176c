package floorcalc.laying;

import floorcalc.outline.Direction;
import floorcalc.outline.ExpansionGap;
import floorcalc.plan.FloorJob;
import floorcalc.plan.Room;
import floorcalc.rules.LayingRules;
import floorcalc.working.Calculated;
import java.util.Comparator;
import java.util.List;

/**
 * The floor of a room less its gaps, split for boards that run one way, and turned to them. It is made once for a direction, however many
 * ways to begin the rows are tried.
 *
 * @param gap the room less the gaps along its walls
 * @param breaks where it is split
 * @param frames its bays in laying order
 */
record RoomFloor(Calculated<ExpansionGap> gap, RoomBreaks breaks, List<Frame> frames) {
  /** From the starting side on, of bays that begin there together the one at the left first, as seen along the boards. */
  private static final Comparator<Frame> IN_LAYING_ORDER =
      Comparator.comparingLong(Frame::low).thenComparingLong(frame -> frame.floor.get(0).minX);

  static RoomFloor of(FloorJob job, Room room, Direction direction) {
    Calculated<ExpansionGap> gap = ExpansionGap.inset(room.outline(), job.rules().value(LayingRules.EXPANSION_GAP));
    RoomBreaks breaks = RoomBreaks.of(job, room, direction).onFloor(gap, room.name());
    long pitch = job.board().laidPitch().toNanometres();
    return new RoomFloor(gap, breaks, breaks.bays(gap).stream().map(laid -> Frame.of(laid, direction, pitch)).sorted(IN_LAYING_ORDER).toList());
  }
}
