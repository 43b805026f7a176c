package floorcalc.laying;

import java.util.Arrays;

/**
 * Straight sections across a floor, each from wall to wall: how high one is at least that a piece is sure to contain. Pieces are parted
 * along the row alone, so a piece contains whole sections; of several at one place, the lowest counts.
 */
final class Sections {
  /** What rounding of corners may have added to a height, in nanometres, and more than reckoning in doubles can add. */
  private static final double ROUNDING = 4;
  /** So often sections are looked at in the length of a piece, beside those at the corners. */
  private static final int LOOKS = 16;
  /** Pieces shorter than this are not told from those of no length. */
  private static final long SHORT = 1_000_000;

  private final Patch floor;

  Sections(Patch floor) {
    this.floor = floor;
  }

  /**
   * The least that is sure of the highest section in any piece of a length or more that lies in the floor and reaches into a
   * stretch, less what rounding may have added.
   */
  long surest(long from, long to, long piece) {
    boolean anyLength = piece < SHORT;
    long low = anyLength ? from : Math.max(floor.shell().minX, from - piece);
    long high = anyLength ? to : Math.min(floor.shell().maxX, to + piece);
    long[] places = places(low, high, anyLength ? Long.MAX_VALUE : Math.max(1, piece / LOOKS));
    double[] heights = new double[places.length];
    for (int i = 0; i < places.length; i++) {
      heights[i] = height(places[i]);
    }
    double least = Double.POSITIVE_INFINITY;
    if (anyLength) {
      least = Arrays.stream(heights).min().orElse(0);
    } else {
      // A piece that begins just after one place contains all that follow within its length.
      for (int i = -1; i < places.length && (i < 0 ? low : places[i]) + piece <= high; i++) {
        double most = 0;
        long end = (i < 0 ? low : places[i]) + piece;
        for (int j = i + 1; j < places.length && places[j] <= end; j++) {
          most = Math.max(most, heights[j]);
        }
        least = Math.min(least, most);
      }
    }
    return Double.isInfinite(least) ? 0 : Math.max(0, (long) Math.floor(least - ROUNDING));
  }

  /** Both ends, the corners between, and places no further apart than a step. */
  private long[] places(long from, long to, long step) {
    long[] places = new long[16];
    int n = 0;
    for (long place = from; place < to && place >= from; place += step) {
      places = n == places.length ? Arrays.copyOf(places, 2 * n) : places;
      places[n++] = place;
      if (step > to - place) {
        break;
      }
    }
    for (Loop loop : floor.loops()) {
      for (long corner : loop.x) {
        if (corner > from && corner < to) {
          places = n == places.length ? Arrays.copyOf(places, 2 * n) : places;
          places[n++] = corner;
        }
      }
    }
    places = Arrays.copyOf(places, n + 1);
    places[n] = to;
    return Arrays.stream(places).sorted().distinct().toArray();
  }

  /** The height of the lowest section just before a place and just after it. */
  private double height(long place) {
    return Math.min(height(place, 0), height(place, 1));
  }

  /** As seen from before (0) or after (1) the place; infinite beyond the floor's ends. */
  private double height(long place, int after) {
    double[] walls = new double[8];
    int n = 0;
    for (Loop loop : floor.loops()) {
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
