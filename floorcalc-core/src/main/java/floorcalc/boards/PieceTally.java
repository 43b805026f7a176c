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
  /** There are at most two to this power cells. */
  private static final int CELL_DIGITS = 7;
  private static final double[] POWER = powers();
  /** The share of a stretch between two lengths that weighs even if it is short. */
  private static final double LEAST_SHARE = 0.02;

  private final long fitting;
  private final double perFitting;
  /** So many binary digits of a length are left out to find its cell. */
  private final int shift;
  /** End pieces and the partners of start pieces in rising order: twice the length, and one more for a partner. */
  private long[] keys;
  private int count;
  private int endCount;
  private long whole;

  private long[] at;
  private int[] load;
  private double[] power;
  private double[] sum;
  private int marks;
  /** The first mark in each cell of a board's length or beyond it. */
  private final int[] firstIn;

  PieceTally(Stock stock, int rows) {
    this.fitting = stock.longest() - stock.kerf;
    this.perFitting = 1 / (double) fitting;
    this.shift = Math.max(0, 64 - Long.numberOfLeadingZeros(stock.longest()) - CELL_DIGITS);
    this.firstIn = new int[(int) (stock.longest() >> shift) + 1];
    this.keys = new long[2 * rows + 16];
    makeRoom();
  }

  private void makeRoom() {
    this.at = new long[keys.length + 2];
    this.load = new int[at.length];
    this.power = new double[at.length];
    this.sum = new double[at.length + 1];
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
      endCount++;
      insert(2 * end);
    }
    if (start > 0) {
      insert(2 * (fitting - start) + 1);
    }
  }

  void remove(long start, long end, long boards) {
    whole -= boards;
    if (end > 0) {
      endCount--;
      delete(2 * end);
    }
    if (start > 0) {
      delete(2 * (fitting - start) + 1);
    }
  }

  private void insert(long key) {
    if (count == keys.length) {
      keys = Arrays.copyOf(keys, 2 * count);
      makeRoom();
    }
    int i = count++;
    while (i > 0 && keys[i - 1] > key) {
      keys[i] = keys[i - 1];
      i--;
    }
    keys[i] = key;
  }

  private void delete(long key) {
    int i = --count;
    long moved = keys[i];
    while (moved != key) {
      i--;
      long next = keys[i];
      keys[i] = moved;
      moved = next;
    }
  }

  /** How many end pieces and start pieces are counted. */
  int count() {
    return count;
  }

  /** Tells whether a piece, in rising order of {@link #length}, is an end piece. */
  boolean isEnd(int index) {
    return (keys[index] & 1) == 0;
  }

  /** The length of an end piece, or of the longest that fits beside a start piece. */
  long length(int index) {
    return keys[index] >> 1;
  }

  /** Tells whether a piece is like the one before it. */
  boolean isAgain(int index) {
    return index > 0 && keys[index] == keys[index - 1];
  }

  /** How many more end pieces of a length there are than start pieces that fill a board beside it and a kerf. */
  int endsOver(long length) {
    int low = 0;
    int high = count;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (keys[middle] < 2 * length) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    int over = 0;
    while (low < count && keys[low] >> 1 == length) {
      over += 1 - 2 * (int) (keys[low++] & 1);
    }
    return over;
  }

  /** The number of boards, exactly. */
  int boards() {
    int now = endCount;
    int most = now;
    for (int i = 0; i < count; i++) {
      now += (int) (keys[i] & 1) * 2 - 1;
      most = Math.max(most, now);
    }
    return (int) (whole + most);
  }

  /** Finds the loads, and their unevenness as seen from a number of boards. */
  void weigh(int reference) {
    int beyond = (int) (whole - reference) + POWERS;
    int now = endCount;
    long low = 0;
    long mark = Long.MIN_VALUE;
    double total = 0;
    int cell = 0;
    sum[0] = 0;
    for (int i = 0; i <= count; i++) {
      long next = i < count ? keys[i] >> 1 : Long.MAX_VALUE;
      long high = Math.max(low, Math.min(next, fitting));
      double weight = POWER[Math.max(0, Math.min(2 * POWERS, now + beyond))];
      at[i] = mark;
      load[i] = now;
      power[i] = weight;
      total += next == mark ? 0 : (LEAST_SHARE + (high - low) * perFitting) * weight;
      sum[i + 1] = total;
      int last = i < count ? cellOf(next) : firstIn.length - 1;
      while (cell <= last) {
        firstIn[cell++] = i + 1;
      }
      low = high;
      mark = next;
      now += i < count ? (int) (keys[i] & 1) * 2 - 1 : 0;
    }
    marks = count + 1;
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

  /** How many times heavier all is with some boards more. */
  double timesHeavier(long boards) {
    return power(boards);
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
    return length < 0 ? 0 : (int) (length >> shift);
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
    // From the longest down, an end piece takes the start piece with the least room among those with room enough.
    long[] free = new long[count];
    int freePartners = 0;
    int freeEnds = 0;
    long[] ends = new long[count];
    for (int i = count - 1; i >= 0; i--) {
      if ((keys[i] & 1) != 0) {
        free[freePartners++] = keys[i];
      } else if (freePartners > 0) {
        freePartners--;
        whole++;
      } else {
        ends[freeEnds++] = keys[i];
      }
    }
    int keptPartners = Math.min(kept, freePartners);
    int keptEnds = Math.min(kept, freeEnds);
    whole += freePartners - keptPartners + freeEnds - keptEnds;
    endCount = keptEnds;
    count = 0;
    for (int i = 0; i < keptPartners; i++) {
      insert(free[i]);
    }
    for (int i = freeEnds - keptEnds; i < freeEnds; i++) {
      insert(ends[i]);
    }
  }
}
