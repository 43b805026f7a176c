package floorcalc.trims;

import java.math.BigInteger;
import java.util.List;

/**
 * A cutting problem in whole numbers. Sizes of pieces and bars are each one kerf longer than they are, so that pieces fit
 * into a bar if their sizes add up to no more than its size; all are whole steps of a common grid. Sizes are distinct and
 * fall; bars fall by size. A cost is what a bar adds to what is bought, 0 for one that is there already. Never changed once
 * made.
 */
final class Problem {
  static final int NO_LIMIT = Integer.MAX_VALUE;
  private static final int MOST_REACHED = 4_000_000;

  private final long[] sizes;
  private final int[] wanted;
  private final long[] rooms;
  private final long[] costs;
  private final int[] limits;

  Problem(long[] sizes, int[] wanted, long[] rooms, long[] costs, int[] limits) {
    this.sizes = sizes;
    this.wanted = wanted;
    this.rooms = rooms;
    this.costs = costs;
    this.limits = limits;
  }

  int sizes() {
    return sizes.length;
  }

  long size(int i) {
    return sizes[i];
  }

  int[] wanted() {
    return wanted.clone();
  }

  int kinds() {
    return rooms.length;
  }

  long room(int kind) {
    return rooms[kind];
  }

  long cost(int kind) {
    return costs[kind];
  }

  int[] limits() {
    return limits.clone();
  }

  boolean isLimited(int kind) {
    return limits[kind] != NO_LIMIT;
  }

  /** Whether all bars are of one kind that can be had without limit. */
  boolean isUniform() {
    return rooms.length == 1 && limits[0] == NO_LIMIT;
  }

  /** The same pieces from other bars. */
  Problem from(long[] otherRooms, long[] otherCosts, int[] otherLimits) {
    return new Problem(sizes, wanted, otherRooms, otherCosts, otherLimits);
  }

  /** The same pieces and bars with so many bars of each kind, each of which costs 1 if it is bought. */
  Problem counting(int[] bars) {
    long[] ones = new long[costs.length];
    for (int kind = 0; kind < ones.length; kind++) {
      ones[kind] = costs[kind] == 0 ? 0 : 1;
    }
    return new Problem(sizes, wanted, rooms, ones, bars);
  }

  long total(int[] demand) {
    long total = 0;
    for (int i = 0; i < sizes.length; i++) {
      total += demand[i] * sizes[i];
    }
    return total;
  }

  long costOf(List<Load> loads) {
    long cost = 0;
    for (Load load : loads) {
      cost += costs[load.kind()] * load.times();
    }
    return cost;
  }

  /** What is left of the emptiest bar, a kerf included. */
  long longestRest(List<Load> loads) {
    long longest = 0;
    for (Load load : loads) {
      longest = Math.max(longest, rooms[load.kind()] - load.filled(this));
    }
    return longest;
  }

  /** The bars that pieces fill to their end, so that the last needs no cut. */
  long fullBars(List<Load> loads) {
    long full = 0;
    for (Load load : loads) {
      full += rooms[load.kind()] == load.filled(this) ? load.times() : 0;
    }
    return full;
  }

  long largestCost() {
    long largest = 0;
    for (long cost : costs) {
      largest = Math.max(largest, cost);
    }
    return largest;
  }

  private long costGrid() {
    long grid = 0;
    for (long cost : costs) {
      grid = Whole.gcd(grid, cost);
    }
    return Math.max(1, grid);
  }

  /** The least sum of costs of whole bars that is {@code numerator / denominator} or more. */
  long reachedFrom(BigInteger numerator, BigInteger denominator) {
    long grid = costGrid();
    BigInteger[] parts = numerator.max(BigInteger.ZERO)
        .divideAndRemainder(denominator.multiply(BigInteger.valueOf(grid)));
    long least = parts[0].longValueExact() + (parts[1].signum() > 0 ? 1 : 0);
    long top = least + largestCost() / grid;
    if (rooms.length == 1 || top > MOST_REACHED) {
      return Math.multiplyExact(least, grid);
    }
    boolean[] reached = new boolean[(int) top + 1];
    reached[0] = true;
    for (int kind = 0; kind < costs.length; kind++) {
      int step = (int) (costs[kind] / grid);
      for (int at = step; step > 0 && at < reached.length; at++) {
        reached[at] |= reached[at - step];
      }
    }
    int at = (int) least;
    while (at < reached.length - 1 && !reached[at]) {
      at++;
    }
    return Math.multiplyExact(at, grid);
  }

  /** The largest sum that may still be below a cost: one step of the grid of costs less. */
  long justBelow(long cost) {
    return cost - costGrid();
  }
}
