package floorcalc.flatness;

import java.util.Arrays;

/**
 * The readings that decide where the chord from end to end has nothing above it while an edge slides along a {@link Slide}.
 * <p>
 * At each slide it is the corner of the readings' hull that is as steep as the chord, and the chord turns one way only: so these
 * corners are neighbours, passed one after the other. Those whose gap turns within the slide are kept. The others on one side of
 * them only come up from below, those on the other only go down: of each side the one counts at which the least gap of the
 * side goes through zero, found by halving. Corners next to it are kept too, for the rounding.
 */
final class Touching {
  private final HeightProfile profile;
  private final Slide slide;
  private final SlidingHull hull;
  private final StepCount tally;
  private final int[] found;
  private int count;

  Touching(HeightProfile profile, Slide slide, SlidingHull hull, StepCount tally) {
    this.profile = profile;
    this.slide = slide;
    this.hull = hull;
    this.tally = tally;
    double bend = slide.bend();
    int one = steepAs(slide.steepness(0));
    int other = steepAs(slide.steepness(slide.slide()));
    int low = Math.max(0, Math.min(one, other) - 1);
    int high = Math.min(hull.size() - 1, Math.max(one, other) + 1);
    int turning = bend == 0 ? high + 1 : cornerAt(low, high, slide.firstTurning());
    int notTurning = bend == 0 ? high + 1 : cornerAt(low, high, slide.firstNotTurning());
    found = new int[notTurning - turning + 6];
    if (bend == 0) {
      keep(low, high);
      return;
    }
    keep(turning, notTurning - 1);
    if (low < turning) {
      keepAround(bend > 0 ? root(turning - 1, low, -1) : root(low, turning - 1, 1), low, turning - 1);
    }
    if (notTurning <= high) {
      keepAround(bend > 0 ? root(high, notTurning, 1) : root(notTurning, high, -1), notTurning, high);
    }
  }

  int[] readings() {
    return Arrays.copyOf(found, count);
  }

  private void keep(int from, int to) {
    for (int corner = from; corner <= to; corner++) {
      found[count++] = hull.reading(corner);
    }
  }

  private void keepAround(int corner, int low, int high) {
    keep(Math.max(low, corner - 1), Math.min(high, corner + 1));
  }

  /** The corner that a line of a slope touches from above. */
  private int steepAs(double slope) {
    int corner = 0;
    int beyond = hull.size() - 1;
    while (corner < beyond) {
      tally.step();
      int k = (corner + beyond) >>> 1;
      if (slopeAfter(k) >= slope) {
        corner = k + 1;
      } else {
        beyond = k;
      }
    }
    return corner;
  }

  private double slopeAfter(int corner) {
    int one = hull.reading(corner);
    int other = hull.reading(corner + 1);
    return (double) (profile.height(other) - profile.height(one)) / (profile.place(other) - profile.place(one));
  }

  /** The first of some corners at or beyond a reading; the one after the last if there is none. */
  private int cornerAt(int low, int high, int reading) {
    int before = low - 1;
    int corner = high + 1;
    while (corner - before > 1) {
      tally.step();
      int k = (before + corner) >>> 1;
      if (hull.reading(k) >= reading) {
        corner = k;
      } else {
        before = k;
      }
    }
    return corner;
  }

  /** The corner at which the least gap of a side goes through zero: upwards with sign 1, downwards with sign −1. */
  private int root(int earliest, int latest, int sign) {
    int way = earliest <= latest ? 1 : -1;
    int passed = -1;
    int steps = (latest - earliest) * way;
    while (steps - passed > 1) {
      tally.step();
      int k = (passed + steps) >>> 1;
      int corner = earliest + way * k;
      double switchSlope = slopeAfter(way > 0 ? corner : corner - 1);
      double end = Math.max(0, Math.min(slide.slide(), (switchSlope - slide.steepness(0)) / slide.bend()));
      if (sign * slide.gap(hull.reading(corner), end) >= 0) {
        steps = k;
      } else {
        passed = k;
      }
    }
    return earliest + way * steps;
  }
}
