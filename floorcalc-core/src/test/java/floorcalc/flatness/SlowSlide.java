package floorcalc.flatness;

import java.util.Arrays;
import java.util.function.Consumer;

/** What {@link Slide} looks for, by trying every reading beneath the edge. */
final class SlowSlide {
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

  SlowSlide(HeightProfile profile, long span, long from, long to) {
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

  /** Hands out how far readings lie above or below the chord from end to end, at the first placement and at their extremes. */
  void offsets(Consumer<LaidEdge.Found> taker) {
    for (int i = first; i < beyond; i++) {
      takeOffset(from, i, taker);
    }
    for (int i = first; i < beyond; i++) {
      double extreme = bend() == 0 ? 0 : gapChange(i) / (2 * bend());
      if (extreme > 0 && extreme < slide && Math.round(extreme) > 0 && from + Math.round(extreme) < to) {
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

  /**
   * Hands out the rests of the edge on both its own ends: at the ends of each part of the way on which no reading stands above
   * the chord, and at the tops of the parabolas between.
   */
  void endToEnd(Consumer<LaidEdge.Found> taker) {
    if (first >= beyond) {
      return;
    }
    double[][] parts = parts();
    double bend = bend();
    for (double[] part : parts) {
      takeEndToEnd(part[0], taker);
      double best = 0;
      double at = -1;
      for (int i = first; i < beyond && bend > 0; i++) {
        double top = gapChange(i) / (2 * bend);
        double gap = gapAtStart(i) + gapChange(i) * top / 2;
        if (top > part[0] && top < part[1] && gap > best) {
          best = gap;
          at = top;
        }
      }
      if (at >= 0) {
        takeEndToEnd(at, taker);
      }
      takeEndToEnd(part[1], taker);
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

  private void takeEndToEnd(double at, Consumer<LaidEdge.Found> taker) {
    long start = from + Math.round(at);
    if (start == from || start == to) {
      return;
    }
    long leftY = profile.heightOn(start);
    long rightY = profile.heightOn(start + span);
    double most = 0;
    int deepest = -1;
    for (int i = first; i < beyond; i++) {
      double depth = Cross.depth(start, leftY, profile.place(i), profile.height(i), start + span, rightY);
      if (depth > most) {
        most = depth;
        deepest = i;
      }
    }
    if (deepest >= 0) {
      taker.accept(new LaidEdge.Found(most / span, start, start, leftY, profile.place(deepest),
          profile.height(deepest), start + span, rightY));
    }
  }
}
