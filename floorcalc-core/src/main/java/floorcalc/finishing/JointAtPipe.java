package floorcalc.finishing;

import floorcalc.fittings.HoleCut;
import floorcalc.plan.Bay;
import floorcalc.plan.LaidPiece;
import floorcalc.plan.Row;
import floorcalc.rules.LayingRules;
import java.util.ArrayList;
import java.util.List;

/** Whether an end joint through a hole would keep the rules: as far from the ends of its run, and from the joints of the rows beside it. */
final class JointAtPipe {
  private final long end;
  private final long offset;
  private final Bay bay;

  JointAtPipe(LayingRules rules, Bay bay) {
    end = rules.value(LayingRules.MINIMUM_END_PIECE).toNanometres();
    offset = rules.value(LayingRules.MINIMUM_JOINT_OFFSET).toNanometres();
    this.bay = bay;
  }

  boolean keepsRules(HoleCut cut) {
    long at = (cut.from().xNanometres() + cut.to().xNanometres()) / 2;
    String name = cut.parts().get(0).piece();
    for (int i = 0; i < bay.rows().size(); i++) {
      for (LaidPiece piece : bay.rows().get(i).pieces()) {
        if (piece.piece().equals(name)) {
          List<LaidPiece> run = bay.rows().get(i).pieces().stream().filter(other -> other.run() == piece.run()).toList();
          boolean apart = joints(i - 1).stream().allMatch(joint -> Math.abs(joint - at) >= offset)
              && joints(i + 1).stream().allMatch(joint -> Math.abs(joint - at) >= offset);
          return apart && at - low(run.get(0)) >= end && high(run.get(run.size() - 1)) - at >= end;
        }
      }
    }
    return false;
  }

  private List<Long> joints(int row) {
    List<Long> joints = new ArrayList<>();
    if (row >= 0 && row < bay.rows().size()) {
      Row beside = bay.rows().get(row);
      for (int i = 1; i < beside.pieces().size(); i++) {
        if (beside.pieces().get(i).run() == beside.pieces().get(i - 1).run()) {
          joints.add(low(beside.pieces().get(i)));
        }
      }
    }
    return joints;
  }

  private long low(LaidPiece piece) {
    return bay.direction().toFrame(piece.outline()).extent().low().xNanometres();
  }

  private long high(LaidPiece piece) {
    return bay.direction().toFrame(piece.outline()).extent().high().xNanometres();
  }
}
