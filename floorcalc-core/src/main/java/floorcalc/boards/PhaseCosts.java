package floorcalc.boards;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What runs cost at given prices, by phase: the place of their joints within a board's length.
 * <p>
 * The circle of phases is divided into cells. A cell's cost is the least that any start piece with its joint in the cell
 * costs: between breakpoints the cost runs straight, so it is enough to look at those, just beyond them, and at the
 * cell's ends. Runs of the same length at the same place share their costs. Places are told from the low end of the first of the runs that
 * touch each the one before, so that cells lie the same wherever the room does.
 */
final class PhaseCosts {
  static final int CELLS = 128;
  static final double NEVER = 1e18;

  private final Stock stock;
  private final long board;
  private final List<long[]> sorts = new ArrayList<>();
  private final int[] sortOf;
  private final double[][] cost;
  private final long[][] start;
  private final PhaseWays[] ways;
  private Knots knots;

  PhaseCosts(List<Run> runs, Stock stock) {
    this.stock = stock;
    this.board = stock.longest();
    this.sortOf = new int[runs.size()];
    Map<Long, Map<Long, Integer>> known = new HashMap<>();
    long origin = 0;
    for (int i = 0; i < sortOf.length; i++) {
      Run run = runs.get(i);
      origin = i > 0 && run.touches(i - 1) ? origin : run.from();
      long span = run.span();
      long place = Math.floorMod(run.from() - origin, board);
      sortOf[i] = known.computeIfAbsent(span, key -> new HashMap<>()).computeIfAbsent(place, key -> {
        sorts.add(new long[] {span, place});
        return sorts.size() - 1;
      });
    }
    this.cost = new double[sorts.size()][CELLS];
    this.start = new long[sorts.size()][CELLS];
    this.ways = new PhaseWays[sorts.size()];
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
    return (double) board / CELLS;
  }

  void priceAt(PriceList list) {
    if (list.knots() != knots) {
      knots = list.knots();
      for (int sort = 0; sort < ways.length; sort++) {
        ways[sort] = new PhaseWays(stock, knots, sorts.get(sort)[0], sorts.get(sort)[1]);
      }
    }
    for (int sort = 0; sort < ways.length; sort++) {
      long span = sorts.get(sort)[0];
      ways[sort].priceAt(list, span <= board ? list.singlePiece(span) : NEVER, cost[sort], start[sort]);
    }
  }
}
