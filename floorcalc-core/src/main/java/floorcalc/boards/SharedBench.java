package floorcalc.boards;

import java.util.ArrayList;
import java.util.List;

/**
 * Cuts pieces, in laying order, from the boards that they are to share. A board is opened for its first piece. A piece is cut to
 * length across the board, then ripped, if what is left then still holds each other piece of the board. Else the section in
 * which pieces lie side by side is sawn off first and ripped beside its low strips. What none of the pieces of a board needs is
 * used for pieces that would have a board to themselves.
 */
final class SharedBench {
  private final List<PieceWanted> pieces;
  private final SharedBoards shared;
  private final long kerf;
  private final Bench bench;
  private final List<List<Integer>> ofBoard;
  private final Sawing[] sawing;

  SharedBench(List<PieceWanted> pieces, Stock stock, SharedBoards shared) {
    this.pieces = pieces;
    this.shared = shared;
    this.kerf = stock.kerf;
    this.bench = new Bench(stock);
    this.ofBoard = shared.piecesOfBoards();
    this.sawing = new Sawing[shared.boards];
  }

  Bench bench() {
    return bench;
  }

  /** Cuts a piece, writes down where, and returns its board. */
  int cut(int index, long[] place) {
    int board = shared.boardOf[index];
    PieceWanted piece = pieces.get(index);
    if (board < 0 || ofBoard.get(board).size() == 1) {
      Offcut from = board < 0 ? null : bench.find(piece);
      from = from == null ? bench.open(0, index) : from;
      bench.cut(piece, from, place).forEach(bench::put);
      return from.board();
    }
    if (sawing[board] == null) {
      sawing[board] = new Sawing(ofBoard.get(board), bench.open(0, index));
    }
    Sawing here = sawing[board];
    here.cut(index, place);
    if (here.toCut == 0) {
      here.left.forEach(bench::put);
      sawing[board] = null;
    }
    return here.number;
  }

  /** A board of which pieces are still to be cut. */
  private final class Sawing {
    final int number;
    private final List<Integer> places;
    private final boolean inTurn;
    private final List<Offcut> left = new ArrayList<>();
    private int toCut;
    private boolean[] sawn;

    Sawing(List<Integer> places, Offcut whole) {
      this.places = places;
      this.number = whole.board();
      this.toCut = places.size();
      this.sawn = new boolean[toCut];
      left.add(whole);
      this.inTurn = canBeCutInTurn(whole);
    }

    private boolean canBeCutInTurn(Offcut whole) {
      List<Offcut> rests = new ArrayList<>(List.of(whole));
      for (int i : places) {
        Offcut from = holding(rests, low(i), high(i), pieces.get(i).low(), pieces.get(i).high());
        if (from == null) {
          return false;
        }
        rests.remove(from);
        rests.addAll(bench.rests(pieces.get(i), low(i), from));
      }
      return true;
    }

    private long low(int piece) {
      return shared.along[piece];
    }

    private long high(int piece) {
      return shared.along[piece] + pieces.get(piece).span();
    }

    void cut(int index, long[] place) {
      if (!inTurn && !sawn[places.indexOf(index)]) {
        saw(index);
      }
      PieceWanted piece = pieces.get(index);
      Offcut from = holding(left, low(index), high(index), piece.low(), piece.high());
      left.remove(from);
      left.addAll(bench.cutAt(piece, low(index), from, place));
      toCut--;
    }

    /**
     * Saws off the section in which a piece lies beside others, and rips it. Pieces less than a kerf apart along the board lie beside
     * each other too: a cut across between them would be into one of them.
     */
    private void saw(int index) {
      long from = low(index);
      long to = high(index);
      int count = 0;
      int within = 1;
      long ripAt = 0;
      while (count < within) {
        count = within;
        within = 0;
        for (int k = 0; k < places.size(); k++) {
          int i = places.get(k);
          if (low(i) < to + kerf && high(i) > from - kerf) {
            within++;
            from = Math.min(from, low(i));
            to = Math.max(to, high(i));
            ripAt = pieces.get(i).low() == 0 ? Math.max(ripAt, pieces.get(i).high()) : ripAt;
            sawn[k] = true;
          }
        }
      }
      if (count > 1) {
        Offcut whole = holding(left, from, to, 0, 0);
        left.remove(whole);
        left.addAll(bench.cross(from, to, whole));
        left.addAll(bench.rip(number, from, to, ripAt));
      }
    }

    private Offcut holding(List<Offcut> offcuts, long from, long to, long low, long high) {
      for (Offcut offcut : offcuts) {
        if (offcut.alongFrom <= from && offcut.alongTo >= to && offcut.acrossFrom <= low && offcut.acrossTo >= high) {
          return offcut;
        }
      }
      return null;
    }
  }
}
