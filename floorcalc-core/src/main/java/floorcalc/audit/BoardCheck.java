package floorcalc.audit;

import floorcalc.boards.OffcutUse;
import floorcalc.plan.FloorJob;
import floorcalc.rules.LayingRules;
import java.util.Arrays;
import java.util.Comparator;

/** Checks board by board that its pieces can be sawn from it, and that it was opened in time. */
final class BoardCheck {
  /** No board is cut into more pieces, and no cut lies within so many others. */
  private static final int MOST_PIECES = 10_000;
  private static final int DEEPEST = 500;

  private final CutList cuts;
  private final BoardBook book;
  private final RowIndex rows;
  private final Breaches breaches;
  private final long pitch;
  private final long kerf;
  private final boolean ahead;

  private BoardCheck(FloorJob job, CutList cuts, BoardBook book, RowIndex rows, Breaches breaches) {
    this.cuts = cuts;
    this.book = book;
    this.rows = rows;
    this.breaches = breaches;
    this.pitch = job.board().laidPitch().toNanometres();
    this.kerf = CutList.clamped(job.rules().value(LayingRules.SAW_KERF).toNanometres());
    this.ahead = job.offcuts() == OffcutUse.CUT_AHEAD;
  }

  static void check(FloorJob job, CutList cuts, BoardBook book, RowIndex rows, Breaches breaches) {
    BoardCheck check = new BoardCheck(job, cuts, book, rows, breaches);
    int[][] byBoard = cuts.byBoard(book.size());
    int[] start = byBoard[0];
    for (int i = 0; i < cuts.size; i++) {
      check.checkRectangle(i);
    }
    int latest = -1;
    for (int b = 0; b < book.size(); b++) {
      int[] pieces = Arrays.copyOfRange(byBoard[1], start[b], start[b + 1]);
      if (pieces.length == 0) {
        breaches.add(Code.BOARD_UNUSED, BoardBook.where(book.get(b)), "no piece is cut from board "
            + book.get(b).board() + "; a board that is opened is used");
      }
      check.checkSawing(b, pieces);
      latest = check.checkOpening(b, pieces, latest);
    }
  }

  private void checkRectangle(int i) {
    String name = cuts.piece[i].piece();
    if (cuts.board[i] < 0) {
      breaches.add(Code.BOARD_UNKNOWN, name, "piece " + name + " is cut from board " + cuts.piece[i].from().board()
          + ", which the plan does not list");
      return;
    }
    long length = book.length(cuts.board[i]);
    if (cuts.alongFrom[i] < 0 || cuts.alongTo[i] > length || cuts.alongFrom[i] >= cuts.alongTo[i]) {
      breaches.add(Code.OUTSIDE_BOARD, name, "piece " + name + " takes " + along(i) + " along board "
          + book.get(cuts.board[i]).board() + ", which reaches from 0 to " + Words.mm(length));
    }
    if (cuts.acrossFrom[i] < 0 || cuts.acrossTo[i] > pitch || cuts.acrossFrom[i] >= cuts.acrossTo[i]) {
      breaches.add(Code.OUTSIDE_BOARD, name, "piece " + name + " takes " + across(i) + " across board "
          + book.get(cuts.board[i]).board() + ", which reaches from 0 to the laid pitch of " + Words.mm(pitch));
    }
  }

  private String along(int i) {
    return Words.span(cuts.alongFrom[i], cuts.alongTo[i]);
  }

  private String across(int i) {
    return Words.span(cuts.acrossFrom[i], cuts.acrossTo[i]);
  }

  private void checkSawing(int b, int[] pieces) {
    if (pieces.length < 2) {
      return;
    }
    if (pieces.length > MOST_PIECES) {
      breaches.add(Code.NOT_CUTTABLE, BoardBook.where(book.get(b)), pieces.length + " pieces are cut from board "
          + book.get(b).board() + "; nobody saws more than " + MOST_PIECES + " from one board");
      return;
    }
    Integer[] order = new Integer[pieces.length];
    Arrays.setAll(order, k -> pieces[k]);
    Arrays.sort(order, Comparator.<Integer>comparingLong(i -> cuts.alongFrom[i]).thenComparingInt(i -> i));
    if (!checkKerf(b, order) || canBeSawn(order.clone(), 0, order.length, 0)) {
      return;
    }
    breaches.add(Code.NOT_CUTTABLE, BoardBook.where(book.get(b)), "the " + pieces.length + " pieces of board "
        + book.get(b).board() + " lie apart, but no straight cut from edge to edge or end to end frees the first of them");
  }

  /** Whether each two pieces of a board lie a saw kerf apart; reports the first two that do not. */
  private boolean checkKerf(int b, Integer[] order) {
    int[] open = new int[order.length];
    int size = 0;
    for (int i : order) {
      int kept = 0;
      for (int k = 0; k < size; k++) {
        int j = open[k];
        if (cuts.alongFrom[i] - cuts.alongTo[j] < kerf) {
          open[kept++] = j;
          if (cuts.acrossFrom[i] - cuts.acrossTo[j] < kerf && cuts.acrossFrom[j] - cuts.acrossTo[i] < kerf) {
            String first = cuts.piece[j].piece();
            String second = cuts.piece[i].piece();
            breaches.add(Code.KERF, BoardBook.where(book.get(b)), "pieces " + first + " (" + along(j) + " along, "
                + across(j) + " across) and " + second + " (" + along(i) + " along, " + across(i) + " across) of board "
                + book.get(b).board() + " must lie a saw kerf of " + Words.mm(kerf) + " apart, along or across");
            return false;
          }
        }
      }
      open[kept] = i;
      size = kept + 1;
    }
    return true;
  }

  /** Whether straight cuts right through what is left, one after the other, free all the pieces. */
  private boolean canBeSawn(Integer[] pieces, int from, int to, int depth) {
    if (to - from < 2 || depth > DEEPEST) {
      return to - from < 2;
    }
    // A cut that harms no piece can always be made first: whatever way frees all pieces still does so in both parts.
    for (boolean across : new boolean[] {false, true}) {
      long[] low = across ? cuts.acrossFrom : cuts.alongFrom;
      long[] high = across ? cuts.acrossTo : cuts.alongTo;
      Arrays.sort(pieces, from, to, Comparator.<Integer>comparingLong(i -> low[i]).thenComparingInt(i -> i));
      int start = from;
      long reach = high[pieces[from]];
      boolean free = true;
      for (int k = from + 1; k < to; k++) {
        if (low[pieces[k]] - reach >= kerf) {
          reach = high[pieces[k]];
          free = free && canBeSawn(pieces, start, k, depth + 1);
          start = k;
        } else {
          reach = Math.max(reach, high[pieces[k]]);
        }
      }
      if (start > from) {
        return free && canBeSawn(pieces, start, to, depth + 1);
      }
    }
    return false;
  }

  private int checkOpening(int b, int[] pieces, int latest) {
    String stated = book.get(b).openedInRow();
    int opened = rows.indexOf(stated);
    int first = Integer.MAX_VALUE;
    boolean used = false;
    for (int i : pieces) {
      first = Math.min(first, cuts.row[i]);
      used |= cuts.row[i] == opened;
      if (!ahead && opened > cuts.row[i]) {
        breaches.add(Code.OPENED_LATE, cuts.piece[i].piece(), "piece " + cuts.piece[i].piece() + " is laid in row "
            + rows.name(cuts.row[i]) + ", but its board " + book.get(b).board() + " is opened later, in row " + stated);
      }
    }
    if (opened < 0) {
      breaches.add(Code.OPENED_ELSEWHERE, BoardBook.where(book.get(b)), "board " + book.get(b).board() + " is opened in row '" + stated
          + "', which the plan does not have");
      return latest;
    }
    if (pieces.length > 0 && (ahead ? !used : opened < first)) {
      breaches.add(Code.OPENED_ELSEWHERE, BoardBook.where(book.get(b)), "board " + book.get(b).board() + " is said to be opened in row " + stated
          + ", but the first row with a piece of it is " + rows.name(first));
    }
    boolean right = pieces.length > 0 && (ahead ? used : opened == first);
    if (right && opened < latest) {
      breaches.add(Code.BOARD_NUMBER, BoardBook.where(book.get(b)), "board " + book.get(b).board() + " is opened in row " + stated
          + ", before a board with a lower number, in row " + rows.name(latest)
          + "; boards are numbered in the order of opening");
    }
    return right ? Math.max(latest, opened) : latest;
  }
}
