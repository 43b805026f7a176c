package floorcalc.outline;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * The walls of several rings in one list, those without length left out, and a sweep along x that finds the pairs near
 * each other.
 */
final class Walls {
  final long[] ax;
  final long[] ay;
  final long[] bx;
  final long[] by;
  /** The ring of each wall, from 0. */
  final int[] ring;
  /** The index of each wall within its ring, from 0. */
  final int[] index;
  /** The wall that starts where this one ends. */
  final int[] next;
  final int count;

  /** What is told of two walls, the one of the lower place in the list first. */
  interface Pair {
    /** Looks at a pair; false ends the sweep. */
    boolean look(int first, int second);
  }

  private Walls(int capacity, List<Ring> rings) {
    ax = new long[capacity];
    ay = new long[capacity];
    bx = new long[capacity];
    by = new long[capacity];
    ring = new int[capacity];
    index = new int[capacity];
    next = new int[capacity];
    int place = 0;
    for (int r = 0; r < rings.size(); r++) {
      place = add(rings.get(r), r, place);
    }
    count = place;
  }

  static Walls of(List<Ring> rings) {
    return new Walls(rings.stream().mapToInt(Ring::size).sum(), rings);
  }

  private int add(Ring corners, int number, int start) {
    int place = start;
    int n = corners.size();
    for (int i = 0; i < n; i++) {
      int to = i + 1 == n ? 0 : i + 1;
      if (corners.x(i) == corners.x(to) && corners.y(i) == corners.y(to)) {
        continue;
      }
      ax[place] = corners.x(i);
      ay[place] = corners.y(i);
      bx[place] = corners.x(to);
      by[place] = corners.y(to);
      ring[place] = number;
      index[place] = i;
      next[place] = place + 1;
      place++;
    }
    if (place > start) {
      next[place - 1] = start;
    }
    return place;
  }

  /** Calls for each pair of walls whose upright boxes come within the margin of each other along x and along y. */
  void sweep(long margin, Pair pair) {
    Integer[] order = new Integer[count];
    Arrays.setAll(order, i -> i);
    Arrays.sort(order, Comparator.comparingLong((Integer i) -> Math.min(ax[i], bx[i])).thenComparing(i -> i));
    int[] active = new int[count];
    int size = 0;
    for (int current : order) {
      long from = Math.min(ax[current], bx[current]) - margin;
      long low = Math.min(ay[current], by[current]) - margin;
      long high = Math.max(ay[current], by[current]) + margin;
      int kept = 0;
      for (int k = 0; k < size; k++) {
        int other = active[k];
        if (Math.max(ax[other], bx[other]) < from) {
          continue;
        }
        active[kept++] = other;
        if (Math.max(ay[other], by[other]) >= low && Math.min(ay[other], by[other]) <= high
            && !pair.look(Math.min(current, other), Math.max(current, other))) {
          return;
        }
      }
      active[kept] = current;
      size = kept + 1;
    }
  }

  /** Tells on which side of the line along wall i a place lies: 1 on its left, 0 on the line, -1 on its right. */
  int side(int wall, long x, long y) {
    return Exact.side(ax[wall], ay[wall], bx[wall], by[wall], x, y);
  }
}
