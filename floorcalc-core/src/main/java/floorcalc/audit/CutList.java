package floorcalc.audit;

import floorcalc.plan.LaidPiece;
import java.util.Arrays;

/** All pieces of a plan in laying order, with the rectangles of board that they ask for. Not thread-safe. */
final class CutList {
  LaidPiece[] piece;
  /** The place of the board in the list of boards, or -1. */
  int[] board;
  /** The row in laying order over all bays, from 0. */
  int[] row;
  long[] alongFrom;
  long[] alongTo;
  long[] acrossFrom;
  long[] acrossTo;
  int size;
  /** The area of all rectangles. */
  final WideSum area = new WideSum();

  CutList(int capacity) {
    piece = new LaidPiece[capacity];
    board = new int[capacity];
    row = new int[capacity];
    alongFrom = new long[capacity];
    alongTo = new long[capacity];
    acrossFrom = new long[capacity];
    acrossTo = new long[capacity];
  }

  void add(LaidPiece laid, int itsBoard, int itsRow) {
    piece[size] = laid;
    board[size] = itsBoard;
    row[size] = itsRow;
    alongFrom[size] = clamped(laid.from().alongFrom().toNanometres());
    alongTo[size] = clamped(laid.from().alongTo().toNanometres());
    acrossFrom[size] = clamped(laid.from().acrossFrom().toNanometres());
    acrossTo[size] = clamped(laid.from().acrossTo().toNanometres());
    area.addProduct(alongTo[size] - alongFrom[size], acrossTo[size] - acrossFrom[size]);
    size++;
  }

  /** Keeps absurd lengths so small that differences cannot overflow; they stay far outside every board. */
  static long clamped(long nanometres) {
    return Math.max(-2 * BayFrame.RANGE, Math.min(2 * BayFrame.RANGE, nanometres));
  }

  /** For each board the places of its pieces: those of board b stand at result[b] up to result[b + 1] of the second. */
  int[][] byBoard(int boards) {
    int[] start = new int[boards + 1];
    for (int i = 0; i < size; i++) {
      if (board[i] >= 0) {
        start[board[i] + 1]++;
      }
    }
    for (int b = 0; b < boards; b++) {
      start[b + 1] += start[b];
    }
    int[] member = new int[start[boards]];
    int[] next = Arrays.copyOf(start, start.length);
    for (int i = 0; i < size; i++) {
      if (board[i] >= 0) {
        member[next[board[i]]++] = i;
      }
    }
    return new int[][] {start, member};
  }
}
