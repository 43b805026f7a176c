package floorcalc.boards;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.List;

/**
 * Looks for prices at which even the cheapest way to lay all runs costs much. At any prices that cost, rounded up, is a
 * number of boards that no plan can do without, so each round gives a true bound and the best one is kept.
 * <p>
 * Prices by length come first, then two flights of stairs that suit runs of the commonest length. After that it is played
 * as a game: the path answers the prices with the cheapest way, the prices answer by leaning towards those rises that this
 * way pays most for (regret matching). What the ways found so far pay on average for the dearest rise is a limit that no
 * prices made of these rises can pass: when it shows that the bound cannot grow, the game ends. Deterministic; the rounds
 * are bounded by a number of steps.
 */
final class PriceGame {
  private static final int KNOTS = 32;
  private static final long STEPS = 4_000_000L;
  private static final int FEW_SORTS = 4;
  private static final int ROUNDS_OF_MANY_SORTS = 120;
  private static final double OLD_SHARE = 0.8;
  private static final int NEWER_WEIGH_MORE = 4;
  /** What rounding may add to the cost of all runs, and of each run: far less than shows. */
  private static final double ROUNDING = 1e-6;
  private static final double ROUNDING_PER_RUN = 2e-7;

  private final List<Run> runs;
  private final double[] counted;
  private final Stock stock;
  private final PhaseCosts costs;
  private final PhasePath path;
  private final int[] cells;
  private final Knots knots;
  private final double[] weights;
  private final double[] mean;
  private final double[] regret;
  private final double[] paid;
  private final double[] paidOnAverage;
  /** Single pieces cost more than their rises pay, so with them the limit does not hold. */
  private final boolean limitHolds;
  private int round;
  private long steps;
  private boolean begun;
  private boolean ended;
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
    this.cells = new int[runs.size()];
    this.knots = Knots.every(stock, costs.commonestSpan() % stock.longest() + (double) stock.kerf, KNOTS);
    this.weights = knots.byLength();
    this.mean = weights.clone();
    this.regret = new double[knots.rises()];
    this.paid = new double[knots.rises()];
    this.paidOnAverage = new double[knots.rises()];
    this.limitHolds = runs.stream().noneMatch(run -> run.span() <= stock.longest());
  }

  /** Tries prices known from another game. */
  void begin(PriceList prices) {
    valueAt(prices);
  }

  /** Plays until the bound reaches a number of boards, can grow no more, or the rounds are used up; returns the bound. */
  int play(int target, int rounds) {
    if (!begun) {
      begun = true;
      simple(target);
    }
    // Runs of many lengths cost more to price, and gain little beyond the first rounds.
    int last = costs.sorts() > FEW_SORTS ? Math.min(ROUNDS_OF_MANY_SORTS, round + rounds) : round + rounds;
    while (round < last && bound() < target && !ended && steps < STEPS) {
      playRound();
    }
    return bound();
  }

  private void simple(int target) {
    valueAt(new PriceList(stock, knots, knots.byLength()));
    double rest = costs.commonestSpan() % stock.longest();
    double[] apart = {rest + stock.kerf, stock.longest() - stock.kerf - rest};
    for (int i = 0; i < apart.length && bound() < target; i++) {
      if (apart[i] > 0) {
        Knots steps = Knots.every(stock, apart[i], 1);
        valueAt(new PriceList(stock, steps, steps.stairs(0)));
        valueAt(new PriceList(stock, steps, steps.stairs(1)));
      }
    }
  }

  private double valueAt(PriceList prices) {
    costs.priceAt(prices);
    double value = path.cheapest(cells);
    steps += (long) runs.size() * PhaseCosts.CELLS + (long) costs.sorts() * (4 * prices.knots().count() + PhaseCosts.CELLS) * 3;
    if (value > best || bestPrices == null) {
      best = value;
      bestPrices = prices;
    }
    return value;
  }

  private void playRound() {
    valueAt(new PriceList(stock, knots, weights));
    double whole = payments();
    double average = 0;
    for (int j = 0; j < weights.length; j++) {
      average += weights[j] * paid[j];
    }
    double sum = 0;
    double limit = 0;
    double share = (NEWER_WEIGH_MORE + 0.0) / (round + NEWER_WEIGH_MORE + 1);
    for (int j = 0; j < weights.length; j++) {
      regret[j] = Math.max(0, regret[j] + paid[j] - average);
      sum += regret[j];
      paidOnAverage[j] += (paid[j] + whole - paidOnAverage[j]) * (round == 0 ? 1 : share);
      limit = Math.max(limit, paidOnAverage[j]);
    }
    for (int j = 0; sum > 0 && j < weights.length; j++) {
      double next = regret[j] / sum;
      mean[j] += (next - mean[j]) * share;
      weights[j] = OLD_SHARE * mean[j] + (1 - OLD_SHARE) * next;
    }
    ended = limitHolds && StrictMath.ceil(limit - ROUNDING) <= bound();
    round++;
  }

  /** Writes down what the cheapest way pays for each rise; returns the whole boards that it takes besides. */
  private double payments() {
    Arrays.fill(paid, 0);
    double whole = 0;
    long board = stock.longest();
    for (int k = 0; k < cells.length; k++) {
      long start = costs.startPiece(k, cells[k]);
      long span = runs.get(k).span();
      if (counted[k] == 0 || start == span) {
        continue;
      }
      long end = (span - start) % board;
      whole += (span - start) / board + (start == board ? 1 : 0);
      if (end > 0) {
        knots.addEndPiece(end, paid);
      }
      if (start < board) {
        knots.addStartPiece(start, paid);
      }
    }
    return whole;
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
    return BigDecimal.valueOf(sure()).setScale(4, RoundingMode.CEILING).toPlainString();
  }

  /** The start pieces of the cheapest way at the best prices. */
  long[] way() {
    valueAt(bestPrices);
    long[] way = new long[cells.length];
    for (int k = 0; k < way.length; k++) {
      way[k] = costs.startPiece(k, cells[k]);
    }
    return way;
  }

  PriceList prices() {
    return bestPrices;
  }
}
