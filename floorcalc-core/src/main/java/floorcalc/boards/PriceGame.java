package floorcalc.boards;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.List;

/**
 * Looks for prices at which even the cheapest way to lay all runs costs much. At any prices that cost, rounded up, is a
 * number of boards that no plan can do without, so each round gives a true bound and the best one is kept.
 * <p>
 * It is played as a game: the path answers the prices with the cheapest way, the prices answer by leaning towards those
 * shares of rise that this way pays most for (regret matching). The first prices are by length. Deterministic; the rounds
 * are bounded by a number of steps.
 */
final class PriceGame {
  private static final int KNOTS = 48;
  private static final int MOST_ROUNDS = 100;
  private static final long STEPS = 25_000_000L;
  /** What rounding may add to the cost of all runs, and of each run: far less than shows. */
  private static final double ROUNDING = 1e-6;
  private static final double ROUNDING_PER_RUN = 2e-7;

  private final List<Run> runs;
  private final double[] counted;
  private final Stock stock;
  private final PhaseCosts costs;
  private final PhasePath path;
  private double best;
  private PriceList bestPrices;

  /**
   * @param counted for each run how much its pieces count: 1 or 0
   */
  PriceGame(List<Run> runs, double[] counted, Stock stock) {
    this.runs = runs;
    this.counted = counted;
    this.stock = stock;
    this.costs = new PhaseCosts(runs, stock);
    this.path = new PhasePath(runs, counted, stock, costs);
  }

  /** Plays until the bound reaches a number of boards, or the rounds are used up; returns the bound. */
  int play(int target) {
    int strategies = KNOTS + 2;
    double[] weights = PriceList.byLength(stock, KNOTS);
    double[] mean = new double[strategies];
    double[] regret = new double[strategies];
    double[] paid = new double[strategies];
    int[] cells = new int[runs.size()];
    long perRound = (long) runs.size() * PhaseCosts.CELLS * 4 + (long) costs.sorts() * (3 * PhaseCosts.CELLS);
    int rounds = (int) Math.max(1, Math.min(MOST_ROUNDS, STEPS / perRound));
    for (int round = 0; round < rounds && bound() < target; round++) {
      PriceList prices = new PriceList(stock, weights);
      costs.priceAt(prices);
      double value = path.cheapest(cells);
      if (value > best || bestPrices == null) {
        best = value;
        bestPrices = prices;
      }
      payments(prices, cells, paid);
      double average = 0;
      for (int j = 0; j < strategies; j++) {
        average += weights[j] * paid[j];
      }
      double sum = 0;
      for (int j = 0; j < strategies; j++) {
        regret[j] = Math.max(0, regret[j] + paid[j] - average);
        sum += regret[j];
      }
      for (int j = 0; sum > 0 && j < strategies; j++) {
        double next = regret[j] / sum;
        mean[j] = (mean[j] * round + next) / (round + 1);
        weights[j] = 0.5 * mean[j] + 0.5 * next;
      }
    }
    return bound();
  }

  private void payments(PriceList prices, int[] cells, double[] paid) {
    Arrays.fill(paid, 0);
    long board = stock.longest();
    for (int k = 0; k < cells.length; k++) {
      long start = costs.startPiece(k, cells[k]);
      long span = runs.get(k).span();
      if (counted[k] == 0 || start == span) {
        continue;
      }
      long end = (span - start) % board;
      if (end > 0) {
        prices.addEndPiece(end, paid);
      }
      if (start < board) {
        prices.addStartPiece(start, paid);
      }
    }
  }

  /** The best cost found, less all that rounding may have added. */
  private double sure() {
    return best - ROUNDING - ROUNDING_PER_RUN * runs.size();
  }

  int bound() {
    return (int) StrictMath.ceil(sure());
  }

  /** The value of the game less what rounding may have added, to four decimals, such that it rounds up to the bound. */
  String shown() {
    return BigDecimal.valueOf(best - ROUNDING - ROUNDING_PER_RUN * runs.size()).setScale(4, RoundingMode.CEILING).toPlainString();
  }

  PriceList prices() {
    return bestPrices;
  }

  /** The costs at the best prices and the path through them, for a search that is guided by them. */
  PhaseCosts costsAtBest() {
    costs.priceAt(bestPrices);
    return costs;
  }

  PhasePath path() {
    return path;
  }
}
