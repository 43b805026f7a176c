package floorcalc.boards;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntFunction;

/** Thinks up ways to lay one run: which start pieces are worth trying. */
final class Candidates {
  private static final int OFFCUTS_TRIED = 8;
  private static final int SPREAD = 8;
  private static final int LONGEST_FILL = 100_000;

  private final List<Run> runs;
  private final Stock stock;
  private final JointRule rule;

  Candidates(List<Run> runs, Stock stock, JointRule rule) {
    this.runs = runs;
    this.stock = stock;
    this.rule = rule;
  }

  /** Different ways to set the joints of a run; never empty. A way without joints means one piece. */
  List<long[]> of(int index, Run run, LaidRuns hand) {
    List<long[]> ways = new ArrayList<>();
    if (run.span() <= stock.longest()) {
      ways.add(new long[0]);
    }
    if (stock.isUniform()) {
      for (long start : starts(run, hand)) {
        if (start < run.span()) {
          ways.add(Joints.every(run, start, stock.longest()));
        }
      }
    } else {
      for (long start : mixedStarts(run, hand)) {
        if (start < run.span()) {
          ways.add(fill(index, run, start, hand));
        }
      }
    }
    return ways;
  }

  private long[] starts(Run run, LaidRuns hand) {
    long board = stock.longest();
    long span = run.span();
    long[] tries = new long[128];
    int n = 0;
    tries[n++] = board;
    tries[n++] = span;
    tries[n++] = span - stock.minimumPiece;
    tries[n++] = stock.minimumPiece;
    for (int i = hand.forStarts.length - 1; i >= Math.max(0, hand.forStarts.length - OFFCUTS_TRIED); i--) {
      tries[n++] = hand.forStarts[i];
    }
    for (int i = hand.forEnds.length - 1; i >= Math.max(0, hand.forEnds.length - OFFCUTS_TRIED); i--) {
      tries[n++] = span - hand.forEnds[i];
    }
    long partner = board - stock.kerf;
    tries[n++] = (span + partner) / 2;
    tries[n++] = (span - board + partner) / 2;
    tries[n++] = partner - stock.minimumPiece;
    tries[n++] = span - partner + stock.minimumPiece;
    for (int k = 0; k < run.neighbourCount() && n < 64; k++) {
      long[] joints = hand.jointsBack(handBack(run, k));
      if (joints.length > 0) {
        long phase = joints[0] - run.from();
        tries[n++] = phase + stock.minimumOffset;
        tries[n++] = phase - stock.minimumOffset;
        tries[n++] = phase + board / 2;
        tries[n++] = phase + board / 3;
        tries[n++] = phase - board / 3;
        tries[n++] = phase + 2 * stock.minimumOffset;
        tries[n++] = phase - 2 * stock.minimumOffset;
        n = twoRowsBack(run, k, hand, tries, n);
      }
    }
    for (int k = 1; k < SPREAD; k++) {
      tries[n++] = board * k / SPREAD;
    }
    for (int i = 0; i < n; i++) {
      long start = Math.floorMod(tries[i], board);
      tries[i] = start == 0 ? board : start;
    }
    return distinct(tries, n);
  }

  /** A saw kerf to either side of a joint two rows back: so the offcuts of a row of whole multiples go on. */
  private int twoRowsBack(Run run, int k, LaidRuns hand, long[] tries, int n) {
    Run between = runs.get(run.neighbour(k));
    if (between.neighbourCount() == 0) {
      return n;
    }
    long[] joints = hand.jointsBack(indexOfHand - between.neighbour(0));
    if (joints.length == 0) {
      return n;
    }
    long phase = joints[0] - run.from();
    tries[n] = phase;
    tries[n + 1] = phase + stock.kerf;
    tries[n + 2] = phase - stock.kerf;
    return n + 3;
  }

  private int indexOfHand;

  /** How far back in the chain a neighbour of the run at hand lies. */
  private int handBack(Run run, int k) {
    return indexOfHand - run.neighbour(k);
  }

  /** Tells which run is laid next, so that neighbours can be found in the chain. */
  void at(int index) {
    indexOfHand = index;
  }

  private long[] mixedStarts(Run run, LaidRuns hand) {
    long[] tries = new long[160];
    int n = 0;
    for (long length : stock.lengths) {
      tries[n++] = length;
    }
    for (int i = hand.forStarts.length - 1; i >= Math.max(0, hand.forStarts.length - OFFCUTS_TRIED); i--) {
      tries[n++] = hand.forStarts[i];
    }
    tries[n++] = stock.minimumPiece;
    for (int k = 0; k < run.neighbourCount() && n < 140; k++) {
      long[] joints = hand.jointsBack(handBack(run, k));
      for (int j = 0; j < joints.length && j < 4; j++) {
        tries[n++] = joints[j] - run.from() + stock.minimumOffset;
        tries[n++] = joints[j] - run.from() - stock.minimumOffset;
      }
    }
    int kept = 0;
    for (int i = 0; i < n; i++) {
      if (tries[i] > 0 && tries[i] <= stock.longest()) {
        tries[kept++] = tries[i];
      }
    }
    return distinct(tries, kept);
  }

  /** Fills a run with whole boards of several lengths: each next board keeps clear of the joints beside it if one can. */
  private long[] fill(int index, Run run, long start, LaidRuns hand) {
    IntFunction<long[]> laid = neighbour -> hand.jointsBack(index - neighbour);
    int[] opened = hand.opened.clone();
    long[] joints = new long[16];
    int n = 0;
    long place = run.from() + start;
    while (place < run.to() && n < LONGEST_FILL) {
      if (n == joints.length) {
        joints = Arrays.copyOf(joints, 2 * n);
      }
      joints[n++] = place;
      long rest = run.to() - place;
      int next = next(index, run, place, rest, opened, laid);
      if (next < 0) {
        break;
      }
      opened[next]++;
      place += stock.lengths[next];
    }
    return Arrays.copyOf(joints, n);
  }

  /** The length to lay next, or -1 when an end piece fills the rest. */
  private int next(int index, Run run, long place, long rest, int[] opened, IntFunction<long[]> laid) {
    boolean endFits = rest <= stock.longest();
    int best = -1;
    long bestOffset = -1;
    double bestUse = 0;
    for (int i = 0; i < stock.lengths.length; i++) {
      long after = rest - stock.lengths[i];
      if (after < 0 || after > 0 && after < stock.minimumPiece) {
        continue;
      }
      long offset = after == 0 ? stock.minimumOffset
          : Math.min(stock.minimumOffset, rule.leastOffset(index, new long[] {place + stock.lengths[i]}, laid));
      double use = (double) opened[i] / stock.perPack[i];
      if (offset > bestOffset || offset == bestOffset && use < bestUse) {
        best = i;
        bestOffset = offset;
        bestUse = use;
      }
    }
    if (endFits && (best < 0 || rest >= stock.minimumPiece)) {
      return -1;
    }
    if (best < 0) {
      for (int i = 0; i < stock.lengths.length; i++) {
        if (stock.lengths[i] < rest) {
          return i;
        }
      }
    }
    return best;
  }

  private static long[] distinct(long[] values, int n) {
    long[] sorted = Arrays.copyOf(values, n);
    Arrays.sort(sorted);
    int kept = 0;
    for (int i = 0; i < n; i++) {
      if (i == 0 || sorted[i] != sorted[i - 1]) {
        sorted[kept++] = sorted[i];
      }
    }
    return Arrays.copyOf(sorted, kept);
  }
}
