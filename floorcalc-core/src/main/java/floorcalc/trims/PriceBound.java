package floorcalc.trims;

import java.math.BigInteger;

/**
 * A bound from prices, true in whole numbers whatever the prices are. Each size has a whole price u; K is the most that one
 * bar of a kind can hold at these prices. Scaled by the rational number s = up / down so that no unlimited kind holds more than it
 * costs, any cutting costs at least s * (worth of all pieces), less what bars of limited number hold beyond their cost.
 */
record PriceBound(long[] prices, long[] ceilings, BigInteger up, BigInteger down, long least) {

  /**
   * @param natural the price of one unit of cost, used where no unlimited kind sets the scale
   */
  static PriceBound of(Problem problem, int[] demand, int[] limits, long[] prices, long[] ceilings, long natural) {
    BigInteger up = BigInteger.valueOf(problem.largestCost());
    BigInteger down = BigInteger.valueOf(natural);
    boolean free = true;
    for (int kind = 0; kind < problem.kinds(); kind++) {
      if (limits[kind] == Problem.NO_LIMIT && ceilings[kind] > 0) {
        BigInteger cost = BigInteger.valueOf(problem.cost(kind));
        BigInteger ceiling = BigInteger.valueOf(ceilings[kind]);
        if (free || cost.multiply(down).compareTo(up.multiply(ceiling)) < 0) {
          up = cost;
          down = ceiling;
        }
        free = false;
      }
    }
    BigInteger worth = BigInteger.ZERO;
    for (int i = 0; i < demand.length; i++) {
      worth = worth.add(BigInteger.valueOf(prices[i]).multiply(BigInteger.valueOf(demand[i])));
    }
    BigInteger bound = up.multiply(worth);
    for (int kind = 0; kind < problem.kinds(); kind++) {
      if (limits[kind] != Problem.NO_LIMIT) {
        BigInteger beyond = up.multiply(BigInteger.valueOf(ceilings[kind]))
            .subtract(down.multiply(BigInteger.valueOf(problem.cost(kind))));
        bound = bound.subtract(beyond.max(BigInteger.ZERO).multiply(BigInteger.valueOf(limits[kind])));
      }
    }
    return new PriceBound(prices, ceilings, up, down, problem.reachedFrom(bound, down));
  }
}
