package floorcalc.trims;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;

/**
 * Rounds the linear program bar by bar: what it uses a whole number of times is kept, then one more bar is settled and the
 * program solved again for what is left. First the likeliest bar each time, then with a few departures from it, and no
 * further where the bound for what is left says that a cost cannot be kept. Finds cuttings; proves nothing. Used by one
 * thread.
 */
final class Dive {
  private static final int MOST_DEPARTURES = 6;
  private static final int MOST_WAYS = 4;
  /** With no more than that left, the bars are also filled one by one as far as can be. */
  private static final long FEW_BARS = 12;
  private static final double NEARLY = 1e-6;

  private final Problem problem;
  private final Filling filling;
  private final List<Load> pool;
  private final Budget budget;
  private final Deque<Load> chosen = new ArrayDeque<>();
  private List<Load> found;

  Dive(Problem problem, Filling filling, List<Load> pool, Budget budget) {
    this.problem = problem;
    this.filling = filling;
    this.pool = pool;
    this.budget = budget;
  }

  /** A cutting that costs no more than so much, or null if none was found. */
  List<Load> find(int[] demand, int[] limits, long costToKeep) {
    for (int departures = 0; departures <= MOST_DEPARTURES && !budget.isSpent(); departures++) {
      chosen.clear();
      if (dive(demand.clone(), limits.clone(), costToKeep, departures)) {
        return found;
      }
    }
    return null;
  }

  private boolean dive(int[] demand, int[] limits, long cost, int departures) {
    if (budget.isSpent()) {
      return false;
    }
    List<Load> quick = problem.total(demand) <= FEW_BARS * problem.room(0)
        ? Greedy.best(problem, filling, demand, limits, budget)
        : Greedy.quickest(problem, demand, limits, budget);
    if (quick != null && problem.costOf(quick) <= cost) {
      found = new ArrayList<>(chosen);
      found.addAll(quick);
      return true;
    }
    PatternProgram program = new PatternProgram(problem, filling, pool, budget);
    program.solve(demand, limits, cost);
    if (program.bound() == null || program.bound().least() > cost || !program.isFeasible()) {
      return false;
    }
    List<Load> loads = new ArrayList<>();
    List<Double> times = new ArrayList<>();
    program.uses(loads, times);
    List<Load> whole = new ArrayList<>();
    int[] left = demand.clone();
    for (int k = 0; k < loads.size(); k++) {
      int number = loads.get(k).timesIn(left, (int) Math.floor(times.get(k) + NEARLY));
      if (number > 0) {
        whole.add(loads.get(k).times(number));
        loads.get(k).take(left, number);
      }
    }
    if (!whole.isEmpty()) {
      return settle(whole, demand, limits, cost, departures);
    }
    List<Integer> order = new ArrayList<>();
    for (int k = 0; k < loads.size(); k++) {
      order.add(k);
    }
    order.sort(Comparator.<Integer>comparingDouble(k -> -times.get(k))
        .thenComparingLong(k -> -loads.get(k).filled(problem)).thenComparingInt(k -> k));
    for (int way = 0; way < Math.min(order.size(), Math.min(departures + 1, MOST_WAYS)); way++) {
      if (settle(List.of(loads.get(order.get(way)).times(1)), demand, limits, cost, departures - way)) {
        return true;
      }
    }
    return false;
  }

  private boolean settle(List<Load> loads, int[] demand, int[] limits, long cost, int departures) {
    int[] left = demand.clone();
    int[] bars = limits.clone();
    for (Load load : loads) {
      load.take(left, load.times());
      if (bars[load.kind()] != Problem.NO_LIMIT) {
        bars[load.kind()] -= load.times();
        if (bars[load.kind()] < 0) {
          return false;
        }
      }
      chosen.addLast(load);
    }
    if (dive(left, bars, cost - problem.costOf(loads), departures)) {
      return true;
    }
    for (int n = 0; n < loads.size(); n++) {
      chosen.removeLast();
    }
    return false;
  }
}
