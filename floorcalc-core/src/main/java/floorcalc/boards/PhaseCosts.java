package floorcalc.boards;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * What runs cost at given prices, by phase: the place of their joints within a board's length.
 * <p>
 * The circle of phases is divided into cells. A cell's cost is the least that any start piece with its joint in the cell
 * costs: between breakpoints the cost runs straight, so it is enough to look at those and at the cell's ends. Runs of the
 * same length at the same place share their costs.
 */
final class PhaseCosts {
  static final int CELLS = 128;
  static final double NEVER = 1e18;

  private final Stock stock;
  private final long board;
  private final double cell;
  private final List<long[]> sorts = new ArrayList<>();
  private final int[] sortOf;
  private final double[][] cost;
  private final long[][] start;
  private PriceList prices;

  PhaseCosts(List<Run> runs, Stock stock) {
    this.stock = stock;
    this.board = stock.longest();
    this.cell = (double) board / CELLS;
    this.sortOf = new int[runs.size()];
    java.util.Map<Long, java.util.Map<Long, Integer>> known = new java.util.HashMap<>();
    for (int i = 0; i < sortOf.length; i++) {
      long span = runs.get(i).span();
      long place = Math.floorMod(runs.get(i).from(), board);
      sortOf[i] = known.computeIfAbsent(span, key -> new java.util.HashMap<>()).computeIfAbsent(place, key -> {
        sorts.add(new long[] {span, place});
        return sorts.size() - 1;
      });
    }
    this.cost = new double[sorts.size()][CELLS];
    this.start = new long[sorts.size()][CELLS];
  }

  int sorts() {
    return sorts.size();
  }

  /** The cost of a run in each cell. */
  double[] of(int run) {
    return cost[sortOf[run]];
  }

  /** The start piece that is cheapest in a cell. */
  long startPiece(int run, int inCell) {
    return start[sortOf[run]][inCell];
  }

  int cellOf(long place) {
    return Math.min(CELLS - 1, (int) (Math.floorMod(place, board) / cell));
  }

  double cellLength() {
    return cell;
  }

  void priceAt(PriceList list) {
    this.prices = list;
    for (int sort = 0; sort < cost.length; sort++) {
      Arrays.fill(cost[sort], NEVER);
      fill(sort, sorts.get(sort)[0], sorts.get(sort)[1]);
    }
  }

  private void fill(int sort, long span, long place) {
    if (span <= board) {
      single(sort, span);
    }
    for (int j = 0; j <= prices.knots; j++) {
      long knot = prices.least + Math.round(j * prices.spacing);
      tryStart(sort, board - stock.kerf - knot, span, place);
      tryStart(sort, span - knot, span, place);
    }
    for (int i = 0; i < CELLS; i++) {
      tryStart(sort, Math.round(i * cell) - place, span, place);
    }
    tryStart(sort, prices.least, span, place);
    tryStart(sort, span - prices.least, span, place);
    tryStart(sort, span, span, place);
    tryStart(sort, board, span, place);
    tryStart(sort, prices.most + 1, span, place);
    tryStart(sort, span - prices.most - 1, span, place);
  }

  /** One piece fills the run: it has no joint, so it suits every phase. It costs no less than nothing at any prices. */
  private void single(int sort, long span) {
    double price = span == board ? 1 : 0;
    for (int i = 0; i < CELLS; i++) {
      keep(sort, i, span, price);
    }
  }

  private void tryStart(int sort, long wanted, long span, long place) {
    long piece = Math.floorMod(wanted, board);
    piece = piece == 0 ? board : piece;
    if (piece < prices.least && piece != board || piece > span) {
      return;
    }
    double price = price(piece, span);
    if (price < NEVER) {
      double at = Math.floorMod(piece + place, board) / cell;
      int in = Math.min(CELLS - 1, (int) at);
      keep(sort, in, piece, price);
      if ((at - in) * cell <= 1) {
        keep(sort, (in + CELLS - 1) % CELLS, piece, price);
      }
      if ((in + 1 - at) * cell <= 1) {
        keep(sort, (in + 1) % CELLS, piece, price);
      }
    }
  }

  private void keep(int sort, int in, long piece, double price) {
    if (price < cost[sort][in]) {
      cost[sort][in] = price;
      start[sort][in] = piece;
    }
  }

  private double price(long piece, long span) {
    long rest = span - piece;
    long whole = rest / board;
    long end = rest - whole * board;
    if (end > 0 && end < prices.least) {
      return NEVER;
    }
    return whole + (piece == board ? 1 : prices.startPiece(piece)) + (end == 0 ? 0 : prices.endPiece(end));
  }
}
