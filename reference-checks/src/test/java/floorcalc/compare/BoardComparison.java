package floorcalc.compare;

import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import java.util.function.ToIntFunction;

/** Prints the tables of {@code docs/performance.md}: habit, search, bound and solver on the same cases. */
final class BoardComparison {
  private final PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);

  private BoardComparison() {}

  /**
   * Runs all cases in one thread, the large ones twice, so that the second time is that of compiled code.
   *
   * @param args how many small cases, all if not given
   */
  public static void main(String[] args) {
    BoardComparison comparison = new BoardComparison();
    comparison.large();
    comparison.small(args.length == 0 ? BoardCases.SMALL : Integer.parseInt(args[0]));
  }

  private void large() {
    List<BoardCase> cases = BoardCases.large().toList();
    List<SolvedBoards> solver = SolverResults.read();
    cases.forEach(given -> LaidCase.bySearch(given).bound());
    cases.forEach(LaidCase::byQuickSearch);
    Timed<List<LaidCase>> habit = Timed.of(() -> cases.stream().map(LaidCase::byHabit).toList());
    Timed<List<LaidCase>> search = Timed.of(() -> cases.stream().map(LaidCase::bySearch).toList());
    Timed<List<LaidCase>> quick = Timed.of(() -> cases.stream().map(LaidCase::byQuickSearch).toList());
    Timed<List<Integer>> bounds = Timed.of(() -> search.value.stream().map(LaidCase::bound).toList());
    print("| %d cases | boards | proven fewest | cases with a rule broken | H and stair patterns | ms a case |", cases.size());
    print("| --- | --- | --- | --- | --- | --- |");
    layout("habit", habit, bounds.value);
    layout("quick search", quick, bounds.value);
    layout("search", search, bounds.value);
    print("| bound | %d | | | | %s |", sum(bounds.value, bound -> bound), milliseconds(bounds.nanoseconds, cases.size()));
    double seconds = solver.stream().mapToDouble(SolvedBoards::seconds).sum();
    print("| solver, best found | %d | %d | 0 | | %.0f by the clock |", sum(solver, SolvedBoards::boards),
        solver.stream().filter(SolvedBoards::isProven).count(), 1000 * seconds / cases.size());
    print("| solver, bound | %d | | | | |%n", sum(solver, SolvedBoards::bound));
    print("Solver / quick search: %.0f times as long", seconds * 1e9 / quick.nanoseconds);
    print("Solver / (search and bound): %.0f times as long%n",
        seconds * 1e9 / (search.nanoseconds + bounds.nanoseconds));
    against(quick.value, bounds.value, solver);
    against(search.value, bounds.value, solver);
    saving(habit.value, search.value);
  }

  private void layout(String name, Timed<List<LaidCase>> laid, List<Integer> bounds) {
    int proven = 0;
    for (int k = 0; k < bounds.size(); k++) {
      proven += laid.value.get(k).boards() == bounds.get(k) ? 1 : 0;
    }
    print("| %s | %d | %d | %d | %d | %s |", name, sum(laid.value, LaidCase::boards), proven,
        laid.value.stream().filter(one -> one.breaches() > 0).count(), sum(laid.value, LaidCase::patterns),
        milliseconds(laid.nanoseconds, bounds.size()));
  }

  private void against(List<LaidCase> search, List<Integer> bounds, List<SolvedBoards> solver) {
    List<Integer> more = new ArrayList<>();
    List<Integer> fewer = new ArrayList<>();
    List<String> open = new ArrayList<>();
    int settled = 0;
    for (int k = 0; k < search.size(); k++) {
      int boards = search.get(k).boards();
      if (boards > solver.get(k).boards()) {
        more.add(k);
      } else if (boards < solver.get(k).boards()) {
        fewer.add(k);
      }
      if (boards == Math.max(bounds.get(k), solver.get(k).bound())) {
        settled++;
      }
      if (boards > bounds.get(k)) {
        open.add(k + ":" + boards + "/" + bounds.get(k));
      }
    }
    print("Against solver: more boards on %d %s, fewer on %d %s", more.size(), more, fewer.size(), fewer);
    print("Fewest by the bound or by the solver's: %d of %d", settled, search.size());
    print("Above the bound: %s%n", open);
  }

  private void small(int count) {
    List<LaidCase> habit = BoardCases.small(count).map(LaidCase::byHabit).toList();
    Timed<List<LaidCase>> search = Timed.of(() -> BoardCases.small(count).map(LaidCase::bySearch).toList());
    print("%d small cases, %s ms a search", count, milliseconds(search.nanoseconds, count));
    saving(habit, search.value);
  }

  /** Boards and packs are added up over the cases in which habit and search break as many rules, none in nearly all. */
  private void saving(List<LaidCase> habit, List<LaidCase> search) {
    List<LaidCase> before = new ArrayList<>();
    List<LaidCase> after = new ArrayList<>();
    List<Integer> worse = new ArrayList<>();
    int kept = 0;
    int fewer = 0;
    int fewerBreaches = 0;
    for (int k = 0; k < habit.size(); k++) {
      LaidCase old = habit.get(k);
      LaidCase found = search.get(k);
      kept += old.breaches() == 0 ? 1 : 0;
      if (!found.isNoWorseThan(old)) {
        worse.add(k);
      }
      if (old.breaches() == found.breaches()) {
        before.add(old);
        after.add(found);
        fewer += found.boards() < old.boards() ? 1 : 0;
      } else if (found.breaches() < old.breaches()) {
        fewerBreaches++;
      }
    }
    print("Habit keeps the rules on %d. Search breaks fewer rules on %d, as many on %d, of which it needs fewer boards on %d; "
        + "worse than the habit on %d %s%n", kept, fewerBreaches, before.size(), fewer, worse.size(), worse);
    print("| | habit | search | saved a case | saved |");
    print("| --- | --- | --- | --- | --- |");
    saved("boards", before, after, LaidCase::boards);
    saved("packs", before, after, LaidCase::packs);
    print("");
  }

  private void saved(String what, List<LaidCase> before, List<LaidCase> after, ToIntFunction<LaidCase> count) {
    int habit = sum(before, count);
    int search = sum(after, count);
    print("| %s | %d | %d | %.2f | %.1f %% |", what, habit, search, (habit - search) / (double) before.size(),
        100.0 * (habit - search) / habit);
  }

  private void print(String format, Object... values) {
    out.printf(Locale.ROOT, format + "%n", values);
  }

  private static <T> int sum(List<T> list, ToIntFunction<T> count) {
    return list.stream().mapToInt(count).sum();
  }

  private static String milliseconds(long nanoseconds, int cases) {
    return String.format(Locale.ROOT, "%.3f", nanoseconds / 1e6 / cases);
  }

  /** A result and the processor time of this thread that it took. */
  private record Timed<T>(T value, long nanoseconds) {

    static <T> Timed<T> of(Supplier<T> work) {
      long before = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
      T value = work.get();
      return new Timed<>(value, ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - before);
    }
  }
}
