package floorcalc.trims;

import static floorcalc.working.StepChecks.assertStepsHold;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.api.Test;

class TrimEstimateTest {
  private static final Length KERF = Length.ofMillimetres(3);

  /**
   * Seven thresholds of 810 and three of 1010 from bars of 2400: 8700 mm and ten kerfs of 3 fill 8730 / 2403 = 3.6, so 4 bars; at a price of 1
   * each a bar holds 2, so 5; longest first: 1010 + 1010, 1010 + 810, three times 810 + 810.
   */
  @Test
  void thresholds() {
    Calculated<TrimEstimate> calculated = TrimEstimate.of(List.of(TrimPiece.of("", Length.ofMillimetres(810)).times(7),
        TrimPiece.of("", Length.ofMillimetres(1010)).times(3)), Length.ofMillimetres(2400), KERF);
    assertStepsHold(calculated);
    TrimEstimate estimate = calculated.value();
    assertThat(estimate.byLength()).isEqualTo(4);
    assertThat(estimate.byPrices()).isEqualTo(5);
    assertThat(estimate.longestIntoFirst()).isEqualTo(5);
    assertThat(estimate.longestIntoFullest()).isEqualTo(5);
    assertThat(estimate.atLeast()).isEqualTo(5);
    assertThat(estimate.atMost()).isEqualTo(5);
  }

  /** Three pieces of more than half a bar take three bars, though their length would fill two. */
  @Test
  void longPieces() {
    TrimEstimate estimate = TrimEstimate.of(List.of(TrimPiece.of("", Length.ofMillimetres(1300)).times(3)), Length.ofMillimetres(2400), KERF).value();
    assertThat(estimate.byLength()).isEqualTo(2);
    assertThat(estimate.byLongPieces()).isEqualTo(3);
    assertThat(estimate.atMost()).isEqualTo(3);
  }

  private static Stream<Instances.Instance> instances() {
    return Stream.concat(Instances.published(), Instances.textbook());
  }

  /** The proven fewest lie between the bounds and the quick ways, and the working adds up. */
  @ParameterizedTest(name = "{0}")
  @MethodSource("instances")
  void theFewestLieBetween(Instances.Instance instance) {
    Calculated<TrimEstimate> calculated = TrimEstimate.of(
        java.util.Arrays.stream(instance.lengths()).mapToObj(length -> TrimPiece.of("", Length.ofMillimetres(length))).toList(),
        Length.ofMillimetres(instance.bar()), Length.ZERO);
    assertStepsHold(calculated);
    assertThat(instance.optimum()).isBetween(calculated.value().atLeast(), calculated.value().atMost());
  }

  @Test
  void aPieceLongerThanTheBarIsRefused() {
    assertThatThrownBy(() -> TrimEstimate.of(List.of(TrimPiece.of("hall", Length.ofMillimetres(2500))), Length.ofMillimetres(2400), KERF))
        .isInstanceOf(IllegalArgumentException.class).hasMessageStartingWith("piece 'hall' is 2500 mm long");
  }
}
