package floorcalc.laying;

import java.util.Arrays;
import java.util.List;
import java.util.function.IntFunction;

/** End joints of two rows that touch, where they touch, and the distances between them. */
final class JointPairs {
  /** Takes the places of two joints, one in each row. */
  interface Near {
    void pair(long joint, long other);
  }

  private JointPairs() {}

  /** The joints of a row that lie where it touches another, in rising order. */
  static long[] touching(List<FrameRun> row, long[] between, IntFunction<long[]> joints) {
    return row.stream().flatMapToLong(run -> Arrays.stream(joints.apply(run.index())))
        .filter(joint -> Contacts.holds(between, joint)).sorted().distinct().toArray();
  }

  /** Reports all pairs of joints nearer than a distance. */
  static void nearerThan(long distance, long[] joints, long[] others, Near near) {
    int j = 0;
    for (long joint : joints) {
      while (j < others.length && others[j] <= joint - distance) {
        j++;
      }
      for (int i = j; i < others.length && others[i] < joint + distance; i++) {
        near.pair(joint, others[i]);
      }
    }
  }

  /** The least distance between joints of the two rows; {@code Long.MAX_VALUE} if one has none. */
  static long least(long[] joints, long[] others) {
    long least = Long.MAX_VALUE;
    int j = 0;
    for (long joint : joints) {
      while (j < others.length && others[j] < joint) {
        j++;
      }
      if (j < others.length) {
        least = Math.min(least, others[j] - joint);
      }
      if (j > 0) {
        least = Math.min(least, joint - others[j - 1]);
      }
    }
    return least;
  }
}
