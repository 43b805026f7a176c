package floorcalc.moisture;

import static floorcalc.working.StepChecks.assertStepsHold;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import floorcalc.working.Finding;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EquilibriumMoistureTest {
  private static AirClimate air(String temperature, String humidity) {
    return AirClimate.of(Temperature.parse(temperature), Percent.of(humidity));
  }

  /**
   * 20 °C: W = 349 + 25.8 + 5.4 = 380.2; K = 0.805 + 0.01472 - 0.001092 = 0.818628; K1 = 6.27 - 0.1876 - 0.1212 = 5.9612;
   * K2 = 1.91 + 0.814 - 0.1172 = 2.6068. At 50 %: Kh = 0.409314; Kh / (1 - Kh) = 0.692947;
   * K1 Kh = 2.440003; K1 K2 K^2 h^2 = 2.603461; (2.440003 + 5.206921) / 6.043464 = 1.265322;
   * 1800 / 380.2 * 1.958269 = 9.2711.
   */
  @Test
  void byHand() {
    var calculated = EquilibriumMoisture.of(air("20 °C", "50"));
    assertThat(calculated.value().number()).isEqualByComparingTo("9.2711");
    assertThat(calculated.findings()).isEmpty();
    assertThat(calculated.steps()).extracting(step -> step.result().toString())
        .startsWith("380.2", "0.818628", "5.9612", "2.6068");
    assertStepsHold(calculated);
  }

  @Test
  void dryAirDriesTheWoodOut() {
    assertThat(EquilibriumMoisture.of(air("21 °C", "0")).value()).isEqualTo(Percent.ZERO);
    assertThat(EquilibriumMoisture.humidityFor(Temperature.celsius("21"), Percent.ZERO).value()).isEqualTo(Percent.ZERO);
  }

  @ParameterizedTest
  @CsvSource({"-1.2 °C, 50", "82.3 °C, 50", "29 °F, 50", "181 °F, 50", "20 °C, 4.9", "20 °C, 95.1", "-20 °C, 50", "100 °C, 50"})
  void beyondTheTableIsNoted(String temperature, String humidity) {
    assertThat(EquilibriumMoisture.of(air(temperature, humidity)).findings()).extracting(Finding::code)
        .containsExactly("climate-beyond-table");
  }

  @ParameterizedTest
  @CsvSource({"30 °F, 5", "180 °F, 95", "-1.1 °C, 5", "82.2 °C, 95"})
  void theTableItselfIsNot(String temperature, String humidity) {
    assertThat(EquilibriumMoisture.of(air(temperature, humidity)).findings()).isEmpty();
  }

  @Test
  void valuesOutOfBoundsAreRefused() {
    assertThatThrownBy(() -> EquilibriumMoisture.of(air("-20.1 °C", "50"))).hasMessage("the equation for equilibrium"
        + " moisture content is used from -20 °C to 100 °C (-4 °F to 212 °F), but the temperature was -20.1 °C");
    assertThatThrownBy(() -> EquilibriumMoisture.of(air("213 °F", "50"))).hasMessageEndingWith("213 °F");
    assertThatThrownBy(() -> air("20 °C", "100.1")).hasMessage(
        "relative humidity must be from 0 % to 100 %, but was 100.1 %; give 48 % as 48");
    assertThatThrownBy(() -> air("20 °C", "-1")).hasMessageContaining("-1 %");
    assertThatThrownBy(() -> EquilibriumMoisture.humidityFor(Temperature.celsius("20"), Percent.of("40")))
        .hasMessageContaining("but was 40 %");
    assertThatThrownBy(() -> EquilibriumMoisture.humidityFor(Temperature.celsius("20"), Percent.of("-1")))
        .hasMessageContaining("moisture content must be from 0 %");
  }

  @Test
  void temperatures() {
    assertThat(Temperature.parse("21°C")).isEqualTo(Temperature.celsius("21.0")).hasToString("21 °C")
        .hasSameHashCodeAs(Temperature.celsius("21"));
    assertThat(Temperature.parse(" 70 f")).isEqualTo(Temperature.fahrenheit("70")).isNotEqualTo(Temperature.celsius("70"));
    assertThat(Temperature.parse("\u22125 °C").degrees()).isEqualByComparingTo("-5");
    assertThat(Temperature.celsius("20")).isEqualByComparingTo(Temperature.fahrenheit("68"));
    assertThat(Temperature.fahrenheit("70").toCelsius()).isEqualByComparingTo("21.111111");
    assertThatThrownBy(() -> Temperature.parse("21")).hasMessage(
        "found [21] as a temperature; write it as 21 °C or 70 °F");
    assertThatThrownBy(() -> Temperature.celsius("warm")).hasMessageContaining("found [warm]");
    assertThatThrownBy(() -> Temperature.celsius("151")).hasMessageContaining("but was 151 °C; check the scale");
    assertThatThrownBy(() -> Temperature.of(new java.math.BigDecimal("1e9"), Temperature.Scale.CELSIUS))
        .hasMessageContaining("but was 1E+9 °C");
    assertThatThrownBy(() -> Temperature.of(new java.math.BigDecimal("1.0000001"), Temperature.Scale.CELSIUS))
        .hasMessageContaining("at most 6 decimals");
  }

  @Test
  void percentages() {
    assertThat(Percent.of("8.50")).isEqualTo(Percent.of("8.5")).hasToString("8.5 %").hasSameHashCodeAs(Percent.of("8.5"));
    assertThat(Percent.of("100")).hasToString("100 %");
    assertThat(Percent.of("8.5").minus(Percent.of("9"))).isEqualTo(Percent.of("-0.5"));
    assertThat(Percent.of("-0.5").abs()).isEqualTo(Percent.of("0.5"));
    assertThat(Percent.of("8.5").plus(Percent.of("1.5"))).isEqualTo(Percent.of("10"));
    assertThatThrownBy(() -> Percent.of("8,5")).hasMessage("found [8,5] as a percentage; write a decimal number with a"
        + " point and without a unit, such as 8.5");
    assertThatThrownBy(() -> Percent.of("1000001")).hasMessageContaining("but was 1000001");
    assertThatThrownBy(() -> Percent.of(new java.math.BigDecimal("1e99"))).hasMessageContaining("1E+99");
    assertThatThrownBy(() -> Percent.of(new java.math.BigDecimal("1e-13"))).hasMessageContaining("at most 12 decimals");
  }

  @Test
  void climates() {
    assertThat(air("21 °C", "48")).isEqualTo(air("21.0 °C", "48.0")).hasSameHashCodeAs(air("21 °C", "48"))
        .isNotEqualTo(air("21 °C", "49")).hasToString("21 °C and 48 % relative humidity");
  }
}
