package floorcalc.boards;

import java.util.List;

/** H and stair patterns of the first joints of three rows, each touching the one before alone. */
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

  static int count(List<Run> runs, long[][] joints, long board) {
    int count = 0;
    for (int k = 0; k < joints.length; k++) {
      int middle = runs.get(k).neighbourCount() == 1 ? runs.get(k).neighbour(0) : -1;
      int first = middle >= 0 && runs.get(middle).neighbourCount() == 1 ? runs.get(middle).neighbour(0) : -1;
      if (first >= 0 && joints[k].length > 0 && joints[middle].length > 0 && joints[first].length > 0
          && isPattern(joints[k][0], joints[middle][0], joints[first][0], board)) {
        count++;
      }
    }
    return count;
  }
}
