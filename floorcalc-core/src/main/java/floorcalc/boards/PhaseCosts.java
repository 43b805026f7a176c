package floorcalc.boards;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What runs cost at given prices, by phase: the place of their joints within a board's length.
 * <p>
 * The circle of phases is divided into cells. A cell's cost is the least that any start piece with its joint in the cell
 * costs: between breakpoints the cost runs straight, so it is enough to look at those, just beyond them, and at the
 * cell's ends. Runs of the same length at the same place share their costs.
 */
final class PhaseCosts {
  static final int CELLS = 128;
  static final double NEVER = 1e18;

  private final Stock stock;
  private final long board;
  private final long least;
  private final double cell;
  private final double cells;
  private final long[] edges;
  private final List<long[]> sorts = new ArrayList<>();
  private final int[] sortOf;
  private final double[][] cost;
  private final long[][] start;
  private PriceList prices;

  PhaseCosts(List<Run> runs, Stock stock) {
    this.stock = stock;
    this.board = stock.longest();
    this.least = Math.max(1, stock.minimumPiece);
    this.cell = (double) board / CELLS;
    this.cells = CELLS / (double) board;
    this.edges = new long[CELLS];
    for (int i = 0; i < CELLS; i++) {
      edges[i] = Math.round(i * cell);
    }
    this.sortOf = new int[runs.size()];
    Map<Long, Map<Long, Integer>> known = new HashMap<>();
    for (int i = 0; i < sortOf.length; i++) {
      long span = runs.get(i).span();
      long place = Math.floorMod(runs.get(i).from(), board);
      sortOf[i] = known.computeIfAbsent(span, key -> new HashMap<>()).computeIfAbsent(place, key -> {
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

  /** The length that most runs have. */
  long commonestSpan() {
    int[] counts = new int[sorts.size()];
    int best = 0;
    for (int sort : sortOf) {
      counts[sort]++;
    }
    for (int i = 1; i < counts.length; i++) {
      best = counts[i] > counts[best] ? i : best;
    }
    return sorts.get(best)[0];
  }

  /** The cost of a run in each cell. */
  double[] of(int run) {
    return cost[sortOf[run]];
  }

  /** The start piece that is cheapest in a cell; the run's own length means that one piece fills it. */
  long startPiece(int run, int inCell) {
    return start[sortOf[run]][inCell];
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
      double price = prices.singlePiece(span);
      for (int i = 0; i < CELLS; i++) {
        keep(sort, i, span, price);
      }
    }
    long rest = span % board;
    long whole = span / board;
    long fitting = board - stock.kerf;
    Knots knots = prices.knots();
    for (int j = 0; j < knots.count(); j++) {
      long knot = knots.at(j);
      tryStart(sort, fitting - knot, rest, whole, place);
      tryStart(sort, fitting - knot - 1, rest, whole, place);
      tryStart(sort, rest - knot, rest, whole, place);
      tryStart(sort, rest - knot - 1, rest, whole, place);
    }
    for (int i = 0; i < CELLS; i++) {
      tryStart(sort, edges[i] - place, rest, whole, place);
    }
    tryStart(sort, least, rest, whole, place);
    tryStart(sort, rest - least, rest, whole, place);
    tryStart(sort, rest, rest, whole, place);
    tryStart(sort, rest + 1, rest, whole, place);
    tryStart(sort, board, rest, whole, place);
    tryStart(sort, fitting - least + 1, rest, whole, place);
    tryStart(sort, rest - fitting + least - 1, rest, whole, place);
  }

  /** Tries a start piece, of a length more than a board below zero and at most a board. */
  private void tryStart(int sort, long wanted, long rest, long whole, long place) {
    long piece = wanted > 0 ? wanted : wanted + board;
    if (piece < least && piece != board) {
      return;
    }
    long end = rest - piece;
    long between = whole;
    if (end < 0) {
      end += board;
      between--;
    }
    if (end > 0 && end < least || between < 0 || between == 0 && end == 0) {
      return;
    }
    double price = between + (piece == board ? 1 : prices.startPiece(piece)) + (end == 0 ? 0 : prices.endPiece(end));
    long phase = piece + place;
    double at = (phase >= board ? phase - board : phase) * cells;
    int in = Math.min(CELLS - 1, (int) at);
    keep(sort, in, piece, price);
    if ((at - in) * cell <= 2) {
      keep(sort, in == 0 ? CELLS - 1 : in - 1, piece, price);
    }
    if ((in + 1 - at) * cell <= 2) {
      keep(sort, in == CELLS - 1 ? 0 : in + 1, piece, price);
    }
  }

  private void keep(int sort, int in, long piece, double price) {
    if (price < cost[sort][in]) {
      cost[sort][in] = price;
      start[sort][in] = piece;
    }
  }
}
