package floorcalc.laying;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Cuts floor along a level or an upright line. What is below and above (or left and right) share the corners made on
 * the line, so between them there is neither a hole nor an overlap, whatever the rounding of those corners; a slanted
 * side that is cut moves by half a nanometre at most.
 * <p>
 * Method: each loop is walked once. Where it crosses the line a corner is made, rounded to the nanometre. The stretches
 * on one side of the line then start and end on it; sorted along the line, the k-th end is joined to the k-th start.
 * A loop that only touches the line is not cut.
 */
final class Saw {
  private Saw() {}

  /** The parts on either side of a line. */
  record Parts(List<Loop> low, List<Loop> high) {}

  /** Cuts along the level line y = at. */
  static Parts level(List<Loop> floor, long at) {
    return cut(floor, at, false);
  }

  /** Cuts along the upright line x = at. */
  static Parts upright(List<Loop> floor, long at) {
    return cut(floor, at, true);
  }

  /** The same loop with a corner wherever a side crosses one of the lines, given in rising order. */
  static Loop withCrossings(Loop loop, long[] lines, boolean upright) {
    long[] u = upright ? loop.y : loop.x;
    long[] v = upright ? loop.x : loop.y;
    int n = u.length;
    int[] first = new int[n];
    int[] last = new int[n];
    int total = n;
    for (int i = 0; i < n; i++) {
      int j = i + 1 < n ? i + 1 : 0;
      first[i] = firstAbove(lines, Math.min(v[i], v[j]));
      last[i] = Math.max(first[i], firstAbove(lines, Math.max(v[i], v[j]) - 1));
      total += last[i] - first[i];
    }
    if (total == n) {
      return loop;
    }
    long[] along = new long[total];
    long[] off = new long[total];
    int size = 0;
    for (int i = 0; i < n; i++) {
      int j = i + 1 < n ? i + 1 : 0;
      along[size] = u[i];
      off[size++] = v[i];
      for (int k = first[i]; k < last[i]; k++) {
        long at = lines[v[i] < v[j] ? k : last[i] - 1 - (k - first[i])];
        along[size] = crossing(u[i], v[i], u[j], v[j], at);
        off[size++] = at;
      }
    }
    return upright ? Loop.of(off, along) : Loop.of(along, off);
  }

  /** The place of the first line above a value. */
  private static int firstAbove(long[] lines, long value) {
    int found = Arrays.binarySearch(lines, value);
    return found < 0 ? -found - 1 : found + 1;
  }

  private static Parts cut(List<Loop> floor, long at, boolean upright) {
    Side low = new Side();
    Side high = new Side();
    for (Loop loop : floor) {
      long min = upright ? loop.minX : loop.minY;
      long max = upright ? loop.maxX : loop.maxY;
      if (max < at || max == at && !hasSideOn(loop, at, upright)) {
        low.whole.add(loop);
      } else if (min > at || min == at && !hasSideOn(loop, at, upright)) {
        high.whole.add(loop);
      } else {
        walk(loop, at, upright, low, high);
      }
    }
    return new Parts(low.join(upright), high.join(upright));
  }

  /** Tells whether a side lies on the line: a hole with such a side is a notch of the part that it lies in. */
  private static boolean hasSideOn(Loop loop, long at, boolean upright) {
    long[] v = upright ? loop.x : loop.y;
    for (int i = 0, j = v.length - 1; i < v.length; j = i++) {
      if (v[i] == at && v[j] == at) {
        return true;
      }
    }
    return false;
  }

  private static void walk(Loop loop, long at, boolean upright, Side low, Side high) {
    long[] u = upright ? loop.y : loop.x;
    long[] v = upright ? loop.x : loop.y;
    int n = u.length;
    long[] along = new long[2 * n];
    long[] off = new long[2 * n];
    int size = 0;
    for (int i = 0; i < n; i++) {
      int j = i + 1 < n ? i + 1 : 0;
      along[size] = u[i];
      off[size++] = v[i];
      if (v[i] < at && v[j] > at || v[i] > at && v[j] < at) {
        along[size] = crossing(u[i], v[i], u[j], v[j], at);
        off[size++] = at;
      }
    }
    gather(along, off, size, at, -1, low);
    gather(along, off, size, at, 1, high);
  }

  /** Collects the stretches of a loop on one side of the line; a single corner on the line between two of them does not part them. */
  private static void gather(long[] along, long[] off, int size, long at, int sign, Side side) {
    int first = -1;
    for (int i = 0; i < size; i++) {
      int before = i > 0 ? i - 1 : size - 1;
      int after = i + 1 < size ? i + 1 : 0;
      if (off[i] == at && Long.compare(off[after], at) == sign && Long.compare(off[before], at) != sign) {
        first = i;
        break;
      }
    }
    if (first < 0) {
      return;
    }
    int i = 0;
    while (i < size) {
      int start = (first + i) % size;
      int next = (start + 1) % size;
      if (off[start] == at && Long.compare(off[next], at) == sign) {
        long[] u = new long[size - i + 1];
        long[] v = new long[size - i + 1];
        int length = 0;
        u[length] = along[start];
        v[length++] = at;
        i++;
        while (true) {
          int k = (first + i) % size;
          u[length] = along[k];
          v[length++] = off[k];
          int after = (k + 1) % size;
          if (off[k] == at && (Long.compare(off[after], at) != sign || i >= size)) {
            break;
          }
          i++;
        }
        side.add(Arrays.copyOf(u, length), Arrays.copyOf(v, length));
      } else {
        i++;
      }
    }
  }

  /** The place along the line at which a side crosses it, worked out from its low end so that both ways give one answer. */
  private static long crossing(long u1, long v1, long u2, long v2, long at) {
    if (v1 > v2) {
      return crossing(u2, v2, u1, v1, at);
    }
    double share = (double) (at - v1) / (v2 - v1);
    return u1 + (long) StrictMath.rint((u2 - u1) * share);
  }

  /** The stretches on one side of the line, and the loops that lie there whole. */
  private static final class Side {
    final List<Loop> whole = new ArrayList<>();
    private final List<long[]> alongs = new ArrayList<>();
    private final List<long[]> offs = new ArrayList<>();

    void add(long[] along, long[] off) {
      alongs.add(along);
      offs.add(off);
    }

    List<Loop> join(boolean upright) {
      int count = alongs.size();
      if (count == 0) {
        return whole;
      }
      Integer[] byStart = order(count, true);
      Integer[] byEnd = order(count, false);
      int[] nextOf = new int[count];
      for (int k = 0; k < count; k++) {
        nextOf[byEnd[k]] = byStart[k];
      }
      boolean[] done = new boolean[count];
      for (int k = 0; k < count; k++) {
        if (!done[k]) {
          Loop loop = trace(k, nextOf, done, upright);
          if (loop != null) {
            whole.add(loop);
          }
        }
      }
      return whole;
    }

    private Integer[] order(int count, boolean starts) {
      Integer[] order = new Integer[count];
      for (int k = 0; k < count; k++) {
        order[k] = k;
      }
      Arrays.sort(order, (a, b) -> {
        long[] first = alongs.get(a);
        long[] second = alongs.get(b);
        return starts
            ? Long.compare(first[0], second[0])
            : Long.compare(first[first.length - 1], second[second.length - 1]);
      });
      return order;
    }

    private Loop trace(int from, int[] nextOf, boolean[] done, boolean upright) {
      int total = 0;
      for (int k = from; !done[k]; k = nextOf[k]) {
        done[k] = true;
        total += alongs.get(k).length;
      }
      long[] u = new long[total];
      long[] v = new long[total];
      int size = 0;
      int k = from;
      do {
        long[] along = alongs.get(k);
        System.arraycopy(along, 0, u, size, along.length);
        System.arraycopy(offs.get(k), 0, v, size, along.length);
        size += along.length;
        k = nextOf[k];
      } while (k != from);
      return upright ? Loop.tidy(v, u, size) : Loop.tidy(u, v, size);
    }
  }
}
