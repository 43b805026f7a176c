package floorcalc.boards;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Which pieces come from one board and where, worked out before the first is cut. The order of laying forbids nothing: a board
 * is opened for the first of its pieces, and the rest of it waits.
 */
final class SharedBoards {
  final int boards;
  /** The board of each piece; -1 for a piece that is a whole board, or was not shared out. */
  final int[] boardOf;
  /** Where each piece begins, from the low end of its board. */
  final long[] along;

  private SharedBoards(int boards, int[] boardOf, long[] along) {
    this.boards = boards;
    this.boardOf = boardOf;
    this.along = along;
  }

  /** Fills boards with parts. Between two ends, other parts follow the low one, so that what is left is in one length. */
  static SharedBoards of(int pieces, List<Part> parts, Stock stock, int least, long steps) {
    BoardFilling filling = new BoardFilling(parts.stream().mapToLong(Part::span).toArray(), parts.stream().mapToInt(Part::ends).toArray(),
        stock.longest(), stock.kerf);
    filling.fill(least, steps);
    long[] next = new long[filling.boards];
    int[] boardOf = new int[pieces];
    Arrays.fill(boardOf, -1);
    long[] along = new long[pieces];
    for (int pass = 0; pass < 2; pass++) {
      for (int i = 0; i < parts.size(); i++) {
        Part part = parts.get(i);
        int board = filling.boardOf[i];
        boolean low = (part.ends() & BoardFilling.LOW) != 0;
        if (low != (pass == 0)) {
          continue;
        }
        long from = part.ends() == BoardFilling.HIGH ? stock.longest() - part.span() : next[board];
        next[board] += part.ends() == BoardFilling.HIGH ? 0 : part.span() + stock.kerf;
        for (int k = 0; k < part.pieces().length; k++) {
          boardOf[part.pieces()[k]] = board;
          along[part.pieces()[k]] = from + part.offsets()[k];
        }
      }
    }
    return new SharedBoards(filling.boards, boardOf, along);
  }

  /** The pieces of each board, in laying order. */
  List<List<Integer>> piecesOfBoards() {
    List<List<Integer>> pieces = new ArrayList<>(boards);
    for (int b = 0; b < boards; b++) {
      pieces.add(new ArrayList<>(2));
    }
    for (int i = 0; i < boardOf.length; i++) {
      if (boardOf[i] >= 0) {
        pieces.get(boardOf[i]).add(i);
      }
    }
    return pieces;
  }

  /** What is cut from each board, as one part. */
  List<Part> strips(long board) {
    return piecesOfBoards().stream().map(pieces -> new Part(board, BoardFilling.LOW | BoardFilling.HIGH,
        pieces.stream().mapToInt(i -> i).toArray(), pieces.stream().mapToLong(i -> along[i]).toArray())).toList();
  }
}
