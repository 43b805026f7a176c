package floorcalc.audit;

import java.util.Arrays;

/** Segments sorted into bands of equal height, so that only those near a place need be looked at. */
final class Bands {
  private final double low;
  private final double height;
  private final int bands;
  private final int[] start;
  private final int[] member;

  Bands(double[] y0, double[] y1, int n) {
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < n; i++) {
      least = Math.min(least, Math.min(y0[i], y1[i]));
      most = Math.max(most, Math.max(y0[i], y1[i]));
    }
    bands = Math.max(1, Math.min(n, 4096));
    low = n == 0 ? 0 : least;
    height = Math.max(1, n == 0 ? 1 : (most - least) / bands);
    start = new int[bands + 1];
    for (int i = 0; i < n; i++) {
      for (int band = band(Math.min(y0[i], y1[i])); band <= band(Math.max(y0[i], y1[i])); band++) {
        start[band + 1]++;
      }
    }
    for (int band = 0; band < bands; band++) {
      start[band + 1] += start[band];
    }
    member = new int[start[bands]];
    int[] next = Arrays.copyOf(start, bands + 1);
    for (int i = 0; i < n; i++) {
      for (int band = band(Math.min(y0[i], y1[i])); band <= band(Math.max(y0[i], y1[i])); band++) {
        member[next[band]++] = i;
      }
    }
  }

  private int band(double y) {
    return (int) Math.max(0, Math.min(bands - 1, (y - low) / height));
  }

  /** The first place in the list of members to look at for heights from y on. */
  int first(double y) {
    return start[band(y)];
  }

  /** The place behind the last to look at for heights up to y. */
  int last(double y) {
    return start[band(y) + 1];
  }

  /** The segment at a place; one that is in several bands comes up several times. */
  int member(int place) {
    return member[place];
  }
}
