package floorcalc.levels;

import floorcalc.flatness.SpanLimit;
import floorcalc.flatness.ToleranceSet;
import floorcalc.measure.Length;
import floorcalc.working.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A limit that grows with the distance between two contacts, which are readings. The table gives whole millimetres, so it is
 * a staircase: the distance from which each gap is allowed is found once.
 */
final class ByDistance implements Limit {
  private final double[] from;
  private final double[] gaps;
  private final Length least;
  private final double reach;
  private final Source source;

  private ByDistance(double[] from, double[] gaps, Length least, double reach, Source source) {
    this.from = from;
    this.gaps = gaps;
    this.least = least;
    this.reach = reach;
    this.source = source;
  }

  static ByDistance of(ToleranceSet set) {
    SpanLimit first = set.limits().get(0);
    SpanLimit last = set.limits().get(set.limits().size() - 1);
    List<Double> from = new ArrayList<>();
    List<Double> gaps = new ArrayList<>();
    long low = first.span().toNanometres();
    long end = last.span().toNanometres();
    while (true) {
      Length gap = allowed(set, low).orElseThrow();
      from.add((double) low);
      gaps.add((double) gap.toNanometres());
      if (allowed(set, end).orElseThrow().compareTo(gap) <= 0) {
        break;
      }
      long below = low;
      long above = end;
      while (above - below > 1) {
        long middle = below + (above - below) / 2;
        if (allowed(set, middle).orElseThrow().compareTo(gap) > 0) {
          above = middle;
        } else {
          below = middle;
        }
      }
      low = above;
    }
    return new ByDistance(from.stream().mapToDouble(Double::doubleValue).toArray(),
        gaps.stream().mapToDouble(Double::doubleValue).toArray(), first.gap(), end, first.source());
  }

  private static Optional<Length> allowed(ToleranceSet set, long distance) {
    return set.gapAllowed(Length.ofNanometres(distance));
  }

  @Override
  public double reach() {
    return reach;
  }

  @Override
  public double at(double distance) {
    int i = from.length - 1;
    while (i >= 0 && from[i] > distance + Chords.TINY / 2) {
      i--;
    }
    return i < 0 ? Double.POSITIVE_INFINITY : gaps[i];
  }

  @Override
  public Length least() {
    return least;
  }

  @Override
  public boolean isEdge() {
    return false;
  }

  @Override
  public Source source() {
    return source;
  }
}
