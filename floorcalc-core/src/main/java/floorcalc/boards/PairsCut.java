package floorcalc.boards;

import java.util.Arrays;
import java.util.List;

/** Cuts the boards of a plan once more, end and start pieces of some boards with other partners, all else as it was. */
final class PairsCut {
  private final CuttingPlan plan;
  private final Stock stock;
  private final boolean[] anew;
  private final Bench bench;
  private final int[] boardOf;
  private final long[] places;

  /**
   * @param anew the boards of which the pieces are paired anew
   */
  private PairsCut(CuttingPlan plan, Stock stock, boolean[] anew) {
    this.plan = plan;
    this.stock = stock;
    this.anew = anew;
    this.bench = new Bench(stock);
    this.boardOf = new int[plan.pieces().size()];
    this.places = new long[4 * boardOf.length];
  }

  /**
   * Cuts the pieces with these partners.
   *
   * @param partners for each piece its partner, -1 for none
   */
  static CuttingPlan of(CuttingPlan plan, Stock stock, boolean[] anew, int[] partners) {
    PairsCut before = new PairsCut(plan, stock, anew);
    before.cut(before.partnersNow());
    PairsCut after = new PairsCut(plan, stock, anew);
    int[] renamed = after.cut(partners);
    plan.offcuts().stream().filter(offcut -> !anew[offcut.board()])
        .forEach(offcut -> after.bench.put(offcut.onBoard(renamed[offcut.board()])));
    after.bench.addSawn(plan.bench().kerf().subtract(before.bench.kerf()), plan.bench().strokes() - before.bench.strokes());
    return new CuttingPlan(plan.pieces(), after.places, after.boardOf, after.bench);
  }

  private int[] partnersNow() {
    int[] partners = new int[boardOf.length];
    int[] first = new int[plan.boardCount()];
    Arrays.fill(partners, -1);
    Arrays.fill(first, -1);
    for (int i = 0; i < partners.length; i++) {
      int board = plan.boardOf(i);
      if (anew[board] && first[board] >= 0) {
        partners[i] = first[board];
        partners[first[board]] = i;
      }
      first[board] = i;
    }
    return partners;
  }

  /** Cuts what is paired anew and writes down the rest; returns the new number of each board that stays as it was. */
  private int[] cut(int[] partners) {
    List<PieceWanted> pieces = plan.pieces();
    Offcut[] kept = new Offcut[boardOf.length];
    int[] renamed = new int[plan.boardCount()];
    Arrays.fill(renamed, -1);
    long[] place = new long[4];
    for (int i = 0; i < boardOf.length; i++) {
      int board = plan.boardOf(i);
      if (!anew[board]) {
        renamed[board] = renamed[board] < 0 ? bench.open(0, i).board() : renamed[board];
        boardOf[i] = renamed[board];
        plan.copyPlace(i, place);
      } else {
        Offcut from = kept[i] == null ? bench.open(0, i) : kept[i];
        boardOf[i] = from.board();
        for (Offcut rest : bench.cut(pieces.get(i), from, place)) {
          if (partners[i] > i) {
            kept[partners[i]] = rest;
          } else {
            bench.put(rest);
          }
        }
      }
      System.arraycopy(place, 0, places, 4 * i, 4);
    }
    return renamed;
  }
}
