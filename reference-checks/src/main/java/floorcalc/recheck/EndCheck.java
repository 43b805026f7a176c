package floorcalc.recheck;

import floorcalc.recheck.Meetings.Contact;
import floorcalc.recheck.Meetings.Joint;

/** Rule 3: where pieces meet, factory end meets factory end and factory edge meets factory edge. */
final class EndCheck {
  private final long pitch;
  private final Faults faults;

  private EndCheck(long pitch, Faults faults) {
    this.pitch = pitch;
    this.faults = faults;
  }

  static void check(long pitch, Meetings meetings, Faults faults) {
    EndCheck check = new EndCheck(pitch, faults);
    for (Joint joint : meetings.joints) {
      check.joint(joint);
    }
    check.rowLines(meetings);
  }

  private void joint(Joint joint) {
    SeenPiece left = joint.left();
    SeenPiece right = joint.right();
    if (left.cut().alongTo() != left.board || !same(left.box.getMaxX(), joint.x())) {
      sawn("end at high x", left, right, "the board ends at " + Faults.mm(left.board) + " and the rectangle at "
          + Faults.mm(left.cut().alongTo()));
    }
    if (right.cut().alongFrom() != 0 || !same(right.box.getMinX(), joint.x())) {
      sawn("end at low x", right, left, "the rectangle begins at " + Faults.mm(right.cut().alongFrom()));
    }
  }

  private void rowLines(Meetings meetings) {
    double first = Double.NaN;
    for (Contact contact : meetings.contacts) {
      SeenPiece below = contact.below();
      SeenPiece above = contact.above();
      if (above.row != below.row + 1) {
        faults.add(Rule.FORMAT, above.name(), "row " + (above.row + 1) + " on row " + (below.row + 1),
            "rows are numbered upwards in the frame of the bay");
      }
      if (below.cut().acrossTo() != pitch || !same(below.box.getMaxY(), contact.y())) {
        sawn("edge at high y", below, above, "the board ends at " + Faults.mm(pitch) + " and the rectangle at "
            + Faults.mm(below.cut().acrossTo()));
      }
      if (above.cut().acrossFrom() != 0 || !same(above.box.getMinY(), contact.y())) {
        sawn("edge at low y", above, below, "the rectangle begins at " + Faults.mm(above.cut().acrossFrom()));
      }
      double startLine = contact.y() - above.row * (pitch / Lengths.PER_MILLIMETRE);
      first = Double.isNaN(first) ? startLine : first;
      if (!same(startLine, first)) {
        faults.add(Rule.FACTORY_ENDS, above.name(), "its line to the row below " + Faults.mm(startLine - first) + " off",
            "rows lie whole cover widths apart");
      }
    }
  }

  private void sawn(String which, SeenPiece piece, SeenPiece other, String because) {
    faults.add(Rule.FACTORY_ENDS, piece.name(), "that its " + which + " meets " + other.name() + " but is sawn: " + because,
        "a sawn end or edge faces a gap");
  }

  private static boolean same(double a, double b) {
    return Math.abs(a - b) <= PlanRecheck.ROUNDING;
  }
}
