package floorcalc.levels;

import java.util.Arrays;
import java.util.List;

/**
 * How deep to grind where, by a linear program: least grinding where the filling is settled, or least work of both kinds. The
 * limits are added as they are found to be broken, so few of them are ever written down. What the program has come to when its
 * work is done is a bound, whether it has come to the end or not. Not thread-safe.
 */
final class Grinding {
  private static final double NM_PER_MM = 1e6;
  /** Multiplications: some seconds. */
  private static final long MOST_WORK = 3_000_000_000L;
  private static final int MOST_ROUNDS = 400;

  private final Ground ground;
  private final int n;
  /** Heights in nanometres before, above the first one. */
  private final double[] start;
  /** How deep each may be ground, in millimetres. */
  private final double[] room;
  private final boolean fills;
  private final DualSimplex program;
  private final double tolerated;
  private final double[] heights;
  private final boolean[] bounded;
  private boolean finished;

  /**
   * Solves the program.
   *
   * @param start the heights before
   * @param room how deep each may be ground, in nanometres
   * @param grindCost what grinding each by a millimetre costs
   * @param fillCost what filling each by a millimetre costs, empty if none may be filled
   */
  Grinding(Ground ground, long[] start, long[] room, double[] grindCost, double[] fillCost, long step) {
    this.ground = ground;
    this.n = start.length;
    this.start = new double[n];
    this.room = new double[n];
    for (int i = 0; i < n; i++) {
      this.start[i] = start[i] - start[0];
      this.room[i] = room[i] / NM_PER_MM;
    }
    this.fills = fillCost.length > 0;
    double[] cost = Arrays.copyOf(grindCost, fills ? 2 * n : n);
    System.arraycopy(fillCost, 0, cost, n, fillCost.length);
    this.program = new DualSimplex(cost, MOST_WORK);
    this.tolerated = Math.max(2, step / 200.0);
    this.heights = this.start.clone();
    this.bounded = new boolean[n];
    run();
  }

  private void run() {
    for (int round = 0; round < MOST_ROUNDS && !program.isStopped() && !program.isFull(); round++) {
      if (addBroken() == 0) {
        finished = true;
        return;
      }
      program.solve();
      for (int i = 0; i < n; i++) {
        heights[i] = start[i] - (depth(i) - (fills ? program.get(n + i) : 0)) * NM_PER_MM;
      }
    }
  }

  private int addBroken() {
    int added = 0;
    for (int node = 0; node < n; node++) {
      if (!bounded[node] && room[node] > 0 && depth(node) > room[node] + tolerated / NM_PER_MM) {
        bounded[node] = true;
        program.add(new int[] {node}, new double[] {1}, room[node]);
        added++;
      }
      List<ChordRow> rows = ground.broken(node, heights, tolerated);
      for (ChordRow row : rows) {
        added += add(row) ? 1 : 0;
      }
    }
    return added;
  }

  private boolean add(ChordRow row) {
    int[] which = new int[2 * row.nodes().length];
    double[] weights = new double[which.length];
    int count = 0;
    for (int i = 0; i < row.nodes().length; i++) {
      int node = row.nodes()[i];
      if (room[node] > 0) {
        which[count] = node;
        weights[count++] = -row.weights()[i];
      }
      if (fills) {
        which[count] = n + node;
        weights[count++] = row.weights()[i];
      }
    }
    boolean helps = false;
    for (int i = 0; i < count; i++) {
      helps |= weights[i] < 0;
    }
    if (helps) {
      program.add(Arrays.copyOf(which, count), Arrays.copyOf(weights, count), -row.excess(start) / NM_PER_MM);
    }
    return helps;
  }

  /** How deep to grind a reading, in millimetres. */
  double depth(int node) {
    return program.get(node);
  }

  /** What no way to grind, or to grind and fill, can cost less than. */
  double bound() {
    return program.value();
  }

  /** Whether the program came to its end, so that only whole steps can make the work dearer than the bound. */
  boolean isFinished() {
    return finished;
  }
}
