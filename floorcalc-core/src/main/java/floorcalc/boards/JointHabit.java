package floorcalc.boards;

import java.util.List;
import java.util.function.IntFunction;

/**
 * Lays as many layers do without looking ahead: the offcut of the last end piece starts the next row where the rules
 * allow it, else a whole board or a plain part of one does.
 */
final class JointHabit {
  private final List<Run> runs;
  private final Stock stock;
  private final JointRule rule;

  JointHabit(List<Run> runs, Stock stock) {
    this.runs = runs;
    this.stock = stock;
    this.rule = new JointRule(runs, stock);
  }

  RunLayout lay() {
    long[][] laid = new long[runs.size()][];
    int breaches = 0;
    long offcut = 0;
    for (int index = 0; index < laid.length; index++) {
      Run run = runs.get(index);
      IntFunction<long[]> known = i -> laid[i];
      long[] joints = choose(index, run, offcut, known);
      laid[index] = joints;
      breaches += rule.breaches(index, joints, known);
      offcut = leftOver(Joints.endPiece(run, joints));
    }
    return new RunLayout(runs, stock, laid, breaches);
  }

  private long leftOver(long end) {
    for (int i = stock.lengths.length - 1; i >= 0; i--) {
      if (stock.lengths[i] >= end) {
        return Math.max(0, stock.lengths[i] - end - stock.kerf);
      }
    }
    return 0;
  }

  private long[] choose(int index, Run run, long offcut, IntFunction<long[]> known) {
    if (run.span() <= stock.longest()) {
      return new long[0];
    }
    long board = stock.longest();
    long[] best = null;
    int bestBreaches = Integer.MAX_VALUE;
    long[] tries = {offcut, board, board * 3 / 4, board * 2 / 3, board / 2, board / 3, board / 4,
        stock.minimumPiece};
    for (long start : tries) {
      if (start <= 0 || start > board) {
        continue;
      }
      long[] joints = Joints.every(run, start, board);
      int breaches = rule.breaches(index, joints, known);
      if (breaches == 0) {
        return joints;
      }
      if (breaches < bestBreaches) {
        best = joints;
        bestBreaches = breaches;
      }
    }
    return best;
  }
}
