package floorcalc.boards;

/**
 * Moves start pieces until the floor takes few boards: first each run in turn is placed where it weighs least, then runs are
 * moved one at a time and two neighbours at a time, as long as the boards are more than wanted and steps are left.
 * Deterministic; see {@link PieceTally} for what is weighed.
 */
final class StartSearch {
  private static final int ROUND = 5;
  private static final int BEST_OF_EACH = 9;
  private static final int PLACINGS = 12;
  private static final int CALM_PASSES = 6;
  private static final int CALM_TRIES = 24;

  private final StartMoves moves;
  private final RunTable table;
  private final PieceTally tally;
  private final int from;
  private final int to;
  private final long[] first = new long[BEST_OF_EACH];
  private final long[] second = new long[BEST_OF_EACH];
  private final double[] firstWeights = new double[BEST_OF_EACH];
  private final double[] secondWeights = new double[BEST_OF_EACH];
  private int boards;
  private long[] best;
  private int pass;

  /** A search over some of the runs, those before them being placed for good. */
  StartSearch(StartMoves moves, int from, int to) {
    this.moves = moves;
    this.table = moves.table;
    this.tally = moves.tally;
    this.from = from;
    this.to = to;
  }

  /** The boards of the best way found so far, all runs placed. */
  int boards() {
    return boards;
  }

  /** Places all runs; tells whether the rules could be kept. */
  boolean place(FirstPlacing placing, int reference) {
    for (int attempt = 0; attempt < PLACINGS; attempt++) {
      int run = from;
      while (run < to && place(run, attempt == 0 ? placing : FirstPlacing.RANDOM, reference)) {
        run++;
      }
      if (run == to) {
        take();
        return true;
      }
      for (int i = from; i < run; i++) {
        moves.lift(i);
      }
    }
    return false;
  }

  private boolean place(int run, FirstPlacing placing, int reference) {
    long piece = -1;
    if (placing == FirstPlacing.HABIT) {
      moves.findHabits(run);
      piece = firstOf(0, run);
    }
    if (placing == FirstPlacing.RANDOM) {
      moves.findTries(run);
      moves.addRandom(CALM_TRIES);
      piece = firstOf(moves.random(moves.tryCount), run);
    }
    if (placing == FirstPlacing.PATH) {
      moves.findTries(run);
      moves.addSpread();
      piece = moves.nearestToWay(run);
    }
    if (piece < 0) {
      tally.weigh(reference);
      moves.findTries(run);
      piece = lightest(run);
    }
    if (piece < 0) {
      moves.addSpread();
      piece = lightest(run);
    }
    if (piece >= 0) {
      moves.place(run, piece);
    }
    return piece >= 0;
  }

  /** The first start piece that keeps the rules, looking from one of those to try on. */
  private long firstOf(int first, int run) {
    moves.lookAround(run, -1);
    for (int i = 0; i < moves.tryCount; i++) {
      long start = moves.tries[(first + i) % moves.tryCount];
      if (moves.keepsRules(start)) {
        return start;
      }
    }
    return -1;
  }

  /** Takes all runs up again. */
  void lift() {
    for (int run = from; run < to; run++) {
      moves.lift(run);
    }
  }

  /** Goes on from runs that are placed already. */
  void take() {
    boards = tally.boards();
    best = moves.pieces(from, to);
  }

  private long lightest(int run) {
    long piece = -1;
    double least = Double.MAX_VALUE;
    moves.lookAround(run, -1);
    for (int i = 0; i < moves.tryCount; i++) {
      long start = moves.tries[i];
      if (moves.keepsRules(start)) {
        double weight = moves.weight(run, start);
        if (weight < least) {
          least = weight;
          piece = start;
        }
      }
    }
    return piece;
  }

  /** Moves runs until the boards are no more than wanted, or the steps are used up; leaves the best way found. */
  void improve(int wanted, long mostSteps) {
    long last = moves.steps + mostSteps;
    while (boards > wanted && moves.steps < last) {
      int place = pass++ % ROUND;
      if (place == 0 && pass > ROUND && moves.random(2) == 0) {
        moves.restore(best, from);
      }
      int turn = moves.random(to - from);
      for (int i = 0; i < to - from && boards > wanted; i++) {
        moveOne(from + (i + turn) % (to - from), wanted);
      }
      if (place == ROUND - 1) {
        for (int i = 0; i < to - from && boards > wanted; i++) {
          moveTwo(from + (i + turn) % (to - from), wanted);
        }
      }
    }
    moves.restore(best, from);
  }

  private void moveOne(int run, int wanted) {
    long piece = moves.start[run];
    moves.lift(run);
    tally.weigh(wanted);
    moves.findTries(run);
    double least = moves.weight(run, piece);
    moves.lookAround(run, -1);
    for (int i = 0; i < moves.tryCount; i++) {
      long start = moves.tries[i];
      if (moves.keepsRules(start)) {
        double weight = moves.weight(run, start) * (1 + 1e-9 * moves.random(1024));
        if (weight < least) {
          least = weight;
          piece = start;
        }
      }
    }
    moves.place(run, piece);
    note();
  }

  private void note() {
    int now = tally.boards();
    if (now < boards) {
      boards = now;
      best = moves.pieces(from, to);
    }
  }

  /** Moves a run together with one after it that it touches. */
  private void moveTwo(int run, int wanted) {
    int[] touched = table.touched[run];
    int other = touched.length == 0 ? -1 : touched[touched.length - 1];
    if (other < run || other >= to) {
      return;
    }
    long bestFirst = moves.start[run];
    long bestSecond = moves.start[other];
    moves.lift(run);
    moves.lift(other);
    tally.weigh(wanted);
    int firsts = bestOf(run, other, bestFirst, first, firstWeights);
    int seconds = bestOf(other, run, bestSecond, second, secondWeights);
    int link = linkTo(other, run);
    double least = Double.MAX_VALUE;
    // A run adds at least its whole boards to every load, so each of the two alone tells the least that both weigh.
    double added = tally.timesHeavier(table.wholeBoards(other));
    double addedFirst = tally.timesHeavier(table.wholeBoards(run));
    for (int i = 0; i < firsts && firstWeights[i] * added < least; i++) {
      moves.place(run, first[i]);
      tally.weigh(wanted);
      for (int j = 0; j < seconds && secondWeights[j] * addedFirst < least; j++) {
        if (!table.near(other, second[j], link, first[i], moves.offset)) {
          double weight = moves.weight(other, second[j]);
          if (weight < least) {
            least = weight;
            bestFirst = first[i];
            bestSecond = second[j];
          }
        }
      }
      moves.lift(run);
    }
    moves.place(run, bestFirst);
    moves.place(other, bestSecond);
    note();
  }

  private int linkTo(int run, int other) {
    int link = 0;
    while (table.touched[run][link] != other) {
      link++;
    }
    return link;
  }

  /** The lightest start pieces of a run while a neighbour is lifted, its present one among those tried. */
  private int bestOf(int run, int lifted, long present, long[] found, double[] weights) {
    moves.findTries(run);
    int count = 0;
    moves.lookAround(run, lifted);
    for (int i = -1; i < moves.tryCount; i++) {
      long start = i < 0 ? present : moves.tries[i];
      if (!moves.keepsRules(start)) {
        continue;
      }
      double weight = moves.weight(run, start);
      if (count == BEST_OF_EACH && weight >= weights[count - 1] || isAmong(found, count, start)) {
        continue;
      }
      int j = count < BEST_OF_EACH ? count++ : count - 1;
      while (j > 0 && weights[j - 1] > weight) {
        weights[j] = weights[j - 1];
        found[j] = found[j - 1];
        j--;
      }
      weights[j] = weight;
      found[j] = start;
    }
    return count;
  }

  private static boolean isAmong(long[] values, int count, long value) {
    for (int i = 0; i < count; i++) {
      if (values[i] == value) {
        return true;
      }
    }
    return false;
  }

  /** Moves runs so that fewer make H and stair patterns, without a board more; returns how many are left. */
  int calm() {
    for (int run = from; run < to; run++) {
      fillWithOne(run);
    }
    int patterns = moves.patternsOf(from, to);
    for (int i = 0; i < CALM_PASSES && patterns > 0; i++) {
      for (int run = from; run < to; run++) {
        int here = moves.patterns(run, moves.start[run]);
        if (here > 0) {
          calm(run, here);
        }
      }
      int now = moves.patternsOf(from, to);
      if (now < patterns) {
        patterns = now;
        best = moves.pieces(from, to);
      }
    }
    moves.restore(best, from);
    return patterns;
  }

  /** Fills a run with one piece where that takes no board more. */
  private void fillWithOne(int run) {
    long piece = moves.start[run];
    long span = table.span[run];
    if (span > table.board || !table.hasJoint(run, piece)) {
      return;
    }
    moves.lift(run);
    tally.weigh(boards);
    if (moves.boardsWith(run, 0) <= boards) {
      piece = 0;
    } else if (moves.boardsWith(run, span) <= boards) {
      piece = span;
    }
    moves.place(run, piece);
    best = moves.pieces(from, to);
  }

  private void calm(int run, int patterns) {
    long piece = moves.start[run];
    moves.lift(run);
    tally.weigh(boards);
    moves.findTries(run);
    moves.addRandom(CALM_TRIES);
    int fewest = patterns;
    moves.lookAround(run, -1);
    for (int i = 0; i < moves.tryCount; i++) {
      long start = moves.tries[i];
      int here = moves.patterns(run, start);
      if ((here < fewest || here == fewest && moves.random(4) == 0) && moves.keepsRules(start)
          && moves.boardsWith(run, start) <= boards) {
        fewest = here;
        piece = start;
      }
    }
    moves.place(run, piece);
  }
}
