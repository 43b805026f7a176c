package floorcalc.audit;

import floorcalc.measure.Length;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.OpenedBoard;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The boards of a plan, found by their numbers: numbered in order of opening, of a length that is sold. */
final class BoardBook {
  private final List<OpenedBoard> boards;
  private final Map<Integer, Integer> odd = new HashMap<>();
  private final int[] kind;

  private BoardBook(List<OpenedBoard> boards) {
    this.boards = boards;
    this.kind = new int[boards.size()];
  }

  static BoardBook of(FloorJob job, FloorPlan plan, Breaches breaches) {
    BoardBook book = new BoardBook(plan.boards());
    List<Length> sold = job.board().lengths();
    for (int i = 0; i < book.size(); i++) {
      OpenedBoard board = book.boards.get(i);
      if (board.board() != i + 1) {
        breaches.add(Code.BOARD_NUMBER, where(board), "board at place " + (i + 1) + " of the list has number "
            + board.board() + "; boards are numbered from 1 in the order of opening");
        book.odd.putIfAbsent(board.board(), i);
      }
      book.kind[i] = sold.indexOf(board.length());
      if (book.kind[i] < 0) {
        breaches.add(Code.BOARD_LENGTH, where(board), "board " + board.board() + " is " + board.length()
            + " long; the lengths sold are " + sold);
      }
    }
    return book;
  }

  static String where(OpenedBoard board) {
    return "board " + board.board();
  }

  int size() {
    return boards.size();
  }

  OpenedBoard get(int index) {
    return boards.get(index);
  }

  long length(int index) {
    return boards.get(index).length().toNanometres();
  }

  /** Which of the lengths sold the board has, from 0; -1 if none. */
  int kind(int index) {
    return kind[index];
  }

  /** The place in the list of the board with a number, or -1. */
  int indexOf(int number) {
    if (number >= 1 && number <= boards.size() && boards.get(number - 1).board() == number) {
      return number - 1;
    }
    return odd.getOrDefault(number, -1);
  }
}
