package floorcalc.flatness;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** A set of whole numbers as runs of neighbours. Used by one thread. */
final class Runs {
  /** From the first of a run to the number after its last. */
  private final TreeMap<Integer, Integer> runs = new TreeMap<>();

  /** Takes a number and all above it out of the set. */
  void cutFrom(int number) {
    Map.Entry<Integer, Integer> top = runs.lastEntry();
    while (top != null && top.getKey() >= number) {
      runs.remove(top.getKey());
      top = runs.lastEntry();
    }
    if (top != null && top.getValue() > number) {
      runs.put(top.getKey(), number);
    }
  }

  /**
   * Puts the numbers from one up to before another into the set; returns those that were not in it, as runs from the lowest
   * to the highest, each its first and the number after its last.
   */
  List<int[]> add(int from, int beyond) {
    List<int[]> added = new ArrayList<>();
    if (from >= beyond) {
      return added;
    }
    int first = from;
    int last = beyond;
    int next = from;
    Map.Entry<Integer, Integer> run = runs.floorEntry(from);
    if (run == null || run.getValue() < from) {
      run = runs.ceilingEntry(from);
    }
    while (run != null && run.getKey() <= beyond) {
      if (next < run.getKey()) {
        added.add(new int[] {next, run.getKey()});
      }
      first = Math.min(first, run.getKey());
      last = Math.max(last, run.getValue());
      next = run.getValue();
      runs.remove(run.getKey());
      run = runs.ceilingEntry(next);
    }
    if (next < beyond) {
      added.add(new int[] {next, beyond});
    }
    runs.put(first, last);
    return added;
  }
}
