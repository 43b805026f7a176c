package floorcalc.flatness;

import java.math.BigInteger;

/**
 * The reading farthest above or below an edge that stands on equal blocks at its two ends, over every place where it can be laid.
 * <p>
 * The edge is then the chord between the floor's heights under its ends. With either end at a reading the lowest and the highest reading
 * beneath are found for all placements together, see {@link DeepestReadings}; the highest are the lowest of the floor turned over. In
 * between, a reading's distance is a parabola over the placement: its turn is tried. For {@code n} readings that is a time of {@code n log n}, and one
 * step for each turn, see {@link EdgeSearch}. Used by one thread.
 */
final class OffsetSearch {
  private final HeightProfile profile;
  private final HeightProfile turnedOver;
  private final long span;
  private final StepCount tally;
  private LaidEdge.Found best;

  OffsetSearch(HeightProfile profile, long span, StepCount tally) {
    this.profile = profile;
    this.turnedOver = profile.turnedOver();
    this.span = span;
    this.tally = tally;
  }

  /** Of equal distances the leftmost placement, and in it the leftmost reading; null if no reading is beneath any of them. */
  LaidEdge.Found find() {
    long[] starts = EdgeSearch.starts(profile, span, RestRule.WORST);
    Slide[] slides = new Slide[starts.length];
    DeepestReadings lowest = new DeepestReadings(profile, tally);
    DeepestReadings highest = new DeepestReadings(turnedOver, tally);
    for (int k = 0; k < starts.length; k++) {
      slides[k] = new Slide(profile, span, starts[k], starts[Math.min(k + 1, starts.length - 1)], tally);
      lowest.ask(chord(profile, starts[k], slides[k]));
      highest.ask(chord(turnedOver, starts[k], slides[k]));
    }
    lowest.answer();
    highest.answer();
    for (int k = 0; k < starts.length; k++) {
      if (slides[k].firstReading() <= slides[k].lastReading()) {
        int low = lowest.chords().get(k).lowest();
        int high = highest.chords().get(k).lowest();
        take(starts[k], Math.min(low, high));
        take(starts[k], Math.max(low, high));
        slides[k].turns(this::take);
      }
    }
    return best;
  }

  private Chord chord(HeightProfile floor, long start, Slide slide) {
    return Chord.endToEnd(floor, start, span, slide.firstReading(), slide.lastReading());
  }

  private void take(long start, int reading) {
    long leftY = profile.heightOn(start);
    long rightY = profile.heightOn(start + span);
    double depth = Cross.depth(start, leftY, profile.place(reading), profile.height(reading), start + span, rightY);
    LaidEdge.Found found = new LaidEdge.Found(Math.abs(depth) / span, start, start, leftY, profile.place(reading),
        profile.height(reading), start + span, rightY);
    if (best == null || off(found).compareTo(off(best)) > 0) {
      best = found;
    }
  }

  /** How far the reading is off the edge, times its length. */
  private BigInteger off(LaidEdge.Found found) {
    BigInteger rise = BigInteger.valueOf(found.rightY() - found.leftY());
    return rise.multiply(BigInteger.valueOf(found.lowX() - found.leftX()))
        .subtract(BigInteger.valueOf(found.lowY() - found.leftY()).multiply(BigInteger.valueOf(span))).abs();
  }
}
