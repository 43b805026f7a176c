package floorcalc.moisture;

import static floorcalc.working.StepChecks.assertStepsHold;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Judgement;
import floorcalc.working.Outcome;
import floorcalc.working.Source;
import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Boards against ranges, against a wood subfloor and against the air of the room. */
class BoardMoistureTest {
  private static List<Percent> boards(String... readings) {
    return Stream.of(readings).map(Percent::of).toList();
  }

  private static List<MoistureReading> meter(String... readings) {
    return Stream.of(readings).map(reading -> MoistureReading.of(MoistureMethod.METER, reading)).toList();
  }

  @Test
  void everyBoardHasToBeInTheRange() {
    BoardMoistureLimits solid = BoardMoistureLimits.named("EN 13226:2002");
    assertThat(solid).hasToString("EN 13226:2002: 7 % to 11 %");
    Calculated<Judgement> good = solid.judge(boards("7", "8.4", "11"));
    // 26.4 / 3 = 8.8
    assertThat(good.value().found()).isEqualTo("7 % to 11 %, mean 8.8 % of 3");
    assertThat(good.value().outcome()).isEqualTo(Outcome.MET);
    assertStepsHold(good);
    assertThat(solid.judge(boards("6.9", "8")).value().advice()).contains("take up moisture");
    assertThat(solid.judge(boards("8", "11.1")).value().advice()).contains("let the boards dry");
    assertThat(solid.judge(boards("8")).value().found()).isEqualTo("8 %");
    assertThat(solid.judge(List.of()).value().outcome()).isEqualTo(Outcome.NOT_MEASURED);
    assertThatThrownBy(() -> solid.judge(boards("8", "81"))).hasMessage(
        "the moisture content of boards must be from 0 % to 30 %, but was 81 %; check the meter's setting");
    assertThatThrownBy(() -> BoardMoistureLimits.named("EN")).hasMessageContaining("the ranges are: 'EN 13226:2002'");
    assertThatThrownBy(() -> BoardMoistureLimits.of("pack", Percent.of("9"), Percent.of("5"), Source.GIVEN))
        .hasMessageContaining("give the lower one first");
    assertThat(BoardMoistureLimits.of("pack", Percent.of("5"), Percent.of("9"), Source.GIVEN).judge(boards("9.1")).value()
        .isMet()).isFalse();
  }

  /** Published: a subfloor of 10 % and strip under 3 in give 6 to 14 %; plank from 3 in gives 8 to 12 %. */
  @ParameterizedTest
  @CsvSource({"2.99, 6, MET", "2.99, 14, MET", "2.99, 5.9, NOT_MET", "2.99, 14.1, NOT_MET", "3, 8, MET", "3, 12, MET",
      "3, 7.9, NOT_MET", "3, 12.1, NOT_MET"})
  void boardsAgainstAWoodSubfloor(String inches, String board, Outcome outcome) {
    Calculated<Judgement> calculated = MoistureDifference.judge(boards(board), meter("10"), Length.parse(inches + " in"));
    assertThat(calculated.value().outcome()).isEqualTo(outcome);
    assertStepsHold(calculated);
  }

  @Test
  void meansAreComparedAndSingleReadingsAreNoted() {
    // boards 7 and 9: mean 8; subfloor 9 and 10.6: mean 9.8; 1.8 apart; 10.6 - 7 = 3.6
    Calculated<Judgement> calculated = MoistureDifference.judge(boards("7", "9"), meter("9", "10.6"), Length.parse("185 mm"));
    assertThat(calculated.value().found()).isEqualTo("1.8 percentage points (boards 7 % to 9 %, mean 8 % of 2;"
        + " subfloor 9 % to 10.6 %, mean 9.8 % of 2)");
    assertThat(calculated.value().isMet()).isTrue();
    assertThat(calculated.findings()).extracting(Finding::message).singleElement().asString()
        .startsWith("single readings of boards and subfloor lie up to 3.6 percentage points apart, more than the 2");
    assertThat(MoistureDifference.judge(List.of(), meter("9"), Length.parse("185 mm")).value().advice())
        .isEqualTo("measure the boards with a meter set to the wood");
    assertThat(MoistureDifference.judge(List.of(), List.of(), Length.parse("185 mm")).value().outcome())
        .isEqualTo(Outcome.NOT_MEASURED);
    assertThatThrownBy(() -> MoistureDifference.judge(boards("8"),
        List.of(MoistureReading.of(MoistureMethod.CM, "1.8")), Length.parse("185 mm")))
        .hasMessage("a reading by CM, 1.8 CM-%, cannot be turned into the moisture content of wood; measure the wood"
            + " subfloor with a meter");
    assertThatThrownBy(() -> MoistureDifference.allowed(Length.ZERO)).hasMessageContaining("more than 0 mm");
  }

  private static AirClimate air(String humidity) {
    return AirClimate.of(Temperature.celsius("20"), Percent.of(humidity));
  }

  @Test
  void boardsThatAgreeWithTheRoom() {
    // 20 °C and 50 %: 9.27 as published; boards 8.1, 8.4, 7.9: mean 24.4 / 3 = 8.1333; 1.1378 below 9.2711
    Calculated<List<Judgement>> calculated = Acclimatisation.notStated().packsClosed().days(BigDecimal.valueOf(4))
        .air(air("50")).boards(boards("8.1", "8.4", "7.9")).judge();
    assertThat(calculated.value()).extracting(Judgement::outcome).containsOnly(Outcome.MET);
    assertThat(calculated.value().get(2).found())
        .isEqualTo("boards 8.1333 %, room 9.2711 %: 1.1378 percentage points apart");
    assertStepsHold(calculated);
  }

  @Test
  void whatIsStillMissing() {
    assertThat(Acclimatisation.notStated().judge().value()).extracting(Judgement::advice).containsExactly(
        "leave packs closed and flat in the room until they are laid, unless the maker says otherwise",
        "note when the packs came in",
        "measure the air of the room and the boards; days in the room stand in for neither");
    assertThat(Acclimatisation.notStated().judge().value()).extracting(Judgement::outcome)
        .containsOnly(Outcome.NOT_MEASURED);
    List<Judgement> half = Acclimatisation.notStated().packsOpened().days(new BigDecimal("1.5")).air(air("50")).judge()
        .value();
    assertThat(half).extracting(Judgement::outcome)
        .containsExactly(Outcome.NOT_MET, Outcome.NOT_MET, Outcome.NOT_MEASURED);
    assertThat(half.get(1).advice()).isEqualTo("wait 1.5 more at least, then measure");
    assertThat(half.get(2).advice()).startsWith("measure the boards;");
  }

  @Test
  void daysNeverStandInForReadings() {
    Acclimatisation year = Acclimatisation.notStated().packsClosed().days(BigDecimal.valueOf(365));
    assertThat(year.judge().value()).extracting(Judgement::outcome)
        .containsExactly(Outcome.MET, Outcome.NOT_MEASURED, Outcome.NOT_MEASURED);
    assertThat(year.judge().value().get(1).advice()).isEqualTo("measure boards and room: days alone pass nothing");
    Judgement days = year.air(air("50")).boards(boards("12")).judge().value().get(1);
    assertThat(days.outcome()).isEqualTo(Outcome.NOT_MET);
    assertThat(days.advice()).isEqualTo("wait until boards and room agree");
    Judgement damp = year.air(air("50")).boards(boards("12")).judge().value().get(2);
    assertThat(damp.outcome()).isEqualTo(Outcome.NOT_MET);
    // 12 - 9.2711 - 2 = 0.7289
    assertThat(damp.advice()).startsWith("the boards are too damp for the room as it is by 0.7289 percentage points: wait");
    assertThat(year.air(air("50")).boards(boards("7")).judge().value().get(2).advice()).contains("too dry", "0.2711");
    assertThat(year.air(air("50")).boards(boards("12")).within(Percent.of("3"), Source.GIVEN).judge().value().get(2)
        .isMet()).isTrue();
  }

  @Test
  void acclimatisationOutOfBounds() {
    assertThatThrownBy(() -> Acclimatisation.notStated().days(BigDecimal.valueOf(-1))).hasMessageContaining("but were -1");
    assertThatThrownBy(() -> Acclimatisation.notStated().within(Percent.of("11"), Source.GIVEN))
        .hasMessageContaining("but was 11 %");
    assertThatThrownBy(() -> Acclimatisation.notStated().boards(boards("-1"))).hasMessageContaining("but was -1 %");
  }
}
