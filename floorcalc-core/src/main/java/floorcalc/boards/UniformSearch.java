package floorcalc.boards;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Finds the start pieces of runs of boards of one length. Few runs are searched together, until the boards are proven the
 * fewest or the steps are used up; many runs are searched in blocks, one after the other, with the pieces that found no
 * partner carried on.
 */
final class UniformSearch {
  /** So many runs are searched together; more in blocks, some pieces of each block carried on to the next. */
  private static final int TOGETHER = 64;
  private static final int BLOCK = 32;
  private static final int CARRIED = 12;
  private static final long BLOCK_STEPS = 3_000;
  /** Steps of the first placing and of the next few, of each later one, and of all. */
  private static final long FIRST_STEPS = 2_000;
  private static final int SHORT = 3;
  private static final long STEPS = 8_000;
  private static final long MOST_STEPS = 300_000;
  private static final double UNLIKELY = 0.2;
  private static final double EASY = 0.1;
  /** Rounds of prices before each placing anew. */
  private static final int[] ROUNDS = {6, 20, 60, 200};
  private static final FirstPlacing[] PLACINGS = {FirstPlacing.HABIT, FirstPlacing.RANDOM, FirstPlacing.PATH};
  private static final int MIXED_EVERY = 5;
  /** Ways looked for with fewer patterns and with wider offsets, once the boards are found. */
  private static final int CALM_ATTEMPTS = 6;
  private static final long CALM_STEPS = 4_000;
  private static final double SHUN = 0.05;
  private static final int WIDER = 4;
  private static final long WIDER_STEPS = 800;

  private final List<Run> runs;
  private final Stock stock;
  private final RunTable table;
  private final double[] lengths;
  private final SearchEffort effort;
  private boolean proven;

  UniformSearch(List<Run> runs, Stock stock, SearchEffort effort) {
    this.effort = effort;
    this.runs = runs;
    this.stock = stock;
    this.table = new RunTable(runs, stock);
    this.lengths = new double[table.count + 1];
    for (int k = 0; k < table.count; k++) {
      lengths[k + 1] = lengths[k] + table.span[k] + (double) stock.kerf * ((table.span[k] - 1) / table.board + 1);
    }
  }

  /** Layouts that need as few boards by the tally, the best first; none if no way was found that keeps all rules. */
  List<RunLayout> best() {
    PieceTally tally = new PieceTally(stock, Math.min(table.count, TOGETHER) + CARRIED);
    StartMoves moves = new StartMoves(table, stock, tally);
    return table.count <= TOGETHER ? together(moves) : inBlocks(moves);
  }

  /** Tells whether the runs, all of full width, are proven to need no fewer boards; after {@link #best}. */
  boolean isProven() {
    return proven;
  }

  private int byLength(int runs) {
    return (int) StrictMath.ceil(lengths[runs] / (table.board + stock.kerf) - 1e-9);
  }

  private List<RunLayout> together(StartMoves moves) {
    int bound = byLength(table.count);
    StartSearch search = new StartSearch(moves, 0, table.count);
    if (!search.place(FirstPlacing.LIGHTEST, bound)) {
      return List.of();
    }
    search.improve(bound, FIRST_STEPS);
    int boards = search.boards();
    long[] found = moves.pieces(0, table.count);
    PriceGame game = null;
    long mostSteps = effort == SearchEffort.QUICK ? 0 : MOST_STEPS;
    for (int i = 0; boards > bound && moves.steps < mostSteps * (game == null ? 1 : likely(bound, game)); i++) {
      if (i < ROUNDS.length && PriceList.isOfUse(stock)) {
        game = game == null ? new PriceGame(runs, ones(), stock) : game;
        bound = Math.max(bound, game.play(boards, ROUNDS[i]));
      }
      if (boards > bound) {
        search.lift();
        FirstPlacing placing = PLACINGS[i % PLACINGS.length];
        if (placing == FirstPlacing.PATH && game != null) {
          moves.follow(mixed(game.ways(), moves));
        }
        if (!search.place(placing, bound)) {
          break;
        }
        search.improve(bound, i < SHORT ? FIRST_STEPS : STEPS);
        if (search.boards() < boards) {
          boards = search.boards();
          found = moves.pieces(0, table.count);
        }
      }
    }
    moves.placeAll(found);
    proven = boards <= bound;
    List<StartMoves> ways = wider(moves, boards);
    PriceList prices = game == null ? null : game.prices();
    List<RunLayout> layouts = new ArrayList<>();
    for (int i = ways.size() - 1; i >= 0; i--) {
      layouts.add(layout(ways.get(i), moves.steps, prices));
    }
    if (effort == SearchEffort.FULL) {
      withFewerCuts(ways.get(ways.size() - 1), layouts.get(0), boards).ifPresent(layout -> layouts.add(0, layout));
    }
    return layouts;
  }

  /** The best way moved on, if that saves cuts and costs nothing. */
  private Optional<RunLayout> withFewerCuts(StartMoves best, RunLayout asFound, int boards) {
    best.offset = Math.min(asFound.smallestOffset(runs, stock), table.board);
    return new FewerCuts(best, boards).save() == 0 ? Optional.empty()
        : Optional.of(layout(best, asFound.steps(), asFound.prices().orElse(null)));
  }

  /**
   * How likely more steps find a way with no more boards than the bound, from {@value #UNLIKELY} to 1: where the bound is
   * hardly more than the cheapest ways cost, next to nothing may be lost, and such a way is found soon or not at all.
   */
  private static double likely(int bound, PriceGame game) {
    return Math.max(UNLIKELY, Math.min(1, (bound - game.value()) / EASY));
  }

  /** A way made of several: it follows one of them for some runs, then another. */
  private static long[] mixed(List<long[]> ways, StartMoves moves) {
    long[] mixed = ways.get(moves.random(ways.size())).clone();
    long[] followed = mixed;
    for (int k = 0; k < mixed.length; k++) {
      followed = moves.random(MIXED_EVERY) == 0 ? ways.get(moves.random(ways.size())) : followed;
      mixed[k] = followed[k];
    }
    return mixed;
  }

  private double[] ones() {
    double[] ones = new double[table.count];
    Arrays.fill(ones, 1);
    return ones;
  }

  /** Ways with as few boards, each with fewer H and stair patterns than the one before it, or as few and a wider offset. */
  private List<StartMoves> wider(StartMoves found, int boards) {
    List<StartMoves> ways = new ArrayList<>();
    ways.add(found);
    StartSearch calm = new StartSearch(found, 0, table.count);
    calm.take();
    int patterns = calm.calm();
    if (effort == SearchEffort.QUICK) {
      return ways;
    }
    for (int i = 0; i < CALM_ATTEMPTS && patterns > 0; i++) {
      StartMoves moves = again(stock.minimumOffset, i);
      int left = calmWith(moves, boards, i % 2 == 0 ? FirstPlacing.LIGHTEST : FirstPlacing.RANDOM, CALM_STEPS);
      if (left < patterns) {
        patterns = left;
        ways.add(moves);
      }
    }
    long low = stock.minimumOffset;
    long high = table.board / 3;
    for (int i = 0; i < WIDER && high > low; i++) {
      StartMoves moves = again(low + (high - low + 1) / 2, i);
      int left = calmWith(moves, boards, FirstPlacing.LIGHTEST, WIDER_STEPS);
      if (left <= patterns) {
        patterns = left;
        ways.add(moves);
        low = moves.offset;
      } else {
        high = moves.offset - 1;
      }
    }
    return ways;
  }

  private StartMoves again(long offset, int seed) {
    StartMoves moves = new StartMoves(table, stock, new PieceTally(stock, table.count));
    moves.offset = offset;
    moves.shun = SHUN;
    moves.random(seed + 2);
    return moves;
  }

  /** How many patterns are left in a way with no more boards, or the greatest number if none is found. */
  private static int calmWith(StartMoves moves, int boards, FirstPlacing placing, long steps) {
    StartSearch search = new StartSearch(moves, 0, moves.table.count);
    if (!search.place(placing, boards)) {
      return Integer.MAX_VALUE;
    }
    search.improve(boards, steps);
    return search.boards() <= boards ? search.calm() : Integer.MAX_VALUE;
  }

  private List<RunLayout> inBlocks(StartMoves moves) {
    for (int from = 0; from < table.count; from += BLOCK) {
      int to = Math.min(table.count, from + BLOCK);
      StartSearch search = new StartSearch(moves, from, to);
      int bound = byLength(to);
      if (!search.place(FirstPlacing.LIGHTEST, bound)) {
        return List.of();
      }
      search.improve(bound, BLOCK_STEPS);
      search.calm();
      moves.tally.settle(CARRIED);
    }
    return List.of(layout(moves, moves.steps, null));
  }

  private RunLayout layout(StartMoves moves, long steps, PriceList prices) {
    long[][] joints = new long[table.count][];
    for (int k = 0; k < table.count; k++) {
      long start = moves.start[k];
      joints[k] = Joints.every(runs.get(k), start == 0 ? table.span[k] : start, table.board);
    }
    return new RunLayout(runs, stock, joints, 0, steps, prices);
  }
}
