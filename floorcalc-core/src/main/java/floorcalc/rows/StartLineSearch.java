package floorcalc.rows;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalLong;
import java.util.PriorityQueue;
import java.util.Set;

/**
 * The exact search for a start line, over whole nanometres.
 * <p>
 * The start line {@code f} runs over {@code 1 .. p}. At a stop that reaches over {@code t}, its taper and its
 * error both ways, with the floor above it the strip is
 * {@code f - a} for {@code f} in {@code [a + 1, a + p - t]} and nothing for the rest of the period; with the floor
 * below it, it is {@code b - f} for {@code f} in {@code [b - (p - t), b - 1]}. Between the ends of these intervals the
 * narrowest strip is {@code min(f - A, B - f)}, with {@code A} the highest of the one kind and {@code B} the lowest of
 * the other, so its best {@code f} is known at once. Sorting the ends makes it {@code O(k log k)} for {@code k} stops.
 */
final class StartLineSearch {
  /** A part of the period in which a stop has a strip: |f - level| for f in [from, to]. */
  private record Part(long level, long from, long to) {}

  private final long pitch;
  private final int stops;
  private final List<Part> above = new ArrayList<>();
  private final List<Part> below = new ArrayList<>();

  /**
   * @param bayLow the level from which the start line is measured, nm
   * @param atLeast strips narrower than this count as nothing, nm, at least 1
   */
  StartLineSearch(List<Stop> stops, long bayLow, long pitch, long atLeast) {
    this.pitch = pitch;
    this.stops = stops.size();
    for (Stop stop : stops) {
      long widest = pitch - stop.reach().toNanometres();
      long height = Math.subtractExact(stop.tightest().toNanometres(), bayLow);
      if (widest >= atLeast && stop.side() == Stop.Side.FLOOR_ABOVE) {
        long level = Math.floorMod(height, pitch);
        addPart(above, level, level + atLeast, level + widest);
        addPart(above, level - pitch, level - pitch + atLeast, level - pitch + widest);
      } else if (widest >= atLeast) {
        long level = Math.floorMod(height - 1, pitch) + 1;
        addPart(below, level, level - widest, level - atLeast);
        addPart(below, level + pitch, level + pitch - widest, level + pitch - atLeast);
      }
    }
  }

  private void addPart(List<Part> parts, long level, long from, long to) {
    long clippedFrom = Math.max(from, 1);
    long clippedTo = Math.min(to, pitch);
    if (clippedFrom <= clippedTo) {
      parts.add(new Part(level, clippedFrom, clippedTo));
    }
  }

  /** Returns the highest start line at which every stop has a strip of at least {@code atLeast}, if there is one. */
  OptionalLong highestForAll() {
    long[] from = bounds(true);
    long[] to = bounds(false);
    int ended = to.length;
    // Walk down: a part is entered at its upper end and left below its lower end.
    int open = 0;
    int left = from.length;
    if (stops == 0) {
      return OptionalLong.of(pitch);
    }
    while (ended > 0) {
      long at = to[--ended];
      open++;
      while (ended > 0 && to[ended - 1] == at) {
        ended--;
        open++;
      }
      while (left > 0 && from[left - 1] > at) {
        left--;
        open--;
      }
      if (open == stops) {
        return OptionalLong.of(at);
      }
    }
    return OptionalLong.empty();
  }

  private long[] bounds(boolean lower) {
    long[] bounds = new long[above.size() + below.size()];
    int n = 0;
    for (List<Part> parts : List.of(above, below)) {
      for (Part part : parts) {
        bounds[n++] = lower ? part.from() : part.to();
      }
    }
    Arrays.sort(bounds);
    return bounds;
  }

  /**
   * Returns the start line with the fewest stops that have no strip, of these the one with the widest narrowest strip
   * among the others, of these the highest.
   */
  long widest() {
    List<Stretch> stretches = stretches();
    Stretch best = stretches.get(0);
    for (Stretch stretch : stretches) {
      if (stretch.open() > best.open() || stretch.open() == best.open() && stretch.strip() >= best.strip()) {
        best = stretch;
      }
    }
    return best.line();
  }

  /**
   * Returns the best line of each stretch in which as many stops as can be have a strip, the one with the widest narrowest
   * strip first, then the ends of these stretches in the same order; none if fewer stops have one than are wanted.
   */
  List<Long> worthTrying(int wanted) {
    List<Stretch> stretches = stretches();
    int most = Math.max(wanted, stretches.stream().mapToInt(Stretch::open).max().orElse(0));
    List<Stretch> open = stretches.stream().filter(stretch -> stretch.open() == most)
        .sorted(Comparator.comparingLong((Stretch stretch) -> -stretch.strip()).thenComparingLong(stretch -> -stretch.line()))
        .toList();
    Set<Long> lines = new LinkedHashSet<>();
    open.forEach(stretch -> lines.add(stretch.line()));
    open.forEach(stretch -> {
      lines.add(stretch.high());
      lines.add(stretch.low());
    });
    return List.copyOf(lines);
  }

  /** A stretch of start lines with the same stops open: its best line, the narrowest strip there, how many stops have one. */
  private record Stretch(long low, long high, long line, long strip, int open) {}

  private List<Stretch> stretches() {
    above.sort(Comparator.comparingLong(Part::from));
    below.sort(Comparator.comparingLong(Part::from));
    PriorityQueue<Part> highestAbove = new PriorityQueue<>(Comparator.comparingLong(part -> -part.level()));
    PriorityQueue<Part> lowestBelow = new PriorityQueue<>(Comparator.comparingLong(Part::level));
    long[] to = bounds(false);
    long[] starts = rangeStarts(to);
    int nextAbove = 0;
    int nextBelow = 0;
    int ended = 0;
    List<Stretch> stretches = new ArrayList<>(starts.length);
    for (int i = 0; i < starts.length; i++) {
      long low = starts[i];
      long high = i + 1 < starts.length ? starts[i + 1] - 1 : pitch;
      while (nextAbove < above.size() && above.get(nextAbove).from() <= low) {
        highestAbove.add(above.get(nextAbove++));
      }
      while (nextBelow < below.size() && below.get(nextBelow).from() <= low) {
        lowestBelow.add(below.get(nextBelow++));
      }
      while (ended < to.length && to[ended] < low) {
        ended++;
      }
      dropEnded(highestAbove, low);
      dropEnded(lowestBelow, low);
      long line = bestIn(low, high, highestAbove.peek(), lowestBelow.peek());
      stretches.add(new Stretch(low, high, line, strip(line, highestAbove.peek(), lowestBelow.peek()),
          nextAbove + nextBelow - ended));
    }
    return stretches;
  }

  /** Returns where the set of stops with a strip changes, in order, from 1. */
  private long[] rangeStarts(long[] to) {
    long[] from = bounds(true);
    long[] starts = new long[from.length + to.length + 1];
    System.arraycopy(from, 0, starts, 0, from.length);
    for (int i = 0; i < to.length; i++) {
      starts[from.length + i] = to[i] + 1;
    }
    starts[starts.length - 1] = 1;
    return Arrays.stream(starts).filter(start -> start <= pitch).sorted().distinct().toArray();
  }

  private static void dropEnded(PriorityQueue<Part> parts, long low) {
    while (!parts.isEmpty() && parts.peek().to() < low) {
      parts.remove();
    }
  }

  private static long bestIn(long low, long high, Part nearestAbove, Part nearestBelow) {
    if (nearestBelow == null) {
      return high;
    }
    if (nearestAbove == null) {
      return low;
    }
    long middle = -Math.floorDiv(-(nearestAbove.level() + nearestBelow.level()), 2);
    return Math.max(low, Math.min(high, middle));
  }

  private long strip(long line, Part nearestAbove, Part nearestBelow) {
    long strip = pitch;
    if (nearestAbove != null) {
      strip = Math.min(strip, line - nearestAbove.level());
    }
    if (nearestBelow != null) {
      strip = Math.min(strip, nearestBelow.level() - line);
    }
    return strip;
  }
}
