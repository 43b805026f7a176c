package floorcalc.trims;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Whether pieces fit into given bars: an exact search, bar after bar. The longest piece left lies in some bar; all ways to
 * fill one up with it are tried that are not worse than another: nothing more fits, and no piece can be exchanged for a
 * longer one that is left. What may be lost, in length and in worth at good prices, is kept account of, and what has failed
 * is remembered. Used by one thread.
 */
final class BarFilling {
  /** What the search found out. */
  enum Answer { YES, NO, UNKNOWN }

  private static final int MOST_BARS = 1_000;
  private static final int MOST_FAILED = 200_000;
  private static final int MOST_WAYS = 50_000;

  private final Problem problem;
  private final Budget budget;
  private final PriceBound prices;
  private final Set<State> failed = new HashSet<>();
  private final Deque<Load> chosen = new ArrayDeque<>();
  private int[] demand;
  private int[] bars;

  // one bar being filled
  private List<Way> ways;
  private int[] counts;
  private int kind;
  private long slack;

  private record Way(Load load, long rest) {}

  /** What is left to do. */
  private record State(int[] demand, int[] bars) {
    @Override
    public boolean equals(Object object) {
      return object instanceof State other && Arrays.equals(demand, other.demand) && Arrays.equals(bars, other.bars);
    }

    @Override
    public int hashCode() {
      return 31 * Arrays.hashCode(demand) + Arrays.hashCode(bars);
    }
  }

  /**
   * @param prices prices with what a bar of each kind holds at most, or null
   */
  BarFilling(Problem problem, PriceBound prices, Budget budget) {
    this.problem = problem;
    this.prices = prices;
    this.budget = budget;
  }

  /** Tries to cut a demand from so many bars of each kind. */
  Answer fit(int[] wanted, int[] given) {
    demand = wanted.clone();
    bars = given.clone();
    chosen.clear();
    long number = 0;
    for (int bar : bars) {
      number += bar;
    }
    if (number > MOST_BARS) {
      return slack() < 0 ? Answer.NO : Answer.UNKNOWN;
    }
    return search();
  }

  /** After YES: how the bars are filled. */
  List<Load> loads() {
    List<Load> loads = new ArrayList<>(chosen);
    Collections.reverse(loads);
    return loads;
  }

  private long slack() {
    long slack = -problem.total(demand);
    for (int k = 0; k < bars.length; k++) {
      slack += bars[k] * problem.room(k);
    }
    return slack;
  }

  private long worthSlack() {
    if (prices == null) {
      return Long.MAX_VALUE;
    }
    long slack = 0;
    for (int k = 0; k < bars.length; k++) {
      slack += bars[k] * prices.ceilings()[k];
    }
    for (int i = 0; i < demand.length; i++) {
      slack -= demand[i] * prices.prices()[i];
    }
    return slack;
  }

  private Answer search() {
    int longest = 0;
    while (longest < demand.length && demand[longest] == 0) {
      longest++;
    }
    if (longest == demand.length) {
      return Answer.YES;
    }
    budget.spend(10L * demand.length + 50);
    long lose = slack();
    long loseWorth = worthSlack();
    if (lose < 0 || loseWorth < 0) {
      return Answer.NO;
    }
    State state = new State(demand.clone(), bars.clone());
    if (failed.contains(state)) {
      return Answer.NO;
    }
    Answer answer = Answer.NO;
    for (Way way : ways(longest, lose, loseWorth)) {
      if (budget.isSpent()) {
        return Answer.UNKNOWN;
      }
      Load load = way.load;
      load.take(demand, 1);
      bars[load.kind()]--;
      chosen.push(load);
      Answer below = search();
      if (below == Answer.YES) {
        return below;
      }
      chosen.pop();
      bars[load.kind()]++;
      load.take(demand, -1);
      answer = below == Answer.UNKNOWN ? below : answer;
    }
    if (budget.isSpent()) {
      return Answer.UNKNOWN;
    }
    if (answer == Answer.NO && failed.size() < MOST_FAILED) {
      failed.add(state);
    }
    return answer;
  }

  private List<Way> ways(int longest, long lose, long loseWorth) {
    ways = new ArrayList<>();
    slack = lose;
    for (kind = 0; kind < bars.length; kind++) {
      boolean likeBefore = kind > 0 && bars[kind - 1] > 0 && problem.room(kind) == problem.room(kind - 1);
      if (bars[kind] > 0 && problem.room(kind) >= problem.size(longest) && !likeBefore) {
        counts = new int[demand.length];
        fill(longest, longest, problem.room(kind), loseWorth);
      }
    }
    ways.sort(Comparator.comparingLong(Way::rest));
    return ways;
  }

  private void fill(int i, int longest, long rest, long loseWorth) {
    budget.spend(4);
    if (budget.isSpent()) {
      return;
    }
    int at = i;
    while (at < demand.length && (demand[at] == 0 || problem.size(at) > rest)) {
      at++;
    }
    if (at == demand.length) {
      budget.spend(demand.length);
      if (rest <= slack && isFull(rest) && isWorth(loseWorth)) {
        if (ways.size() >= MOST_WAYS) {
          budget.spend(Long.MAX_VALUE / 2);
          return;
        }
        budget.spend(2L * demand.length + 40);
        ways.add(new Way(new Load(kind, counts.clone(), 1), rest));
      }
      return;
    }
    int least = at == longest ? 1 : 0;
    for (int number = (int) Math.min(demand[at], rest / problem.size(at)); number >= least; number--) {
      counts[at] = number;
      fill(at + 1, longest, rest - number * problem.size(at), loseWorth);
    }
    counts[at] = 0;
  }

  /** Whether no piece that is left fits into the rest, neither beside the others nor in place of a shorter one. */
  private boolean isFull(long rest) {
    for (int i = counts.length - 1; i >= 0; i--) {
      if (demand[i] > counts[i]) {
        if (problem.size(i) <= rest) {
          return false;
        }
        for (int j = i + 1; j < counts.length && rest > 0; j++) {
          if (counts[j] > 0 && problem.size(i) - problem.size(j) <= rest) {
            return false;
          }
        }
      }
    }
    return true;
  }

  private boolean isWorth(long loseWorth) {
    if (prices == null) {
      return true;
    }
    long worth = 0;
    for (int i = 0; i < counts.length; i++) {
      worth += counts[i] * prices.prices()[i];
    }
    return prices.ceilings()[kind] - worth <= loseWorth;
  }
}
