package floorcalc.rows;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Published sums of errors are held against in {@code reference-checks}. */
class ErrorBudgetTest {
  private static final int TRIES = 200_000;

  private static final ErrorPart NORMAL = new ErrorPart("X", ErrorPart.Shape.NORMAL, Length.ofMillimetres(1), 1);

  private static ErrorPart boards(long count, String limit) {
    return new ErrorPart("boards", ErrorPart.Shape.WITHIN_LIMITS, Length.parse(limit), count);
  }

  private static ErrorBudget budget(ErrorPart... parts) {
    return ErrorBudget.of(List.of(parts)).value();
  }

  /** Twenty-five boards within 0.2 mm: at worst 25 · 0.2 = 5 mm, by squares 0.2 · sqrt(25) = 1 mm; with a normal part there is no worst case. */
  @Test
  void worstCaseAndRootOfSquares() {
    assertThat(budget(boards(25, "0.2 mm")).worstCase()).contains(Length.ofMillimetres(5));
    assertThat(budget(boards(25, "0.2 mm")).rootSumSquare()).isEqualTo(Length.ofMillimetres(1));
    assertThat(budget(NORMAL, boards(25, "0.2 mm")).worstCase()).isEmpty();
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
}
