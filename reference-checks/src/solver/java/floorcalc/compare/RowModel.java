package floorcalc.compare;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;

/**
 * A row of the exact model: start piece, whole boards, end piece; or one single piece where a board fills the row.
 *
 * <p>With L = a P + b, a start piece up to b leaves a whole boards and b - s; a longer one leaves a - 1 and P + b - s.
 */
final class RowModel {
  final int length;
  final boolean single;
  /** Boards laid whole, but for a start piece that is a whole board. */
  private final int most;
  /** Length of the start piece, from the least piece to a whole board. */
  final IntVar start;
  /** Length of the end piece, zero if there is none. */
  final IntVar end;
  final Literal hasEnd;
  /** Whether the start piece is no longer than b. */
  private final Literal shortStart;

  private RowModel(int length, int most, IntVar start, IntVar end, Literal hasEnd, Literal shortStart) {
    this.length = length;
    this.single = start == null;
    this.most = most;
    this.start = start;
    this.end = end;
    this.hasEnd = hasEnd;
    this.shortStart = shortStart;
  }

  static RowModel of(CpModel model, BoardCase given, int length) {
    int board = given.board();
    if (length <= board) {
      return new RowModel(length, 0, null, null, null, null);
    }
    int most = length / board;
    int rest = length % board;
    IntVar start = model.newIntVar(Math.max(1, given.minimum()), board, "s");
    IntVar end = model.newIntVar(0, board - 1, "e");
    Literal hasEnd = model.newBoolVar("hasEnd");
    Literal shortStart = model.newBoolVar("shortStart");
    model.addLessOrEqual(start, rest).onlyEnforceIf(shortStart);
    model.addGreaterThan(start, rest).onlyEnforceIf(shortStart.not());
    // s + e = L - whole boards * P
    model.addEquality(LinearExpr.newBuilder().add(start).add(end).addTerm(shortStart, board), rest + board);
    model.addGreaterOrEqual(end, Math.max(1, given.minimum())).onlyEnforceIf(hasEnd);
    model.addEquality(end, 0).onlyEnforceIf(hasEnd.not());
    return new RowModel(length, most, start, end, hasEnd, shortStart);
  }

  /** A board for each piece, as if none were shared; a start piece that is a whole board counts as one too. */
  void addPiecesTo(LinearExprBuilder boards) {
    if (single) {
      boards.add(1);
    } else {
      // most - 1 whole boards and the start piece, one whole board more for a short start, and the end piece
      boards.add(most).add(shortStart).add(hasEnd);
    }
  }

  void addKerfsTo(LinearExprBuilder sum, int kerf) {
    if (single) {
      sum.add(kerf);
    } else {
      sum.add((long) most * kerf).addTerm(shortStart, kerf).addTerm(hasEnd, kerf);
    }
  }

  void addThresholdTo(LinearExprBuilder count, CpModel model, int threshold, BoardCase given) {
    if (single) {
      count.add(length == given.board() ? 1 : 0);
      return;
    }
    Literal longEnd = model.newBoolVar("longEnd");
    model.addGreaterThan(end, threshold).onlyEnforceIf(longEnd);
    model.addLessOrEqual(end, threshold).onlyEnforceIf(longEnd.not());
    Literal longStart = model.newBoolVar("longStart");
    int fits = given.board() - given.kerf() - threshold;
    model.addGreaterOrEqual(start, fits).onlyEnforceIf(longStart);
    model.addLessThan(start, fits).onlyEnforceIf(longStart.not());
    count.add(most - 1).add(shortStart).add(longEnd).add(longStart);
  }
}
