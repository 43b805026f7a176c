package floorcalc.trims;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;

/**
 * The least that must be bought: quick ways, bounds, the linear program over all ways to fill a bar, its rounding, and an
 * exact search, each only as far as the gap between the best cutting and the best bound asks for it. Used by one thread.
 */
final class FewestBars {
  private static final long FIRST_LOOK = 5_000_000;
  private static final int MOST_MIXES = 2_000;

  private final Problem problem;
  private final Budget budget;
  private final Filling filling;
  private final List<Load> pool = new ArrayList<>();

  private List<Load> best;
  private long cost = Long.MAX_VALUE;
  private long least;
  private PriceBound prices;
  private boolean searched;
  private long leastByMixes = -1;

  FewestBars(Problem problem, Budget budget) {
    this.problem = problem;
    this.budget = budget;
    this.filling = new Filling(problem);
  }

  void solve() {
    int[] demand = problem.wanted();
    keep(Greedy.best(problem, filling, demand, problem.limits(), budget));
    if (problem.isUniform()) {
      least = Math.max(PlainBounds.bySum(problem, demand), PlainBounds.LargePieces.of(problem, demand).bars())
          * problem.cost(0);
    }
    if (cost > least) {
      if (best != null) {
        best.forEach(load -> pool.add(load.times(1)));
      }
      PatternProgram program = new PatternProgram(problem, filling, pool, budget);
      program.solve(demand, problem.limits(), Long.MAX_VALUE);
      if (program.bound() != null && program.bound().least() > least) {
        prices = program.bound();
        least = prices.least();
      }
    }
    if (cost > least) {
      exactly(FIRST_LOOK);
    }
    while (cost > least && !budget.isSpent() && (byMixes() || dive())) {
      continue;
    }
    while (cost > least && exactly(budget.left()) == BarFilling.Answer.YES) {
      continue;
    }
  }

  /** Finds prices for a bound, and no more. */
  void price() {
    PatternProgram program = new PatternProgram(problem, filling, pool, budget);
    program.solve(problem.wanted(), problem.limits(), Long.MAX_VALUE);
    prices = program.bound();
  }

  private boolean keep(List<Load> loads) {
    if (loads == null || problem.costOf(loads) >= cost) {
      return false;
    }
    best = loads;
    cost = problem.costOf(loads);
    return true;
  }

  /**
   * Settles how many bars of each length are bought, before how they are filled: all numbers that cost no more than the bound
   * are looked at. For most the linear program with so many bars shows that they do not suffice; if it does for all, the
   * bound is raised. True if the bound was raised or a cutting found.
   */
  private boolean byMixes() {
    List<int[]> mixes = new ArrayList<>();
    if (best == null || soldKinds() < 2 || !mix(0, least, new int[problem.kinds()], mixes)) {
      return false;
    }
    long granted = budget.left() / 3;
    Budget part = budget.part(granted);
    boolean none = true;
    boolean found = false;
    for (int[] bars : mixes) {
      if (part.isSpent()) {
        none = false;
        break;
      }
      Problem settled = problem.counting(bars);
      long number = 0;
      for (int kind = 0; kind < bars.length; kind++) {
        number += bars[kind] * settled.cost(kind);
      }
      PatternProgram program = new PatternProgram(settled, filling, pool, part);
      program.solve(problem.wanted(), bars, number);
      if (program.bound() == null || program.bound().least() <= number) {
        none = false;
        found = keep(new Dive(settled, filling, pool, part).find(problem.wanted(), bars, number));
        if (found) {
          break;
        }
      }
    }
    budget.settle(granted, part);
    if (none) {
      least = problem.reachedFrom(BigInteger.valueOf(least + 1), BigInteger.ONE);
      leastByMixes = least;
    }
    return none || found;
  }

  private int soldKinds() {
    int sold = 0;
    for (int kind = 0; kind < problem.kinds(); kind++) {
      sold += problem.cost(kind) > 0 ? 1 : 0;
    }
    return sold;
  }

  private boolean dive() {
    long target = best == null ? Long.MAX_VALUE : least;
    while (!budget.isSpent()) {
      long granted = budget.left() / 2;
      Budget part = budget.part(granted);
      boolean found = keep(new Dive(problem, filling, pool, part).find(problem.wanted(), problem.limits(), target));
      budget.settle(granted, part);
      if (found) {
        return true;
      }
      if (best == null || target >= problem.justBelow(cost)) {
        return false;
      }
      target = problem.justBelow(cost);
    }
    return false;
  }

  /** Looks through all ways to cut for less than the best, as far as so many steps reach. */
  private BarFilling.Answer exactly(long steps) {
    Budget part = budget.part(steps);
    List<int[]> mixes = new ArrayList<>();
    boolean all = best == null ? allBars(mixes) : mix(0, problem.justBelow(cost), new int[problem.kinds()], mixes);
    BarFilling search = new BarFilling(problem, prices, part);
    BarFilling.Answer answer = all ? BarFilling.Answer.NO : BarFilling.Answer.UNKNOWN;
    for (int[] mix : mixes) {
      BarFilling.Answer one = search.fit(problem.wanted(), mix);
      if (one == BarFilling.Answer.YES) {
        answer = one;
        keep(search.loads());
        break;
      }
      if (one == BarFilling.Answer.UNKNOWN) {
        answer = one;
      }
    }
    budget.settle(steps, part);
    if (answer == BarFilling.Answer.NO && best != null) {
      least = cost;
      searched = true;
    }
    return answer;
  }

  /** While no cutting is known: all bars that there are, if their number is limited. */
  private boolean allBars(List<int[]> mixes) {
    int[] limits = problem.limits();
    for (int limit : limits) {
      if (limit == Problem.NO_LIMIT) {
        return false;
      }
    }
    mixes.add(limits);
    return true;
  }

  /** All numbers of bars that cost no more than so much, none of which could be raised; false if there are too many. */
  private boolean mix(int kind, long money, int[] bars, List<int[]> mixes) {
    if (kind == problem.kinds()) {
      for (int k = 0; k < bars.length; k++) {
        if (problem.cost(k) > 0 && problem.cost(k) <= money && bars[k] < most(k)) {
          return true;
        }
      }
      mixes.add(bars.clone());
      return mixes.size() < MOST_MIXES;
    }
    long number = problem.cost(kind) == 0 ? most(kind) : Math.min(most(kind), money / problem.cost(kind));
    for (long n = number; n >= (problem.cost(kind) == 0 ? number : 0); n--) {
      bars[kind] = (int) n;
      if (!mix(kind + 1, money - n * problem.cost(kind), bars, mixes)) {
        return false;
      }
    }
    bars[kind] = 0;
    return true;
  }

  private long most(int kind) {
    return problem.isLimited(kind) ? problem.limits()[kind] : Integer.MAX_VALUE;
  }

  /** The best cutting found, or null if the bars do not suffice as far as was found. */
  List<Load> loads() {
    return best;
  }

  long cost() {
    return cost;
  }

  /** A cost that no cutting can be below. */
  long least() {
    return least;
  }

  /** The prices of the bound, or null if a simpler bound is as good. */
  PriceBound prices() {
    return prices;
  }

  /** Whether the least rests on a search through all ways to cut, beyond the bounds. */
  boolean isSearched() {
    return searched;
  }

  /** Whether the least rests on all numbers of bars that cost less having been looked at. */
  boolean isByMixes() {
    return leastByMixes >= 0;
  }

  long leastByMixes() {
    return leastByMixes;
  }

  Filling filling() {
    return filling;
  }
}
