package floorcalc.flatness;

import static floorcalc.working.StepChecks.assertStepsHold;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A worksheet of published tilts is held against in {@code reference-checks}. */
class TiltReadingsTest {
  private static final Length FOUR_INCHES = Length.ofInches(4, 0, 1);

  /** Tilts 2, 4, 6, 0 arc-seconds: sums 0, 0, 2, 6, 4; less 2 at the middle and a slope of 1 a step: 0, -1, 0, 3, 0. */
  @Test
  void sumsAndHeights() {
    TiltReadings readings = TiltReadings.of(FOUR_INCHES, Stream.of(2, 4, 6, 0).map(BigDecimal::valueOf).toList());
    assertThat(readings.sums()).extracting(BigDecimal::intValueExact).containsExactly(0, 0, 2, 6, 4);
    assertThat(readings.levelled()).usingElementComparator(BigDecimal::compareTo).containsExactly(BigDecimal.ZERO, BigDecimal.valueOf(-1),
        BigDecimal.ZERO, BigDecimal.valueOf(3), BigDecimal.ZERO);
    Calculated<HeightProfile> profile = readings.profile();
    // 3 · 101.6 mm · 4.8481e-6 = 0.0014777 mm
    assertThat(profile.value().reading(3).height().toMillimetres()).isCloseTo(0.0014777, within(0.0000005));
    assertThat(profile.value().length()).isEqualTo(FOUR_INCHES.multipliedBy(4));
    assertStepsHold(profile);
  }

  @Test
  void tiltsOutOfRangeAreRefused() {
    assertThatThrownBy(() -> TiltReadings.of(FOUR_INCHES, List.of(BigDecimal.ONE)))
        .hasMessage("a line needs at least 2 tilts, but has 1");
    assertThatThrownBy(() -> TiltReadings.of(FOUR_INCHES, List.of(BigDecimal.ONE, new BigDecimal("-3601"))))
        .hasMessageContaining("tilt 2 must be at most 3600 arc-seconds either way, but was -3601");
    assertThatThrownBy(() -> TiltReadings.of(Length.ZERO, List.of(BigDecimal.ONE, BigDecimal.ONE)))
        .hasMessageContaining("step must be more than 0 mm");
  }
}
