package floorcalc.audit;

import static floorcalc.audit.HandPlan.nanometres;
import static floorcalc.audit.HandPlan.ring;

import floorcalc.audit.Draft.PieceDraft;
import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.outline.Ring;
import floorcalc.plan.Compromise;
import floorcalc.plan.FloorJob;
import floorcalc.plan.OpenedBoard;
import floorcalc.rules.RuleKey;
import floorcalc.working.Source;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;

/** Ways to spoil a hand-made plan, for {@link SpoiltPlanTest}. */
final class Spoiling {
  private Spoiling() {}

  static Compromise compromise(String rule, String where, long required, long found) {
    return new Compromise(rule, where, Length.ofMillimetres(required), Length.ofMillimetres(found), "as a test");
  }

  static FloorJob ruled(FloorJob job, RuleKey<Length> rule, double millimetres) {
    return HandJob.of(job).rules(job.rules().with(rule, Length.ofNanometres(nanometres(millimetres)), Source.GIVEN))
        .build();
  }

  static Ring rectangle(long x0, long y0, long x1, long y1) {
    return Ring.ofNanometres(new long[] {x0, x1, x1, x0}, new long[] {y0, y0, y1, y1});
  }

  static Ring moved(Ring ring, double right) {
    return shifted(ring, nanometres(right), 0);
  }

  static Ring raised(Ring ring, double up) {
    return shifted(ring, 0, nanometres(up));
  }

  static Ring shifted(Ring ring, long dx, long dy) {
    long[] xs = new long[ring.size()];
    long[] ys = new long[ring.size()];
    for (int i = 0; i < xs.length; i++) {
      xs[i] = ring.x(i) + dx;
      ys[i] = ring.y(i) + dy;
    }
    return Ring.ofNanometres(xs, ys);
  }

  static PieceDraft copy(PieceDraft piece, String name, int run, int board) {
    PieceDraft twin = new PieceDraft();
    twin.name = name;
    twin.run = run;
    twin.kind = piece.kind;
    twin.outline = piece.outline;
    twin.holes = new ArrayList<>(piece.holes);
    twin.board = board;
    twin.alongFrom = piece.alongFrom;
    twin.alongTo = piece.alongTo;
    twin.acrossFrom = piece.acrossFrom;
    twin.acrossTo = piece.acrossTo;
    return twin;
  }

  /** Leaves out a piece and, if nothing else is cut from it, its board. */
  static void removePiece(Draft draft, int row, int number) {
    draft.row(row).pieces.remove(number - 1);
    name(draft);
    draft.boards.removeIf(board -> draft.pieces().stream().noneMatch(piece -> piece.board == board.board()));
    renumber(draft);
  }

  static void removeRow(Draft draft, int row) {
    draft.bays.get(0).rows.remove(row - 1);
    draft.openBoards(Length.ofMillimetres(2000));
  }

  static void name(Draft draft) {
    for (Draft.BayDraft bay : draft.bays) {
      for (int r = 0; r < bay.rows.size(); r++) {
        for (int i = 0; i < bay.rows.get(r).pieces.size(); i++) {
          bay.rows.get(r).pieces.get(i).name = bay.bay + "." + (r + 1) + "." + (i + 1);
        }
      }
    }
  }

  /** Numbers the boards by their places in the list, and the pieces with them. */
  static void renumber(Draft draft) {
    List<OpenedBoard> old = new ArrayList<>(draft.boards);
    for (PieceDraft piece : draft.pieces()) {
      for (int i = 0; i < old.size(); i++) {
        if (old.get(i).board() == piece.board) {
          piece.board = -(i + 1);
          break;
        }
      }
    }
    draft.pieces().forEach(piece -> piece.board = Math.abs(piece.board));
    for (int i = 0; i < old.size(); i++) {
      draft.boards.set(i, new OpenedBoard(i + 1, old.get(i).length(), old.get(i).openedInRow()));
    }
  }

  static void swapBoards(PieceDraft first, PieceDraft second) {
    int board = first.board;
    first.board = second.board;
    second.board = board;
  }

  static void half(Draft draft, int part) {
    draft.ledger[part] = draft.ledger[part].plus(Area.ofHalfSquareNanometres(BigInteger.ONE));
  }

  static void move(Draft draft, int from, int to, Area area) {
    draft.ledger[from] = draft.ledger[from].minus(area);
    draft.ledger[to] = draft.ledger[to].plus(area);
  }

  static void pinwheel(Draft draft) {
    Draft mill = HandPlan.pinwheel();
    draft.job = mill.job;
    draft.bays = mill.bays;
    draft.boards = mill.boards;
  }
}
