package floorcalc.boards;

import java.util.Arrays;
import java.util.List;

/**
 * H and stair patterns of three rows, each touching the one before alone. Boards of one length repeat them, so the first joints
 * tell; of boards of several lengths all joints count.
 */
final class Patterns {
  /** Joints this near are in line, steps this near are equal; see {@code floorcalc.joints.JointLayout}. */
  static final long IN_LINE = 2_000_000;
  static final long EQUAL_STEPS = 3_000_000;

  private Patterns() {}

  /** Tells whether a joint is in line with the one two rows back, or the rows step on evenly; a board's length does not count. */
  static boolean isPattern(long last, long middle, long first, long board) {
    long step = last - middle;
    long stepBefore = middle - first;
    return around(step + stepBefore, board) <= IN_LINE || around(step - stepBefore, board) <= EQUAL_STEPS;
  }

  /** The distance to the nearest whole number of boards. */
  static long around(long length, long board) {
    long over = Math.floorMod(length, board);
    return Math.min(over, board - over);
  }

  /** How many joints of a row are in line with one two rows back, or go on in equal steps, each to the nearest joint. */
  static int among(long[] last, long[] middle, long[] first) {
    int count = 0;
    for (long joint : last) {
      count += nearest(first, joint) <= IN_LINE ? 1 : 0;
      for (long between : middle) {
        long step = joint - between;
        boolean taken = Math.abs(step) > IN_LINE && Math.abs(step) == nearest(middle, joint);
        count += taken && nearest(first, between - step) <= EQUAL_STEPS ? 1 : 0;
      }
    }
    return count;
  }

  /** How far the nearest of some joints is from a place. */
  private static long nearest(long[] joints, long place) {
    int at = Arrays.binarySearch(joints, place);
    if (at >= 0) {
      return 0;
    }
    long after = -at - 1 < joints.length ? joints[-at - 1] - place : Long.MAX_VALUE;
    return -at - 1 > 0 ? Math.min(after, place - joints[-at - 2]) : after;
  }

  /** Patterns that end with the last of three rows. */
  static int ofThree(long[] last, long[] middle, long[] first, Stock stock) {
    if (last.length == 0 || middle.length == 0 || first.length == 0) {
      return 0;
    }
    return !stock.isUniform() ? among(last, middle, first)
        : isPattern(last[0], middle[0], first[0], stock.longest()) ? 1 : 0;
  }

  static int count(List<Run> runs, long[][] joints, Stock stock) {
    int count = 0;
    for (int k = 0; k < joints.length; k++) {
      int middle = runs.get(k).neighbourCount() == 1 ? runs.get(k).neighbour(0) : -1;
      int first = middle >= 0 && runs.get(middle).neighbourCount() == 1 ? runs.get(middle).neighbour(0) : -1;
      if (first >= 0) {
        count += ofThree(joints[k], joints[middle], joints[first], stock);
      }
    }
    return count;
  }
}
