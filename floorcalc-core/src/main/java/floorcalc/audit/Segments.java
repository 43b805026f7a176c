package floorcalc.audit;

import java.util.Arrays;

/** A growing list of line segments, each with a sign and an owner. Not thread-safe; kept and cleared to save memory. */
final class Segments {
  double[] x0 = new double[64];
  double[] y0 = new double[64];
  double[] x1 = new double[64];
  double[] y1 = new double[64];
  int[] sign = new int[64];
  int[] owner = new int[64];
  int size;

  void clear() {
    size = 0;
  }

  void add(double ax, double ay, double bx, double by, int itsSign, int itsOwner) {
    if (size == x0.length) {
      int more = size * 2;
      x0 = Arrays.copyOf(x0, more);
      y0 = Arrays.copyOf(y0, more);
      x1 = Arrays.copyOf(x1, more);
      y1 = Arrays.copyOf(y1, more);
      sign = Arrays.copyOf(sign, more);
      owner = Arrays.copyOf(owner, more);
    }
    x0[size] = ax;
    y0[size] = ay;
    x1[size] = bx;
    y1[size] = by;
    sign[size] = itsSign;
    owner[size] = itsOwner;
    size++;
  }

  /** The places of the segments in the order of x0: most often they are in this order already. */
  int[] orderedByX() {
    return order(x0, size);
  }

  static int[] order(double[] keys, int n) {
    int[] order = new int[n];
    boolean sorted = true;
    for (int i = 0; i < n; i++) {
      order[i] = i;
      sorted &= i == 0 || keys[i - 1] <= keys[i];
    }
    return sorted ? order : merged(order, keys);
  }

  private static int[] merged(int[] order, double[] keys) {
    int n = order.length;
    int[] from = order;
    int[] to = new int[n];
    for (int width = 1; width < n && width > 0; width *= 2) {
      for (int low = 0; low < n; low += 2 * width) {
        int mid = Math.min(low + width, n);
        int high = Math.min(low + 2 * width, n);
        int a = low;
        int b = mid;
        for (int k = low; k < high; k++) {
          to[k] = a < mid && (b >= high || keys[from[a]] <= keys[from[b]]) ? from[a++] : from[b++];
        }
      }
      int[] swap = from;
      from = to;
      to = swap;
    }
    return from;
  }
}
