package floorcalc.recheck;

import floorcalc.measure.Length;
import floorcalc.plan.Bay;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.PieceKind;
import floorcalc.plan.Row;
import floorcalc.recheck.Meetings.Contact;
import floorcalc.recheck.Meetings.Joint;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleKey;
import java.util.List;

/** Rule 5: each row, end piece and joint keeps its minimum, or a compromise says where it does not and by how much. */
final class MinimumRecheck {
  private final FloorJob job;
  private final FloorPlan plan;
  private final Bay bay;
  private final List<String> faults;

  private MinimumRecheck(FloorJob job, FloorPlan plan, Bay bay, List<String> faults) {
    this.job = job;
    this.plan = plan;
    this.bay = bay;
    this.faults = faults;
  }

  static void check(FloorJob job, FloorPlan plan, Bay bay, List<SeenPiece> pieces, Meetings meetings,
      List<String> faults) {
    MinimumRecheck check = new MinimumRecheck(job, plan, bay, faults);
    for (Row row : bay.rows()) {
      check.row(row, pieces.stream().filter(piece -> piece.row == row.row() - 1).toList());
    }
    pieces.forEach(check::piece);
    for (int k = 1; k < bay.rows().size(); k++) {
      check.joints(k, meetings);
    }
  }

  private void row(Row row, List<SeenPiece> pieces) {
    double widest = pieces.stream().mapToDouble(piece -> piece.box.getHeight()).max().orElse(0);
    if (Math.abs(row.coverWidth().toMillimetres() - widest) > Recheck.ROUNDING) {
      faults.add("rows: row " + row.row() + " of " + bay.bay() + " says it shows " + row.coverWidth() + " but shows "
          + widest + " mm");
    }
    need(LayingRules.MINIMUM_ROW_WIDTH, widest, bay.bay() + " row " + row.row());
  }

  private void piece(SeenPiece piece) {
    long board = plan.boards().get(piece.cut().board() - 1).length().toNanometres();
    boolean whole = piece.cut().length().toNanometres() == board;
    if (piece.meetsLow != piece.meetsHigh && !whole) {
      need(LayingRules.MINIMUM_END_PIECE, piece.box.getWidth(),
          bay.bay() + " row " + (piece.row + 1) + " run " + piece.piece.run());
    }
    boolean asCalled = whole || piece.meetsLow && piece.meetsHigh ? piece.is(PieceKind.FULL)
        : piece.is(piece.meetsHigh ? PieceKind.START : piece.meetsLow ? PieceKind.END : PieceKind.SINGLE);
    if (!asCalled) {
      faults.add("rule 5: piece " + piece.name() + " is called " + piece.piece.kind());
    }
  }

  /** Compares each joint of a row with each joint of the row below it, where the two rows touch. */
  private void joints(int row, Meetings meetings) {
    List<Contact> line = meetings.contacts.stream().filter(contact -> contact.above().row == row).toList();
    List<Joint> above = meetings.joints.stream().filter(joint -> joint.left().row == row && isOn(line, joint)).toList();
    List<Joint> below =
        meetings.joints.stream().filter(joint -> joint.left().row == row - 1 && isOn(line, joint)).toList();
    for (Joint joint : above) {
      for (Joint other : below) {
        need(LayingRules.MINIMUM_JOINT_OFFSET, Math.abs(joint.x() - other.x()), bay.bay() + " row " + (row + 1));
      }
    }
  }

  private static boolean isOn(List<Contact> line, Joint joint) {
    return line.stream().anyMatch(contact -> contact.from() + Recheck.ROUNDING <= joint.x()
        && joint.x() <= contact.to() - Recheck.ROUNDING || touchesEnd(line, contact, joint));
  }

  /** A joint where one contact ends and the next begins stands on the line as well. */
  private static boolean touchesEnd(List<Contact> line, Contact contact, Joint joint) {
    return Math.abs(contact.to() - joint.x()) <= Recheck.ROUNDING
        && line.stream().anyMatch(next -> Math.abs(next.from() - joint.x()) <= Recheck.ROUNDING);
  }

  private void need(RuleKey<Length> rule, double found, String where) {
    Length required = job.rules().value(rule);
    if (found >= required.toMillimetres() - Recheck.ROUNDING) {
      return;
    }
    boolean listed = plan.compromises().stream().anyMatch(compromise -> compromise.rule().equals(rule.name())
        && compromise.where().matches(java.util.regex.Pattern.quote(where) + "(\\D.*)?")
        && compromise.required().equals(required) && !compromise.because().isBlank()
        && Math.abs(compromise.found().toMillimetres() - found) <= Recheck.ROUNDING);
    if (!listed) {
      faults.add("rule 5: " + rule.name() + " asks for " + required + ", " + where + " has " + found
          + " mm, and no compromise says so");
    }
  }
}
