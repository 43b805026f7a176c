package floorcalc.trims;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The longest single leftover that the same bars can give. One bar is made as short as can be: if all pieces fit into the
 * other bars and a bar shortened to x, the rest of it is left over in one piece. Whether they do is monotone in x, so the
 * least x is found by halving. If a bar turns out not to be needed at all, it is spared, and the search begins anew with the
 * bars that are left. Used by one thread.
 */
final class LongestLeftover {
  private static final long FIRST_LOOK = 2_000_000;

  private final Problem problem;
  private final Budget budget;
  private final PriceBound prices;
  private final Filling filling;
  private List<Load> best;
  private long rest;
  private boolean proven = true;
  private int[] bars;
  private boolean spared;

  LongestLeftover(Problem problem, FewestBars fewest, Budget budget) {
    this.problem = problem;
    this.budget = budget;
    this.prices = fewest.prices();
    this.filling = fewest.filling();
    this.best = fewest.loads();
    this.rest = problem.longestRest(best);
  }

  void improve() {
    do {
      bars = barsOf(best);
      spared = false;
      for (int kind = 0; kind < bars.length && !spared; kind++) {
        if (bars[kind] > 0 && problem.room(kind) > rest) {
          shorten(kind);
        }
      }
    } while (spared);
  }

  private int[] barsOf(List<Load> loads) {
    int[] number = new int[problem.kinds()];
    for (Load load : loads) {
      number[load.kind()] += load.times();
    }
    return number;
  }

  private void shorten(int kind) {
    int[] others = bars.clone();
    others[kind]--;
    long shut = leastFill(others) - 1;
    long open = problem.room(kind) - rest;
    boolean first = true;
    long none = shut;
    while (open - shut > 1 && !spared) {
      long middle = first ? shut + 1 : shut + (open - shut) / 2;
      first = false;
      BarFilling.Answer answer = fits(kind, others, middle);
      if (answer == BarFilling.Answer.YES) {
        open = problem.room(kind) - rest;
      } else {
        shut = middle;
        none = answer == BarFilling.Answer.NO ? middle : none;
      }
    }
    proven &= spared || none >= open - 1;
  }

  /** What one bar must hold at least, if the others hold all they can: by length and by the prices of the bound. */
  private long leastFill(int[] others) {
    int[] demand = problem.wanted();
    long least = problem.total(demand);
    for (int k = 0; k < others.length; k++) {
      least -= others[k] * problem.room(k);
    }
    if (prices != null) {
      filling.price(prices.prices(), demand, budget);
      long worth = 0;
      for (int i = 0; i < demand.length; i++) {
        worth += demand[i] * prices.prices()[i];
      }
      for (int k = 0; k < others.length; k++) {
        worth -= others[k] * prices.ceilings()[k];
      }
      least = Math.max(least, filling.leastRoomFor(worth));
    }
    return Math.max(1, least);
  }

  /** Whether the pieces fit into the other bars and one of this size; keeps the cutting if they do. */
  private BarFilling.Answer fits(int kind, int[] others, long size) {
    if (budget.isSpent()) {
      return BarFilling.Answer.UNKNOWN;
    }
    int kinds = problem.kinds() + 1;
    int place = 0;
    while (place < problem.kinds() && problem.room(place) >= size) {
      place++;
    }
    long[] rooms = new long[kinds];
    long[] costs = new long[kinds];
    int[] limits = new int[kinds];
    int[] given = new int[kinds];
    for (int k = 0; k < kinds; k++) {
      int from = k < place ? k : k - 1;
      rooms[k] = k == place ? size : problem.room(from);
      costs[k] = k == place ? 0 : 1;
      given[k] = k == place ? 1 : others[from];
      limits[k] = k == place ? 1 : problem.isUniform() ? Problem.NO_LIMIT : others[from];
    }
    return fits(problem.from(rooms, costs, limits), given, kind, place);
  }

  private BarFilling.Answer fits(Problem shorter, int[] given, int kind, int place) {
    BarFilling.Answer answer = search(shorter, null, given, kind, place, FIRST_LOOK);
    if (answer != BarFilling.Answer.UNKNOWN) {
      return answer;
    }
    long granted = budget.left() / 3;
    Budget part = budget.part(granted);
    Filling fillingShorter = new Filling(shorter);
    List<Load> pool = new ArrayList<>();
    PatternProgram program = new PatternProgram(shorter, fillingShorter, pool, part);
    long cost = -1;
    for (int number : given) {
      cost += number;
    }
    program.solve(problem.wanted(), shorter.limits(), cost);
    PriceBound guide = program.bound();
    boolean none = guide != null && guide.least() > cost;
    List<Load> found = none ? null
        : new Dive(shorter, fillingShorter, pool, part).find(problem.wanted(), shorter.limits(), cost);
    budget.settle(granted, part);
    if (found != null) {
      keep(found, kind, place);
      return BarFilling.Answer.YES;
    }
    return none ? BarFilling.Answer.NO : search(shorter, guide, given, kind, place, budget.left() / 4);
  }

  private BarFilling.Answer search(Problem shorter, PriceBound guide, int[] given, int kind, int place, long steps) {
    Budget part = budget.part(steps);
    BarFilling search = new BarFilling(shorter, guide, part);
    BarFilling.Answer answer = search.fit(problem.wanted(), given);
    budget.settle(steps, part);
    if (answer == BarFilling.Answer.YES) {
      keep(search.loads(), kind, place);
    }
    return answer;
  }

  private void keep(List<Load> found, int kind, int place) {
    List<Load> loads = new ArrayList<>();
    for (Load load : found) {
      loads.add(load.on(load.kind() == place ? kind : load.kind() < place ? load.kind() : load.kind() - 1));
    }
    best = loads;
    rest = problem.longestRest(loads);
    spared = Arrays.stream(barsOf(loads)).sum() < Arrays.stream(bars).sum();
  }

  List<Load> loads() {
    return best;
  }

  /** Whether no cutting of these bars leaves a longer leftover. */
  boolean isProven() {
    return proven;
  }
}
