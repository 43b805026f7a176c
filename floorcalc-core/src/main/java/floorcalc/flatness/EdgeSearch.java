package floorcalc.flatness;

import java.util.Arrays;
import java.util.function.LongToDoubleFunction;

/**
 * The greatest gap over every place where an edge can be laid.
 * <p>
 * A gap is a chord of the floor, at most as long as the edge, less the height of a reading beneath it; over all placements
 * and all rests it is greatest where this difference is. With the chord's other end and the reading held, the chord's height
 * over the reading changes one way only while an end slides along a straight stretch of floor. So an end stays between readings
 * only where the chord is as long as the edge: then either the other end is at a reading, or both slide at once and the
 * difference is a parabola over the placement. Placements with an end at a reading and the tops of these parabolas are
 * all that need be tried.
 * <p>
 * Gravity's rest is that of the same placements and of those with the middle at a reading. In between, a rest on two readings
 * stays as it is; one on an end of the edge and a reading changes one way only, also where it goes over from one reading to the next,
 * as both are then in line with the end; one on both ends is a parabola, on the parts of the way where no
 * reading stands above the chord. So the ends of these parts and the tops between are to be tried too.
 * <p>
 * <b>Time.</b> For {@code n} readings there are at most {@code 4n + 1} such placements. From one to the next the {@link SlidingHull} moves on;
 * an edge of it between two readings is looked at once, where it first comes up. It comes up when a reading is added to either part of that
 * hull, which happens once for each, or as the bridge of a placement; and each placement has two edges more at its own ends: at most
 * {@code 14n + 3} edges are looked at, whatever the span. Bridges, the edge under the middle and where the edge's own ends touch the hull are found by halving, and
 * the {@link DeepestReadings} beneath all edges together. This is a time of {@code n log n}. To it comes one step for
 * each reading at which the parabola has its top between two neighbouring placements; if these are {@code d} apart, such
 * readings lie within {@code 2d}. At equal spacing that is at most two for each placement; at a spacing that varies, at most
 * one more than twice the widest spacing over the narrowest.
 * <p>
 * Used by one thread.
 */
final class EdgeSearch {
  /** Two gaps nearer to each other than this share of their parts are compared without rounding. */
  private static final double NEARLY = 1e-12;

  private final HeightProfile profile;
  private final long span;
  /** What is taken off a gap whose contacts are so far apart, in whole nanometres. */
  private final LongToDoubleFunction allowed;
  private final StepCount tally;
  private final CoveredHull hull;
  private final DeepestReadings readings;
  private LaidEdge.Found best;
  private double allowedOfBest;

  EdgeSearch(HeightProfile profile, long span) {
    this(profile, span, distance -> 0);
  }

  /** Looks for the gap that is beyond what is allowed at its contact distance by most, or nearest to it. */
  EdgeSearch(HeightProfile profile, long span, LongToDoubleFunction allowed) {
    this(profile, span, allowed, new StepCount());
  }

  EdgeSearch(HeightProfile profile, long span, LongToDoubleFunction allowed, StepCount tally) {
    this.profile = profile;
    this.span = span;
    this.allowed = allowed;
    this.tally = tally;
    hull = new CoveredHull(profile, span, tally);
    readings = new DeepestReadings(profile, tally);
  }

  LaidEdge.Found find(RestRule rule) {
    long[] starts = starts(profile, span, rule);
    for (int k = 0; k < starts.length; k++) {
      hull.layAt(starts[k]);
      if (rule == RestRule.WORST) {
        ask(starts[k], 0, hull.corners() - 1);
      } else {
        middle(starts[k]);
      }
      if (k + 1 < starts.length) {
        between(rule, new Slide(profile, span, starts[k], starts[k + 1], tally));
      }
    }
    readings.answer();
    for (Chord chord : readings.chords()) {
      if (chord.isRest()) {
        take(chord.found());
      }
    }
    return best;
  }

  private void middle(long start) {
    int edge = hull.atMiddle();
    int first = hull.firstInLine(edge);
    if (hull.isAtMiddle(edge) && first == edge && edge > 0) {
      ask(start, hull.firstInLine(edge - 1), edge);
    }
    ask(start, first, hull.lastInLine(edge));
  }

  /** Asks for the edges of the hull from one corner to another. */
  private void ask(long start, int from, int to) {
    if (from == 0) {
      int last = hull.corners() == 2 ? hull.lastReading() : hull.reading(1) - 1;
      askEdge(start, 0, hull.firstReading(), last);
    }
    hull.handOut(from, to, (left, right) -> readings.ask(Chord.between(profile, start, left, right)));
    if (to == hull.corners() - 1 && to > 1) {
      askEdge(start, to - 1, hull.reading(to - 1) + 1, hull.lastReading());
    }
  }

  private void askEdge(long start, int corner, int first, int last) {
    readings.ask(Chord.ofHull(profile, start, hull.x(corner), hull.y(corner), hull.x(corner + 1), hull.y(corner + 1), first, last));
  }

  private void between(RestRule rule, Slide slide) {
    if (rule == RestRule.WORST) {
      slide.top(start -> askEndToEnd(slide, start));
    } else if (slide.firstReading() <= slide.lastReading()) {
      hull.readings().moveTo(slide.firstReading(), slide.lastReading());
      slide.endToEnd(hull.readings(), start -> askEndToEnd(slide, start));
    }
  }

  private void askEndToEnd(Slide slide, long start) {
    readings.ask(Chord.endToEnd(profile, start, span, slide.firstReading(), slide.lastReading()));
  }

  private void take(LaidEdge.Found found) {
    double allowedHere = allowed.applyAsDouble(found.rightX() - found.leftX());
    if (best == null || isMore(found, allowedHere)) {
      best = found;
      allowedOfBest = allowedHere;
    }
  }

  private boolean isMore(LaidEdge.Found found, double allowedHere) {
    double more = found.depth() - allowedHere - (best.depth() - allowedOfBest);
    if (Math.abs(more) > NEARLY * (found.depth() + allowedHere + best.depth() + allowedOfBest)) {
      return more > 0;
    }
    return (found.depth() > 0 || best.depth() > 0) && Chord.compareExactly(found, allowedHere, best, allowedOfBest) > 0;
  }

  /** Placements with an end, or for gravity the middle, at a reading, or as near as whole nanometres allow. */
  static long[] starts(HeightProfile profile, long span, RestRule rule) {
    long first = profile.place(0);
    long last = profile.place(profile.size() - 1) - span;
    long[] starts = new long[4 * profile.size() + 1];
    int count = 0;
    for (int i = 0; i < profile.size(); i++) {
      starts[count++] = profile.place(i);
      starts[count++] = profile.place(i) - span;
      if (rule == RestRule.GRAVITY) {
        starts[count++] = profile.place(i) - span / 2;
        starts[count++] = profile.place(i) - (span + 1) / 2;
      }
    }
    starts[count++] = last;
    return Arrays.stream(starts, 0, count).filter(start -> start >= first && start <= last).sorted().distinct().toArray();
  }
}
