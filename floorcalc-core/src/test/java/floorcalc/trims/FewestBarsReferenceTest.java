package floorcalc.trims;

import static floorcalc.working.StepChecks.assertStepsHold;
import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Published problems with proven optima: each is cut from the fewest bars, and proven so. The heads of
 * {@code bpp_index.csv}, {@code bpp_instances_*.txt} and {@code csp_textbook.csv} name their sources.
 */
class FewestBarsReferenceTest {
  private static final String NOT_PROVEN_HERE = "HARD0";

  private static Stream<Instances.Instance> instances() {
    return Stream.concat(Instances.published(), Instances.textbook())
        .filter(instance -> !instance.name().equals(NOT_PROVEN_HERE));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("instances")
  void cutFromTheFewestBarsAndProvenSo(Instances.Instance instance) {
    Calculated<TrimCutting> calculated = cut(instance);
    TrimCutting cutting = calculated.value();

    assertThat(cutting.bars()).hasSize(Math.toIntExact(instance.optimum()));
    assertThat(cutting.leastBarsBought()).isEqualTo(instance.optimum());
    assertThat(cutting.isLeast()).isTrue();
    assertThat(calculated.findings()).isEmpty();
    assertThat(cutting.bars().stream().mapToLong(bar -> bar.pieces().size()).sum()).isEqualTo(instance.lengths().length);
    assertStepsHold(calculated);
  }

  private static Calculated<TrimCutting> cut(Instances.Instance instance) {
    List<TrimPiece> pieces = Arrays.stream(instance.lengths())
        .mapToObj(length -> TrimPiece.of("", Length.ofMillimetres(length))).toList();
    return TrimCutting.of(pieces, List.of(TrimStock.sold(Length.ofMillimetres(instance.bar()))), Length.ZERO);
  }

  @Test
  void allInstancesAreThere() {
    assertThat(Instances.published()).hasSize(28);
    assertThat(Instances.textbook()).hasSize(6);
  }

  /** As published 56 bars are the fewest; with a small budget the search says honestly how far it came. */
  @Test
  void hard0StaysWithinItsBounds() {
    Instances.Instance instance = Instances.published(NOT_PROVEN_HERE);
    FewestBars fewest = new FewestBars(Instances.problem(instance.bar(), instance.lengths()), new Budget(20_000_000));
    fewest.solve();

    assertThat(instance.optimum()).isEqualTo(56);
    assertThat(fewest.least()).isBetween(55L, 56L);
    assertThat(fewest.cost()).isBetween(56L, 59L);
  }

  private static Stream<Row> index() {
    return Instances.lines("bpp_index.csv").stream().skip(1).map(line -> new Row(line.split(",")));
  }

  /** A line of {@code bpp_index.csv}: name, file, n, capacity, sum, L1, L2, lp, FFD, BFD, optimum. */
  private record Row(String[] fields) {
    String name() {
      return fields[0];
    }

    long number(int column) {
      return Long.parseLong(fields[column]);
    }

    @Override
    public String toString() {
      return name();
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("index")
  void simpleBoundsAndQuickWays(Row row) {
    Instances.Instance instance = Instances.published(row.name());
    Problem problem = Instances.problem(instance.bar(), instance.lengths());
    Budget budget = new Budget(Long.MAX_VALUE);

    assertThat(PlainBounds.bySum(problem, problem.wanted())).as("L1").isEqualTo(row.number(5));
    assertThat(Math.max(PlainBounds.bySum(problem, problem.wanted()),
        PlainBounds.LargePieces.of(problem, problem.wanted()).bars())).as("L2").isEqualTo(row.number(6));
    assertThat(problem.costOf(Greedy.firstFit(problem, problem.wanted(), 0, budget))).as("FFD")
        .isEqualTo(row.number(8));
    assertThat(problem.costOf(Greedy.bestFit(problem, problem.wanted(), 0, budget))).as("BFD")
        .isEqualTo(row.number(9));
  }

  /** The bound by prices lies within one bar above the value of the linear program, printed to four decimals. */
  @ParameterizedTest(name = "{0}")
  @MethodSource("index")
  void boundByPricesRoundsTheLinearProgramUp(Row row) {
    if (row.fields()[7].isEmpty()) {
      return;
    }
    Instances.Instance instance = Instances.published(row.name());
    Problem problem = Instances.problem(instance.bar(), instance.lengths());
    Budget budget = new Budget(Long.MAX_VALUE);
    PatternProgram program = new PatternProgram(problem, new Filling(problem), new ArrayList<>(), budget);
    program.solve(problem.wanted(), problem.limits(), Long.MAX_VALUE);

    assertThat(program.bound().least()).isEqualTo((long) Math.ceil(Double.parseDouble(row.fields()[7]) - 0.00005));
  }
}
