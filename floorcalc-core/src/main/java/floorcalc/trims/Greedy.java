package floorcalc.trims;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Quick ways to cut all pieces, none of them sure to be best. */
final class Greedy {
  private Greedy() {}

  /** A bar being filled. */
  private static final class Open {
    final int[] counts;
    long rest;

    Open(int sizes, long room) {
      counts = new int[sizes];
      rest = room;
    }
  }

  /** Longest piece first, each into the first bar that has room for it. */
  static List<Load> firstFit(Problem problem, int[] demand, int kind, Budget budget) {
    List<Open> bars = new ArrayList<>();
    int from = 0;
    for (int i = 0; i < problem.sizes(); i++) {
      int left = demand[i];
      for (int b = from; b < bars.size() && left > 0; b++) {
        left -= put(bars.get(b), problem, i, left);
      }
      budget.spend(bars.size());
      while (left > 0) {
        Open bar = new Open(problem.sizes(), problem.room(kind));
        bars.add(bar);
        left -= put(bar, problem, i, left);
      }
    }
    return loads(bars, kind);
  }

  private static int put(Open bar, Problem problem, int size, int left) {
    int number = (int) Math.min(left, bar.rest / problem.size(size));
    bar.counts[size] += number;
    bar.rest -= number * problem.size(size);
    return number;
  }

  /** Longest piece first, each into the fullest bar that has room for it. */
  static List<Load> bestFit(Problem problem, int[] demand, int kind, Budget budget) {
    List<Open> bars = new ArrayList<>();
    TreeMap<Long, Deque<Open>> byRest = new TreeMap<>();
    for (int i = 0; i < problem.sizes(); i++) {
      for (int n = 0; n < demand[i]; n++) {
        Map.Entry<Long, Deque<Open>> fitting = byRest.ceilingEntry(problem.size(i));
        Open bar;
        if (fitting == null) {
          bar = new Open(problem.sizes(), problem.room(kind));
          bars.add(bar);
        } else {
          bar = fitting.getValue().pop();
          if (fitting.getValue().isEmpty()) {
            byRest.remove(fitting.getKey());
          }
        }
        put(bar, problem, i, 1);
        byRest.computeIfAbsent(bar.rest, rest -> new ArrayDeque<>()).add(bar);
      }
      budget.spend(8L * demand[i]);
    }
    return loads(bars, kind);
  }

  private static List<Load> loads(List<Open> bars, int kind) {
    List<Load> loads = new ArrayList<>();
    for (Open bar : bars) {
      loads.add(new Load(kind, bar.counts, 1));
    }
    return loads;
  }

  /** Bar after bar with the longest piece left and what fills it best beside it; null if the bars do not suffice. */
  static List<Load> fullestBars(Problem problem, Filling filling, int[] demand, int[] limits, Budget budget) {
    int[] left = demand.clone();
    int[] bars = limits.clone();
    List<Load> loads = new ArrayList<>();
    int longest = 0;
    while (true) {
      while (longest < left.length && left[longest] == 0) {
        longest++;
      }
      if (longest == left.length) {
        return loads;
      }
      if (budget.isSpent()) {
        return null;
      }
      left[longest]--;
      filling.measure(left, budget);
      left[longest]++;
      Load best = null;
      double bestRatio = 0;
      for (int kind = 0; kind < problem.kinds(); kind++) {
        if (bars[kind] > 0 && problem.room(kind) >= problem.size(longest)) {
          int[] counts = filling.fullest(problem.room(kind) - problem.size(longest), budget);
          counts[longest]++;
          Load load = new Load(kind, counts, 1);
          long filled = load.filled(problem);
          double ratio = problem.cost(kind) == 0 ? (double) filled / problem.room(kind)
              : -(double) problem.cost(kind) / filled;
          boolean better = best == null || (problem.cost(best.kind()) == 0) == (problem.cost(kind) == 0)
              && ratio > bestRatio || problem.cost(kind) == 0 && problem.cost(best.kind()) > 0;
          if (better) {
            best = load;
            bestRatio = ratio;
          }
        }
      }
      if (best == null) {
        return null;
      }
      int times = best.timesIn(left, bars[best.kind()]);
      best.take(left, times);
      if (bars[best.kind()] != Problem.NO_LIMIT) {
        bars[best.kind()] -= times;
      }
      loads.add(best.times(times));
    }
  }

  /** Puts each load on the cheapest bar that holds it, fullest first. */
  static List<Load> onCheaperBars(Problem problem, List<Load> loads, int[] limits) {
    if (problem.kinds() == 1) {
      return loads;
    }
    List<Load> single = new ArrayList<>();
    int[] left = limits.clone();
    for (Load load : loads) {
      for (int n = 0; n < load.times(); n++) {
        single.add(load.times(1));
      }
      if (left[load.kind()] != Problem.NO_LIMIT) {
        left[load.kind()] -= load.times();
      }
    }
    single.sort(Comparator.comparingLong(load -> -load.filled(problem)));
    for (int b = 0; b < single.size(); b++) {
      Load load = single.get(b);
      long filled = load.filled(problem);
      int cheapest = load.kind();
      for (int kind = 0; kind < problem.kinds(); kind++) {
        if (left[kind] > 0 && problem.room(kind) >= filled && problem.cost(kind) < problem.cost(cheapest)) {
          cheapest = kind;
        }
      }
      if (cheapest != load.kind()) {
        move(left, load.kind(), 1);
        move(left, cheapest, -1);
        single.set(b, load.on(cheapest));
      }
    }
    return single;
  }

  private static void move(int[] left, int kind, int by) {
    if (left[kind] != Problem.NO_LIMIT) {
      left[kind] += by;
    }
  }

  /** The cheapest of all quick ways; null if none was found. */
  static List<Load> best(Problem problem, Filling filling, int[] demand, int[] limits, Budget budget) {
    List<Load> best = quickest(problem, demand, limits, budget);
    List<Load> full = fullestBars(problem, filling, demand, limits, budget);
    return full == null ? best : cheaper(problem, best, onCheaperBars(problem, full, limits));
  }

  /** The cheaper of the two quickest ways; null if no unlimited bar holds all pieces. */
  static List<Load> quickest(Problem problem, int[] demand, int[] limits, Budget budget) {
    List<Load> best = null;
    for (int kind = 0; kind < problem.kinds(); kind++) {
      if (limits[kind] == Problem.NO_LIMIT && holdsAll(problem, demand, kind)) {
        best = cheaper(problem, best, onCheaperBars(problem, firstFit(problem, demand, kind, budget), limits));
        best = cheaper(problem, best, onCheaperBars(problem, bestFit(problem, demand, kind, budget), limits));
      }
    }
    return best;
  }

  private static boolean holdsAll(Problem problem, int[] demand, int kind) {
    for (int i = 0; i < demand.length; i++) {
      if (demand[i] > 0) {
        return problem.size(i) <= problem.room(kind);
      }
    }
    return true;
  }

  /** The cheaper of two; where they cost the same, the one with the longer single leftover, then with fewer cuts. */
  static List<Load> cheaper(Problem problem, List<Load> one, List<Load> other) {
    if (one == null) {
      return other;
    }
    int byCost = Long.compare(problem.costOf(other), problem.costOf(one));
    int byRest = byCost != 0 ? byCost : Long.compare(problem.longestRest(one), problem.longestRest(other));
    int byCuts = byRest != 0 ? byRest : Long.compare(problem.fullBars(one), problem.fullBars(other));
    return byCuts < 0 ? other : one;
  }
}
