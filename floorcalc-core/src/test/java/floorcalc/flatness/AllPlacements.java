package floorcalc.flatness;

import java.math.BigInteger;
import java.util.Arrays;
import java.util.function.LongToDoubleFunction;

/**
 * What {@link EdgeSearch} looks for, the slow way: the edge is laid anew at each placement that can be the worst, with the hull of all that
 * it covers, and every reading beneath every rest is tried. The time grows with the readings times those beneath an edge.
 */
final class AllPlacements {
  private final HeightProfile profile;
  private final long span;
  private final LaidEdge edge;
  /** What is taken off a gap whose contacts are so far apart. */
  private final LongToDoubleFunction allowed;
  private LaidEdge.Found best;

  /** Looks for the gap that is beyond what is allowed at its contact distance by most, or nearest to it. */
  AllPlacements(HeightProfile profile, long span, LongToDoubleFunction allowed) {
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
        SlowSlide slide = new SlowSlide(profile, span, starts[k], starts[k + 1]);
        slide.tops(this::take);
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
        SlowSlide slide = new SlowSlide(profile, span, starts[k], starts[k + 1]);
        slide.endToEnd(this::take);
      }
    }
    return best;
  }

  /** The reading farthest above or below the line between the floor's heights under the two ends of the edge. */
  LaidEdge.Found offsets() {
    long[] starts = starts(RestRule.WORST);
    for (int k = 0; k < starts.length; k++) {
      new SlowSlide(profile, span, starts[k], starts[Math.min(k + 1, starts.length - 1)]).offsets(found -> {
        if (best == null || over(found).abs().compareTo(over(best).abs()) > 0) {
          best = found;
        }
      });
    }
    return best;
  }

  private void take(LaidEdge.Found found) {
    if (best == null || over(found).multiply(width(best)).compareTo(over(best).multiply(width(found))) > 0) {
      best = found;
    }
  }

  private static BigInteger width(LaidEdge.Found found) {
    return BigInteger.valueOf(found.rightX() - found.leftX());
  }

  /** The gap less what is allowed, times the distance of the contacts. */
  private BigInteger over(LaidEdge.Found found) {
    BigInteger rise = BigInteger.valueOf(found.rightY() - found.leftY());
    BigInteger down = BigInteger.valueOf(found.lowY() - found.leftY());
    BigInteger less = BigInteger.valueOf((long) allowed.applyAsDouble(found.rightX() - found.leftX()));
    return rise.multiply(BigInteger.valueOf(found.lowX() - found.leftX())).subtract(down.add(less).multiply(width(found)));
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
