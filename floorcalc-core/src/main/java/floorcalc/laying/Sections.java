package floorcalc.laying;

import java.util.Arrays;
import java.util.List;

/**
 * Straight sections across a run, each from wall to wall: how high the highest is at least in any piece. Pieces are parted along the
 * row alone, so a piece contains whole sections; of several at one place, the lowest counts.
 */
final class Sections {
  /** What rounding of corners may have added to a height, in nanometres, and more than reckoning in doubles can add. */
  private static final double ROUNDING = 4;
  /** So often sections are looked at in the length of a piece, beside those at the corners. */
  private static final int LOOKS = 16;
  /** Pieces shorter than this are not told from those of no length. */
  private static final long SHORT = 1_000_000;

  private final List<Loop> loops;
  private final long to;
  /** No piece is shorter. */
  private final long piece;
  /** Where sections are looked at, in rising order. */
  private final long[] places;
  /** The highest section that is sure to lie in a piece which begins just after each of the places. */
  private final double[] sure;
  /** Where walls cross a section. */
  private double[] walls = new double[8];

  /** Looks at what lies between two places, for pieces of a length or more. */
  Sections(Patch floor, long from, long to, long piece) {
    this.loops = floor.loops();
    this.to = to;
    this.piece = piece < SHORT ? 0 : piece;
    this.places = places(from);
    double[] heights = new double[places.length];
    for (int i = 0; i < places.length; i++) {
      heights[i] = Math.min(height(places[i], 0), height(places[i], 1));
    }
    this.sure = this.piece == 0 ? heights : highestAhead(heights);
  }

  /** Both ends, the corners between, and places no further apart than a share of a piece. */
  private long[] places(long from) {
    long step = piece == 0 ? Math.max(1, to - from) : piece / LOOKS;
    int steps = (int) ((to - from) / step);
    int corners = loops.stream().mapToInt(Loop::size).sum();
    long[] all = new long[steps + 2 + corners];
    int n = 0;
    for (int i = 0; i <= steps; i++) {
      all[n++] = from + step * i;
    }
    all[n++] = to;
    for (Loop loop : loops) {
      for (long corner : loop.x) {
        all[n++] = Math.max(from, Math.min(to, corner));
      }
    }
    Arrays.sort(all);
    return all;
  }

  /** For each place the greatest height at those that follow within a piece's length. */
  private double[] highestAhead(double[] heights) {
    double[] highest = new double[heights.length];
    int[] falling = new int[heights.length];
    int first = 0;
    int end = 0;
    int next = 0;
    for (int i = 0; i < heights.length; i++) {
      while (next < heights.length && places[next] <= places[i] + piece) {
        while (end > first && heights[falling[end - 1]] <= heights[next]) {
          end--;
        }
        falling[end++] = next++;
      }
      while (first < end && falling[first] <= i) {
        first++;
      }
      highest[i] = first < end ? heights[falling[first]] : 0;
    }
    return highest;
  }

  /** The highest section that is sure to lie in any piece that reaches into a stretch, less what rounding may have added. */
  long highestIn(long low, long high) {
    double least = Double.POSITIVE_INFINITY;
    long last = Math.min(high, to - piece);
    for (int i = Math.max(0, lastBefore(low - piece)); i < places.length && places[i] <= last; i++) {
      least = Math.min(least, sure[i]);
    }
    return Double.isInfinite(least) ? 0 : Math.max(0, (long) Math.floor(least - ROUNDING));
  }

  /** Tells whether it makes little difference to any stretch in which piece it lies. */
  boolean areAlike(long little) {
    double least = Double.POSITIVE_INFINITY;
    double most = 0;
    for (int i = 0; i < places.length && places[i] <= to - piece; i++) {
      least = Math.min(least, sure[i]);
      most = Math.max(most, sure[i]);
    }
    return most - least <= little;
  }

  private int lastBefore(long place) {
    int found = Arrays.binarySearch(places, place);
    int index = found < 0 ? -found - 2 : found;
    while (index > 0 && places[index - 1] == place) {
      index--;
    }
    return index;
  }

  /** The lowest section as seen from before (0) or after (1) a place; infinite beyond the floor's ends. */
  private double height(long place, int after) {
    int n = 0;
    for (Loop loop : loops) {
      for (int i = 0; i < loop.size(); i++) {
        int next = i + 1 < loop.size() ? i + 1 : 0;
        long left = Math.min(loop.x[i], loop.x[next]);
        long right = Math.max(loop.x[i], loop.x[next]);
        if (left < place + after && place + after <= right) {
          double share = (double) (place - loop.x[i]) / (loop.x[next] - loop.x[i]);
          walls = n == walls.length ? Arrays.copyOf(walls, 2 * n) : walls;
          walls[n++] = loop.y[i] + share * (loop.y[next] - loop.y[i]);
        }
      }
    }
    Arrays.sort(walls, 0, n);
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i + 1 < n; i += 2) {
      least = Math.min(least, walls[i + 1] - walls[i]);
    }
    return least;
  }
}
