package floorcalc.differential;

import floorcalc.flatness.RestRule;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/**
 * A straight edge by trying every pair of points that it might rest on, without a hull and without rounding but of the heights at its
 * own ends, which are those of the nearest nanometre as the core says of its own.
 */
final class PlainStraightedge {
  private final long[] places;
  private final long[] heights;
  private final long span;

  PlainStraightedge(long[] places, long[] heights, long span) {
    this.places = places;
    this.heights = heights;
    this.span = span;
  }

  /** {@return the greatest gap in nanometres under the edge laid at one place, rounded half to even} */
  long gapAt(long start, RestRule rule) {
    List<long[]> points = covered(start);
    Gap greatest = new Gap(0, 1);
    for (int i = 0; i < points.size(); i++) {
      for (int j = i + 1; j < points.size(); j++) {
        long[] a = points.get(i);
        long[] b = points.get(j);
        boolean holdsMiddle = 2 * a[0] <= 2 * start + span && 2 * start + span <= 2 * b[0];
        if ((rule == RestRule.WORST || holdsMiddle) && points.stream().allMatch(p -> over(a, b, p) >= 0)) {
          for (int k = i + 1; k < j; k++) {
            greatest = greatest.orGreater(over(a, b, points.get(k)), b[0] - a[0]);
          }
        }
      }
    }
    return greatest.rounded();
  }

  /** {@return the greatest of all placements at whole nanometres} */
  long greatest(RestRule rule) {
    long greatest = 0;
    for (long start = places[0]; start + span <= places[places.length - 1]; start++) {
      greatest = Math.max(greatest, gapAt(start, rule));
    }
    return greatest;
  }

  /** How far the line from a to b runs above p, times the distance from a to b; every product stays below 2^62. */
  private static long over(long[] a, long[] b, long[] p) {
    return Math.addExact(Math.multiplyExact(a[1] - p[1], b[0] - a[0]), Math.multiplyExact(b[1] - a[1], p[0] - a[0]));
  }

  private List<long[]> covered(long start) {
    List<long[]> points = new ArrayList<>();
    points.add(new long[] {start, heightAt(start)});
    for (int i = 0; i < places.length; i++) {
      if (places[i] > start && places[i] < start + span) {
        points.add(new long[] {places[i], heights[i]});
      }
    }
    points.add(new long[] {start + span, heightAt(start + span)});
    return points;
  }

  private long heightAt(long place) {
    int i = 0;
    while (places[i + 1] < place) {
      i++;
    }
    BigInteger rise = BigInteger.valueOf(heights[i + 1] - heights[i]).multiply(BigInteger.valueOf(place - places[i]));
    return heights[i] + divided(rise, BigInteger.valueOf(places[i + 1] - places[i]));
  }

  private static long divided(BigInteger dividend, BigInteger divisor) {
    return new BigDecimal(dividend).divide(new BigDecimal(divisor), 0, RoundingMode.HALF_EVEN).longValueExact();
  }

  /** A fraction of nanometres. */
  private record Gap(long over, long distance) {
    Gap orGreater(long otherOver, long otherDistance) {
      BigInteger mine = BigInteger.valueOf(over).multiply(BigInteger.valueOf(otherDistance));
      BigInteger others = BigInteger.valueOf(otherOver).multiply(BigInteger.valueOf(distance));
      return others.compareTo(mine) > 0 ? new Gap(otherOver, otherDistance) : this;
    }

    long rounded() {
      return divided(BigInteger.valueOf(over), BigInteger.valueOf(distance));
    }
  }
}
