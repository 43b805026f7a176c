package floorcalc.movement;

import static floorcalc.working.StepChecks.assertStepsHold;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import floorcalc.measure.Length;
import floorcalc.moisture.AirClimate;
import floorcalc.moisture.Percent;
import floorcalc.moisture.Temperature;
import floorcalc.movement.GapAdvice.StaysPut;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleValue;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Source;
import floorcalc.working.Step;
import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;

class GapAdviceTest {
  static RuleValue<Length> rule(Length gap) {
    return new RuleValue<>(LayingRules.EXPANSION_GAP, gap, Source.GIVEN);
  }

  private static Length len(String text) {
    return Length.parse(text);
  }

  /** 0.03 % of the width for each per cent, 8 % now, 6 % and 11 % in the seasons. */
  private static MovementForecast engineered() {
    return MovementForecast.of(Percent.of("8"), Percent.of("6"), Percent.of("11"), Coefficient.NF_DTU_MULTILAYER);
  }

  private static MovementForecast oak() {
    return MovementForecast.of(Percent.of("8"), Percent.of("6"), Percent.of("11"),
        Species.named("white oak").coefficient(Grain.FLAT_SAWN));
  }

  @Test
  void theRuleSuffices() {
    // 8000 * 0.0003 * 3 = 7.2 mm in all, 3.6 on each side; with 10 mm: 2 * 10 / 0.0009 = 22222.2 mm
    Calculated<GapAdvice> advice = GapAdvice.of(engineered(), len("8 m"), rule(len("10 mm")), StaysPut.IN_THE_MIDDLE);
    assertThat(advice.value().swelling()).isEqualTo(len("7.2 mm"));
    assertThat(advice.value().needed()).isEqualTo(len("3.6 mm"));
    assertThat(advice.value().gap()).isEqualTo(len("10 mm"));
    assertThat(advice.value().greatestWidth()).contains(Length.ofNanometres(22_222_222_222L));
    assertThat(advice.value().bays()).isEqualTo(1);
    assertThat(advice.value().breakGap()).isEmpty();
    assertThat(advice.value().width()).isEqualTo(len("8 m"));
    assertThat(advice.findings()).isEmpty();
    assertStepsHold(advice);
  }

  @Test
  void theRuleDoesNotSuffice() {
    // 4200 * 0.00365 * 3 = 45.99 mm in all, 22.995 on each side, so 23 mm; 2 * 10 / 0.01095 = 1826.48 mm;
    // 4200 / 1826.48 = 2.3, so 3 bays of 1400 mm; a bay swells 15.33 mm, so breaks of 16 mm
    Calculated<GapAdvice> advice = GapAdvice.of(oak(), len("4.2 m"), rule(len("10 mm")), StaysPut.IN_THE_MIDDLE);
    assertThat(advice.value().swelling()).isEqualTo(len("45.99 mm"));
    assertThat(advice.value().needed()).isEqualTo(len("22.995 mm"));
    assertThat(advice.value().gap()).isEqualTo(len("23 mm"));
    assertThat(advice.value().greatestWidth().orElseThrow().toMillimetres()).isEqualTo(1826.484018);
    assertThat(advice.value().bays()).isEqualTo(3);
    assertThat(advice.value().breakGap()).contains(len("16 mm"));
    assertThat(advice.findings()).singleElement().satisfies(finding -> {
      assertThat(finding.code()).isEqualTo("gap-too-small-for-movement");
      assertThat(finding.message()).isEqualTo("a gap of 10 mm on each side, square to the wall, does not suffice: leave"
          + " 23 mm on each side, or split the floor into bays of at most 1826.484018 mm across the boards, at openings"
          + " first");
    });
    assertStepsHold(advice);
  }

  @Test
  void heldAtOneSideTheOtherTakesAll() {
    Calculated<GapAdvice> advice = GapAdvice.of(engineered(), len("8 m"), rule(len("7 mm")), StaysPut.AT_ONE_SIDE);
    assertThat(advice.value().needed()).isEqualTo(len("7.2 mm"));
    assertThat(advice.value().gap()).isEqualTo(len("8 mm"));
    // 7 / 0.0009
    assertThat(advice.value().greatestWidth()).contains(Length.ofNanometres(7_777_777_777L));
    assertStepsHold(advice);
  }

  @Test
  void boardsThatAreDamperNowDoNotSwell() {
    MovementForecast damp = MovementForecast.of(Percent.of("12"), Percent.of("6"), Percent.of("11"),
        Coefficient.NF_DTU_SOLID);
    Calculated<GapAdvice> advice = GapAdvice.of(damp, len("5 m"), rule(len("10 mm")), StaysPut.IN_THE_MIDDLE);
    assertThat(advice.value().swelling()).isEqualTo(Length.ZERO);
    assertThat(advice.value().gap()).isEqualTo(len("10 mm"));
    assertThat(advice.value().greatestWidth()).isEmpty();
    assertStepsHold(advice);
    // 5000 * 0.0025 * 6 = 75
    assertThat(damp.shrinkage(len("5 m")).value()).isEqualTo(len("75 mm"));
  }

  @Test
  void aRuleWithoutAGap() {
    Calculated<GapAdvice> advice = GapAdvice.of(engineered(), len("8 m"), rule(Length.ZERO), StaysPut.IN_THE_MIDDLE);
    assertThat(advice.value().gap()).isEqualTo(len("4 mm"));
    assertThat(advice.value().greatestWidth()).isEmpty();
    assertThat(advice.findings()).extracting(Finding::message).singleElement().asString()
        .isEqualTo("a gap of 0 mm on each side, square to the wall, does not suffice: leave 4 mm on each side");
  }

  @Test
  void widthIsSummedThroughOpenings() {
    Calculated<Length> across = MovementForecast.through(List.of(len("4.2 m"), len("120 mm"), len("3.6 m")));
    assertThat(across.value()).isEqualTo(len("7920 mm"));
    assertStepsHold(across);
    assertThatThrownBy(() -> MovementForecast.through(List.of())).hasMessage("give at least one width");
    assertThatThrownBy(() -> MovementForecast.through(List.of(len("-1 mm")))).hasMessageContaining("-1 mm");
  }

  /** 21 m across, 0.3 % for 1 %: a case in which 18 mm were kept; 1 % asks for 63 mm, 4/3 % for 84 mm, in total. */
  @Test
  void manyMetresAcross() {
    Coefficient three = Coefficient.ofPercent(new BigDecimal("0.3"), "as in the case", Source.GIVEN);
    assertThat(MovementForecast.of(Percent.of("8"), Percent.of("8"), Percent.of("9"), three).swelling(len("21 m")).value())
        .isEqualTo(len("63 mm"));
  }

  @Test
  void theSeasonsFromTheAir() {
    AirClimate dry = AirClimate.of(Temperature.celsius("21"), Percent.of("35"));
    AirClimate damp = AirClimate.of(Temperature.celsius("24"), Percent.of("62"));
    Calculated<MovementForecast> forecast = MovementForecast.inSeasons(Percent.of("8"), dry, damp,
        Coefficient.NF_DTU_MULTILAYER);
    assertStepsHold(forecast);
    assertThat(forecast.steps()).extracting(Step::id).filteredOn("equilibrium-moisture"::equals).hasSize(2);
    MovementForecast swapped = MovementForecast.inSeasons(Percent.of("8"), damp, dry, Coefficient.NF_DTU_MULTILAYER).value();
    assertThat(swapped.driest()).isEqualTo(forecast.value().driest()).isLessThan(swapped.dampest());
    Calculated<GapAdvice> advice = GapAdvice.of(swapped, len("6 m"), rule(len("10 mm")), StaysPut.IN_THE_MIDDLE);
    assertStepsHold(advice);
    assertThat(advice.steps()).hasSizeGreaterThan(10);
  }

  @Test
  void beyondTheRangeOfTheCoefficientIsNoted() {
    MovementForecast wide = MovementForecast.of(Percent.of("8"), Percent.of("5"), Percent.of("15"),
        Species.named("red oak").coefficient(Grain.MIXED));
    // (0.00158 + 0.00369) / 2 = 0.002635; 1000 * 0.002635 * 7 = 18.445
    assertThat(wide.swelling(len("1 m")).value()).isEqualTo(len("18.445 mm"));
    assertThat(wide.swelling(len("1 m")).findings()).extracting(Finding::message).containsExactly(
        "the coefficient is stated for 6 % to 14 %, but the change is from 8 % to 15 %; take the figure as a rough one, or"
            + " use the total shrinkage and equation 13-3");
    assertThat(wide.shrinkage(len("1 m")).findings()).hasSize(1);
    assertThat(oak().swelling(len("1 m")).findings()).isEmpty();
    assertThat(MovementForecast.of(Percent.of("8"), Percent.of("5"), Percent.of("15"), Coefficient.NF_DTU_HARDWOOD)
        .swelling(len("1 m")).findings()).isEmpty();
    assertThat(GapChecks.judge(wide, List.of(), Pinning.notLookedAt()).findings()).hasSize(2);
  }

  @Test
  void wrongValuesAreRefused() {
    assertThatThrownBy(() -> MovementForecast.of(Percent.of("8"), Percent.of("11"), Percent.of("6"),
        Coefficient.PLYWOOD)).hasMessageContaining("give the driest first");
    assertThatThrownBy(() -> MovementForecast.of(Percent.of("31"), Percent.of("6"), Percent.of("11"),
        Coefficient.PLYWOOD)).hasMessageContaining("but was 31 %");
    assertThatThrownBy(() -> GapAdvice.of(oak(), Length.ZERO, rule(len("1 mm")), StaysPut.IN_THE_MIDDLE))
        .hasMessageContaining("more than 0 mm");
    assertThatThrownBy(() -> GapAdvice.of(oak(), len("1 m"), new RuleValue<>(LayingRules.SAW_KERF, len("3 mm"),
        Source.GIVEN), StaysPut.IN_THE_MIDDLE)).hasMessage("the rule must be expansionGap, but was sawKerf");
    assertThatThrownBy(() -> oak().jointOpening(len("1 m"), 0)).hasMessageContaining("but was 0");
    assertThatThrownBy(() -> oak().swelling(len("-1 mm"))).hasMessage("width must not be negative, but was -1 mm");
    assertThatThrownBy(() -> WidthChange.byShrinkage(len("1 m"), Percent.of("9"), Percent.of("30"), Percent.of("31"),
        Percent.of("5"))).hasMessage("moisture content must be from 0 % to 30 %, but was 31 %");
    assertThatThrownBy(() -> Coefficient.of(new BigDecimal("0.369"), "oak", Source.GIVEN))
        .hasMessageContaining("0.369 % of the width is 0.00369");
    assertThatThrownBy(() -> Coefficient.named("nobody's")).hasMessageContaining("there are: 'NF DTU softwood'");
    assertThatThrownBy(() -> Shrinkage.coefficient(Percent.ZERO, Percent.of("30"))).hasMessageContaining("more than 0 %");
    assertThatThrownBy(() -> Shrinkage.coefficient(Percent.of("26"), Percent.of("30"))).hasMessageContaining("26 %");
  }
}
