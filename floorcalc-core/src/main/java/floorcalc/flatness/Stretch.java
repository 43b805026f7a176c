package floorcalc.flatness;

import java.util.Arrays;
import java.util.function.Consumer;

/**
 * The placements of an edge between two neighbouring ones at which an end, or the middle, lies on a reading: both ends slide
 * along straight floor, and the readings beneath stay the same. What can be greatest in between is found in floating point, from
 * the first placement on, and then worked out at the nearest nanometre. Used by one thread.
 */
final class Stretch {
  private final Profile profile;
  private final long span;
  private final long from;
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

  Stretch(Profile profile, long span, long from, long to) {
    this.profile = profile;
    this.span = span;
    this.from = from;
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
  private double bend() {
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

  /** Hands out chords from end to end where the gap at a reading is at the top of its parabola. */
  void tops(Consumer<LaidEdge.Found> taker) {
    double bend = bend();
    if (bend <= 0) {
      return;
    }
    double best = 0;
    double at = -1;
    for (int i = first; i < beyond; i++) {
      double top = gapChange(i) / (2 * bend);
      if (top > 0 && top < slide) {
        double gap = gapAtStart(i) + gapChange(i) * top / 2;
        if (gap > best) {
          best = gap;
          at = top;
        }
      }
    }
    if (at >= 0) {
      takeEndToEnd(at, taker);
    }
  }

  /** Hands out how far readings lie above or below the chord from end to end, at the first placement and at their extremes. */
  void offsets(Consumer<LaidEdge.Found> taker) {
    double bend = bend();
    for (int i = first; i < beyond; i++) {
      takeOffset(from, i, taker);
      double extreme = bend == 0 ? 0 : gapChange(i) / (2 * bend);
      if (extreme > 0 && extreme < slide) {
        takeOffset(from + Math.round(extreme), i, taker);
      }
    }
  }

  private void takeOffset(long start, int i, Consumer<LaidEdge.Found> taker) {
    long leftY = profile.heightOn(start);
    long rightY = profile.heightOn(start + span);
    double depth = Cross.depth(start, leftY, profile.place(i), profile.height(i), start + span, rightY);
    taker.accept(new LaidEdge.Found(Math.abs(depth) / span, start, start, leftY, profile.place(i), profile.height(i),
        start + span, rightY));
  }

  /** Hands out the rests across the middle where, on the way, the edge comes to touch another reading, and the tops between. */
  void turns(Consumer<LaidEdge.Found> taker) {
    if (first >= beyond) {
      return;
    }
    int[] hull = hull();
    for (int k = 0; k + 1 < hull.length; k++) {
      leftEndInLine(hull[k], hull[k + 1], taker);
      rightEndInLine(hull[k], hull[k + 1], taker);
    }
    endToEnd(taker);
  }

  private int[] hull() {
    int[] hull = new int[beyond - first];
    int corners = 0;
    for (int i = first; i < beyond; i++) {
      while (corners > 1 && Cross.above(profile.place(hull[corners - 2]), profile.height(hull[corners - 2]),
          profile.place(hull[corners - 1]), profile.height(hull[corners - 1]), profile.place(i), profile.height(i)) <= 0) {
        corners--;
      }
      hull[corners++] = i;
    }
    return Arrays.copyOf(hull, corners);
  }

  private double steepness(int p, int q) {
    return (double) (profile.height(q) - profile.height(p)) / (profile.place(q) - profile.place(p));
  }

  /** The left end comes into line with two readings, rests, and the middle is left of the second. */
  private void leftEndInLine(int p, int q, Consumer<LaidEdge.Found> taker) {
    double steep = steepness(p, q);
    double at = (height(p) - steep * place(p) - left) / (leftSlope - steep);
    if (at > 0 && at < slide && at + span / 2.0 <= place(q)
        && right + rightSlope * at <= height(q) + steep * (at + span - place(q))) {
      long start = from + Math.round(at);
      take(start, start, profile.heightOn(start), first, q, profile.place(q), profile.height(q), taker);
    }
  }

  /** The right end comes into line with two readings, rests, and the middle is right of the first. */
  private void rightEndInLine(int p, int q, Consumer<LaidEdge.Found> taker) {
    double steep = steepness(p, q);
    double at = (height(p) + steep * (span - place(p)) - right) / (rightSlope - steep);
    if (at > 0 && at < slide && at + span / 2.0 >= place(p)
        && left + leftSlope * at <= height(p) + steep * (at - place(p))) {
      long start = from + Math.round(at);
      take(start, profile.place(p), profile.height(p), p + 1, beyond, start + span, profile.heightOn(start + span), taker);
    }
  }

  /** The edge rests on both its ends for part of the way: the ends of each part, and the tops between them. */
  private void endToEnd(Consumer<LaidEdge.Found> taker) {
    double[][] parts = parts();
    double bend = bend();
    for (double[] part : parts) {
      double best = -1;
      double at = 0;
      for (int i = first; i < beyond; i++) {
        double top = bend > 0 ? gapChange(i) / (2 * bend) : part[0];
        for (double t : new double[] {part[0], Math.max(part[0], Math.min(part[1], top)), part[1]}) {
          double gap = gapAtStart(i) + (gapChange(i) - bend * t) * t;
          if (gap > best) {
            best = gap;
            at = t;
          }
        }
      }
      takeEndToEnd(at, taker);
    }
  }

  /** The parts of the way on which no reading stands above the chord from end to end. */
  private double[][] parts() {
    double[][] blocked = new double[2 * (beyond - first)][];
    int count = 0;
    double bend = bend();
    for (int i = first; i < beyond; i++) {
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
        double one = (c1 - Math.sqrt(root)) / (2 * bend);
        double other = (c1 + Math.sqrt(root)) / (2 * bend);
        if (bend > 0) {
          blocked[count++] = new double[] {-1, one};
          blocked[count++] = new double[] {other, slide + 1};
        } else {
          blocked[count++] = new double[] {other, one};
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

  private void takeEndToEnd(double at, Consumer<LaidEdge.Found> taker) {
    long start = from + Math.round(at);
    take(start, start, profile.heightOn(start), first, beyond, start + span, profile.heightOn(start + span), taker);
  }

  private void take(long start, long leftX, long leftY, int firstBelow, int beyondBelow, long rightX, long rightY,
      Consumer<LaidEdge.Found> taker) {
    double most = 0;
    int deepest = -1;
    for (int i = firstBelow; i < beyondBelow; i++) {
      double depth = Cross.depth(leftX, leftY, profile.place(i), profile.height(i), rightX, rightY);
      if (depth > most) {
        most = depth;
        deepest = i;
      }
    }
    if (deepest >= 0) {
      taker.accept(new LaidEdge.Found(most / (rightX - leftX), start, leftX, leftY, profile.place(deepest),
          profile.height(deepest), rightX, rightY));
    }
  }
}
