package floorcalc.levels;

import java.util.ArrayDeque;
import java.util.TreeSet;

/**
 * Makes whole steps of grinding depths that a linear program gave in parts of a step. First readings are lowered until every limit is
 * kept again, never below a floor that is known to keep them; then each ground reading is raised as far as the limits let it, so that
 * none is ground deeper than the others ask for. Not thread-safe.
 */
final class Easing {
  private final Ground ground;
  private final long step;
  private final long[] heights;
  private final double[] z;

  Easing(Ground ground, long[] heights, long step) {
    this.ground = ground;
    this.step = step;
    this.heights = heights.clone();
    this.z = new double[heights.length];
    for (int i = 0; i < z.length; i++) {
      z[i] = heights[i] - heights[0];
    }
  }

  long[] heights() {
    return heights;
  }

  private void move(int node, long by) {
    heights[node] += by;
    z[node] += by;
  }

  /** Lowers what stands too high beside a reading that may not be filled higher. */
  void lowerTo(long[] least) {
    ArrayDeque<Integer> waiting = new ArrayDeque<>();
    boolean[] waits = new boolean[z.length];
    for (int i = 0; i < z.length; i++) {
      waiting.add(i);
      waits[i] = true;
    }
    while (!waiting.isEmpty()) {
      int node = waiting.remove();
      waits[node] = false;
      for (ChordRow row = ground.worst(node, z, Chords.TINY); row != null; row = ground.worst(node, z, Chords.TINY)) {
        int lowered = lower(row, least);
        if (lowered < 0) {
          // The least floor keeps this limit, and all that the chord leans on is as low: a rounding is left, nothing more.
          break;
        }
        for (int near : ground.near(lowered)) {
          if (!waits[near]) {
            waits[near] = true;
            waiting.add(near);
          }
        }
        if (!waits[lowered]) {
          waits[lowered] = true;
          waiting.add(lowered);
        }
      }
    }
  }

  private int lower(ChordRow row, long[] least) {
    int best = -1;
    double most = 0;
    double weight = 0;
    for (int i = 0; i < row.nodes().length - 1; i++) {
      int node = row.nodes()[i];
      double gain = row.weights()[i] * (heights[node] - least[node]);
      if (gain > most) {
        best = node;
        most = gain;
        weight = row.weights()[i];
      }
    }
    if (best >= 0) {
      long steps = (long) Math.ceil((row.excess(z) - Chords.TINY / 2) / weight / step);
      move(best, -Math.min(heights[best] - least[best], Math.max(1, steps) * step));
    }
    return best;
  }

  /**
   * Raises each ground reading as far as its neighbours stay within the limits, at most to where it was; and those near it again, which its rise may
   * let rise further.
   */
  void raiseTo(long[] before) {
    TreeSet<Integer> waiting = new TreeSet<>();
    for (int node = 0; node < z.length; node++) {
      waiting.add(node);
    }
    for (Integer node = waiting.pollFirst(); node != null; node = waiting.pollFirst()) {
      if (raise(node, before[node])) {
        waiting.addAll(ground.near(node));
        waiting.remove(node);
      }
    }
  }

  private boolean raise(int node, long before) {
    long low = 0;
    long high = (before - heights[node]) / step;
    while (low < high) {
      long steps = low + (high - low + 1) / 2;
      move(node, steps * step);
      boolean kept = isKeptNear(node);
      move(node, -steps * step);
      if (kept) {
        low = steps;
      } else {
        high = steps - 1;
      }
    }
    if (low > 0) {
      move(node, low * step);
    }
    return low > 0;
  }

  private boolean isKeptNear(int node) {
    for (int near : ground.near(node)) {
      if (!ground.isKept(near, z)) {
        return false;
      }
    }
    return true;
  }
}
