package floorcalc.movement;

import static floorcalc.working.StepChecks.assertStepsHold;
import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.measure.Length;
import floorcalc.moisture.Percent;
import floorcalc.working.Source;
import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The working of changes of width; published figures are held against the library in the reference suite. */
class WidthChangeTest {
  /** 232 mm * 0.00245 * 3 = 1.7052 mm; 10 ft of red oak from 6.2 to 11 %: 3048 mm * 0.00369 * 4.8 = 53.986176 mm. */
  @ParameterizedTest
  @CsvSource({"232 mm, 0.00245, 8, 11, 1.7052", "120 in, 0.00369, 6.2, 11, 53.986176", "5 in, 0.00129, 9, 6, -0.49149"})
  void theStepsOfAChangeHold(String width, BigDecimal share, String from, String to, String change) {
    var calculated = WidthChange.of(Length.parse(width), Coefficient.of(share, "any", Source.GIVEN), Percent.of(from), Percent.of(to));
    assertThat(calculated.value()).isEqualTo(Length.ofMillimetres(change));
    assertStepsHold(calculated);
  }

  /** 1 m * 0.0025 * 4 = 10 mm over four joints. */
  @Test
  void theStepsOfAJointOpeningHold() {
    var calculated = MovementForecast.of(Percent.of("10"), Percent.of("6"), Percent.of("10"),
        Coefficient.ofPercent(new BigDecimal("0.25"), "any", Source.GIVEN)).jointOpening(Length.parse("1 m"), 4);
    assertThat(calculated.value()).isEqualTo(Length.ofMillimetres("2.5"));
    assertStepsHold(calculated);
  }

  @Test
  void theStepsOfEveryCoefficientFromShrinkageHold() {
    assertThat(Shrinkage.all()).allSatisfy(wood -> {
      assertStepsHold(Shrinkage.coefficient(wood.radial(), wood.start()));
      wood.tangential().ifPresent(tangential -> assertStepsHold(Shrinkage.coefficient(tangential, wood.start())));
    });
  }

  @ParameterizedTest
  @CsvSource({"8, 6.3067", "0, 8.6", "30, 0", "60, 0"})
  void theStepsOfAPartialShrinkageHold(String moisture, BigDecimal shrunk) {
    var calculated = Shrinkage.downTo(Percent.of("8.6"), Shrinkage.FIBRE_SATURATION, Percent.of(moisture));
    assertThat(calculated.value().number()).isEqualByComparingTo(shrunk);
    assertStepsHold(calculated);
  }
}
