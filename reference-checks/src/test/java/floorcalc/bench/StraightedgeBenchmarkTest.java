package floorcalc.bench;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.flatness.GreatestGap;
import floorcalc.flatness.RestRule;
import floorcalc.measure.Length;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What is timed gives the right answer: the dip of 20 mm in a floor level within 1 mm. */
class StraightedgeBenchmarkTest {
  @ParameterizedTest
  @EnumSource(RestRule.class)
  void theDipIsFound(RestRule rule) {
    StraightedgeBenchmark benchmark = new StraightedgeBenchmark();
    benchmark.readings = 1000;
    benchmark.rest = rule;
    benchmark.floor();

    GreatestGap found = benchmark.greatestGap();

    assertThat(found.rest().lowSpot().place()).isEqualTo(Length.ofMillimetres(30));
    assertThat(found.gap()).isBetween(Length.ofMillimetres(19), Length.ofMillimetres(21));
    assertThat(found.span()).isEqualTo(Length.ofNanometres(59_940_000));
  }
}
