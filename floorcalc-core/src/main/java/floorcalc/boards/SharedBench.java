package floorcalc.boards;

import java.util.ArrayList;
import java.util.List;

/**
 * Cuts pieces, in laying order, from the boards that they are to share. A board is opened for its first piece; what none of
 * its pieces needs is used for pieces that would have a board to themselves.
 */
final class SharedBench {
  private final SharedBoards shared;
  private final Bench bench;
  /** The number of each board as opened, or -1. */
  private final int[] opened;
  /** How many pieces are still to be cut from each board, and from each part. */
  private final int[] toCutFromBoard;
  private final int[] toCutFromPart;
  private final List<List<Offcut>> ofBoard = new ArrayList<>();
  private final List<List<Offcut>> ofPart = new ArrayList<>();

  SharedBench(Stock stock, SharedBoards shared) {
    this.shared = shared;
    this.bench = new Bench(stock);
    this.opened = new int[shared.boards];
    this.toCutFromBoard = new int[shared.boards];
    this.toCutFromPart = new int[shared.parts.length];
    for (int b = 0; b < opened.length; b++) {
      opened[b] = -1;
      ofBoard.add(null);
    }
    for (int i = 0; i < toCutFromPart.length; i++) {
      toCutFromPart[i] = shared.parts[i].pieces().length;
      toCutFromBoard[shared.boardOfPart[i]] += toCutFromPart[i];
      ofPart.add(null);
    }
  }

  Bench bench() {
    return bench;
  }

  /** Cuts a piece, writes down where, and returns its board. */
  int cut(int index, PieceWanted piece, long[] place) {
    int part = shared.partOf[index];
    if (part < 0) {
      Offcut whole = bench.open(0, index);
      bench.cutAt(piece, 0, whole, place);
      return whole.board();
    }
    int board = shared.boardOfPart[part];
    if (toCutFromBoard[board] == 1 && opened[board] < 0) {
      Offcut from = bench.find(piece);
      if (from == null) {
        from = bench.open(0, index);
      }
      putAll(bench.cut(piece, from, place));
      toCutFromBoard[board] = 0;
      return from.board();
    }
    if (opened[board] < 0) {
      Offcut whole = bench.open(0, index);
      opened[board] = whole.board();
      ofBoard.set(board, new ArrayList<>(List.of(whole)));
    }
    long low = shared.along[index];
    Part region = shared.parts[part];
    List<Offcut> from = ofBoard.get(board);
    if (region.ripAt() > 0) {
      if (ofPart.get(part) == null) {
        ofPart.set(part, rip(part, from));
      }
      from = ofPart.get(part);
    }
    Offcut here = take(from, piece, low);
    keep(from, bench.cutAt(piece, low, here, place));
    if (--toCutFromPart[part] == 0 && region.ripAt() > 0) {
      from.forEach(bench::put);
    }
    if (--toCutFromBoard[board] == 0) {
      ofBoard.get(board).forEach(bench::put);
      ofBoard.set(board, null);
    }
    return opened[board];
  }

  /** Saws a part off its board and rips it. */
  private List<Offcut> rip(int part, List<Offcut> from) {
    long low = shared.partFrom[part];
    long high = low + shared.parts[part].span();
    for (int k = 0; k < from.size(); k++) {
      Offcut offcut = from.get(k);
      if (offcut.alongFrom <= low && offcut.alongTo >= high) {
        from.remove(k);
        keep(from, bench.cross(low, high, offcut));
        List<Offcut> strips = new ArrayList<>(2);
        keep(strips, bench.rip(offcut.board(), low, high, shared.parts[part].ripAt()));
        return strips;
      }
    }
    throw new IllegalStateException("a part does not lie in what is left of its board");
  }

  private static Offcut take(List<Offcut> from, PieceWanted piece, long low) {
    for (int k = 0; k < from.size(); k++) {
      Offcut offcut = from.get(k);
      if (offcut.alongFrom <= low && offcut.alongTo >= low + piece.span() && offcut.acrossFrom <= piece.low()
          && offcut.acrossTo >= piece.high()) {
        return from.remove(k);
      }
    }
    throw new IllegalStateException("a piece does not lie in what is left of its board");
  }

  private static void keep(List<Offcut> into, Offcut[] offcuts) {
    for (Offcut offcut : offcuts) {
      if (offcut != null) {
        into.add(offcut);
      }
    }
  }

  private void putAll(Offcut[] offcuts) {
    for (Offcut offcut : offcuts) {
      bench.put(offcut);
    }
  }
}
