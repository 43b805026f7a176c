package floorcalc.flatness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import floorcalc.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Definitions and rules of ASTM E1155 and E1155M that {@link FNumbers} keeps; see {@code e1155_rules.csv}. */
@Tag("reference")
class SamplingRulesReferenceTest {
  /** The first number in a row's value. */
  private static String value(String item) {
    return Slac.rows("e1155_rules.csv").filter(row -> String.join(",", row).startsWith(item)).map(row -> row[1]).findFirst().orElseThrow();
  }

  private static Profile squares(String spacing, int readings) {
    List<Length> heights = Stream.iterate(0, i -> i + 1).limit(readings).map(i -> Length.ofMillimetres((long) i * i)).toList();
    return Profile.ofEqualSpacing(Length.ofMillimetres(spacing), new ArrayList<>(heights));
  }

  /** Every 12 in, in the metric edition every 300 mm; at least 12 readings. */
  @Test
  void spacingAndNumberOfReadings() {
    String spacing = value("reading interval along a line");
    int least = Integer.parseInt(value("minimum reading points per line n_j"));
    assertThat(FNumbers.of(squares(spacing, least)).value().curvatures()).hasSize(least - 2);
    assertThat(FNumbers.of(squares("300", least)).value().levelDifferences()).hasSize(least - 10);
    Profile tooFew = squares(spacing, least - 1);
    assertThatThrownBy(() -> FNumbers.of(tooFew)).isInstanceOf(IllegalArgumentException.class);
    Profile apart = squares("305", least);
    assertThatThrownBy(() -> FNumbers.of(apart)).isInstanceOf(IllegalArgumentException.class);
  }

  /** Two spacings are the base of q, 24 in, and ten that of z, 10 ft: of heights i² mm every q is 2 mm, and z(10) is 100 mm, z(11) 121 - 1. */
  @Test
  void basesOfFlatnessAndLevelness() {
    Length spacing = Length.ofMillimetres(value("reading interval along a line"));
    assertThat(spacing.multipliedBy(2)).isEqualTo(Length.ofMillimetres(value("flatness base: two successive intervals")));
    assertThat(spacing.multipliedBy(10)).isEqualTo(Length.ofMillimetres(value("levelness base")));
    FNumbers numbers = FNumbers.of(squares("304.8", 12)).value();
    assertThat(numbers.curvatures()).hasSize(10).containsOnly(Length.ofMillimetres(2));
    assertThat(numbers.levelDifferences()).containsExactly(Length.ofMillimetres(100), Length.ofMillimetres(120));
  }
}
