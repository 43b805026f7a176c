package floorcalc.flatness;

/**
 * The upper convex hull of all that an edge covers, for placements from left to right: the two ends of the edge and the readings
 * between them. Used by one thread.
 */
final class CoveredHull {
  private final HeightProfile profile;
  private final long span;
  private final StepCount tally;
  private final SlidingHull readings;
  private long start;
  private long leftY;
  private long rightY;
  private int first;
  private int last;
  /** The first and the last corner of the readings' hull that the edge can touch; none if the last is before the first. */
  private int from;
  private int to;

  CoveredHull(HeightProfile profile, long span, StepCount tally) {
    this.profile = profile;
    this.span = span;
    this.tally = tally;
    readings = new SlidingHull(profile, tally);
  }

  /** Lays the edge at a place no further left than the last one. */
  void layAt(long place) {
    start = place;
    leftY = profile.heightOn(place);
    rightY = profile.heightOn(place + span);
    first = profile.indexAt(place) + 1;
    last = profile.indexAt(place + span);
    if (profile.place(last) == place + span) {
      last--;
    }
    readings.moveTo(first, last);
    from = 0;
    int beyond = readings.size() - 1;
    while (from < beyond) {
      tally.step();
      int k = (from + beyond) >>> 1;
      if (above(place, leftY, k, innerX(k + 1), innerY(k + 1)) < 0) {
        from = k + 1;
      } else {
        beyond = k;
      }
    }
    to = from - 1;
    beyond = readings.size();
    while (beyond - to > 1) {
      tally.step();
      int k = (to + beyond) >>> 1;
      boolean hasLeft = k > from;
      if (above(hasLeft ? innerX(k - 1) : place, hasLeft ? innerY(k - 1) : leftY, k, place + span, rightY) < 0) {
        beyond = k;
      } else {
        to = k;
      }
    }
  }

  private int above(long leftX, long leftHeight, int corner, long rightX, long rightHeight) {
    return Cross.above(leftX, leftHeight, innerX(corner), innerY(corner), rightX, rightHeight);
  }

  private long innerX(int corner) {
    return profile.place(readings.reading(corner));
  }

  private long innerY(int corner) {
    return profile.height(readings.reading(corner));
  }

  /** The number of corners, the ends among them. */
  int corners() {
    return to - from + 3;
  }

  long x(int corner) {
    return corner == 0 ? start : corner == corners() - 1 ? start + span : innerX(from + corner - 1);
  }

  long y(int corner) {
    return corner == 0 ? leftY : corner == corners() - 1 ? rightY : innerY(from + corner - 1);
  }

  /** The reading at a corner that is no end. */
  int reading(int corner) {
    return readings.reading(from + corner - 1);
  }

  /** The first reading beyond the left end of the edge. */
  int firstReading() {
    return first;
  }

  /** The last reading before its right end; before the first if there is none between. */
  int lastReading() {
    return last;
  }

  SlidingHull readings() {
    return readings;
  }

  /** Hands out the edges from a corner to another that lie between readings, none of them twice. */
  void handOut(int fromCorner, int toCorner, SlidingHull.EdgeTaker taker) {
    int one = Math.max(fromCorner, 1);
    int other = Math.min(toCorner, corners() - 2);
    if (one < other) {
      readings.handOut(from + one - 1, from + other - 1, taker);
    }
  }

  /** The last corner at or left of the middle that has an edge after it. */
  int atMiddle() {
    long middle = 2 * start + span;
    int corner = 0;
    int beyond = corners() - 1;
    while (beyond - corner > 1) {
      tally.step();
      int k = (corner + beyond) >>> 1;
      if (2 * x(k) <= middle) {
        corner = k;
      } else {
        beyond = k;
      }
    }
    return corner;
  }

  /** Whether a corner is beneath the middle of the edge. */
  boolean isAtMiddle(int corner) {
    return 2 * x(corner) == 2 * start + span;
  }

  /** The first of the corners in line with an edge, given by its left corner. */
  int firstInLine(int edge) {
    int first = edge;
    int before = -1;
    while (first - before > 1) {
      tally.step();
      int k = (first + before) >>> 1;
      if (isInLine(edge, k)) {
        first = k;
      } else {
        before = k;
      }
    }
    return first;
  }

  /** The last of the corners in line with an edge, given by its left corner. */
  int lastInLine(int edge) {
    int found = edge + 1;
    int beyond = corners();
    while (beyond - found > 1) {
      tally.step();
      int k = (found + beyond) >>> 1;
      if (isInLine(edge, k)) {
        found = k;
      } else {
        beyond = k;
      }
    }
    return found;
  }

  private boolean isInLine(int edge, int corner) {
    return Cross.above(x(edge), y(edge), x(corner), y(corner), x(edge + 1), y(edge + 1)) == 0;
  }
}
