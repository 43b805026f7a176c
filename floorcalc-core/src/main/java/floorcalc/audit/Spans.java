package floorcalc.audit;

import java.util.Arrays;

/** Stretches of a line, gathered in any order. Not thread-safe. */
final class Spans {
  private double[] from = new double[4];
  private double[] to = new double[4];
  int size;
  private boolean sorted = true;

  void add(double start, double end) {
    if (end <= start) {
      return;
    }
    if (size == from.length) {
      from = Arrays.copyOf(from, 2 * size);
      to = Arrays.copyOf(to, 2 * size);
    }
    sorted &= size == 0 || from[size - 1] <= start;
    from[size] = start;
    to[size++] = end;
  }

  private void sort() {
    if (!sorted) {
      int[] order = Segments.order(from, size);
      double[] starts = new double[size];
      double[] ends = new double[size];
      for (int i = 0; i < size; i++) {
        starts[i] = from[order[i]];
        ends[i] = to[order[i]];
      }
      from = starts;
      to = ends;
      sorted = true;
    }
  }

  /** The longest stretch between two places that none of these cover: its start and its end. */
  double[] longestGap(double start, double end) {
    sort();
    double reached = start;
    double[] longest = {start, start};
    for (int i = 0; i < size && reached < end; i++) {
      double upTo = Math.min(from[i], end);
      if (upTo - reached > longest[1] - longest[0]) {
        longest = new double[] {reached, upTo};
      }
      reached = Math.max(reached, to[i]);
    }
    if (end - reached > longest[1] - longest[0]) {
      longest = new double[] {reached, end};
    }
    return longest;
  }

  /** The longest stretch that two of these both cover: its start and its end. */
  double[] longestOverlap() {
    sort();
    double[] longest = {0, 0};
    double reached = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < size; i++) {
      double end = Math.min(reached, to[i]);
      if (end - from[i] > longest[1] - longest[0]) {
        longest = new double[] {from[i], end};
      }
      reached = Math.max(reached, to[i]);
    }
    return longest;
  }
}
