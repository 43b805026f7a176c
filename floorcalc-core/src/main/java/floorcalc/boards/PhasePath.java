package floorcalc.boards;

import java.util.Arrays;
import java.util.List;

/**
 * The cheapest way through all runs at given prices. Where a run touches the one before over more than a board's length
 * and two offsets, their phases are kept apart; where it does not, any phase may follow any other, which makes the way no
 * dearer. Phases are told by cell, so they are kept apart by the offset less one cell: never more than the rule asks.
 */
final class PhasePath {
  private static final int CELLS = PhaseCosts.CELLS;

  private final int count;
  private final boolean[] linked;
  private final int apart;
  private final PhaseCosts costs;
  private final double[] weights;
  private final double[][] least;
  private final double[] window = new double[CELLS];
  private final double[] around = new double[2 * CELLS];
  private final double[] beginning = new double[2 * CELLS];

  PhasePath(List<Run> runs, double[] weights, Stock stock, PhaseCosts costs) {
    this.count = runs.size();
    this.costs = costs;
    this.weights = weights;
    this.linked = new boolean[count];
    this.apart = (int) Math.max(0, Math.min(CELLS / 2.0, StrictMath.ceil(stock.minimumOffset / costs.cellLength()) - 1));
    boolean possible = 2 * stock.minimumOffset <= stock.longest();
    for (int k = 1; k < count; k++) {
      linked[k] = possible && runs.get(k).span() > stock.longest() && runs.get(k - 1).span() > stock.longest()
          && touches(runs.get(k), k - 1, stock.longest() + 2 * stock.minimumOffset);
    }
    this.least = new double[count][CELLS];
  }

  private static boolean touches(Run run, int before, long length) {
    for (int i = 0; i < run.neighbourCount(); i++) {
      if (run.neighbour(i) == before) {
        long[] contact = run.contact(i);
        for (int j = 0; j < contact.length; j += 2) {
          if (contact[j + 1] - contact[j] >= length) {
            return true;
          }
        }
      }
    }
    return false;
  }

  /** The cost of the cheapest way; writes down its cells. */
  double cheapest(int[] cells) {
    for (int k = 0; k < count; k++) {
      double[] cost = costs.of(k);
      if (k > 0) {
        follow(least[k - 1], linked[k]);
      }
      for (int i = 0; i < CELLS; i++) {
        least[k][i] = weights[k] * cost[i] + (k == 0 ? 0 : window[i]);
      }
    }
    int at = lowest(least[count - 1], 0, CELLS);
    double total = least[count - 1][at];
    for (int k = count - 1; k >= 0; k--) {
      cells[k] = at;
      if (k > 0) {
        at = linked[k] ? lowest(least[k - 1], at + apart, CELLS - 2 * apart + 1) : lowest(least[k - 1], 0, CELLS);
      }
    }
    return total;
  }

  /** Into {@code window}: for each cell the least of the cells that may stand beside it. */
  private void follow(double[] values, boolean kept) {
    if (!kept || apart == 0) {
      Arrays.fill(window, values[lowest(values, 0, CELLS)]);
      return;
    }
    // Least values of stretches of one length: of the end of one block and the beginning of the next.
    int length = CELLS - 2 * apart + 1;
    int all = CELLS + length - 1;
    for (int t = 0; t < all; t++) {
      around[t] = values[(t + apart) & (CELLS - 1)];
    }
    for (int block = 0; block < all; block += length) {
      int end = Math.min(all, block + length);
      double least = around[block];
      for (int t = block; t < end; t++) {
        least = Math.min(least, around[t]);
        beginning[t] = least;
      }
      least = around[end - 1];
      for (int t = end - 1; t >= block; t--) {
        least = Math.min(least, around[t]);
        around[t] = least;
      }
    }
    for (int t = 0; t < CELLS; t++) {
      window[t] = Math.min(around[t], beginning[t + length - 1]);
    }
  }

  private static int lowest(double[] values, int from, int length) {
    int best = from & (CELLS - 1);
    for (int i = 1; i < length; i++) {
      int at = (from + i) & (CELLS - 1);
      if (values[at] < values[best]) {
        best = at;
      }
    }
    return best;
  }
}
