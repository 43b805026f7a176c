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
  /** The part that each piece is cut from, by number; -1 for a piece that is a whole board. */
  final int[] partOf;
  /** Where each piece begins, from the low end of its board. */
  final long[] along;
  final Part[] parts;
  final int[] boardOfPart;
  /** Where each part begins, from the low end of its board. */
  final long[] partFrom;

  private SharedBoards(int boards, int[] partOf, long[] along, Part[] parts, int[] boardOfPart, long[] partFrom) {
    this.boards = boards;
    this.partOf = partOf;
    this.along = along;
    this.parts = parts;
    this.boardOfPart = boardOfPart;
    this.partFrom = partFrom;
  }

  /** Fills boards with parts. Between two ends, other parts follow the low one, so that what is left is in one length. */
  static SharedBoards of(int pieces, List<Part> parts, Stock stock, int least, long steps) {
    Filler filler = new Filler(parts.stream().mapToLong(Part::span).toArray(), parts.stream().mapToInt(Part::ends).toArray(),
        stock.longest(), stock.kerf);
    filler.fill(least, steps);
    int[] boardOfPart = filler.boardOf();
    long[] next = new long[filler.boards()];
    long[] partFrom = new long[parts.size()];
    for (int pass = 0; pass < 2; pass++) {
      for (int i = 0; i < partFrom.length; i++) {
        Part part = parts.get(i);
        boolean low = (part.ends() & Filler.LOW) != 0;
        if (part.ends() == Filler.HIGH) {
          partFrom[i] = stock.longest() - part.span();
        } else if (low == (pass == 0)) {
          partFrom[i] = next[boardOfPart[i]];
          next[boardOfPart[i]] += part.span() + stock.kerf;
        }
      }
    }
    int[] partOf = new int[pieces];
    Arrays.fill(partOf, -1);
    long[] along = new long[pieces];
    for (int i = 0; i < partFrom.length; i++) {
      Part part = parts.get(i);
      for (int k = 0; k < part.pieces().length; k++) {
        partOf[part.pieces()[k]] = i;
        along[part.pieces()[k]] = partFrom[i] + part.offsets()[k];
      }
    }
    return new SharedBoards(filler.boards(), partOf, along, parts.toArray(Part[]::new), boardOfPart, partFrom);
  }

  /** What is cut from each board as one strip of it. */
  List<Part> strips(long board) {
    List<List<Integer>> inBoard = new ArrayList<>();
    for (int b = 0; b < boards; b++) {
      inBoard.add(new ArrayList<>(2));
    }
    for (int i = 0; i < parts.length; i++) {
      inBoard.get(boardOfPart[i]).add(i);
    }
    List<Part> strips = new ArrayList<>(boards);
    for (List<Integer> inOne : inBoard) {
      int[] pieces = inOne.stream().flatMapToInt(i -> Arrays.stream(parts[i].pieces())).toArray();
      strips.add(new Part(board, Filler.LOW | Filler.HIGH, 0, pieces, Arrays.stream(pieces).mapToLong(p -> along[p]).toArray()));
    }
    return strips;
  }
}
