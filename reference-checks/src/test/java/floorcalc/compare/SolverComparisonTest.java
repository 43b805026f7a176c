package floorcalc.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The search and the bound against what an exact solver found and proved for the same cases. */
class SolverComparisonTest {
  // Regression values: they may be moved one way only.
  private static final int BOARDS_AT_MOST = 13_647;
  private static final int BOUND_AT_LEAST = 13_638;
  private static final int PROVEN_AT_LEAST = 291;
  private static final int QUICK_BOARDS_AT_MOST = 13_691;

  private static List<SolvedBoards> solver;
  private static List<LaidCase> search;
  private static List<Integer> bounds;

  @BeforeAll
  static void lay() {
    solver = SolverResults.read();
    search = BoardCases.large().parallel().map(LaidCase::bySearch).toList();
    bounds = search.parallelStream().map(LaidCase::bound).toList();
  }

  @Test
  void everyCaseWasGivenToTheSolver() {
    assertThat(solver).extracting(SolvedBoards::number)
        .containsExactlyElementsOf(IntStream.range(0, BoardCases.LARGE).boxed().toList());
  }

  @Test
  void rulesAreKept() {
    assertThat(search).allMatch(laid -> laid.breaches() == 0);
  }

  @Test
  void neverMoreBoardsThanTheSolverFound() {
    assertThat(cases(k -> search.get(k).boards() > solver.get(k).boards())).isEmpty();
  }

  /** A bound that says more than the fewest boards anyone found would be false. */
  @Test
  void boundNeverAboveAnyWayFound() {
    assertThat(cases(k -> bounds.get(k) > Math.min(solver.get(k).boards(), search.get(k).boards()))).isEmpty();
  }

  /** Nor may the search find what the solver proved not to be. */
  @Test
  void neverFewerBoardsThanTheSolverProved() {
    assertThat(cases(k -> search.get(k).boards() < solver.get(k).bound())).isEmpty();
  }

  @Test
  void totalsOnlyGetBetter() {
    assertThat(search.stream().mapToInt(LaidCase::boards).sum()).as("boards").isLessThanOrEqualTo(BOARDS_AT_MOST);
    assertThat(bounds.stream().mapToInt(Integer::intValue).sum()).as("bound").isGreaterThanOrEqualTo(BOUND_AT_LEAST);
    assertThat(cases(k -> search.get(k).boards() == bounds.get(k)).size()).as("proven").isGreaterThanOrEqualTo(PROVEN_AT_LEAST);
  }

  @Test
  void quickSearchOnlyGetsBetter() {
    List<LaidCase> quick = BoardCases.large().parallel().map(LaidCase::byQuickSearch).toList();

    assertThat(quick).allMatch(laid -> laid.breaches() == 0);
    assertThat(quick.stream().mapToInt(LaidCase::boards).sum()).isLessThanOrEqualTo(QUICK_BOARDS_AT_MOST);
  }

  private static List<String> cases(IntPredicate filter) {
    List<String> found = new ArrayList<>();
    for (int k = 0; k < search.size(); k++) {
      if (filter.test(k)) {
        found.add("case " + k + ": search " + search.get(k).boards() + ", bound " + bounds.get(k) + ", solver " + solver.get(k));
      }
    }
    return found;
  }
}
