package floorcalc.audit;

import floorcalc.plan.Bay;
import floorcalc.plan.LaidPiece;
import java.util.List;

/** Checks names and numbers: each piece is called by its bay, row and place, each run is one unbroken string of pieces. */
final class NameCheck {
  private NameCheck() {
  }

  static void checkRow(Bay bay, int r, RowSketch row, double slack, Breaches breaches) {
    String place = BayCheck.rowPlace(bay, r);
    int number = bay.rows().get(r).row();
    if (number != r + 1) {
      breaches.add(Code.ROW_NUMBER, place, "the row at place " + (r + 1) + " of " + bay.bay() + " has number " + number
          + "; rows are numbered from 1 upwards");
    }
    List<LaidPiece> pieces = row.pieces;
    String prefix = bay.bay() + "." + (r + 1) + ".";
    int run = 0;
    for (int i = 0; i < row.count; i++) {
      LaidPiece piece = pieces.get(i);
      String name = piece.piece();
      if (!isNamed(name, prefix, i + 1)) {
        breaches.add(Code.PIECE_NAME, name, "piece " + (i + 1) + " of " + place + " is called '" + name
            + "'; its name is " + prefix + (i + 1));
      }
      boolean next = piece.run() == run + 1;
      if (!next && (piece.run() != run || i == 0)) {
        breaches.add(Code.RUN_NUMBER, name, "piece " + name + " has run " + piece.run() + " after run " + run
            + "; runs are numbered from 1 in the order of the pieces");
      } else if (!next && row.sound[i] && row.sound[i - 1] && row.xMin[i] < row.xMin[i - 1] - slack) {
        breaches.add(Code.PIECE_ORDER, name, "piece " + name + " lies before piece " + pieces.get(i - 1).piece()
            + " of the same run; pieces are listed from low x to high x");
      }
      run = piece.run();
    }
    checkRuns(row, place, breaches);
  }

  private static boolean isNamed(String name, String prefix, int number) {
    int left = number;
    int at = name.length() - 1;
    while (left > 0 && at >= prefix.length() && name.charAt(at) == '0' + left % 10) {
      left /= 10;
      at--;
    }
    return left == 0 && at == prefix.length() - 1 && name.startsWith(prefix);
  }

  /** Pieces that meet are of one run, and all pieces of a run hang together. */
  private static void checkRuns(RowSketch row, String place, Breaches breaches) {
    int[] chain = new int[row.count];
    for (int i = 0; i < row.count; i++) {
      chain[i] = i;
    }
    for (int j = 0; j < row.joints.size; j++) {
      int a = row.joints.owner[j];
      int b = row.joints.sign[j];
      if (row.pieces.get(a).run() != row.pieces.get(b).run()) {
        breaches.add(Code.RUN_NUMBER, row.pieces.get(b).piece(), "pieces " + row.pieces.get(a).piece() + " of run "
            + row.pieces.get(a).run() + " and " + row.pieces.get(b).piece() + " of run " + row.pieces.get(b).run()
            + " meet, so they are of one run");
      }
      chain[end(chain, Math.max(a, b))] = end(chain, Math.min(a, b));
    }
    for (int i = 1; i < row.count; i++) {
      boolean same = row.pieces.get(i).run() == row.pieces.get(i - 1).run();
      if (same && row.sound[i] && row.sound[i - 1] && end(chain, i) != end(chain, i - 1)) {
        breaches.add(Code.RUN_NUMBER, row.pieces.get(i).piece(), "pieces " + row.pieces.get(i - 1).piece() + " and "
            + row.pieces.get(i).piece() + " are both of run " + row.pieces.get(i).run() + " of " + place
            + ", but no joints connect them");
      }
    }
  }

  private static int end(int[] chain, int from) {
    int at = from;
    while (chain[at] != at) {
      chain[at] = chain[chain[at]];
      at = chain[at];
    }
    return at;
  }
}
