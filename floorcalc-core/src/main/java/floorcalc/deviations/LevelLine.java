package floorcalc.deviations;

import floorcalc.levels.SpotLevel;
import floorcalc.measure.Length;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;

/** Readings in a line across a floor, parallel to x or to y, in order; and the pairs of places on it that a limit is held against. */
record LevelLine(String name, List<Length> at, List<Length> heights) {
  private static final Length METRE = Length.ofMillimetres(1000);

  /** Two places of a line, how far apart they are and how far out of level. */
  record Pair(String where, Length low, Length high, Length distance) {
    Length out() {
      return high.minus(low);
    }

    static Pair of(String where, Length one, Length other, Length distance) {
      return new Pair(where, one.min(other), one.max(other), distance);
    }
  }

  /** All lines of at least two readings: those along x in order of y, then those along y in order of x. */
  static List<LevelLine> of(List<SpotLevel> spots) {
    List<LevelLine> lines = new ArrayList<>();
    add(lines, spots, "y", spot -> spot.place().y(), spot -> spot.place().x());
    add(lines, spots, "x", spot -> spot.place().x(), spot -> spot.place().y());
    return lines;
  }

  private static void add(List<LevelLine> lines, List<SpotLevel> spots, String name, Function<SpotLevel, Length> same,
      Function<SpotLevel, Length> along) {
    Map<Length, List<SpotLevel>> groups = new TreeMap<>();
    spots.forEach(spot -> groups.computeIfAbsent(same.apply(spot), none -> new ArrayList<>()).add(spot));
    groups.forEach((where, group) -> {
      if (group.size() > 1) {
        group.sort(Comparator.comparing(along));
        lines.add(new LevelLine("line at " + name + " = " + where, group.stream().map(along).toList(),
            group.stream().map(SpotLevel::height).toList()));
      }
    });
  }

  Length length() {
    return at.get(at.size() - 1).minus(at.get(0));
  }

  /** The pair that breaks the limit most, or comes nearest to that; empty if the line is too short for it. */
  Optional<Pair> worst(OutOfLevelLimit limit) {
    return switch (limit.measure()) {
      case ENDS_OF_LINE -> Optional.of(pair(0, at.size() - 1));
      case ALONG_LINE -> alongLine(limit);
      case WHOLE_LINE -> Optional.of(wholeLine());
      case UNDER_RULE -> underRule(limit.rule().orElseThrow());
      case FROM_DATUM -> Optional.empty();
    };
  }

  private Pair pair(int i, int j) {
    return Pair.of(name + ", from " + at.get(i) + " to " + at.get(j), heights.get(i), heights.get(j), at.get(j).minus(at.get(i)));
  }

  private Optional<Pair> alongLine(OutOfLevelLimit limit) {
    double rate = limit.perMetre().map(each -> each.toMillimetres() / 1000).orElse(0.0);
    double worst = Double.NEGATIVE_INFINITY;
    int[] found = {-1, -1};
    for (int i = 0; i < at.size(); i++) {
      for (int j = at.size() - 1; j > i && at.get(j).minus(at.get(i)).compareTo(METRE) >= 0; j--) {
        double excess = StrictMath.abs((double) (heights.get(j).toNanometres() - heights.get(i).toNanometres()))
            - rate * (at.get(j).toNanometres() - at.get(i).toNanometres());
        if (excess > worst) {
          worst = excess;
          found[0] = i;
          found[1] = j;
        }
      }
    }
    return found[0] < 0 ? Optional.empty() : Optional.of(pair(found[0], found[1]));
  }

  private Pair wholeLine() {
    Length low = heights.stream().reduce(Length::min).orElseThrow();
    Length high = heights.stream().reduce(Length::max).orElseThrow();
    return new Pair(name + ", from " + at.get(0) + " to " + at.get(at.size() - 1), low, high, length());
  }

  /** The difference between the ends of a rule changes its course only where one of the ends is at a reading. */
  private Optional<Pair> underRule(Length rule) {
    if (length().compareTo(rule) < 0) {
      return Optional.empty();
    }
    Pair worst = null;
    int right = 0;
    int left = 0;
    for (int i = 0; i < at.size(); i++) {
      Length end = at.get(i).plus(rule);
      if (end.compareTo(at.get(at.size() - 1)) <= 0) {
        right = segment(end, right);
        worst = worse(worst, rule(at.get(i), heights.get(i), end, height(end, right), rule));
      }
      Length start = at.get(i).minus(rule);
      if (start.compareTo(at.get(0)) >= 0) {
        left = segment(start, left);
        worst = worse(worst, rule(start, height(start, left), at.get(i), heights.get(i), rule));
      }
    }
    return Optional.ofNullable(worst);
  }

  private int segment(Length place, int from) {
    int i = from;
    while (i < at.size() - 2 && at.get(i + 1).compareTo(place) < 0) {
      i++;
    }
    return i;
  }

  private Length height(Length place, int i) {
    Length rise = heights.get(i + 1).minus(heights.get(i));
    return heights.get(i).plus(rise.times(place.minus(at.get(i))).dividedBy(at.get(i + 1).minus(at.get(i)), RoundingMode.HALF_EVEN));
  }

  private Pair rule(Length from, Length one, Length to, Length other, Length rule) {
    return Pair.of(name + ", from " + from + " to " + to, one, other, rule);
  }

  private static Pair worse(Pair one, Pair other) {
    return one == null || other.out().compareTo(one.out()) > 0 ? other : one;
  }
}
