package floorcalc.laying;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** What is sure of every piece, against pieces laid by chance. */
class SectionsPropertyTest {
  private static final long MM = 1_000_000;

  /** A floor with a straight low side and a high side that rises and falls by chance. */
  private static Loop floor(Random random, int corners) {
    long[] x = new long[corners + 2];
    long[] y = new long[corners + 2];
    x[1] = 5000 * MM;
    for (int i = 0; i < corners; i++) {
      x[i + 2] = (corners - 1 - i) * 5000 * MM / (corners - 1);
      y[i + 2] = (20 + random.nextInt(180)) * MM;
    }
    return Loop.of(x, y);
  }

  /** The highest of sections at many places of a piece. */
  private static double highest(Loop floor, long from, long to) {
    double highest = 0;
    for (int i = 0; i <= 200; i++) {
      double place = from + (to - from) / 200.0 * i;
      for (int k = 2; k + 1 < floor.size(); k++) {
        if (floor.x[k + 1] <= place && place <= floor.x[k]) {
          double share = (place - floor.x[k]) / (floor.x[k + 1] - floor.x[k]);
          highest = Math.max(highest, floor.y[k] + share * (floor.y[k + 1] - floor.y[k]));
        }
      }
    }
    return highest;
  }

  @Property(tries = 300)
  void noPieceIsLower(@ForAll long seed, @ForAll @IntRange(min = 2, max = 12) int corners,
      @ForAll @IntRange(min = 100, max = 1500) int piece) {
    Random random = new Random(seed);
    Loop floor = floor(random, corners);
    long from = random.nextInt(3000) * MM;
    long to = from + (1 + random.nextInt(1999)) * MM;
    long sure = new Sections(new Patch(floor, List.of()), 0, 5000 * MM, piece * MM).highestIn(from, to);
    double least = Double.MAX_VALUE;
    for (int i = 0; i < 200; i++) {
      // Pieces of just the length and of more, that lie in the floor and reach into the stretch.
      long length = Math.min(5000, piece + (i % 2 == 0 ? 0 : random.nextInt(800))) * MM;
      long low = Math.max(0, from - length);
      long high = Math.min(to, 5000 * MM - length);
      long start = low + (long) (random.nextDouble() * (high - low));
      least = Math.min(least, highest(floor, start, start + length));
    }
    // Between two of 200 places in a piece the highest may rise by the steepest slope, 180 mm from corner to corner, at most.
    double missed = 180.0 * MM * (corners - 1) / 5000 * (piece + 800) / 200;
    assertThat((double) sure).isLessThanOrEqualTo(least + missed);
  }
}
