package floorcalc.boards;

import java.util.List;
import java.util.function.IntFunction;

/** Holds the joints of a run against the rules: offsets to the rows it touches, start and end pieces. */
final class JointRule {
  private final List<Run> runs;
  private final Stock stock;

  JointRule(List<Run> runs, Stock stock) {
    this.runs = runs;
    this.stock = stock;
  }

  /** The number of joints too near to one of a touching run, plus start and end pieces that are too short. */
  int breaches(int index, long[] joints, IntFunction<long[]> laid) {
    Run run = runs.get(index);
    int count = shortPieces(run, joints);
    for (int k = 0; k < run.neighbourCount(); k++) {
      count += near(joints, laid.apply(run.neighbour(k)), run.contact(k), stock.minimumOffset);
    }
    return count;
  }

  int shortPieces(Run run, long[] joints) {
    if (joints.length == 0) {
      return 0;
    }
    return (isShort(Joints.startPiece(run, joints)) ? 1 : 0) + (isShort(Joints.endPiece(run, joints)) ? 1 : 0);
  }

  /** A whole board is never too short. */
  private boolean isShort(long piece) {
    return piece < stock.minimumPiece && stock.kindOf(piece) < 0;
  }

  /** The least offset to any touching run's joints; {@code Long.MAX_VALUE} if there is none to keep clear of. */
  long leastOffset(int index, long[] joints, IntFunction<long[]> laid) {
    Run run = runs.get(index);
    long least = Long.MAX_VALUE;
    for (int k = 0; k < run.neighbourCount(); k++) {
      long[] others = laid.apply(run.neighbour(k));
      long[] contact = run.contact(k);
      int j = 0;
      for (long joint : joints) {
        if (!within(joint, contact)) {
          continue;
        }
        while (j < others.length && others[j] < joint) {
          j++;
        }
        for (int i = j; i < others.length && others[i] - joint < least; i++) {
          if (within(others[i], contact)) {
            least = others[i] - joint;
          }
        }
        for (int i = j - 1; i >= 0 && joint - others[i] < least; i--) {
          if (within(others[i], contact)) {
            least = joint - others[i];
          }
        }
      }
    }
    return least;
  }

  private static int near(long[] joints, long[] others, long[] contact, long offset) {
    int count = 0;
    int j = 0;
    for (long joint : joints) {
      if (!within(joint, contact)) {
        continue;
      }
      while (j < others.length && others[j] <= joint - offset) {
        j++;
      }
      for (int i = j; i < others.length && others[i] < joint + offset; i++) {
        if (within(others[i], contact)) {
          count++;
        }
      }
    }
    return count;
  }

  static boolean within(long place, long[] contact) {
    for (int i = 0; i < contact.length; i += 2) {
      if (place >= contact[i] && place <= contact[i + 1]) {
        return true;
      }
    }
    return false;
  }
}
