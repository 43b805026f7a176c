package floorcalc.trims;

import java.math.BigInteger;

/**
 * The prices of a bound as they are shown: small whole numbers for bars of one kind, parts of the cost for several. They
 * prove as much as those that were found, or else the latter are shown.
 */
final class ShownPrices {
  static final int MOST_LISTED = 24;
  private static final long[] SCALES = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 12, 15, 20, 24, 30, 36, 48, 60, 84, 100, 120, 180,
    240, 360, 500, 720, 1000, 2000, 5000, 10_000, 100_000, 1_000_000};
  private static final long[] GRIDS = {10_000_000, 1_000_000, 100_000, 10_000, 1_000, 100, 10, 1};
  private static final long PLENTY = Long.MAX_VALUE / 4;

  private final long[] prices;
  private final long[] ceilings;
  private final long worth;
  private final long least;
  private final boolean uniform;

  private ShownPrices(Problem problem, long[] prices, long[] ceilings, long least) {
    this.prices = prices;
    this.ceilings = ceilings;
    this.least = least;
    this.uniform = problem.isUniform();
    this.worth = worth(problem, prices).longValueExact();
  }

  static ShownPrices simplest(Problem problem, FewestBars fewest) {
    PriceBound bound = fewest.prices();
    Filling filling = fewest.filling();
    if (problem.isUniform()) {
      for (long scale : SCALES) {
        long[] prices = scaled(bound.prices(), BigInteger.valueOf(scale), BigInteger.valueOf(bound.ceilings()[0]));
        long[] ceilings = ceilings(problem, filling, prices);
        if (ceilings[0] > 0) {
          PriceBound now = PriceBound.of(problem, problem.wanted(), problem.limits(), prices, ceilings, scale);
          if (now.least() >= bound.least()) {
            return new ShownPrices(problem, prices, ceilings, now.least());
          }
        }
      }
      return new ShownPrices(problem, bound.prices(), bound.ceilings(), bound.least());
    }
    ShownPrices shown = null;
    for (long grid : GRIDS) {
      long[] prices = new long[bound.prices().length];
      BigInteger down = bound.down().multiply(BigInteger.valueOf(grid));
      for (int i = 0; i < prices.length; i++) {
        // To the nearest step of a coarse grid, down on the finest.
        prices[i] = grid * BigInteger.valueOf(bound.prices()[i]).multiply(bound.up())
            .add(grid == 1 ? BigInteger.ZERO : down.shiftRight(1)).divide(down).longValueExact();
      }
      long[] ceilings = ceilings(problem, filling, prices);
      ShownPrices plain = new ShownPrices(problem, prices, ceilings, 0);
      shown = new ShownPrices(problem, prices, ceilings,
          problem.reachedFrom(BigInteger.valueOf(plain.bound(problem)), BigInteger.ONE));
      if (shown.least >= bound.least() && shown.holds(problem)) {
        return shown;
      }
    }
    return shown;
  }

  /** Whether no bar of unlimited number holds more worth than it costs. */
  private boolean holds(Problem problem) {
    for (int kind = 0; kind < problem.kinds(); kind++) {
      if (!problem.isLimited(kind) && ceilings[kind] > problem.cost(kind)) {
        return false;
      }
    }
    return true;
  }

  private static long[] scaled(long[] prices, BigInteger up, BigInteger down) {
    long[] scaled = new long[prices.length];
    for (int i = 0; i < prices.length; i++) {
      // A little more than rounding down, so that what is whole but for its last digit stays whole.
      scaled[i] = BigInteger.valueOf(prices[i]).multiply(up).multiply(BigInteger.valueOf(1_000_001))
          .divide(down.multiply(BigInteger.valueOf(1_000_000))).longValueExact();
    }
    return scaled;
  }

  private static long[] ceilings(Problem problem, Filling filling, long[] prices) {
    filling.price(prices, problem.wanted(), new Budget(PLENTY));
    long[] ceilings = new long[problem.kinds()];
    for (int kind = 0; kind < ceilings.length; kind++) {
      ceilings[kind] = filling.ceiling(kind);
    }
    return ceilings;
  }

  private static BigInteger worth(Problem problem, long[] prices) {
    BigInteger worth = BigInteger.ZERO;
    int[] wanted = problem.wanted();
    for (int i = 0; i < prices.length; i++) {
      worth = worth.add(BigInteger.valueOf(prices[i]).multiply(BigInteger.valueOf(wanted[i])));
    }
    return worth;
  }

  Object price(int size, TrimBench bench) {
    return uniform ? (Object) prices[size] : bench.bought(prices[size]);
  }

  long worth() {
    return worth;
  }

  long ceiling(int kind) {
    return ceilings[kind];
  }

  long beyond(Problem problem, int kind) {
    return Math.max(0, ceilings[kind] - problem.cost(kind));
  }

  /** The worth less what bars of limited number hold beyond their cost. */
  long bound(Problem problem) {
    long bound = worth;
    for (int kind = 0; kind < problem.kinds(); kind++) {
      if (problem.isLimited(kind)) {
        bound -= beyond(problem, kind) * problem.limits()[kind];
      }
    }
    return bound;
  }

  long least() {
    return least;
  }
}
