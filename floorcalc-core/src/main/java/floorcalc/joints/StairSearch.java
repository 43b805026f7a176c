package floorcalc.joints;

import floorcalc.measure.Length;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Follows joints from row to row to find even steps; each joint is looked at a fixed number of times. */
final class StairSearch {
  private final JointRows rows;
  private final long tolerance;
  private final int[][] next;
  private final boolean[][] seen;

  StairSearch(JointRows rows, long tolerance) {
    this.rows = rows;
    this.tolerance = tolerance;
    this.next = new int[rows.count()][];
    this.seen = new boolean[rows.count()][];
    for (int row = 0; row < rows.count(); row++) {
      next[row] = new int[rows.all(row).length];
      seen[row] = new boolean[rows.all(row).length];
      Arrays.fill(next[row], -1);
      if (row + 1 < rows.count()) {
        link(row);
      }
    }
  }

  /** Links each joint of a row with the nearest of the next row, unless none is nearer than the other side's. */
  private void link(int row) {
    long[] upper = rows.where(row + 1, row);
    int j = 0;
    for (long joint : rows.where(row, row)) {
      while (j < upper.length && upper[j] < joint) {
        j++;
      }
      long right = j < upper.length ? upper[j] - joint : Long.MAX_VALUE;
      long left = j > 0 ? joint - upper[j - 1] : Long.MAX_VALUE;
      long nearest = Math.min(left, right);
      boolean undecided = left != right && Math.abs(left - right) <= tolerance || left == right;
      if (nearest > tolerance && nearest < Long.MAX_VALUE && !undecided) {
        long target = right < left ? upper[j] : upper[j - 1];
        next[row][Arrays.binarySearch(rows.all(row), joint)] = Arrays.binarySearch(rows.all(row + 1), target);
      }
    }
  }

  List<JointStair> find() {
    List<JointStair> stairs = new ArrayList<>();
    for (int row = 0; row < next.length; row++) {
      for (int i = 0; i < next[row].length; i++) {
        List<Length> joints = follow(row, i);
        if (joints.size() >= JointLayout.LEAST_STAIR_ROWS) {
          stairs.add(new JointStair(row + 1, joints));
        }
      }
    }
    return stairs;
  }

  private List<Length> follow(int firstRow, int first) {
    List<Length> joints = new ArrayList<>();
    int row = firstRow;
    int i = first;
    joints.add(Length.ofNanometres(rows.all(row)[i]));
    long step = 0;
    while (next[row][i] >= 0 && !seen[row][i]) {
      long here = rows.all(row + 1)[next[row][i]] - rows.all(row)[i];
      if (row > firstRow && Math.abs(here - step) > tolerance) {
        break;
      }
      seen[row][i] = true;
      step = here;
      i = next[row][i];
      row++;
      joints.add(Length.ofNanometres(rows.all(row)[i]));
    }
    return joints;
  }
}
