package floorcalc.recheck;

import floorcalc.boards.OffcutUse;
import floorcalc.plan.Bay;
import floorcalc.plan.Cut;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.LaidPiece;
import floorcalc.plan.OpenedBoard;
import floorcalc.plan.Row;
import floorcalc.rules.LayingRules;
import java.util.ArrayList;
import java.util.List;

/** Rules 2, 4 and 6: pieces lie in their boards a saw kerf apart, boards are opened in time, and they are counted right. */
final class BoardRecheck {
  private BoardRecheck() {}

  /** Whether every piece names a board that is listed. */
  static void checkNumbers(FloorPlan plan, List<String> faults) {
    for (Bay bay : plan.bays()) {
      for (Row row : bay.rows()) {
        for (LaidPiece piece : row.pieces()) {
          if (piece.from().board() < 1 || piece.from().board() > plan.boards().size()) {
            faults.add("rule 2: piece " + piece.piece() + " comes from board " + piece.from().board()
                + ", which is not listed");
          }
        }
      }
    }
  }

  static void check(FloorJob job, FloorPlan plan, List<SeenPiece> pieces, List<String> faults) {
    long pitch = job.board().laidPitch().toNanometres();
    long kerf = job.rules().value(LayingRules.SAW_KERF).toNanometres();
    List<String> rows = new ArrayList<>();
    for (Bay bay : plan.bays()) {
      for (Row row : bay.rows()) {
        rows.add(bay.bay() + "." + row.row());
      }
    }
    for (int b = 0; b < plan.boards().size(); b++) {
      OpenedBoard board = plan.boards().get(b);
      int number = b + 1;
      List<SeenPiece> cut = pieces.stream().filter(piece -> piece.cut().board() == number).toList();
      if (board.board() != number || !job.board().lengths().contains(board.length()) || cut.isEmpty()) {
        faults.add("rule 6: board " + number + " is numbered " + board.board() + ", is " + board.length()
            + " long and gives " + cut.size() + " pieces");
      }
      cut.forEach(piece -> rectangle(piece, board, pitch, faults));
      for (int i = 0; i < cut.size(); i++) {
        for (int j = i + 1; j < cut.size(); j++) {
          apart(cut.get(i), cut.get(j), kerf, faults);
        }
      }
      opened(job, board, rows.indexOf(board.openedInRow()), cut, faults);
    }
    if (plan.order().boardsUsed() != plan.boards().size() || plan.order().boardsAtLeast() > plan.boards().size()
        || plan.order().provenFewest() != (plan.order().boardsAtLeast() == plan.boards().size())) {
      faults.add("rule 6: " + plan.boards().size() + " boards are listed, but the order says " + plan.order());
    }
  }

  private static void rectangle(SeenPiece piece, OpenedBoard board, long pitch, List<String> faults) {
    Cut cut = piece.cut();
    if (cut.alongFrom().isNegative() || cut.alongTo().compareTo(board.length()) > 0 || cut.acrossFrom().isNegative()
        || cut.acrossTo().toNanometres() > pitch || !cut.length().isPositive() || !cut.width().isPositive()) {
      faults.add("rule 2: the rectangle of " + piece.name() + " reaches out of its board: " + cut);
    }
    if (Math.abs(piece.box.getWidth() - cut.length().toMillimetres()) > Recheck.ROUNDING
        || Math.abs(piece.box.getHeight() - cut.width().toMillimetres()) > Recheck.ROUNDING) {
      faults.add("rule 2: " + piece.name() + " is " + piece.box.getWidth() + " by " + piece.box.getHeight()
          + " mm, its rectangle " + cut.length() + " by " + cut.width());
    }
  }

  private static void apart(SeenPiece first, SeenPiece second, long kerf, List<String> faults) {
    Cut a = first.cut();
    Cut b = second.cut();
    long along = Math.max(b.alongFrom().minus(a.alongTo()).toNanometres(), a.alongFrom().minus(b.alongTo()).toNanometres());
    long across =
        Math.max(b.acrossFrom().minus(a.acrossTo()).toNanometres(), a.acrossFrom().minus(b.acrossTo()).toNanometres());
    if (along < kerf && across < kerf) {
      faults.add("rule 2: " + first.name() + " and " + second.name() + " lie " + along + " nm along and " + across
          + " nm across from each other in one board");
    }
  }

  private static void opened(FloorJob job, OpenedBoard board, int opened, List<SeenPiece> cut, List<String> faults) {
    boolean there = cut.stream().anyMatch(piece -> piece.rowOfPlan == opened);
    boolean before = cut.stream().anyMatch(piece -> piece.rowOfPlan < opened);
    if (!there || before && job.offcuts() == OffcutUse.IN_LAYING_ORDER) {
      faults.add("rule 4: board " + board.board() + " is opened in row " + board.openedInRow() + ", its pieces lie in "
          + cut.stream().map(SeenPiece::name).toList());
    }
  }
}
