package floorcalc.flatness;

import java.util.Arrays;
import java.util.function.LongConsumer;

/**
 * The placements of an edge between two neighbouring ones at which an end, or the middle, lies on a reading: both ends slide
 * along straight floor, and the readings beneath stay the same. What can be greatest in between is found in floating point, from
 * the first placement on, and then worked out at the nearest nanometre. Used by one thread.
 */
final class Slide {
  private final HeightProfile profile;
  private final long span;
  private final long from;
  private final long to;
  /** How far the edge can slide. */
  private final double slide;
  /** The first reading beyond the left end, and the one after the last reading before the right end. */
  private final int first;
  private final int beyond;
  /** Heights of the ends at the first placement, over a reading, and how they change with the slide. */
  private final long base;
  private final double left;
  private final double leftSlope;
  private final double right;
  private final double rightSlope;
  private final StepCount tally;

  Slide(HeightProfile profile, long span, long from, long to, StepCount tally) {
    this.tally = tally;
    this.profile = profile;
    this.span = span;
    this.from = from;
    this.to = to;
    this.slide = to - from;
    int i = profile.indexAt(from);
    int j = profile.indexAt(from + span);
    first = i + 1;
    beyond = j + 1;
    base = profile.height(i);
    leftSlope = slope(i);
    rightSlope = slope(j);
    left = (from - profile.place(i)) * leftSlope;
    right = profile.height(j) - base + (from + span - profile.place(j)) * rightSlope;
  }

  /** How the floor rises from a reading to the next; from the last one, where no end can slide on, as before it. */
  private double slope(int reading) {
    int i = Math.min(reading, profile.size() - 2);
    return (double) (profile.height(i + 1) - profile.height(i)) / (profile.place(i + 1) - profile.place(i));
  }

  private double place(int i) {
    return profile.place(i) - from;
  }

  private double height(int i) {
    return profile.height(i) - base;
  }

  /** How fast the chord from end to end grows steeper. */
  double bend() {
    return (rightSlope - leftSlope) / span;
  }

  /** The gap at a reading beneath the chord from end to end is c0 + c1·t − bend·t² at a slide of t: this is c0. */
  private double gapAtStart(int i) {
    return left + place(i) * (right - left) / span - height(i);
  }

  /** The gap's change with the slide at the first placement: c1. */
  private double gapChange(int i) {
    return leftSlope + place(i) * bend() - (right - left) / span;
  }

  /** The gap at a reading beneath the chord from end to end. */
  double gap(int i, double t) {
    return gapAtStart(i) + (gapChange(i) - bend() * t) * t;
  }

  /** Where the gap at a reading, a parabola over the slide, has its top or its bottom; it moves on with the reading. */
  private double turn(int i) {
    return gapChange(i) / (2 * bend());
  }

  /** The first reading whose gap turns beyond the first placement. */
  int firstTurning() {
    int before = first - 1;
    int found = beyond;
    while (found - before > 1) {
      tally.step();
      int i = (before + found) >>> 1;
      if (turn(i) > 0) {
        found = i;
      } else {
        before = i;
      }
    }
    return found;
  }

  /** The first reading whose gap does not turn before the last placement. */
  int firstNotTurning() {
    int before = first - 1;
    int found = beyond;
    while (found - before > 1) {
      tally.step();
      int i = (before + found) >>> 1;
      if (turn(i) >= slide) {
        found = i;
      } else {
        before = i;
      }
    }
    return found;
  }

  /** The slope of the chord from end to end at a slide. */
  double steepness(double t) {
    return (right - left) / span + bend() * t;
  }

  double slide() {
    return slide;
  }

  int firstReading() {
    return first;
  }

  int lastReading() {
    return beyond - 1;
  }

  /** Hands out the placement at which the gap at a reading beneath the chord from end to end is greatest, if it is a top. */
  void top(LongConsumer taker) {
    double at = topIn(0, slide);
    if (at > 0) {
      place(at, taker);
    }
  }

  /** The slide at which the greatest top between two others is; −1 if there is none. */
  private double topIn(double low, double high) {
    double at = -1;
    if (bend() > 0) {
      double best = 0;
      int last = firstNotTurning();
      for (int i = firstTurning(); i < last; i++) {
        tally.step();
        double top = turn(i);
        double gap = gapAtStart(i) + gapChange(i) * top / 2;
        if (top > low && top < high && gap > best) {
          best = gap;
          at = top;
        }
      }
    }
    return at;
  }

  /** Hands out the placement nearest to a slide; those at the ends of the stretch are tried without it. */
  private void place(double at, LongConsumer taker) {
    long start = from + Math.round(at);
    if (start > from && start < to) {
      taker.accept(start);
    }
  }

  /** Hands out each reading whose gap turns between two placements, with the placement nearest to that. */
  void turns(TurnTaker taker) {
    if (bend() != 0) {
      int last = firstNotTurning();
      for (int i = firstTurning(); i < last; i++) {
        tally.step();
        int reading = i;
        place(turn(i), start -> taker.take(start, reading));
      }
    }
  }

  /** Takes a reading and a placement. */
  interface TurnTaker {
    void take(long start, int reading);
  }

  /**
   * Hands out where the edge lies on both its own ends with the greatest gap: at the ends of each part of the way on which no
   * reading stands above the chord, and at the greatest top of a parabola in it.
   */
  void endToEnd(SlidingHull hull, LongConsumer taker) {
    for (double[] part : parts(new Touching(profile, this, hull, tally).readings())) {
      place(part[0], taker);
      double top = topIn(part[0], part[1]);
      if (top > 0) {
        place(top, taker);
      }
      place(part[1], taker);
    }
  }

  /** The parts of the way on which no reading stands above the chord from end to end, by the readings that may touch it. */
  private double[][] parts(int[] readings) {
    double[][] blocked = new double[2 * readings.length][];
    int count = 0;
    double bend = bend();
    for (int i : readings) {
      tally.step();
      double c0 = gapAtStart(i);
      double c1 = gapChange(i);
      double root = c1 * c1 + 4 * bend * c0;
      if (bend == 0) {
        if (c1 == 0) {
          if (c0 < 0) {
            return new double[0][];
          }
        } else {
          blocked[count++] = c1 > 0 ? new double[] {-1, -c0 / c1} : new double[] {-c0 / c1, slide + 1};
        }
      } else if (root < 0) {
        if (bend > 0) {
          return new double[0][];
        }
      } else {
        double half = (c1 + Math.copySign(Math.sqrt(root), c1)) / 2; // no difference of nearly equal numbers
        double one = half / bend;
        double other = half == 0 ? 0 : -c0 / half;
        if (bend > 0) {
          blocked[count++] = new double[] {-1, Math.min(one, other)};
          blocked[count++] = new double[] {Math.max(one, other), slide + 1};
        } else {
          blocked[count++] = new double[] {Math.min(one, other), Math.max(one, other)};
        }
      }
    }
    return free(Arrays.copyOf(blocked, count));
  }

  private double[][] free(double[][] blocked) {
    Arrays.sort(blocked, (a, b) -> Double.compare(a[0], b[0]));
    double[][] free = new double[blocked.length + 1][];
    int count = 0;
    double reached = 0;
    for (double[] block : blocked) {
      if (block[0] > reached && reached < slide) {
        free[count++] = new double[] {reached, Math.min(block[0], slide)};
      }
      reached = Math.max(reached, block[1]);
    }
    if (reached < slide) {
      free[count++] = new double[] {reached, slide};
    }
    return Arrays.copyOf(free, count);
  }
}
