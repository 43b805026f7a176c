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
 * Working of published problems with proven optima, whose figures the reference suite checks, and the one that is not proven. The heads of
 * {@code bpp_instances_*.txt} and {@code csp_textbook.csv} name their sources.
 */
class FewestBarsTest {
  private static final String NOT_PROVEN_HERE = "HARD0";

  private static Stream<Instances.Instance> instances() {
    return Stream.concat(Instances.published(), Instances.textbook())
        .filter(instance -> !instance.name().equals(NOT_PROVEN_HERE));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("instances")
  void everyPieceIsCutAndTheWorkingAddsUp(Instances.Instance instance) {
    Calculated<TrimCutting> calculated = cut(instance);
    TrimCutting cutting = calculated.value();

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
}
