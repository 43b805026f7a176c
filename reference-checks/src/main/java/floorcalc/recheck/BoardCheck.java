package floorcalc.recheck;

import floorcalc.recheck.ToldPlan.Bay;
import floorcalc.recheck.ToldPlan.Board;
import floorcalc.recheck.ToldPlan.Cut;
import floorcalc.recheck.ToldPlan.Piece;
import floorcalc.recheck.ToldPlan.Row;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Rules 2 and 4, and of rule 6 the list: pieces lie in their boards a saw kerf apart, boards are opened in time. */
final class BoardCheck {
  private final AskedJob job;
  private final Faults faults;

  private BoardCheck(AskedJob job, Faults faults) {
    this.job = job;
    this.faults = faults;
  }

  /** Whether every piece names a board that is listed. */
  static boolean areListed(ToldPlan plan, Faults faults) {
    boolean listed = true;
    for (Bay bay : plan.bays()) {
      for (Row row : bay.rows()) {
        for (Piece piece : row.pieces()) {
          if (piece.from().board() > plan.boards().size()) {
            faults.add(Rule.CUT, piece.name(), "that it comes from board " + piece.from().board(),
                "the plan lists " + plan.boards().size() + " boards");
            listed = false;
          }
        }
      }
    }
    return listed;
  }

  static void check(AskedJob job, ToldPlan plan, List<SeenPiece> pieces, Faults faults) {
    BoardCheck check = new BoardCheck(job, faults);
    Map<String, Integer> rows = new HashMap<>();
    for (Bay bay : plan.bays()) {
      for (Row row : bay.rows()) {
        rows.put(bay.name() + "." + row.number(), rows.size());
      }
    }
    List<List<SeenPiece>> ofBoard = new ArrayList<>();
    plan.boards().forEach(board -> ofBoard.add(new ArrayList<>()));
    pieces.forEach(piece -> ofBoard.get(piece.cut().board() - 1).add(piece));
    for (int b = 0; b < plan.boards().size(); b++) {
      check.board(b, plan.boards().get(b), ofBoard.get(b), rows);
    }
    faults.tally.boards += plan.boards().size();
  }

  private void board(int index, Board board, List<SeenPiece> cut, Map<String, Integer> rows) {
    if (board.number() != index + 1) {
      board.at().fault(Rule.COUNTS, "number " + board.number(), "boards are numbered from 1 in the order of the list");
    }
    if (!job.pack().containsKey(board.length())) {
      board.at().fault(Rule.COUNTS, "a board of " + Faults.mm(board.length()), "the job has no boards of that length");
    }
    if (cut.isEmpty()) {
      board.at().fault(Rule.COUNTS, "a board from which no piece is cut", "each board listed is used");
      return;
    }
    for (int i = 0; i < cut.size(); i++) {
      rectangle(cut.get(i));
      for (int j = i + 1; j < cut.size(); j++) {
        apart(cut.get(i), cut.get(j));
      }
    }
    Integer opened = rows.get(board.openedInRow());
    boolean there = opened != null && cut.stream().anyMatch(piece -> piece.rowOfPlan == opened);
    boolean before = opened != null && cut.stream().anyMatch(piece -> piece.rowOfPlan < opened);
    if (!there || before && job.inLayingOrder()) {
      faults.add(Rule.LAYING_ORDER, "board " + board.number(), "that it is opened in row " + board.openedInRow() + ", its pieces are "
          + String.join(", ", cut.stream().map(SeenPiece::name).toList()),
          job.inLayingOrder() ? "a board is opened in the first row that it serves" : "a board is opened in a row that it serves");
    }
  }

  private void rectangle(SeenPiece piece) {
    Cut cut = piece.cut();
    if (cut.alongFrom() < 0 || cut.alongTo() > piece.board || cut.acrossFrom() < 0 || cut.acrossTo() > job.pitch()
        || cut.length() <= 0 || cut.width() <= 0) {
      faults.add(Rule.CUT, piece.name(), "the rectangle " + words(cut), "it must lie in its board of " + Faults.mm(piece.board) + " by "
          + Faults.mm(job.pitch()));
    }
    if (Math.abs(piece.box.getWidth() - cut.length() / Lengths.PER_MILLIMETRE) > PlanRecheck.ROUNDING
        || Math.abs(piece.box.getHeight() - cut.width() / Lengths.PER_MILLIMETRE) > PlanRecheck.ROUNDING) {
      faults.add(Rule.CUT, piece.name(), "a piece of " + Faults.mm(piece.box.getWidth()) + " by " + Faults.mm(piece.box.getHeight()),
          "its rectangle is " + Faults.mm(cut.length()) + " by " + Faults.mm(cut.width()));
    }
  }

  private void apart(SeenPiece first, SeenPiece second) {
    Cut a = first.cut();
    Cut b = second.cut();
    long along = Math.max(b.alongFrom() - a.alongTo(), a.alongFrom() - b.alongTo());
    long across = Math.max(b.acrossFrom() - a.acrossTo(), a.acrossFrom() - b.acrossTo());
    faults.tally.pairs++;
    if (along < job.kerf() && across < job.kerf()) {
      faults.add(Rule.CUT, first.name() + " and " + second.name(), Faults.mm(along) + " between them along and " + Faults.mm(across)
          + " across board " + a.board() + " (less than 0 is an overlap)",
          "one of the two must be a saw kerf, " + Faults.mm(job.kerf()) + ", or more");
    }
  }

  private static String words(Cut cut) {
    return "along " + Faults.mm(cut.alongFrom()) + " to " + Faults.mm(cut.alongTo()) + ", across " + Faults.mm(cut.acrossFrom()) + " to "
        + Faults.mm(cut.acrossTo());
  }
}
