package floorcalc.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import floorcalc.FloorPlanner;
import floorcalc.plan.FloorPlan;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Geometry;

/** What is timed gives the right answer: the pieces of the grid cover what the library's plan covers, and no piece is missing. */
class GridClipBenchmarkTest {
  private static final double SQUARE_MILLIMETRES = 1e12;

  @ParameterizedTest
  @ValueSource(ints = {12, 120, 1200})
  void piecesCoverTheLaidArea(int boards) {
    GridClipBenchmark benchmark = new GridClipBenchmark();
    benchmark.boards = boards;
    benchmark.room();

    List<Geometry> every = benchmark.everyBoard();
    List<Geometry> atTheWalls = benchmark.boardsAtTheWalls();

    FloorPlan plan = FloorPlanner.plan(PlanningBenchmark.job(boards));
    double laid = plan.bays().stream()
        .mapToDouble(bay -> bay.laid().area().toHalfSquareNanometres().doubleValue() / 2 / SQUARE_MILLIMETRES).sum();
    assertThat(area(every)).isCloseTo(laid, within(1e-9 * laid));
    assertThat(area(atTheWalls)).isCloseTo(laid, within(1e-9 * laid));
    assertThat(atTheWalls).hasSameSizeAs(every);
    // Rows of the plan are rows of the grid; each has at most a piece more or less than its whole boards ask for.
    int rows = plan.bays().get(0).rows().size();
    int pieces = plan.bays().get(0).rows().stream().mapToInt(row -> row.pieces().size()).sum();
    assertThat(every.size()).isBetween(pieces - rows, pieces + rows);
  }

  private static double area(List<Geometry> pieces) {
    return pieces.stream().mapToDouble(Geometry::getArea).sum();
  }
}
