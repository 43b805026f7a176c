package floorcalc.flatness;

import static floorcalc.working.StepChecks.assertStepsHold;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import floorcalc.measure.Length;
import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * J. C. Moody, How to calibrate surface plates in the plant, The Tool Engineer, October 1955, worksheet 1: every printed digit.
 * See the head of {@code moody_profile_from_tilts.csv}.
 */
@Tag("reference")
class TiltReadingsReferenceTest {
  private static final Length FOUR_INCHES = Length.ofInches(4, 0, 1);

  private static List<String[]> stations() {
    return Slac.rows("moody_profile_from_tilts.csv").toList();
  }

  private static TiltReadings worksheet() {
    return TiltReadings.of(FOUR_INCHES, stations().stream().skip(1).map(row -> new BigDecimal(row[1])).toList());
  }

  @Test
  void runningSumAndProfileAsPrinted() {
    TiltReadings worksheet = worksheet();
    assertThat(stations()).hasSize(21);
    for (String[] row : stations()) {
      int station = Integer.parseInt(row[0]);
      assertThat(worksheet.sums().get(station)).isEqualByComparingTo(row[3]);
      assertThat(worksheet.levelled().get(station).doubleValue())
          .isCloseTo(Double.parseDouble(row[5]), within(0.05 + 1e-9))
          .isCloseTo(Double.parseDouble(row[6]), within(0.05 + 1e-9));
    }
    assertThat(worksheet.levelled().get(0)).isEqualByComparingTo(worksheet.levelled().get(20));
    assertThat(worksheet.levelled().get(10)).isEqualByComparingTo("0");
  }

  /** Height = profile · step · 4.8481e-6 for an arc-second: -3.6 · 101.6 mm · 4.8481e-6 = -0.0017732 mm at the ends. */
  @Test
  void heights() {
    Profile profile = worksheet().profile().value();
    assertThat(profile.size()).isEqualTo(21);
    assertThat(profile.reading(10).height()).isEqualTo(Length.ZERO);
    assertThat(profile.reading(0).height().toMillimetres()).isCloseTo(-0.0017732, within(0.0000005));
    assertThat(profile.reading(20).height()).isEqualTo(profile.reading(0).height());
    assertThat(profile.length()).isEqualTo(FOUR_INCHES.multipliedBy(20));
    assertStepsHold(worksheet().profile());
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
