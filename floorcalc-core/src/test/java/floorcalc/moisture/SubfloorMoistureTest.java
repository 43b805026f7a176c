package floorcalc.moisture;

import static floorcalc.moisture.MoistureMethod.CALCIUM_CHLORIDE;
import static floorcalc.moisture.MoistureMethod.CM;
import static floorcalc.moisture.MoistureMethod.IN_SLAB_HUMIDITY;
import static floorcalc.moisture.MoistureMethod.METER;
import static floorcalc.working.StepChecks.assertStepsHold;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.outline.Point;
import floorcalc.working.Calculated;
import floorcalc.working.Judgement;
import floorcalc.working.Outcome;
import floorcalc.working.Source;
import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SubfloorMoistureTest {
  private static final Area TWELVE = Area.ofSquareMetres("12");

  private static List<MoistureReading> readings(MoistureMethod method, String... values) {
    return Stream.of(values).map(value -> MoistureReading.of(method, value)).toList();
  }

  private static Judgement only(MoistureLimits set, Substrate on, Heating heating, List<MoistureReading> readings) {
    Calculated<SubfloorMoisture> calculated = SubfloorMoisture.judge(readings, on, heating, TWELVE, set);
    if (!readings.isEmpty()) {
      assertStepsHold(calculated);
    }
    return calculated.value().judgements().get(0);
  }

  @Test
  void theHighestReadingDecidesNotTheMean() {
    // 1.6 + 1.7 + 1.9 = 5.2, mean 1.7333, below 1.8; 1.9 is above
    Judgement judgement = only(MoistureLimits.GERMAN_PARQUET, Substrate.CEMENT_SCREED, Heating.HEATED, List.of(
        MoistureReading.of(CM, "1.6"), MoistureReading.of(CM, "1.9").at(Point.ofMillimetres(1200, 400)),
        MoistureReading.of(CM, "1.7").named("by the window")));
    assertThat(judgement.outcome()).isEqualTo(Outcome.NOT_MET);
    assertThat(judgement.found()).isEqualTo("1.9 CM-%, the highest of 3; mean 1.7333 CM-%");
    assertThat(judgement.where()).isEqualTo("(1200 mm, 400 mm)");
    assertThat(judgement.limit()).isEqualTo("at most 1.8 CM-%");
    assertThat(judgement.advice()).startsWith("do not lay");
  }

  @ParameterizedTest
  @CsvSource({"1.8, HEATED, MET", "1.81, HEATED, NOT_MET", "2.0, UNHEATED, MET", "2.1, UNHEATED, NOT_MET",
      // heating not stated: 1.8 passes whichever it is, 2.1 passes in neither case, between the two it is open
      "1.8, NOT_STATED, MET", "1.9, NOT_STATED, NOT_MEASURED", "2.1, NOT_STATED, NOT_MET"})
  void cementScreed(String reading, Heating heating, Outcome outcome) {
    assertThat(only(MoistureLimits.GERMAN_PARQUET, Substrate.CEMENT_SCREED, heating, readings(CM, reading)).outcome())
        .isEqualTo(outcome);
  }

  @ParameterizedTest
  @CsvSource({"0.3, MET", "0.5, NOT_MEASURED", "1.9, NOT_MEASURED", "2.01, NOT_MET"})
  void binderNotStated(String reading, Outcome outcome) {
    Judgement judgement = only(MoistureLimits.GERMAN_PARQUET, Substrate.SCREED, Heating.NOT_STATED, readings(CM, reading));
    assertThat(judgement.outcome()).isEqualTo(outcome);
    assertThat(judgement.limit()).contains("at most 0.3 CM-% (calcium sulfate screed, heated)", "at most 2 CM-% (cement");
  }

  @ParameterizedTest
  @CsvSource({"20, 3, MET", "20, 3.1, NOT_MET", "40, 4.5, MET", "40, 4.6, NOT_MET", "30, 1, NOT_MEASURED"})
  void theDepthCounts(String depth, String reading, Outcome outcome) {
    assertThat(only(MoistureLimits.NF_DTU_51_11, Substrate.CONCRETE, Heating.UNHEATED,
        List.of(MoistureReading.of(CM, reading).depth(Length.ofMillimetres(depth)))).outcome()).isEqualTo(outcome);
    assertThat(only(MoistureLimits.NF_DTU_51_11, Substrate.CONCRETE, Heating.UNHEATED, readings(CM, "3.5")).outcome())
        .isEqualTo(Outcome.NOT_MEASURED);
  }

  @ParameterizedTest
  @CsvSource({"CONCRETE, 4, MET", "CEMENT_SCREED, 4.1, NOT_MET", "SCREED, 3.9, MET", "NOT_STATED, 3.9, MET",
      "NOT_STATED, 4.1, NOT_MET", "TIMBER, 9, NOT_MEASURED", "SHEET, 3, NOT_MEASURED"})
  void commonPracticeByMeter(Substrate on, String reading, Outcome outcome) {
    Judgement judgement = only(MoistureLimits.COMMON_PRACTICE, on, Heating.NOT_STATED, readings(METER, reading));
    assertThat(judgement.outcome()).isEqualTo(outcome);
    assertThat(judgement.source()).isEqualTo(Source.COMMON_PRACTICE);
  }

  @Test
  void noMethodIsConvertedIntoAnother() {
    Judgement judgement = only(MoistureLimits.COMMON_PRACTICE, Substrate.CEMENT_SCREED, Heating.UNHEATED, readings(CM, "1.2"));
    assertThat(judgement.outcome()).isEqualTo(Outcome.NOT_MEASURED);
    assertThat(judgement.advice()).isEqualTo("measure by meter, or judge by a set that has such a limit:"
        + " 'German parquet practice', 'DIN 18560-1:2015', 'NF DTU 51.11'; readings of one method are not converted into"
        + " another");
    assertThat(only(MoistureLimits.NWFA_GUIDELINES, Substrate.TIMBER, Heating.UNHEATED, readings(CM, "1.2")).advice())
        .contains("none of the library's has");
  }

  @Test
  void eachMethodIsJudgedByItself() {
    List<MoistureReading> both = Stream.concat(readings(IN_SLAB_HUMIDITY, "72", "75").stream(),
        readings(CALCIUM_CHLORIDE, "3.2").stream()).toList();
    SubfloorMoisture moisture = SubfloorMoisture.judge(both, Substrate.CONCRETE, Heating.UNHEATED,
        Area.ofSquareMetres("92.90304"), MoistureLimits.NWFA_GUIDELINES).value();
    assertThat(moisture.summaries()).extracting(summary -> summary.method() + " " + summary.count() + " " + summary.mean())
        .containsExactly("IN_SLAB_HUMIDITY 2 73.5", "CALCIUM_CHLORIDE 1 3.2");
    assertThat(moisture.judgements()).extracting(Judgement::outcome)
        .containsExactly(Outcome.MET, Outcome.NOT_MET, Outcome.NOT_MET);
    assertThat(moisture.judgements().get(2).limit()).isEqualTo("at least 20");
    assertThat(moisture.judgements().get(2).advice()).isEqualTo("take 17 more, spread over the floor");
  }

  @Test
  void notMeasuredIsNeverAPass() {
    for (MoistureLimits set : MoistureLimits.all()) {
      for (Substrate on : Substrate.values()) {
        for (Heating heating : Heating.values()) {
          assertThat(SubfloorMoisture.judge(List.of(), on, heating, TWELVE, set).value().judgements())
              .isNotEmpty().allSatisfy(judgement -> {
                assertThat(judgement.outcome()).isEqualTo(Outcome.NOT_MEASURED);
                assertThat(judgement.found()).isEmpty();
                assertThat(judgement.advice()).isNotEmpty();
              });
        }
      }
    }
  }

  /** 20 for each 92.90304 m²: 12 m² ask for 240 / 92.90304 = 2.58, so 3; one square foot more than 1000 asks for 21. */
  @ParameterizedTest
  @CsvSource({"12, 3", "92.90304, 20", "92.903041, 21", "0.01, 1"})
  void readingsWanted(String area, long wanted) {
    Calculated<Long> calculated = ReadingCount.NWFA_SUBFLOOR.wanted(Area.ofSquareMetres(area));
    assertThat(calculated.value()).isEqualTo(wanted);
    assertStepsHold(calculated);
    assertThat(ReadingCount.NWFA_SUBFLOOR.judge((int) wanted, Area.ofSquareMetres(area)).value().isMet()).isTrue();
    assertThat(ReadingCount.NWFA_SUBFLOOR.judge((int) wanted - 1, Area.ofSquareMetres(area)).value().isMet()).isFalse();
  }

  @Test
  void aMakersFigureReplacesThatOfTheSet() {
    MoistureLimits own = MoistureLimits.GERMAN_PARQUET.with(MoistureLimit.of(CM, Substrate.CEMENT_SCREED,
        Heating.NOT_STATED, new BigDecimal("1.5"), Source.GIVEN));
    assertThat(own).hasToString("German parquet practice, amended");
    Judgement judgement = only(own, Substrate.CEMENT_SCREED, Heating.UNHEATED, readings(CM, "1.6"));
    assertThat(judgement.outcome()).isEqualTo(Outcome.NOT_MET);
    assertThat(judgement.source()).isEqualTo(Source.GIVEN);
    assertThat(only(own, Substrate.CALCIUM_SULFATE_SCREED, Heating.UNHEATED, readings(CM, "0.5")).isMet()).isTrue();
    assertThat(only(MoistureLimits.GERMAN_PARQUET, Substrate.CEMENT_SCREED, Heating.UNHEATED, readings(CM, "1.6")).isMet())
        .isTrue();
  }

  @Test
  void whereNobodyHasChosenASet() {
    List<MoistureReading> mixed = List.of(MoistureReading.of(METER, "3.8"), MoistureReading.of(CM, "1.9"),
        MoistureReading.of(IN_SLAB_HUMIDITY, "70"));
    Calculated<SubfloorMoisture> screed = SubfloorMoisture.judge(mixed, Substrate.CEMENT_SCREED, Heating.UNHEATED, TWELVE);
    assertStepsHold(screed);
    // CM 2.0, the meter 4; in-slab humidity has a limit for concrete only
    assertThat(screed.value().judgements()).extracting(judgement -> judgement.limit() + " " + judgement.outcome())
        .containsExactly("at most 2 CM-% MET",
            "none in set 'common practice' for this method and subfloor NOT_MEASURED", "at most 4 % MET");
    assertThat(screed.value().summaries()).hasSize(3);
    // on wood the meter is judged by the NWFA guidelines, with their number of readings
    assertThat(SubfloorMoisture.judge(readings(METER, "9"), Substrate.TIMBER, Heating.UNHEATED, TWELVE).value().judgements())
        .extracting(judgement -> judgement.limit() + " " + judgement.outcome())
        .containsExactly("at most 12 % MET", "at least 3 NOT_MET");
    assertThat(SubfloorMoisture.judge(List.of(), Substrate.NOT_STATED, Heating.NOT_STATED, TWELVE).value().judgements())
        .extracting(Judgement::outcome).containsExactly(Outcome.NOT_MEASURED);
  }

  /** 14.647 g/(m2 24 h) are 3 lb/(1000 ft2 24 h), as published: 14.647 * 92.90304 / 453.59237 = 2.99994. */
  @Test
  void gramsOfWater() {
    MoistureReading reading = MoistureReading.ofCalciumChlorideGrams(new BigDecimal("14.647"));
    assertThat(reading.method()).isEqualTo(CALCIUM_CHLORIDE);
    assertThat(reading.value()).isBetween(new BigDecimal("2.9999"), new BigDecimal("3"));
    assertThat(only(MoistureLimits.NWFA_GUIDELINES, Substrate.CONCRETE, Heating.UNHEATED, List.of(reading)).isMet()).isTrue();
    assertThatThrownBy(() -> MoistureReading.ofCalciumChlorideGrams(new BigDecimal("400"))).hasMessageContaining("60 lb");
  }

  @Test
  void impossibleInputIsRefused() {
    assertThatThrownBy(() -> MoistureReading.of(CM, "75")).hasMessage("a reading by CM must be from 0 CM-% to 20 CM-%"
        + " with at most 9 decimals, but was 75; check the method and the unit");
    assertThatThrownBy(() -> MoistureReading.of(IN_SLAB_HUMIDITY, "0.75")).hasMessageContaining("from 5 % RH to 100 % RH");
    assertThatThrownBy(() -> MoistureReading.of(METER, "-1")).hasMessageContaining("but was -1");
    assertThatThrownBy(() -> MoistureReading.of(METER, "4,1")).hasMessageContaining("found [4,1] as a reading");
    assertThatThrownBy(() -> MoistureReading.of(CM, "1").depth(Length.ofMillimetres(1001))).hasMessageContaining("1001 mm");
    assertThatThrownBy(() -> ReadingCount.NWFA_BOARDS.wanted(Area.ZERO)).hasMessageContaining("more than 0 m²");
    assertThatThrownBy(() -> ReadingCount.NWFA_BOARDS.judge(-1, TWELVE)).hasMessageContaining("but was -1");
    assertThatThrownBy(() -> MoistureLimits.named("nobody's")).hasMessageContaining("the sets are: 'common practice', ");
    assertThat(MoistureLimits.named("DIN 18560-1:2015")).isSameAs(MoistureLimits.DIN_18560_1);
  }

  @Test
  void readingsAreValues() {
    MoistureReading reading = MoistureReading.of(CM, "1.80");
    assertThat(reading).isEqualTo(MoistureReading.of(CM, "1.8")).hasSameHashCodeAs(MoistureReading.of(CM, "1.8"))
        .hasToString("1.8 CM-%").isNotEqualTo(reading.depth(Length.ofMillimetres(20))).isNotEqualTo(reading.named("a"));
    assertThat(reading.point()).isEmpty();
    assertThat(reading.at(Point.ofMillimetres(1, 2)).point()).contains(Point.ofMillimetres(1, 2));
    assertThat(reading.depth(Length.ofMillimetres(20)).depth()).contains(Length.ofMillimetres(20));
  }
}
