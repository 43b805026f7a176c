package floorcalc.moisture;

import static floorcalc.working.StepChecks.assertStepsHold;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.BigRange;
import net.jqwik.api.constraints.Scale;

class EquilibriumMoisturePropertyTest {
  private static Percent emc(Temperature temperature, BigDecimal humidity) {
    return EquilibriumMoisture.of(AirClimate.of(temperature, Percent.of(humidity))).value();
  }

  private static Temperature celsius(BigDecimal degrees) {
    return Temperature.of(degrees, Temperature.Scale.CELSIUS);
  }

  @Property
  void damperAirNeverMakesDrierWood(@ForAll @BigRange(min = "-20", max = "100") @Scale(2) BigDecimal degrees,
      @ForAll @BigRange(min = "0", max = "100") @Scale(3) BigDecimal a,
      @ForAll @BigRange(min = "0", max = "100") @Scale(3) BigDecimal b) {
    Percent drier = emc(celsius(degrees), a.min(b));
    Percent damper = emc(celsius(degrees), a.max(b));
    assertThat(drier).isBetween(Percent.ZERO, damper);
    if (a.subtract(b).abs().compareTo(new BigDecimal("0.01")) >= 0) {
      assertThat(drier).isLessThan(damper);
    }
  }

  @Property
  void thereAndBack(@ForAll @BigRange(min = "-20", max = "100") @Scale(2) BigDecimal degrees,
      @ForAll @BigRange(min = "0", max = "100") @Scale(4) BigDecimal humidity) {
    Percent moisture = emc(celsius(degrees), humidity);
    var calculated = moisture.compareTo(emc(celsius(degrees), BigDecimal.valueOf(100))) == 0 ? null
        : EquilibriumMoisture.humidityFor(celsius(degrees), moisture);
    if (calculated != null) {
      // Rounded to 0.0001 % of moisture, and nowhere does 1 % of humidity change it by less than 0.05 %.
      assertThat(calculated.value().number()).isCloseTo(humidity, within(new BigDecimal("0.003")));
      assertThat(emc(celsius(degrees), calculated.value().number()).number())
          .isCloseTo(moisture.number(), within(new BigDecimal("0.0002")));
      assertStepsHold(calculated);
    }
  }

  @Property
  void bothScalesTellTheSame(@ForAll @BigRange(min = "30", max = "180") @Scale(1) BigDecimal fahrenheit,
      @ForAll @BigRange(min = "5", max = "95") @Scale(2) BigDecimal humidity) {
    Temperature read = Temperature.of(fahrenheit, Temperature.Scale.FAHRENHEIT);
    // as the reference data state, from a sweep over whole degrees: at most 0.013
    assertThat(emc(celsius(read.toCelsius()), humidity).number())
        .isCloseTo(emc(read, humidity).number(), within(new BigDecimal("0.014")));
  }
}
