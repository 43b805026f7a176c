package floorcalc.levels;

import java.util.ArrayDeque;

/**
 * Raises heights until no reading lies deeper below a chord than allowed, and no more than that.
 * <p>
 * <b>What comes out is least at every reading at once.</b> Each limit says of a reading {@code j} and of points of the floor on
 * both sides of it: {@code chord - z_j <= t}, where the chord is a sum of heights of readings with weights that are not negative, and
 * that of {@code j} itself is below 1. Take two floors {@code u} and {@code v} that keep all limits, and let {@code w} be the lower of the
 * two everywhere. At {@code j} let {@code w_j = u_j}. No other height of {@code w} is above that of {@code u}, so no chord is, and
 * {@code w} keeps the limit at {@code j} because {@code u} does. Likewise where {@code w_j = v_j}. So of all floors that keep the
 * limits and are nowhere below the start there is one that is nowhere above any other.
 * <p>
 * <b>Raising finds it.</b> While the heights {@code y} are nowhere above the least floor {@code w}, and {@code y} breaks a limit at
 * {@code j} by {@code e}, then {@code w_j >= y_j + e / (1 - own)}: the chord of {@code w} is at least that of {@code y} beside
 * {@code j}. Raising {@code y_j} by this much, and up to the next whole step, which the least floor of whole steps needs
 * too, stays at or below it. Each time a height rises by at least one step; and none needs to rise beyond the first step at or above
 * the highest reading, where all chords are less than a step above any reading: limits are at least a step. So it ends, at
 * most after readings * range / step times; mostly after a few times the number of readings.
 */
final class Raising {
  private final Ground ground;
  private final long step;
  private final long base;
  private final long[] heights;
  private final double[] z;
  private final ArrayDeque<Integer> waiting = new ArrayDeque<>();
  private final boolean[] waits;
  private long raised;

  /** Raises from given heights by whole steps; the heights given stay as they are. */
  Raising(Ground ground, long[] from, long step) {
    this.ground = ground;
    this.step = step;
    this.base = from[0];
    this.heights = from.clone();
    this.z = new double[from.length];
    this.waits = new boolean[from.length];
    for (int i = 0; i < from.length; i++) {
      z[i] = heights[i] - base;
      add(i);
    }
    run();
  }

  long[] heights() {
    return heights;
  }

  /** How often a height was raised. */
  long raised() {
    return raised;
  }

  private void add(int node) {
    if (!waits[node]) {
      waits[node] = true;
      waiting.add(node);
    }
  }

  private void run() {
    while (!waiting.isEmpty()) {
      int node = waiting.remove();
      waits[node] = false;
      boolean isRaised = false;
      for (long up = ground.missing(node, z, step); up > 0; up = ground.missing(node, z, step)) {
        heights[node] += up;
        z[node] = heights[node] - base;
        raised++;
        isRaised = true;
      }
      if (isRaised) {
        ground.near(node).forEach(this::add);
      }
    }
  }
}
