package floorcalc.bench;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.plan.FloorPlan;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is timed gives the right answer: a sound plan of about as many boards as the benchmark is named after. */
class PlanningBenchmarkTest {

  @ParameterizedTest
  @ValueSource(ints = {12, 120, 1200})
  void aboutSoManyBoards(int boards) {
    PlanningBenchmark benchmark = new PlanningBenchmark();
    benchmark.boards = boards;
    benchmark.room();

    FloorPlan plan = benchmark.plan();

    // The room has 97 % of the area of these boards; the first offcuts of a small room find no second use.
    assertThat(plan.order().boardsUsed()).isBetween(boards * 96 / 100, boards * 13 / 12);
    assertThat(plan.order().boardsAtLeast()).isBetween(boards * 90 / 100, plan.order().boardsUsed());
    assertThat(benchmark.quick().order().boardsUsed()).isBetween(plan.order().boardsUsed(), boards * 13 / 12);
    assertThat(benchmark.audit().breaches()).isEmpty();
    assertThat(benchmark.audit().boards()).isEqualTo(plan.order().boardsUsed());
  }
}
