package floorcalc.boards;

import java.util.Arrays;

/**
 * The start pieces worth pricing for a run of one length at one place, by cell of the phase, with where the prices of their
 * two parts are found: worked out once for all prices that rise at the same knots.
 */
final class PhaseWays {
  private static final int CELLS = PhaseCosts.CELLS;
  /** Nearer to a cell's end than this, in nanometres, a start piece counts in both cells. */
  private static final int NEAR = 2;

  private final Knots knots;
  private final long board;
  private final long least;
  private final long fitting;
  private final long span;
  private final long rest;
  private final long whole;
  private final long place;
  private final long[][] found = new long[CELLS][16];
  private final int[] count = new int[CELLS];
  private long[] pieces;
  private int[] from;
  private int[] endIndex;
  private double[] endShare;
  private int[] startIndex;
  private double[] startShare;
  private double[] boards;

  PhaseWays(Stock stock, Knots knots, long span, long place) {
    this.knots = knots;
    this.board = stock.longest();
    this.least = Math.max(1, stock.minimumPiece);
    this.fitting = board - stock.kerf;
    this.span = span;
    this.rest = span % board;
    this.whole = span / board;
    this.place = place;
    findAll();
    writeDown();
  }

  private void findAll() {
    for (int j = 0; j < knots.count(); j++) {
      long knot = knots.at(j);
      find(fitting - knot);
      find(fitting - knot - 1);
      find(rest - knot);
      find(rest - knot - 1);
    }
    double cell = (double) board / CELLS;
    for (int i = 0; i < CELLS; i++) {
      find(Math.round(i * cell) - place);
    }
    find(least);
    find(rest - least);
    find(rest);
    find(rest + 1);
    find(board);
    find(fitting - least + 1);
    find(rest - fitting + least - 1);
  }

  private long end(long piece) {
    long end = rest - piece;
    return end < 0 ? end + board : end;
  }

  private long between(long piece) {
    return piece > rest ? whole - 1 : whole;
  }

  /** Keeps a start piece, of a length more than a board below zero and at most a board. */
  private void find(long wanted) {
    long piece = wanted > 0 ? wanted : wanted + board;
    long end = end(piece);
    long between = between(piece);
    if (piece < least && piece != board || end > 0 && end < least || between < 0 || between == 0 && end == 0) {
      return;
    }
    long phase = piece + place;
    double at = (phase >= board ? phase - board : phase) * (CELLS / (double) board);
    int in = Math.min(CELLS - 1, (int) at);
    double cell = (double) board / CELLS;
    keep(in, piece);
    if ((at - in) * cell <= NEAR) {
      keep((in + CELLS - 1) % CELLS, piece);
    }
    if ((in + 1 - at) * cell <= NEAR) {
      keep((in + 1) % CELLS, piece);
    }
  }

  private void keep(int cell, long piece) {
    for (int i = 0; i < count[cell]; i++) {
      if (found[cell][i] == piece) {
        return;
      }
    }
    if (count[cell] == found[cell].length) {
      found[cell] = Arrays.copyOf(found[cell], 2 * count[cell]);
    }
    found[cell][count[cell]++] = piece;
  }

  private void writeDown() {
    this.from = new int[CELLS + 1];
    for (int i = 0; i < CELLS; i++) {
      from[i + 1] = from[i] + count[i];
    }
    int all = from[CELLS];
    this.pieces = new long[all];
    this.endIndex = new int[all];
    this.endShare = new double[all];
    this.startIndex = new int[all];
    this.startShare = new double[all];
    this.boards = new double[all];
    for (int i = 0; i < CELLS; i++) {
      for (int j = 0; j < count[i]; j++) {
        writeDown(from[i] + j, found[i][j]);
      }
    }
  }

  private void writeDown(int at, long piece) {
    long end = end(piece);
    pieces[at] = piece;
    boards[at] = between(piece) + 1;
    endIndex[at] = end == 0 ? 0 : knots.place(end);
    endShare[at] = end == 0 ? 0 : knots.share(end);
    long partner = piece == board ? 0 : fitting - piece;
    boolean alone = partner < least;
    startIndex[at] = alone ? 0 : knots.place(Math.min(partner, fitting - least));
    startShare[at] = alone ? 0 : knots.share(Math.min(partner, fitting - least));
  }

  /**
   * Finds the cheapest start piece of each cell.
   *
   * @param single what the run costs in one piece
   */
  void priceAt(PriceList prices, double single, double[] cost, long[] start) {
    for (int i = 0; i < CELLS; i++) {
      double least = single;
      long piece = span;
      for (int j = from[i]; j < from[i + 1]; j++) {
        double price = boards[j] + prices.rise(endIndex[j], endShare[j]) - prices.rise(startIndex[j], startShare[j]);
        if (price < least) {
          least = price;
          piece = pieces[j];
        }
      }
      cost[i] = least;
      start[i] = piece;
    }
  }
}
