package floorcalc.boards;

import floorcalc.measure.PlainNumber;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Looks for prices at which even the cheapest way to lay all runs costs much. At any prices that cost, rounded up, is a
 * number of boards that no plan can do without, so each round gives a true bound and the best one is kept.
 * <p>
 * Prices by length come first. After that it is played as a game: the path answers the prices with the cheapest way, and a
 * linear program answers the ways found so far with the prices that get most out of all of them ({@link PriceProgram}). The
 * prices tried lean between those and the best ones tried before, which keeps them from jumping to and fro. What the linear
 * program gets is a limit that no prices made of these rises can pass: when it shows that the bound cannot grow, the game
 * ends. Deterministic; the rounds are bounded by a number of steps.
 */
final class PriceGame {
  private static final int KNOTS = 32;
  private static final long STEPS = 4_000_000L;
  private static final int FEW_SORTS = 4;
  private static final int ROUNDS_OF_MANY_SORTS = 120;
  /** How far the prices tried lean to the best ones before, and how much less each time that does not help. */
  private static final double LEAN = 0.5;
  private static final double LESS = 0.25;
  /** What counts as no gain. */
  private static final double LITTLE = 1e-5;
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
  private final double[] paid;
  private final PriceProgram program;
  private final List<long[]> ways = new ArrayList<>();
  private double[] leaned;
  private double lean = LEAN;
  private PriceList prices;
  private int round;
  private long steps;
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
    this.paid = new double[knots.rises()];
    this.program = new PriceProgram(knots.rises());
  }

  /** Tries prices known from another game. */
  void begin(PriceList prices) {
    valueAt(prices);
  }

  /** Plays until the bound reaches a number of boards, can grow no more, or the rounds are used up; returns the bound. */
  int play(int target, int rounds) {
    // Runs of many lengths cost more to price, and gain little beyond the first rounds.
    int last = costs.sorts() > FEW_SORTS ? Math.min(ROUNDS_OF_MANY_SORTS, round + rounds) : round + rounds;
    while (round < last && bound() < target && !ended && steps < STEPS) {
      playRound();
    }
    return bound();
  }

  private double valueAt(PriceList prices) {
    this.prices = prices;
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
    double before = best;
    double value = valueAt(new PriceList(stock, knots, weights));
    if (value > before || leaned == null) {
      leaned = weights.clone();
    }
    lean = value > before + LITTLE ? LEAN : Math.max(0, lean - LESS);
    ways.add(way());
    program.add(payments());
    double[] next = program.prices();
    for (int j = 0; j < weights.length; j++) {
      weights[j] = lean * leaned[j] + (1 - lean) * next[j];
    }
    ended = StrictMath.ceil(program.limit() - ROUNDING) <= bound() || program.limit() - best < LITTLE;
    round++;
  }

  private long[] way() {
    long[] way = new long[cells.length];
    for (int k = 0; k < way.length; k++) {
      way[k] = costs.startPiece(k, cells[k]);
    }
    return way;
  }

  /** Writes down what the cheapest way costs at each rise alone. */
  private double[] payments() {
    Arrays.fill(paid, 0);
    double whole = 0;
    long board = stock.longest();
    for (int k = 0; k < cells.length; k++) {
      long start = costs.startPiece(k, cells[k]);
      long span = runs.get(k).span();
      if (counted[k] == 0) {
        continue;
      }
      if (start == span) {
        prices.addSinglePiece(span, paid);
        continue;
      }
      long end = (span - start) % board;
      whole += (span - start) / board + (start == board ? 1 : 0);
      if (end > 0) {
        knots.addEndPiece(end, 1, paid);
      }
      if (start < board) {
        knots.addStartPiece(start, paid);
      }
    }
    for (int j = 0; j < paid.length; j++) {
      paid[j] += whole;
    }
    return paid;
  }

  /** The best cost found, less all that rounding may have added. */
  private double sure() {
    return best - ROUNDING - ROUNDING_PER_RUN * runs.size();
  }

  /** What the cheapest way costs at the best prices, less all that rounding may have added. */
  double value() {
    return sure();
  }

  /** Tells whether there is any way to lay all runs that keeps the rules; after a round. */
  boolean anyWayKeepsRules() {
    return best < PhaseCosts.NEVER;
  }

  int bound() {
    return (int) StrictMath.ceil(sure());
  }

  /** The value of the game less what rounding may have added, to four decimals, such that it rounds up to the bound. */
  String shown() {
    return PlainNumber.of(sure()).setScale(4, RoundingMode.CEILING).toPlainString();
  }

  /** The ways of which the best mixture is made, the greatest share first, each told by its start pieces. */
  List<long[]> ways() {
    return program.shared().stream().map(ways::get).toList();
  }

  PriceList prices() {
    return bestPrices;
  }
}
