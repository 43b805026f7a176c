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
 * Used by one thread.
 */
final class EdgeSearch {
  private final Profile profile;
  private final long span;
  private final LaidEdge edge;
  /** What is taken off a gap whose contacts are so far apart. */
  private final LongToDoubleFunction allowed;
  private LaidEdge.Found best;
  private double most;

  EdgeSearch(Profile profile, long span) {
    this(profile, span, distance -> 0);
  }

  /** Looks for the gap that is beyond what is allowed at its contact distance by most, or nearest to it. */
  EdgeSearch(Profile profile, long span, LongToDoubleFunction allowed) {
    this.profile = profile;
    this.span = span;
    this.allowed = allowed;
    this.edge = new LaidEdge(profile, span);
  }

  LaidEdge.Found find(RestRule rule) {
    return rule == RestRule.WORST ? worst() : gravity();
  }

  private LaidEdge.Found worst() {
    long[] starts = starts(RestRule.WORST);
    for (int k = 0; k < starts.length; k++) {
      edge.layAt(starts[k]);
      for (int rest = 0; rest < edge.rests(); rest++) {
        take(edge.deepest(rest));
      }
      if (k + 1 < starts.length) {
        Stretch stretch = new Stretch(profile, span, starts[k], starts[k + 1]);
        stretch.tops(this::take);
      }
    }
    return best;
  }

  private LaidEdge.Found gravity() {
    long[] starts = starts(RestRule.GRAVITY);
    for (int k = 0; k < starts.length; k++) {
      edge.layAt(starts[k]);
      for (int rest = 0; rest < edge.rests(); rest++) {
        int last = edge.lastInLine(rest);
        boolean counts = edge.spansMiddle(rest, last);
        for (; counts && rest <= last; rest++) {
          take(edge.deepest(rest));
        }
        rest = last;
      }
      if (k + 1 < starts.length) {
        Stretch stretch = new Stretch(profile, span, starts[k], starts[k + 1]);
        stretch.endToEnd(this::take);
      }
    }
    return best;
  }

  private void take(LaidEdge.Found found) {
    double score = found.depth() - allowed.applyAsDouble(found.rightX() - found.leftX());
    if (best == null || score > most) {
      best = found;
      most = score;
    }
  }

  /** The reading farthest above or below the line between the floor's heights under the two ends of the edge. */
  LaidEdge.Found offsets() {
    long[] starts = starts(RestRule.WORST);
    for (int k = 0; k < starts.length; k++) {
      new Stretch(profile, span, starts[k], starts[Math.min(k + 1, starts.length - 1)]).offsets(this::take);
    }
    return best;
  }

  /** Placements with an end, or for gravity the middle, at a reading, or as near as whole nanometres allow. */
  private long[] starts(RestRule rule) {
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
