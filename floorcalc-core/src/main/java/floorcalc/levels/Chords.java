package floorcalc.levels;

/**
 * Finds the chord under which a reading lies deepest: two points of a line, not further apart than a limit reaches, one on each side of
 * the reading. Between readings the floor is taken to run straight.
 * <p>
 * An edge of span {@code s} rests on an edge of the upper convex hull of what it covers. Every chord between two points that it covers
 * lies on or below this hull, so "the greatest gap under any edge is at most t" says the same as "no reading lies more than t
 * below any chord". It is enough to try these: chords between two readings at most {@code s} apart, and chords
 * from {@code a} to {@code a + s}. A chord from a reading to a point within the span and between two other readings
 * is steepest, or least steep, when that point is a reading or the edge's end. While {@code a} and {@code a + s} both stay
 * between the same readings the height of the chord above the reading is a quadratic in {@code a}, so its greatest value is at an end
 * or where its slope is zero.
 * <p>
 * Works in doubles of nanometres. Heights and distances of floors are below 1e12, so errors are below 0.001 nm; what is over
 * a limit by no more than {@link #TINY} is not over it. Not thread-safe.
 */
final class Chords {
  /** Nanometres. */
  static final double TINY = 0.02;

  /** By how much the reading is deeper than allowed below the worst chord; negative if it is not. */
  double excess;
  /** How deep it is below that chord. */
  double depth;
  /** How much of the chord's height above the reading is the reading's own: raising it by 1 raises the chord by this. */
  double own;
  /** The ends of that chord. */
  double from;
  double to;

  private GridLine line;
  private double[] at;
  private double[] z;
  private int middle;

  /** Looks at one reading of a line; heights are by number of reading. Returns whether there is any chord over it. */
  boolean search(GridLine line, int middle, double[] heights, Limit limit) {
    this.line = line;
    this.at = line.at();
    this.z = heights;
    this.middle = middle;
    excess = Double.NEGATIVE_INFINITY;
    double reach = limit.reach() + TINY / 2;
    for (int i = middle - 1; i >= 0 && at[middle] - at[i] <= reach; i--) {
      for (int k = middle + 1; k < at.length && at[k] - at[i] <= reach; k++) {
        double height = height(i) + (height(k) - height(i)) * ((at[middle] - at[i]) / (at[k] - at[i]));
        keep(height, limit.at(at[k] - at[i]), 0, at[i], at[k]);
      }
    }
    if (limit.isEdge()) {
      edges(limit.reach(), limit.at(limit.reach()));
    }
    return excess > Double.NEGATIVE_INFINITY;
  }

  private double height(int i) {
    return z[line.nodes()[i]];
  }

  private void keep(double height, double allowed, double share, double start, double end) {
    double deep = height - height(middle);
    if (deep - allowed > excess) {
      depth = deep;
      excess = deep - allowed;
      own = share;
      from = start;
      to = end;
    }
  }

  /** Slides an edge along from where its far end touches the reading to where its near end does. */
  private void edges(double span, double allowed) {
    double start = Math.max(at[0], at[middle] - span);
    double last = Math.min(at[middle], at[at.length - 1] - span);
    if (start > last) {
      return;
    }
    int left = 0;
    while (left + 2 < at.length && at[left + 1] <= start) {
      left++;
    }
    int right = left;
    while (right + 2 < at.length && at[right + 1] <= start + span) {
      right++;
    }
    while (true) {
      double next = Math.min(last, Math.min(at[left + 1], at[right + 1] - span));
      between(start, Math.max(start, next), span, left, right, allowed);
      if (next >= last) {
        return;
      }
      if (at[left + 1] <= next) {
        left = Math.min(left + 1, at.length - 2);
      }
      if (at[right + 1] - span <= next) {
        if (right == at.length - 2) {
          return;
        }
        right++;
      }
      start = Math.max(start, next);
    }
  }

  /** The near end is between readings left and left + 1, the far end between right and right + 1. */
  private void between(double start, double end, double span, int left, int right, double allowed) {
    double leftSlope = (height(left + 1) - height(left)) / (at[left + 1] - at[left]);
    double rightSlope = (height(right + 1) - height(right)) / (at[right + 1] - at[right]);
    double p = height(left) + leftSlope * (start - at[left]);
    double q = height(right) + rightSlope * (start + span - at[right]);
    double before = at[middle] - start;
    double after = span - before;
    // Height of the chord times the span, for the edge moved on by u: constant + linear * u + square * u * u.
    double constant = p * after + q * before;
    double linear = leftSlope * after + p + rightSlope * before - q;
    double square = leftSlope - rightSlope;
    edge(constant / span, start, span, left, right, allowed);
    double all = end - start;
    if (all <= 0) {
      return;
    }
    edge((constant + all * (linear + all * square)) / span, end, span, left, right, allowed);
    double top = square < 0 ? -linear / (2 * square) : -1;
    if (top > 0 && top < all) {
      edge((constant + top * (linear + top * square)) / span, start + top, span, left, right, allowed);
    }
  }

  private void edge(double height, double start, double span, int left, int right, double allowed) {
    double share = 0;
    double after = (start + span - at[middle]) / span;
    if (left == middle - 1) {
      share += after * (start - at[left]) / (at[middle] - at[left]);
    } else if (left == middle) {
      share += after;
    }
    if (right == middle) {
      share += (1 - after) * (at[middle + 1] - start - span) / (at[middle + 1] - at[middle]);
    } else if (right == middle - 1) {
      share += 1 - after;
    }
    if (share < 1 - 1e-9) {
      keep(height, allowed, share, start, start + span);
    }
  }
}
