package floorcalc.recheck;

import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.recheck.Meetings.Contact;
import floorcalc.recheck.Meetings.Joint;
import java.util.List;

/** Rule 3: where pieces meet, factory end meets factory end and factory edge meets factory edge. */
final class EndRecheck {
  private EndRecheck() {}

  static void check(FloorJob job, FloorPlan plan, Meetings meetings, List<String> faults) {
    for (Joint joint : meetings.joints) {
      SeenPiece left = joint.left();
      SeenPiece right = joint.right();
      long boardEnd = plan.boards().get(left.cut().board() - 1).length().toNanometres();
      if (left.cut().alongTo().toNanometres() != boardEnd || Math.abs(left.box.getMaxX() - joint.x()) > Recheck.ROUNDING) {
        faults.add("rule 3: the end at high x of " + left.name() + " meets " + right.name() + " but is sawn");
      }
      if (!right.cut().alongFrom().isZero() || Math.abs(right.box.getMinX() - joint.x()) > Recheck.ROUNDING) {
        faults.add("rule 3: the end at low x of " + right.name() + " meets " + left.name() + " but is sawn");
      }
    }
    long pitch = job.board().laidPitch().toNanometres();
    double first = Double.NaN;
    for (Contact contact : meetings.contacts) {
      SeenPiece below = contact.below();
      SeenPiece above = contact.above();
      if (above.row != below.row + 1) {
        faults.add("rows: " + above.name() + " lies on " + below.name() + " but is not of the next row");
      }
      if (below.cut().acrossTo().toNanometres() != pitch
          || Math.abs(below.box.getMaxY() - contact.y()) > Recheck.ROUNDING) {
        faults.add("rule 3: the edge at high y of " + below.name() + " meets " + above.name() + " but is sawn");
      }
      if (!above.cut().acrossFrom().isZero() || Math.abs(above.box.getMinY() - contact.y()) > Recheck.ROUNDING) {
        faults.add("rule 3: the edge at low y of " + above.name() + " meets " + below.name() + " but is sawn");
      }
      double startLine = contact.y() - above.row * pitch / 1e6;
      first = Double.isNaN(first) ? startLine : first;
      if (Math.abs(startLine - first) > Recheck.ROUNDING) {
        faults.add("rows: the line below " + above.name() + " is not a whole number of rows from the first one");
      }
    }
  }
}
