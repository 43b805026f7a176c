package floorcalc.moisture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import floorcalc.working.Judgement;
import floorcalc.working.Outcome;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ClimateLimitsTest {
  private static AirClimate air(String temperature, String humidity) {
    return AirClimate.of(Temperature.parse(temperature), Percent.of(humidity));
  }

  @ParameterizedTest
  @CsvSource({"45, MET", "60, MET", "44.9, NOT_MET", "60.1, NOT_MET"})
  void commonPracticeIsAboutHumidityAlone(String humidity, Outcome outcome) {
    assertThat(ClimateLimits.COMMON_PRACTICE.judge(air("5 °C", humidity), "study")).singleElement()
        .satisfies(judgement -> {
          assertThat(judgement.outcome()).isEqualTo(outcome);
          assertThat(judgement.limit()).isEqualTo("45 % to 60 %");
          assertThat(judgement.where()).isEqualTo("study");
          assertThat(judgement.advice().isEmpty()).isEqualTo(outcome == Outcome.MET);
        });
  }

  @ParameterizedTest
  @CsvSource({"59 °F, NOT_MET", "60 °F, MET", "15.5 °C, NOT_MET", "26.6 °C, MET", "80 °F, MET", "26.7 °C, NOT_MET"})
  void temperaturesOfEitherScale(String temperature, Outcome outcome) {
    // 60 °F = 15.56 °C, 80 °F = 26.67 °C
    Judgement judgement = ClimateLimits.NWFA_GUIDELINES.judge(air(temperature, "40"), "").get(1);
    assertThat(judgement.outcome()).isEqualTo(outcome);
    assertThat(judgement.limit()).isEqualTo("60 °F to 80 °F");
  }

  @Test
  void oneSidedLimits() {
    assertThat(ClimateLimits.ADHESIVE_GUIDE.judge(air("17 °C", "76"), "")).extracting(Judgement::limit)
        .containsExactly("at most 75 %", "at least 18 °C");
    assertThat(ClimateLimits.ADHESIVE_GUIDE.judge(air("17 °C", "76"), "")).noneMatch(Judgement::isMet);
    assertThat(ClimateLimits.ADHESIVE_GUIDE.judge(air("40 °C", "1"), "")).allMatch(Judgement::isMet);
  }

  @Test
  void notMeasuredIsNeverAPass() {
    assertThat(ClimateLimits.all()).allSatisfy(set -> {
      assertThat(set.notMeasured("hall")).extracting(Judgement::outcome).containsOnly(Outcome.NOT_MEASURED);
      assertThat(set.notMeasured("hall")).hasSameSizeAs(set.judge(air("20 °C", "50"), "hall"));
      assertThat(ClimateLimits.named(set.name())).isSameAs(set);
    });
    assertThatThrownBy(() -> ClimateLimits.named("nobody's")).hasMessageContaining("the sets are: 'common practice', ");
  }
}
