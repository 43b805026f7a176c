package floorcalc.levels;

import java.util.Arrays;

/**
 * A chord over a reading as weights on the heights of readings: {@code sum(weight * height) - height of the middle} is how deep the
 * middle one lies below the chord.
 *
 * @param nodes the readings that the ends of the chord lean on, and last the middle one
 * @param weights their weights, positive, and last that of the middle one, which is negative
 * @param allowed how deep it may be, in nanometres
 */
record ChordRow(int[] nodes, double[] weights, double allowed) {
  static ChordRow of(GridLine line, int middle, double from, double to, double allowed) {
    double[] sums = new double[line.size()];
    double[] at = line.at();
    lean(sums, at, from, (to - at[middle]) / (to - from));
    lean(sums, at, to, (at[middle] - from) / (to - from));
    sums[middle] -= 1;
    int[] nodes = new int[5];
    double[] weights = new double[5];
    int count = 0;
    for (int i = 0; i < sums.length; i++) {
      if (i != middle && sums[i] > 1e-12) {
        nodes[count] = line.nodes()[i];
        weights[count++] = sums[i];
      }
    }
    nodes[count] = line.nodes()[middle];
    weights[count++] = sums[middle];
    return new ChordRow(Arrays.copyOf(nodes, count), Arrays.copyOf(weights, count), allowed);
  }

  private static void lean(double[] sums, double[] at, double place, double weight) {
    int left = 0;
    while (left + 2 < at.length && at[left + 1] <= place) {
      left++;
    }
    double share = (place - at[left]) / (at[left + 1] - at[left]);
    share = Math.min(1, Math.max(0, share));
    sums[left] += weight * (1 - share);
    sums[left + 1] += weight * share;
  }

  /** How much deeper than allowed the middle one is at given heights. */
  double excess(double[] heights) {
    double deep = -allowed;
    for (int i = 0; i < nodes.length; i++) {
      deep += weights[i] * heights[nodes[i]];
    }
    return deep;
  }
}
