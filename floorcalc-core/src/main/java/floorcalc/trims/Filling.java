package floorcalc.trims;

import java.util.Arrays;

/**
 * The dearest way to fill a bar: with a price for each size, the pieces that fit into one bar and are worth most. By a table
 * over all sums of sizes where that is small, else by branch and bound. Used by one thread.
 */
final class Filling {
  private static final long LONGEST_TABLE = 500_000;
  private static final long LARGEST_TABLE = 25_000_000;
  private static final long MOST_WORK = 40_000_000;
  private static final long MOST_BRANCHES = 300_000;
  private static final long FEW_BRANCHES = 3_000;
  private static final long SMALL_TABLE = 1_000_000;
  private static final long COARSE = 20_000;
  /** Worths are whole: less than half above the best found is not above it, whatever doubles round away. */
  private static final double SURE = 0.5;

  private final Problem problem;
  private final boolean byTable;
  private final byte[][] chosen;
  private long[] table;
  private long[] values;
  private int[] most;

  // branch and bound
  private int[] order;
  private int[] current;
  private int[] best;
  private long bestValue;
  private long branches;
  private long mostBranches;
  private final long[] found;
  private final long[] ceilings;
  private final int[][] counts;

  Filling(Problem problem) {
    this.problem = problem;
    this.byTable = isTableSmall(problem);
    this.chosen = byTable ? new byte[problem.sizes()][(int) problem.room(0) + 1] : null;
    this.found = new long[problem.kinds()];
    this.ceilings = new long[problem.kinds()];
    this.counts = new int[problem.kinds()][];
  }

  private static boolean isTableSmall(Problem problem) {
    if (problem.room(0) > Math.min(LONGEST_TABLE, LARGEST_TABLE / Math.max(1, problem.sizes()))) {
      return false;
    }
    long work = 0;
    int[] wanted = problem.wanted();
    for (int i = 0; i < problem.sizes(); i++) {
      long number = Math.min(wanted[i], problem.room(0) / problem.size(i));
      if (number > Byte.MAX_VALUE) {
        return false;
      }
      work += problem.room(0) * number;
    }
    return work <= MOST_WORK;
  }

  private boolean isQuick() {
    return byTable && problem.room(0) * problem.sizes() < SMALL_TABLE;
  }

  /** Finds the dearest filling of each kind of bar, with at most so many pieces of each size; prices are not negative. */
  void price(long[] prices, int[] atMost, Budget budget) {
    this.values = prices;
    this.most = atMost;
    if (byTable) {
      fillTable(budget);
    } else {
      branchAll(budget);
    }
  }

  /** A dear filling of the largest bars found by a short search, or null where a table is quick enough. */
  int[] guess(long[] prices, int[] atMost, Budget budget) {
    if (isQuick()) {
      return null;
    }
    this.values = prices;
    this.most = atMost;
    sort();
    return branchInto(problem.room(0), FEW_BRANCHES, budget);
  }

  /** Finds, for fillings as full as can be, what fits into any room up to the largest bar; see {@link #fullest}. */
  void measure(int[] atMost, Budget budget) {
    values = new long[problem.sizes()];
    Arrays.setAll(values, problem::size);
    most = atMost.clone();
    if (isQuick()) {
      fillTable(budget);
    } else {
      sort();
    }
  }

  /** After {@link #measure}: the pieces that fill a room as far as can be, as far as a short search finds. */
  int[] fullest(long room, Budget budget) {
    if (isQuick()) {
      return read((int) room);
    }
    return branchInto(room, FEW_BRANCHES, budget);
  }

  /** The worth of the filling found for a kind. */
  long found(int kind) {
    return byTable ? table[(int) problem.room(kind)] : found[kind];
  }

  /** A worth that no filling of a kind exceeds; the one found if the search was complete. */
  long ceiling(int kind) {
    return byTable ? table[(int) problem.room(kind)] : ceilings[kind];
  }

  /** The filling found. */
  int[] counts(int kind) {
    return byTable ? read((int) problem.room(kind)) : counts[kind];
  }

  /** The least room that holds pieces of a worth, or more than all rooms if none does; -1 if there is no table. */
  long leastRoomFor(long worth) {
    if (!byTable) {
      return -1;
    }
    int at = 0;
    while (at < table.length && table[at] < worth) {
      at++;
    }
    return at;
  }

  private void fillTable(Budget budget) {
    int room = (int) problem.room(0);
    long[] now = new long[room + 1];
    long[] next = new long[room + 1];
    for (int i = 0; i < problem.sizes(); i++) {
      Arrays.fill(chosen[i], (byte) 0);
      int size = (int) problem.size(i);
      int limit = size > room || values[i] == 0 ? 0 : Math.min(most[i], room / size);
      if (limit == 0) {
        continue;
      }
      budget.spend((long) room * limit / 2);
      System.arraycopy(now, 0, next, 0, room + 1);
      for (int number = 1; number <= limit; number++) {
        int taken = number * size;
        long worth = number * values[i];
        for (int at = taken; at <= room; at++) {
          long value = now[at - taken] + worth;
          if (value > next[at]) {
            next[at] = value;
            chosen[i][at] = (byte) number;
          }
        }
      }
      long[] swap = now;
      now = next;
      next = swap;
    }
    table = now;
  }

  private int[] read(int room) {
    int[] filling = new int[problem.sizes()];
    int at = room;
    for (int i = problem.sizes() - 1; i >= 0; i--) {
      filling[i] = chosen[i][at];
      at -= filling[i] * (int) problem.size(i);
    }
    return filling;
  }

  private void branchAll(Budget budget) {
    sort();
    for (int kind = 0; kind < problem.kinds(); kind++) {
      counts[kind] = branchInto(problem.room(kind), MOST_BRANCHES, budget);
      found[kind] = bestValue;
      ceilings[kind] = bestValue;
      if (branches > mostBranches) {
        long room = problem.room(kind);
        ceilings[kind] = Math.max(bestValue, Math.min(loose(room), coarse(room, budget)));
      }
    }
  }

  private int[] branchInto(long room, long limit, Budget budget) {
    current = new int[problem.sizes()];
    best = new int[problem.sizes()];
    bestValue = 0;
    branches = 0;
    mostBranches = limit;
    branch(0, room, 0);
    budget.spend(2 * branches + 10L * problem.sizes());
    return best;
  }

  private void sort() {
    Integer[] sorted = new Integer[problem.sizes()];
    Arrays.setAll(sorted, i -> i);
    Arrays.sort(sorted, (a, b) -> {
      int byWorth = Double.compare((double) values[b] / problem.size(b), (double) values[a] / problem.size(a));
      return byWorth != 0 ? byWorth : Integer.compare(a, b);
    });
    order = Arrays.stream(sorted).filter(i -> values[i] > 0 && most[i] > 0).mapToInt(Integer::intValue).toArray();
  }

  /** What a bar could hold if pieces could be split. */
  private long loose(long room) {
    long rest = room;
    long worth = 0;
    for (int i : order) {
      long number = Math.min(most[i], rest / problem.size(i));
      worth += number * values[i];
      rest -= number * problem.size(i);
      if (number < most[i]) {
        return worth + (long) Math.ceil((double) rest * values[i] / problem.size(i) * (1 + 1e-9)) + 1;
      }
    }
    return worth;
  }

  /** What a bar could hold on a coarser grid, all sizes and the room rounded down: never less than it holds. */
  private long coarse(long room, Budget budget) {
    long grid = room / COARSE + 1;
    int coarseRoom = (int) (room / grid);
    long[] worth = new long[coarseRoom + 1];
    for (int i : order) {
      int size = (int) (problem.size(i) / grid);
      if (size == 0) {
        return Long.MAX_VALUE;
      }
      long number = Math.min(most[i], room / problem.size(i));
      // In lots of 1, 2, 4 ... so that every number up to the most can be made up.
      for (long lot = 1; number > 0; lot *= 2) {
        long taken = Math.min(lot, number);
        number -= taken;
        long step = taken * size;
        for (int at = coarseRoom; at >= step; at--) {
          worth[at] = Math.max(worth[at], worth[(int) (at - step)] + taken * values[i]);
        }
        budget.spend(coarseRoom);
      }
    }
    return worth[coarseRoom];
  }

  private void branch(int depth, long rest, long worth) {
    if (worth > bestValue) {
      bestValue = worth;
      best = current.clone();
    }
    branches++;
    if (depth == order.length || branches > mostBranches) {
      return;
    }
    int i = order[depth];
    if (worth + (double) rest * values[i] / problem.size(i) < bestValue + SURE) {
      return;
    }
    for (int number = (int) Math.min(most[i], rest / problem.size(i)); number >= 0; number--) {
      current[i] = number;
      branch(depth + 1, rest - number * problem.size(i), worth + number * values[i]);
      current[i] = 0;
    }
  }
}
