package floorcalc.recheck;

import floorcalc.plan.Bay;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.LaidPiece;
import floorcalc.plan.Row;
import java.util.ArrayList;
import java.util.List;

/**
 * What a reader of a plan may rely on, checked slowly and plainly from the plan's own objects with a general-purpose
 * geometry library. It uses nothing of what made the plan and nothing of what audits it: only points, lengths and rules as data.
 */
public final class Recheck {
  /**
   * Millimetres by which two lengths may differ that are the same but for rounding: the corners of a turned bay are rounded to
   * the nanometre once in the bay and once in the room, so a length between two of them is out by no more than three.
   */
  static final double ROUNDING = 4e-6;
  /** Square millimetres of hole, overlap and floor outside the laid area that are taken as none. */
  static final double NO_AREA = 1;

  private Recheck() {}

  /**
   * Checks a plan.
   *
   * @param job what was asked for, not null
   * @param plan what was worked out, not null
   * @return what is wrong, each with the number of the rule; empty if nothing is
   */
  public static List<String> of(FloorJob job, FloorPlan plan) {
    List<String> faults = new ArrayList<>();
    List<SeenPiece> all = new ArrayList<>();
    BoardRecheck.checkNumbers(plan, faults);
    if (!faults.isEmpty()) {
      return faults;
    }
    int rowOfPlan = 0;
    for (Bay bay : plan.bays()) {
      List<SeenPiece> pieces = new ArrayList<>();
      for (int k = 0; k < bay.rows().size(); k++) {
        Row row = bay.rows().get(k);
        if (row.row() != k + 1) {
          faults.add("rows: row " + (k + 1) + " of " + bay.bay() + " is numbered " + row.row());
        }
        for (LaidPiece piece : row.pieces()) {
          pieces.add(new SeenPiece(piece, bay, k, rowOfPlan));
        }
        rowOfPlan++;
      }
      CoverRecheck.check(bay, pieces, faults);
      Meetings meetings = Meetings.of(bay, pieces, faults);
      EndRecheck.check(job, plan, meetings, faults);
      MinimumRecheck.check(job, plan, bay, pieces, meetings, faults);
      all.addAll(pieces);
    }
    GapRecheck.check(job, plan, faults);
    BoardRecheck.check(job, plan, all, faults);
    return faults;
  }
}
