package floorcalc.flatness;

import floorcalc.measure.Length;
import java.util.ArrayList;
import java.util.List;

/**
 * An edge laid on a profile at one place after another: the upper convex hull of what it covers. Exact on whole nanometres;
 * the height where an end falls between two readings is that of the nearest nanometre. Used by one thread.
 */
final class LaidEdge {
  private final HeightProfile profile;
  private final long span;
  private final long[] x;
  private final long[] y;
  private final int[] hull;
  private int corners;
  private long start;

  LaidEdge(HeightProfile profile, long span) {
    this.profile = profile;
    this.span = span;
    int most = profile.size() + 2;
    x = new long[most];
    y = new long[most];
    hull = new int[most];
  }

  /** Lays the edge with its left end at a place, its right end on the line too. */
  void layAt(long place) {
    start = place;
    long end = place + span;
    int points = 0;
    corners = 0;
    points = add(points, place, profile.heightOn(place));
    for (int i = profile.indexAt(place) + 1; i < profile.size() && profile.place(i) < end; i++) {
      points = add(points, profile.place(i), profile.height(i));
    }
    add(points, end, profile.heightOn(end));
  }

  private int add(int index, long place, long height) {
    x[index] = place;
    y[index] = height;
    while (corners > 1 && Cross.above(x[hull[corners - 2]], y[hull[corners - 2]], x[hull[corners - 1]],
        y[hull[corners - 1]], place, height) < 0) {
      corners--;
    }
    hull[corners++] = index;
    return index + 1;
  }

  /** The number of rests: edges of the hull, from each point that the edge touches to the next. */
  int rests() {
    return corners - 1;
  }

  /** Finds the last of the rests that are in line with this one and those before it: the edge lies on all of them at once. */
  int lastInLine(int rest) {
    int last = rest;
    while (last + 1 < rests() && Cross.above(x[hull[last]], y[hull[last]], x[hull[last + 1]], y[hull[last + 1]],
        x[hull[last + 2]], y[hull[last + 2]]) == 0) {
      last++;
    }
    return last;
  }

  /** Whether the middle of the edge is over rests from one to another. */
  boolean spansMiddle(int firstRest, int lastRest) {
    long middle = 2 * start + span;
    return 2 * x[hull[firstRest]] <= middle && middle <= 2 * x[hull[lastRest + 1]];
  }

  /** The deepest point beneath a rest, the first of equals; its left contact if there is none between. */
  Found deepest(int rest) {
    int left = hull[rest];
    int right = hull[rest + 1];
    int deepest = -1;
    for (int i = left + 1; i < right; i++) {
      if (Cross.above(x[left], y[left], x[i], y[i], x[right], y[right]) < 0 && (deepest < 0 || isDeeper(i, deepest, rest))) {
        deepest = i;
      }
    }
    if (deepest < 0) {
      return new Found(0, start, x[left], y[left], x[left], y[left], x[right], y[right]);
    }
    double most = Cross.depth(x[left], y[left], x[deepest], y[deepest], x[right], y[right]);
    return new Found(most / (x[right] - x[left]), start, x[left], y[left], x[deepest], y[deepest], x[right], y[right]);
  }

  /** Whether a point lies deeper beneath a rest than one further left. */
  private boolean isDeeper(int i, int further, int rest) {
    int left = hull[rest];
    int right = hull[rest + 1];
    return Cross.compareProducts(y[i] - y[further], x[right] - x[left], y[right] - y[left], x[i] - x[further]) < 0;
  }

  EdgePlacement placement() {
    List<EdgeRest> rests = new ArrayList<>(rests());
    for (int rest = 0; rest < rests(); rest++) {
      rests.add(deepest(rest).rest());
    }
    List<EdgeRest> held = new ArrayList<>();
    int lies = 0;
    for (int rest = 0; rest < rests(); rest = lastInLine(rest) + 1) {
      int last = lastInLine(rest);
      if (spansMiddle(rest, last)) {
        held.addAll(rests.subList(rest, last + 1));
        lies++;
      }
    }
    return new EdgePlacement(Length.ofNanometres(start), Length.ofNanometres(span), rests, held, lies);
  }

  /**
   * A rest that was found.
   *
   * @param depth its greatest gap in nanometres, to compare with others
   */
  record Found(double depth, long start, long leftX, long leftY, long lowX, long lowY, long rightX, long rightY) {
    EdgeRest rest() {
      Length gap = Length.ofNanometres(Math.abs(Cross.gap(leftX, leftY, lowX, lowY, rightX, rightY)));
      ProfilePoint left = point(leftX, leftY);
      return new EdgeRest(left, point(rightX, rightY), gap, gap.isZero() ? left : point(lowX, lowY));
    }

    private static ProfilePoint point(long place, long height) {
      return new ProfilePoint(Length.ofNanometres(place), Length.ofNanometres(height));
    }
  }
}
