package floorcalc.boards;

import java.util.Arrays;

/**
 * Start pieces of runs, one for each, and what moving them does: to the boards, to the rules, to the pattern of the joints.
 * Runs are placed one after the other; those not placed yet count for nothing.
 */
final class StartMoves {
  private static final int MOST = 320;
  private static final int MARKS_TRIED = 96;
  private static final int SPREAD = 97;

  final RunTable table;
  final PieceTally tally;
  final long[] start;
  final boolean[] placed;
  /** Start pieces to try, found by {@link #findTries}. */
  final long[] tries = new long[MOST];
  int tryCount;
  /** The offset to keep, at least that of the rules. */
  long offset;
  /** How much more a start piece weighs for each pattern that it makes. */
  double shun;
  /** How many start pieces have been weighed: the measure of effort. */
  long steps;
  private final long fitting;
  private final PatternMarks marks;
  private long[] way;
  /** The run that was looked around, how many runs with joints touch it, by which links, and the nearest of their joints. */
  private int looked;
  private int beside;
  private int[] links = new int[4];
  private long[] joints = new long[4];
  /** Where the random numbers begin: any number does; see docs/performance.md for what chance has to do with it. */
  private long random = 3;

  StartMoves(RunTable table, Stock stock, PieceTally tally) {
    this.table = table;
    this.tally = tally;
    this.start = new long[table.count];
    this.placed = new boolean[table.count];
    this.offset = stock.minimumOffset;
    this.fitting = stock.longest() - stock.kerf;
    this.marks = new PatternMarks(this);
  }

  /** How long an end and a start piece of one board are together at most. */
  long fitting() {
    return fitting;
  }

  /** A number from 0 to less than a bound, the same sequence on every machine. */
  int random(int bound) {
    random = random * 6_364_136_223_846_793_005L + 1_442_695_040_888_963_407L;
    return (int) ((random >>> 33) * bound >>> 31);
  }

  void place(int run, long piece) {
    start[run] = piece;
    placed[run] = true;
    marks.forget();
    tally.add(table.cutStart(piece), table.cutEnd(run, piece), table.whole(run, piece));
  }

  void lift(int run) {
    long piece = start[run];
    placed[run] = false;
    marks.forget();
    tally.remove(table.cutStart(piece), table.cutEnd(run, piece), table.whole(run, piece));
  }

  /** Looks at the joints beside a run, of all runs placed but one, before {@link #keepsRules} is asked. */
  void lookAround(int run, int but) {
    int[] touched = table.touched[run];
    looked = run;
    beside = 0;
    if (links.length < touched.length) {
      links = new int[touched.length];
      joints = new long[touched.length];
    }
    for (int i = 0; i < touched.length; i++) {
      int other = touched[i];
      if (other != but && isJointed(other)) {
        links[beside] = i;
        joints[beside++] = start[other] + table.apart(other, run);
      }
    }
  }

  /** Tells whether a start piece of the run that was looked around keeps the rules. */
  boolean keepsRules(long piece) {
    for (int i = 0; i < beside; i++) {
      if (table.isNear(piece - joints[i], offset) && table.hasJoint(looked, piece)
          && table.near(looked, piece, links[i], start[table.touched[looked][links[i]]], offset)) {
        return false;
      }
    }
    return table.fits(looked, piece);
  }

  /** What a start piece weighs: the unevenness it leaves, and more where patterns are shunned. */
  double weight(int run, long piece) {
    steps++;
    double uneven = tally.uneven(table.cutStart(piece), table.cutEnd(run, piece), table.whole(run, piece));
    return shun == 0 ? uneven : uneven * (1 + shun * patterns(run, piece));
  }

  int boardsWith(int run, long piece) {
    return tally.boardsWith(table.cutStart(piece), table.cutEnd(run, piece), table.whole(run, piece));
  }

  /** How many H and stair patterns a run would be part of. */
  int patterns(int run, long piece) {
    return marks.patterns(run, piece);
  }

  /** How many patterns end with one of some runs. */
  int patternsOf(int from, int to) {
    int count = 0;
    for (int k = from; k < to; k++) {
      for (int[] three : table.threes[k]) {
        count += three[0] == k && makePattern(three) ? 1 : 0;
      }
    }
    return count;
  }

  private boolean makePattern(int[] three) {
    return isJointed(three[0]) && isJointed(three[1]) && isJointed(three[2])
        && Patterns.isPattern(joint(three[0]), joint(three[1]), joint(three[2]), table.board);
  }

  /** Tells whether a run is placed and has a joint. */
  boolean isJointed(int run) {
    return placed[run] && table.hasJoint(run, start[run]);
  }

  private long joint(int run) {
    return table.from[run] + start[run];
  }

  /** Finds start pieces worth trying: those that use offcuts whole, keep just clear of joints beside them, or cut nothing. */
  void findTries(int run) {
    tryCount = 0;
    long span = table.span[run];
    if (span <= table.board) {
      tries[tryCount++] = 0;
      tries[tryCount++] = span;
    }
    for (long start : table.plain[run]) {
      tries[tryCount++] = start;
    }
    for (int i = 0; i < table.touched[run].length && i < 12; i++) {
      int other = table.touched[run][i];
      if (isJointed(other)) {
        long joint = start[other] + table.apart(other, run);
        add(joint + offset);
        add(joint - offset);
      }
    }
    int skip = 1 + tally.count() / MARKS_TRIED;
    for (int i = skip == 1 ? 0 : random(skip); i < tally.count(); i += skip) {
      if (!tally.isAgain(i)) {
        add((tally.isEnd(i) ? fitting : table.rest[run]) - tally.length(i));
      }
    }
  }

  /** Finds the start pieces that a layer thinks of first: the offcut of the row before, else a plain part of a board. */
  void findHabits(int run) {
    tryCount = 0;
    long span = table.span[run];
    if (span <= table.board) {
      tries[tryCount++] = span;
    }
    int last = run - 1;
    if (last >= 0 && placed[last]) {
      long offcut = fitting - table.cutEnd(last, start[last]);
      if (offcut >= table.least && offcut < fitting) {
        add(offcut);
      }
    }
    add(table.board);
    add(table.board * 3 / 4);
    add(table.board * 2 / 3);
    add(table.board / 2);
    add(table.board / 3);
    add(table.board / 4);
    add(table.least);
  }

  /** Adds start pieces all over a board's length. */
  void addSpread() {
    for (int i = 0; i < SPREAD; i++) {
      add(table.least + (table.board - table.least) / SPREAD * i);
    }
  }

  void addRandom(int many) {
    for (int i = 0; i < many; i++) {
      add(table.least + (table.board - table.least) / 4096 * random(4096));
    }
  }

  private void add(long piece) {
    if (tryCount < MOST) {
      // Few boards off at most: cheaper than a division.
      long start = piece;
      while (start <= 0) {
        start += table.board;
      }
      while (start > table.board) {
        start -= table.board;
      }
      tries[tryCount++] = start;
    }
  }

  /** The start pieces of some of the runs. */
  long[] pieces(int from, int to) {
    return Arrays.copyOfRange(start, from, to);
  }

  /** Start pieces to keep near to. */
  void follow(long[] pieces) {
    way = pieces;
  }

  /** The start piece nearest to the way that is followed, or -1 if none keeps the rules. */
  long nearestToWay(int run) {
    long nearest = -1;
    long least = Long.MAX_VALUE;
    lookAround(run, -1);
    for (int i = 0; i < tryCount && way != null; i++) {
      long off = Patterns.around(tries[i] - way[run], table.board);
      if (off < least && keepsRules(tries[i])) {
        least = off;
        nearest = tries[i];
      }
    }
    return nearest;
  }

  /** Places all runs as they were, whether they are placed or not. */
  void placeAll(long[] pieces) {
    for (int k = 0; k < pieces.length; k++) {
      if (placed[k]) {
        lift(k);
      }
      place(k, pieces[k]);
    }
  }

  /** Puts runs back where they were. */
  void restore(long[] pieces, int from) {
    for (int i = 0; i < pieces.length; i++) {
      if (start[from + i] != pieces[i]) {
        lift(from + i);
        place(from + i, pieces[i]);
      }
    }
  }
}
