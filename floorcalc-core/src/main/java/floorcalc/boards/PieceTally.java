package floorcalc.boards;

import java.util.Arrays;

/**
 * Counts the boards that whole boards, end pieces and start pieces take when they are paired as well as can be.
 * <p>
 * An end piece e and a start piece s come from one board if e is at most f - s, where f is a board less a saw kerf. The pairs
 * are nested, so the most pairs leave as many boards as the greatest load: for any length t, the end pieces longer than t
 * and the start pieces with f - s at most t all need boards of their own. The greatest load over t, with the whole boards,
 * is exactly the number of boards. Beside it a measure of unevenness is kept, in which a load one greater weighs
 * {@value #STEEP} times as much: moving pieces from where the load is great to where it is small brings the boards down.
 */
final class PieceTally {
  private static final double STEEP = 30;
  private static final int POWERS = 64;
  private static final int CELLS = 64;
  private static final double[] POWER = powers();
  /** The share of a stretch between two lengths that weighs even if it is short. */
  private static final double LEAST_SHARE = 0.02;

  private final long fitting;
  private long[] ends;
  private long[] partners;
  private int endCount;
  private int partnerCount;
  private long whole;

  private long[] at;
  private int[] load;
  private double[] power;
  private double[] sum;
  private int marks;
  /** The first mark in each cell of a board's length or beyond it. */
  private final int[] firstIn = new int[CELLS + 1];
  private final double cells;
  private final double perFitting;

  PieceTally(Stock stock, int rows) {
    this.fitting = stock.longest() - stock.kerf;
    this.cells = CELLS / (double) stock.longest();
    this.perFitting = 1 / (double) fitting;
    this.ends = new long[rows + 8];
    this.partners = new long[rows + 8];
    this.at = new long[2 * rows + 20];
    this.load = new int[2 * rows + 20];
    this.power = new double[2 * rows + 20];
    this.sum = new double[2 * rows + 20];
  }

  private static double[] powers() {
    double[] powers = new double[2 * POWERS + 1];
    double up = 1;
    double down = 1;
    for (int i = 0; i <= POWERS; i++) {
      powers[POWERS + i] = up;
      powers[POWERS - i] = down;
      up *= STEEP;
      down /= STEEP;
    }
    return powers;
  }

  private static double power(long exponent) {
    return POWER[(int) Math.max(0, Math.min(2 * POWERS, exponent + POWERS))];
  }

  void add(long start, long end, long boards) {
    whole += boards;
    if (end > 0) {
      ends = insert(ends, endCount++, end);
    }
    if (start > 0) {
      partners = insert(partners, partnerCount++, fitting - start);
    }
  }

  void remove(long start, long end, long boards) {
    whole -= boards;
    if (end > 0) {
      delete(ends, endCount--, end);
    }
    if (start > 0) {
      delete(partners, partnerCount--, fitting - start);
    }
  }

  private static long[] insert(long[] sorted, int count, long value) {
    long[] values = count == sorted.length ? Arrays.copyOf(sorted, 2 * count) : sorted;
    int i = count;
    while (i > 0 && values[i - 1] > value) {
      values[i] = values[i - 1];
      i--;
    }
    values[i] = value;
    return values;
  }

  private static void delete(long[] sorted, int count, long value) {
    int i = Arrays.binarySearch(sorted, 0, count, value);
    System.arraycopy(sorted, i + 1, sorted, i, count - i - 1);
  }

  int endCount() {
    return endCount;
  }

  int partnerCount() {
    return partnerCount;
  }

  /** An end piece, in rising order. */
  long end(int index) {
    return ends[index];
  }

  /** The longest end piece that fits beside a start piece, in rising order. */
  long partner(int index) {
    return partners[index];
  }

  /** The number of boards, exactly. */
  int boards() {
    int now = endCount;
    int most = now;
    int end = 0;
    for (int i = 0; i < partnerCount; i++) {
      long mark = partners[i];
      while (end < endCount && ends[end] <= mark) {
        end++;
        now--;
      }
      now++;
      most = Math.max(most, now);
    }
    return (int) (whole + most);
  }

  /** Finds the loads, and their unevenness as seen from a number of boards. */
  void weigh(int reference) {
    if (at.length < endCount + partnerCount + 2) {
      at = new long[2 * (endCount + partnerCount) + 2];
      load = new int[at.length];
      power = new double[at.length];
      sum = new double[at.length];
    }
    int end = 0;
    int partner = 0;
    int now = endCount;
    long low = 0;
    int cell = 0;
    marks = 0;
    sum[0] = 0;
    long mark = Long.MIN_VALUE;
    while (true) {
      long next = Math.min(end < endCount ? ends[end] : Long.MAX_VALUE,
          partner < partnerCount ? partners[partner] : Long.MAX_VALUE);
      long high = Math.max(low, Math.min(next, fitting));
      at[marks] = mark;
      load[marks] = now;
      power[marks] = power(now + whole - reference);
      sum[marks + 1] = sum[marks] + (LEAST_SHARE + (high - low) * perFitting) * power[marks];
      marks++;
      int last = next == Long.MAX_VALUE ? CELLS : cellOf(next);
      while (cell <= last) {
        firstIn[cell++] = marks;
      }
      if (next == Long.MAX_VALUE) {
        return;
      }
      low = high;
      mark = next;
      while (end < endCount && ends[end] == next) {
        end++;
        now--;
      }
      while (partner < partnerCount && partners[partner] == next) {
        partner++;
        now++;
      }
    }
  }

  /** The unevenness with one more run; after {@link #weigh}. */
  double uneven(long start, long end, long boards) {
    int below = end > 0 ? firstAt(end) : 0;
    int above = start > 0 ? firstAt(fitting - start) : marks;
    double sumBelow = sum[below] - (end > 0 ? beyond(below, end, 0) : 0);
    double sumAbove = sum[above] - (start > 0 ? beyond(above, fitting - start, LEAST_SHARE / 2) : 0);
    double once;
    if (sumBelow <= sumAbove) {
      once = STEEP * (sumBelow + sum[marks] - sumAbove) + sumAbove - sumBelow;
    } else {
      once = STEEP * (sumAbove + sum[marks] - sumBelow + STEEP * (sumBelow - sumAbove));
    }
    return once * power(boards);
  }

  /** What the stretch before a mark weighs beyond a length in it. */
  private double beyond(int mark, long length, double share) {
    long next = mark < marks ? at[mark] : fitting;
    return mark == 0 || next <= length ? 0 : (share + (next - length) * perFitting) * power[mark - 1];
  }

  /** The first mark at a length or beyond it. */
  private int firstAt(long length) {
    int mark = firstIn[cellOf(length)];
    while (mark < marks && at[mark] < length) {
      mark++;
    }
    return mark;
  }

  private int cellOf(long length) {
    return (int) Math.max(0, Math.min(CELLS, length * cells));
  }

  /** The number of boards with one more run, exactly; after {@link #weigh}. */
  int boardsWith(long start, long end, long boards) {
    long partner = start > 0 ? fitting - start : Long.MAX_VALUE;
    long piece = end > 0 ? end : Long.MIN_VALUE;
    int most = 0;
    for (int i = 0; i < marks; i++) {
      int here = load[i] + (at[i] < piece ? 1 : 0) + (at[i] >= partner ? 1 : 0);
      most = Math.max(most, here);
    }
    if (start > 0) {
      int i = firstAt(partner + 1) - 1;
      most = Math.max(most, load[i] + (partner < piece ? 1 : 0) + 1);
    }
    return (int) (whole + boards) + most;
  }

  /** Pairs all pieces, counts the pairs as boards, and keeps no more than some of the pieces without a partner, the shortest. */
  void settle(int kept) {
    long[] freeEnds = new long[endCount];
    int freeEndCount = 0;
    long[] stack = new long[partnerCount];
    int height = 0;
    int next = partnerCount - 1;
    boolean[] taken = new boolean[partnerCount];
    int[] place = new int[partnerCount];
    for (int i = endCount - 1; i >= 0; i--) {
      while (next >= 0 && partners[next] >= ends[i]) {
        place[height] = next;
        stack[height++] = partners[next--];
      }
      if (height > 0) {
        taken[place[--height]] = true;
        whole++;
      } else {
        freeEnds[freeEndCount++] = ends[i];
      }
    }
    int keptPartners = 0;
    for (int i = partnerCount - 1; i >= 0; i--) {
      if (!taken[i]) {
        if (keptPartners < kept) {
          stack[keptPartners++] = partners[i];
        } else {
          whole++;
        }
      }
    }
    int keptEnds = 0;
    for (int i = freeEndCount - 1; i >= 0; i--) {
      if (keptEnds < kept) {
        ends[keptEnds++] = freeEnds[i];
      } else {
        whole++;
      }
    }
    endCount = keptEnds;
    Arrays.sort(ends, 0, endCount);
    partnerCount = keptPartners;
    System.arraycopy(stack, 0, partners, 0, partnerCount);
    Arrays.sort(partners, 0, partnerCount);
  }
}
