package floorcalc.underlay;

import floorcalc.outline.Outline;
import floorcalc.outline.Ring;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Where along x an outline is met within a band across it: the shadow that the part of the floor within the band casts on the x
 * axis. Between two heights without a corner the floor is a row of trapezoids; the shadow is what these cast together.
 * <p>
 * A place where a wall crosses a height is rounded outwards to a whole nanometre, so the shadow is never too short, and at most
 * a nanometre too long at either end.
 */
final class Shadow {
  private final List<Edge> edges = new ArrayList<>();
  private final long[] heights;

  /** An edge from its low to its high end. */
  private record Edge(long lowX, long lowY, long highX, long highY) {
    /** Where it crosses a height, rounded down or up. */
    long at(long y, boolean up) {
      if (y == lowY || lowX == highX) {
        return lowX;
      }
      if (y == highY) {
        return highX;
      }
      BigInteger rise = BigInteger.valueOf(highY - lowY);
      BigInteger[] part = BigInteger.valueOf(highX - lowX).multiply(BigInteger.valueOf(y - lowY)).divideAndRemainder(rise);
      int sign = part[1].signum();
      return lowX + part[0].longValueExact() + (up && sign > 0 ? 1 : !up && sign < 0 ? -1 : 0);
    }

    double middle(long low, long high) {
      double y = low / 2.0 + high / 2.0;
      return lowX + (double) (highX - lowX) * (y - lowY) / (highY - lowY);
    }
  }

  /** A stretch along x, both ends in nanometres. */
  record Stretch(long from, long to) {}

  Shadow(Outline outline) {
    List<Ring> rings = new ArrayList<>(List.of(outline.shell()));
    rings.addAll(outline.voids());
    List<Long> corners = new ArrayList<>();
    for (Ring ring : rings) {
      for (int i = 0; i < ring.size(); i++) {
        int next = i + 1 == ring.size() ? 0 : i + 1;
        corners.add(ring.y(i));
        if (ring.y(i) < ring.y(next)) {
          edges.add(new Edge(ring.x(i), ring.y(i), ring.x(next), ring.y(next)));
        } else if (ring.y(i) > ring.y(next)) {
          edges.add(new Edge(ring.x(next), ring.y(next), ring.x(i), ring.y(i)));
        }
      }
    }
    heights = corners.stream().mapToLong(Long::longValue).distinct().sorted().toArray();
  }

  /** The stretches that the floor between two heights takes up along x, apart from each other, from low to high x. */
  List<Stretch> between(long low, long high) {
    List<Edge> near = edges.stream().filter(edge -> edge.highY > low && edge.lowY < high).toList();
    List<Stretch> cast = new ArrayList<>();
    long from = low;
    int next = Arrays.binarySearch(heights, low);
    next = next < 0 ? -next - 1 : next + 1;
    while (from < high) {
      long to = next < heights.length ? Math.min(heights[next], high) : high;
      trapezoids(near, from, to, cast);
      from = to;
      next++;
    }
    return joined(cast);
  }

  private static void trapezoids(List<Edge> edges, long low, long high, List<Stretch> cast) {
    List<Edge> crossing = edges.stream().filter(edge -> edge.lowY <= low && edge.highY >= high)
        .sorted(Comparator.comparingDouble(edge -> edge.middle(low, high))).toList();
    for (int i = 0; i + 1 < crossing.size(); i += 2) {
      Edge left = crossing.get(i);
      Edge right = crossing.get(i + 1);
      cast.add(new Stretch(Math.min(left.at(low, false), left.at(high, false)),
          Math.max(right.at(low, true), right.at(high, true))));
    }
  }

  private static List<Stretch> joined(List<Stretch> cast) {
    List<Stretch> joined = new ArrayList<>();
    cast.sort(Comparator.comparingLong(Stretch::from).thenComparingLong(Stretch::to));
    for (Stretch next : cast) {
      Stretch last = joined.isEmpty() ? null : joined.get(joined.size() - 1);
      if (last == null || next.from > last.to) {
        joined.add(next);
      } else if (next.to > last.to) {
        joined.set(joined.size() - 1, new Stretch(last.from, next.to));
      }
    }
    return joined;
  }

  /** The lowest corner. */
  long lowest() {
    return heights[0];
  }

  /** The highest corner. */
  long highest() {
    return heights[heights.length - 1];
  }
}
