package floorcalc.audit;

import floorcalc.plan.LaidPiece;
import floorcalc.plan.PieceKind;
import java.util.List;

/** Checks that only factory ends meet within a row, and that each piece is what it is called. */
final class EndCheck {
  private EndCheck() {
  }

  static void check(RowSketch row, CutList cuts, int firstCut, BoardBook book, List<int[]> sawnContacts, BayFrame frame,
      Breaches breaches) {
    boolean[] leftSeen = new boolean[row.count];
    boolean[] rightSeen = new boolean[row.count];
    for (int j = 0; j < row.joints.size; j++) {
      int left = row.joints.owner[j];
      int right = row.joints.sign[j];
      double x = row.joints.x0[j];
      // An end that meets in several parts, as beside a notch, is looked at once.
      if (!rightSeen[left] || row.xMax[left] - x > frame.slack()) {
        checkRightEnd(row, left, right, x, cuts, firstCut + left, book, frame, breaches);
      }
      if (!leftSeen[right] || x - row.xMin[right] > frame.slack()) {
        checkLeftEnd(row, right, left, x, cuts, firstCut + right, book, frame, breaches);
      }
      rightSeen[left] = true;
      leftSeen[right] = true;
    }
    for (int[] pair : sawnContacts) {
      String first = row.pieces.get(pair[0]).piece();
      String second = row.pieces.get(pair[1]).piece();
      breaches.add(Code.SAWN_END, first, "pieces " + first + " and " + second
          + " of one row meet along an edge that does not run square across the boards, so it is sawn");
    }
    for (int i = 0; i < row.count; i++) {
      checkKind(row, i, cuts, firstCut + i, book, breaches);
    }
  }

  private static void checkRightEnd(RowSketch row, int piece, int next, double x, CutList cuts, int cut, BoardBook book,
      BayFrame frame, Breaches breaches) {
    String name = row.pieces.get(piece).piece();
    String meets = "the right-hand end of piece " + name + " meets piece " + row.pieces.get(next).piece() + ", but ";
    if (row.xMax[piece] - x > frame.slack()) {
      breaches.add(Code.SAWN_END, name, meets + "the piece reaches " + Words.mm(row.xMax[piece] - x)
          + " further, so that end is sawn");
    } else if (cuts.board[cut] >= 0 && cuts.alongTo[cut] != book.length(cuts.board[cut])) {
      breaches.add(Code.SAWN_END, name, meets + "its board " + cuts.piece[cut].from().board() + " is "
          + Words.mm(book.length(cuts.board[cut])) + " long and the piece ends at " + Words.mm(cuts.alongTo[cut])
          + ", so that end is sawn");
    }
  }

  private static void checkLeftEnd(RowSketch row, int piece, int last, double x, CutList cuts, int cut, BoardBook book,
      BayFrame frame, Breaches breaches) {
    String name = row.pieces.get(piece).piece();
    String meets = "the left-hand end of piece " + name + " meets piece " + row.pieces.get(last).piece() + ", but ";
    if (x - row.xMin[piece] > frame.slack()) {
      breaches.add(Code.SAWN_END, name, meets + "the piece reaches " + Words.mm(x - row.xMin[piece])
          + " further, so that end is sawn");
    } else if (cuts.board[cut] >= 0 && cuts.alongFrom[cut] != 0) {
      breaches.add(Code.SAWN_END, name, meets + "the piece begins " + Words.mm(cuts.alongFrom[cut])
          + " from the end of its board " + cuts.piece[cut].from().board() + ", so that end is sawn");
    }
  }

  private static void checkKind(RowSketch row, int i, CutList cuts, int cut, BoardBook book, Breaches breaches) {
    if (!row.sound[i]) {
      return;
    }
    LaidPiece piece = row.pieces.get(i);
    boolean left = row.meetsLeft[i];
    boolean right = row.meetsRight[i];
    boolean whole = cuts.board[cut] >= 0 && cuts.alongFrom[cut] == 0 && cuts.alongTo[cut] == book.length(cuts.board[cut]);
    PieceKind kind = piece.kind();
    boolean fits = switch (kind) {
      case START -> right && !left;
      case END -> left && !right;
      case SINGLE -> !left && !right;
      // Where both ends meet, an end that is sawn has been reported already.
      case FULL -> whole || left && right;
    };
    if (!fits) {
      breaches.add(Code.PIECE_KIND, piece.piece(), "piece " + piece.piece() + " is called " + kind + "; it takes "
          + Words.span(cuts.alongFrom[cut], cuts.alongTo[cut]) + " of its board and meets "
          + (left ? right ? "a piece at both ends" : "a piece at its left-hand end only"
          : right ? "a piece at its right-hand end only" : "no other piece"));
    }
  }
}
