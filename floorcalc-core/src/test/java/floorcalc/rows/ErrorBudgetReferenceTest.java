package floorcalc.rows;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import java.io.IOException;
import java.io.InputStream;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Sums of errors against {@code tolerance_and_monte_carlo.csv}: the additive models of JCGM 101:2008, 9.2, whose values are
 * from memory and recomputed exactly in the file, and stacks of tolerances. Tries by chance are allowed four standard errors.
 */
@Tag("reference")
class ErrorBudgetReferenceTest {
  private static final int TRIES = 200_000;
  /** Four standard errors of a 95 % point read off that many tries, where the density there is about 0.1 / u a side. */
  private static final double ALLOWED = 4 * Math.sqrt(0.95 * 0.05 / TRIES) / 0.1;

  private static final ErrorPart NORMAL = new ErrorPart("X", ErrorPart.Shape.NORMAL, Length.ofMillimetres(1), 1);

  /** Within limits of sqrt(3) mm the standard deviation is 1 mm. */
  private static ErrorPart spread(double deviation, long times) {
    return new ErrorPart("X", ErrorPart.Shape.WITHIN_LIMITS,
        Length.fromMillimetres(deviation * Math.sqrt(3), RoundingMode.HALF_EVEN), times);
  }

  private static ErrorPart boards(long count, String limit) {
    return new ErrorPart("boards", ErrorPart.Shape.WITHIN_LIMITS, Length.parse(limit), count);
  }

  private static ErrorBudget budget(ErrorPart... parts) {
    return ErrorBudget.of(List.of(parts)).value();
  }

  @Test
  void fourNormalParts() throws IOException {
    ErrorBudget g1 = budget(NORMAL, NORMAL, NORMAL, NORMAL);
    assertThat(row("G1")).contains("u=2; half-width 3.9199");
    assertThat(g1.standardDeviation()).isEqualTo(Length.ofMillimetres(2));
    assertThat(g1.normalRange().toMillimetres()).isCloseTo(3.9199, within(0.00005));
    assertThat(g1.rangeByTries(TRIES, 1).toMillimetres()).isCloseTo(3.9199, within(2 * ALLOWED));
    assertThat(g1.worstCase()).isEmpty();
  }

  @Test
  void fourPartsWithinLimits() throws IOException {
    ErrorBudget g2 = budget(spread(1, 4));
    assertThat(row("G2")).contains("3.879407 (normal approximation 3.9199)");
    assertThat(g2.standardDeviation().toMillimetres()).isCloseTo(2, within(0.000001));
    assertThat(g2.normalRange().toMillimetres()).isCloseTo(3.9199, within(0.00005));
    assertThat(g2.rangeByTries(TRIES, 2).toMillimetres()).isCloseTo(3.879407, within(2 * ALLOWED));
  }

  @Test
  void oneLargePartWithinLimits() throws IOException {
    ErrorBudget g3 = budget(spread(1, 3), spread(10, 1));
    assertThat(row("G3")).contains("u=10.1489; exact 17.0158; Gaussian 19.8915");
    assertThat(g3.standardDeviation().toMillimetres()).isCloseTo(10.1489, within(0.00005));
    assertThat(g3.normalRange().toMillimetres()).isCloseTo(19.8915, within(0.00005));
    assertThat(g3.rangeByTries(TRIES, 3).toMillimetres()).isCloseTo(17.0158, within(10 * ALLOWED));
  }

  @Test
  void stacksOfBoards() throws IOException {
    assertThat(row("R1")).contains("1.0; 0.316228");
    assertThat(budget(boards(10, "0.1 mm")).worstCase()).isEqualTo(Optional.of(Length.ofMillimetres(1)));
    assertThat(budget(boards(10, "0.1 mm")).rootSumSquare().toMillimetres()).isCloseTo(0.316228, within(0.0000005));
    assertThat(row("R_n20")).contains("2.0000; 0.447214");
    assertThat(budget(boards(20, "0.1 mm")).rootSumSquare().toMillimetres()).isCloseTo(0.447214, within(0.0000005));
    assertThat(row("R_n50")).contains("5.0000; 0.707107");
    assertThat(budget(boards(50, "0.1 mm")).worstCase()).isEqualTo(Optional.of(Length.ofMillimetres(5)));
    assertThat(budget(boards(50, "0.1 mm")).rootSumSquare().toMillimetres()).isCloseTo(0.707107, within(0.0000005));
    assertThat(row("R_n25")).contains("5.0000; 1.000000");
    assertThat(budget(boards(25, "0.2 mm")).rootSumSquare()).isEqualTo(Length.ofMillimetres(1));
  }

  /** A width read to 2 mm less twenty boards within 0.1 mm each: u = sqrt(4 + 20 * 0.01 / 3) = 2.016598. */
  @Test
  void theWorkingAddsUp() {
    Calculated<ErrorBudget> budget = ErrorBudget.of(List.of(
        new ErrorPart("width", ErrorPart.Shape.NORMAL, Length.ofMillimetres(2), 1), boards(20, "0.1 mm")));
    assertThat(budget.value().standardDeviation().toMillimetres()).isCloseTo(2.016598, within(0.0000005));
    assertThat(budget.steps()).singleElement().satisfies(step -> {
      assertThat(step.formula()).isEqualTo("u = sqrt(n1 * u1 * u1 + n2 * a2 * a2 / 3)");
      assertThat(step.result()).isEqualTo(budget.value().standardDeviation());
    });
    // Phi(-1) = 0.158655 of a normal distribution, tables of any textbook on statistics
    assertThat(budget.value().shareBelow(budget.value().standardDeviation().negated(), TRIES, 4).doubleValue())
        .isCloseTo(0.158655, within(4 * Math.sqrt(0.158655 * 0.841345 / TRIES)));
    assertThat(budget.value().rangeByTries(1000, 5)).isEqualTo(budget.value().rangeByTries(1000, 5));
  }

  @Test
  void badInputIsRefused() {
    assertThatThrownBy(() -> ErrorBudget.of(List.of())).hasMessage("a budget of errors needs at least one part");
    assertThatThrownBy(() -> boards(0, "0.1 mm")).hasMessage("error 'boards' must add up from 1 to 100000 times, but was 0");
    assertThatThrownBy(() -> budget(NORMAL).rangeByTries(99, 1))
        .hasMessage("the number of tries must be from 100 to 10000000, but was 99");
  }

  private static String row(String id) throws IOException {
    try (InputStream in = Objects.requireNonNull(
        ErrorBudgetReferenceTest.class.getResourceAsStream("/reference/tolerance_and_monte_carlo.csv"))) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().filter(line -> line.startsWith(id + ","))
          .findFirst().orElseThrow();
    }
  }
}
