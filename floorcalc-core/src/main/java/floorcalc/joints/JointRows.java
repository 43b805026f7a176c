package floorcalc.joints;

import java.util.Arrays;

/** The joints of all rows in nanometres, in order, and where each row touches the next. */
final class JointRows {
  private static final long[] EVERYWHERE = {Long.MIN_VALUE, Long.MAX_VALUE};

  private final long[][] joints;
  private final long[][] touching;

  JointRows(long[][] joints, long[][] touching) {
    this.joints = new long[joints.length][];
    this.touching = new long[joints.length][];
    for (int row = 0; row < joints.length; row++) {
      this.joints[row] = joints[row].clone();
      Arrays.sort(this.joints[row]);
      this.touching[row] = row < touching.length ? checked(touching[row], row) : EVERYWHERE;
    }
  }

  private static long[] checked(long[] intervals, int row) {
    if (intervals.length % 2 != 0) {
      throw new IllegalArgumentException("row " + (row + 1) + " has " + intervals.length
          + " ends of intervals in which it touches the next row; give two for each interval");
    }
    for (int i = 1; i < intervals.length; i++) {
      if (intervals[i] < intervals[i - 1]) {
        throw new IllegalArgumentException("the intervals in which row " + (row + 1) + " touches the next row must be"
            + " in order and apart, but " + intervals[i] + " nm follows " + intervals[i - 1] + " nm");
      }
    }
    return intervals.clone();
  }

  int count() {
    return joints.length;
  }

  long[] all(int row) {
    return joints[row];
  }

  /** Returns the joints of a row that lie where another row, the one below or the row itself, touches the one above. */
  long[] where(int row, int lowerOfTouching) {
    long[] contact = touching[lowerOfTouching];
    if (contact == EVERYWHERE) {
      return joints[row];
    }
    long[] inside = new long[joints[row].length];
    int n = 0;
    int i = 0;
    for (long joint : joints[row]) {
      while (i + 1 < contact.length && contact[i + 1] < joint) {
        i += 2;
      }
      if (i + 1 < contact.length && contact[i] <= joint) {
        inside[n++] = joint;
      }
    }
    return Arrays.copyOf(inside, n);
  }
}
