package floorcalc.trims;

import java.util.Arrays;

/** How a bar is filled: which kind of bar, how many pieces of each size, how often. Never changed once made. */
record Load(int kind, int[] counts, int times) {

  Load times(int number) {
    return new Load(kind, counts, number);
  }

  Load on(int otherKind) {
    return new Load(otherKind, counts, times);
  }

  /** What the pieces of one bar take, each with its kerf. */
  long filled(Problem problem) {
    long filled = 0;
    for (int i = 0; i < counts.length; i++) {
      filled += counts[i] * problem.size(i);
    }
    return filled;
  }

  /** How often these pieces can be had from a demand, at most {@code most} times. */
  int timesIn(int[] demand, int most) {
    int times = most;
    for (int i = 0; i < counts.length && times > 0; i++) {
      if (counts[i] > 0) {
        times = Math.min(times, demand[i] / counts[i]);
      }
    }
    return times;
  }

  /** Takes the pieces of so many bars from a demand. */
  void take(int[] demand, int number) {
    for (int i = 0; i < counts.length; i++) {
      demand[i] -= counts[i] * number;
    }
  }

  @Override
  public boolean equals(Object object) {
    return object instanceof Load other && kind == other.kind && times == other.times
        && Arrays.equals(counts, other.counts);
  }

  @Override
  public int hashCode() {
    return 31 * (31 * kind + times) + Arrays.hashCode(counts);
  }

  @Override
  public String toString() {
    return times + " x kind " + kind + " " + Arrays.toString(counts);
  }
}
