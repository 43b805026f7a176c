package floorcalc.boards;

import java.util.Arrays;

/**
 * One way of laying the runs so far, as a link in a chain: the joints of the last run, the boards opened, the offcuts
 * on hand. Never changed once made.
 */
final class LaidRuns {
  private static final int ON_HAND = 24;
  private static final int COUNTED = 3;
  private static final double WORTH = 0.9;

  final LaidRuns before;
  final long[] joints;
  final int[] opened;
  /** Offcuts with a factory end on the right, in rising order of length: good for start pieces. */
  final long[] forStarts;
  /** Offcuts with a factory end on the left, in rising order of length: good for end pieces. */
  final long[] forEnds;
  final int breaches;
  /** Rows that make an H or a stair pattern with the two before them. */
  final int patterns;
  final double penalty;
  double rank;

  LaidRuns(LaidRuns before, long[] joints, int[] opened, long[] forStarts, long[] forEnds, int breaches,
      int patterns, double penalty) {
    this.before = before;
    this.joints = joints;
    this.opened = opened;
    this.forStarts = forStarts;
    this.forEnds = forEnds;
    this.breaches = breaches;
    this.patterns = patterns;
    this.penalty = penalty;
  }

  static LaidRuns first(Stock stock) {
    return new LaidRuns(null, new long[0], new int[stock.lengths.length], new long[0], new long[0], 0, 0, 0);
  }

  /** The joints of the run that lies {@code back} runs before the next one; 1 is the last run laid. */
  long[] jointsBack(int back) {
    LaidRuns layer = this;
    for (int i = 1; i < back; i++) {
      layer = layer.before;
    }
    return layer.joints;
  }

  /**
   * Boards opened, less what the dearest offcuts on hand are worth, with rules broken far above all.
   *
   * @param toCome how many runs are still to be laid
   */
  void rank(Stock stock, int toCome) {
    rank = stock.weight(opened) - WORTH * worth(stock, 2 * toCome) + penalty;
  }

  /** The worth in boards of the longest offcuts, no more of them than can still be used: their length and a kerf each. */
  private double worth(Stock stock, int usable) {
    double sum = 0;
    int start = forStarts.length - 1;
    int end = forEnds.length - 1;
    for (int i = Math.min(COUNTED, usable); i > 0 && (start >= 0 || end >= 0); i--) {
      long byStart = start < 0 ? -1 : forStarts[start];
      long byEnd = end < 0 ? -1 : forEnds[end];
      sum += Math.max(byStart, byEnd) + stock.kerf;
      if (byStart >= byEnd) {
        start--;
      } else {
        end--;
      }
    }
    return sum / ((double) stock.longest() + stock.kerf);
  }

  boolean sameHand(LaidRuns other) {
    return breaches == other.breaches && Arrays.equals(joints, other.joints) && Arrays.equals(opened, other.opened)
        && Arrays.equals(forStarts, other.forStarts) && Arrays.equals(forEnds, other.forEnds);
  }

  /** The shortest offcut that is long enough, or -1. */
  static int shortestFor(long[] offcuts, long piece) {
    int at = Arrays.binarySearch(offcuts, piece);
    int found = at >= 0 ? at : -at - 1;
    return found < offcuts.length ? found : -1;
  }

  static long[] without(long[] offcuts, int index) {
    long[] rest = new long[offcuts.length - 1];
    System.arraycopy(offcuts, 0, rest, 0, index);
    System.arraycopy(offcuts, index + 1, rest, index, rest.length - index);
    return rest;
  }

  /** Adds an offcut in its place; when too many are on hand the shortest is let go. */
  static long[] with(long[] offcuts, long length) {
    int at = Arrays.binarySearch(offcuts, length);
    int place = at >= 0 ? at : -at - 1;
    if (offcuts.length == ON_HAND) {
      if (place == 0) {
        return offcuts;
      }
      long[] kept = offcuts.clone();
      System.arraycopy(offcuts, 1, kept, 0, place - 1);
      kept[place - 1] = length;
      return kept;
    }
    long[] more = new long[offcuts.length + 1];
    System.arraycopy(offcuts, 0, more, 0, place);
    more[place] = length;
    System.arraycopy(offcuts, place, more, place + 1, offcuts.length - place);
    return more;
  }
}
