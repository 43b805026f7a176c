package floorcalc.levels;

import floorcalc.flatness.EdgeMethod;
import floorcalc.flatness.SpanLimit;
import floorcalc.flatness.ToleranceSet;
import floorcalc.measure.Length;
import java.util.ArrayList;
import java.util.List;

/**
 * What a set of tolerances asks of every place of a floor, as limits on chords.
 *
 * @param limits its limits, at least one
 * @param left limits that are for a share of the placements only, and are not judged on a grid
 */
record Limits(List<Limit> limits, List<SpanLimit> left) {
  Limits {
    limits = List.copyOf(limits);
    left = List.copyOf(left);
  }

  static Limits of(ToleranceSet set) {
    if (set.method() == EdgeMethod.EQUAL_OFFSETS) {
      throw new IllegalArgumentException("tolerance set '" + set.name() + "' is measured with an edge on two equal blocks, which a"
          + " grid of levels is not judged by; take lines of it as profiles, or choose a set of gaps under an edge");
    }
    List<Limit> limits = new ArrayList<>();
    List<SpanLimit> left = new ArrayList<>();
    if (set.method() == EdgeMethod.CONTACT_DISTANCE) {
      limits.add(ByDistance.of(set));
    } else {
      for (SpanLimit limit : set.limits()) {
        if (limit.isForAll()) {
          limits.add(new Limit.Edge(limit.span(), limit.gap(), limit.source()));
        } else {
          left.add(limit);
        }
      }
    }
    if (limits.isEmpty()) {
      throw new IllegalArgumentException("tolerance set '" + set.name() + "' lets some placements off at each span, which a grid of"
          + " levels is not judged by; choose a set that every placement must keep");
    }
    return new Limits(limits, left);
  }

  /** The least gap that any of them allows. */
  Length least() {
    return limits.stream().map(Limit::least).reduce(Length::min).orElseThrow();
  }
}
