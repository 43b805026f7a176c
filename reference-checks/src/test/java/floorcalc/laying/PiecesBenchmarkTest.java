package floorcalc.laying;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.FloorPlanner;
import floorcalc.bench.PlanningBenchmark;
import floorcalc.boards.SearchEffort;
import floorcalc.plan.Bay;
import floorcalc.plan.LaidPiece;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is timed gives the right answer: the very pieces of the plan. */
class PiecesBenchmarkTest {

  @ParameterizedTest
  @ValueSource(ints = {12, 120, 1200})
  void thePiecesAreThoseOfThePlan(int boards) {
    PiecesBenchmark benchmark = new PiecesBenchmark();
    benchmark.boards = boards;
    benchmark.room();

    List<Bay> planned = FloorPlanner.plan(PlanningBenchmark.job(boards).withEffort(SearchEffort.QUICK)).bays();
    assertThat(pieces(benchmark.pieces())).isEqualTo(pieces(planned));
  }

  private static List<LaidPiece> pieces(List<Bay> bays) {
    return bays.stream().flatMap(bay -> bay.rows().stream()).flatMap(row -> row.pieces().stream()).toList();
  }
}
