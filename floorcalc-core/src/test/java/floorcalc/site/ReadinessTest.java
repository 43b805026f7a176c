package floorcalc.site;

import static floorcalc.site.Sites.FLOOR;
import static floorcalc.site.Sites.READY;
import static floorcalc.site.Sites.SOLID;
import static floorcalc.site.Sites.air;
import static floorcalc.site.Sites.cm;
import static floorcalc.site.Sites.judge;
import static floorcalc.site.Sites.mm;
import static floorcalc.site.Sites.only;
import static floorcalc.site.Sites.percents;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import floorcalc.boards.BoardGoods;
import floorcalc.boards.Construction;
import floorcalc.measure.Area;
import floorcalc.moisture.BoardMoistureLimits;
import floorcalc.moisture.ClimateLimits;
import floorcalc.moisture.Heating;
import floorcalc.moisture.MoistureLimits;
import floorcalc.moisture.MoistureMethod;
import floorcalc.moisture.MoistureReading;
import floorcalc.moisture.Substrate;
import floorcalc.movement.Coefficient;
import floorcalc.movement.GapPoint;
import floorcalc.movement.Pinning;
import floorcalc.working.Finding;
import floorcalc.working.Judgement;
import floorcalc.working.Outcome;
import floorcalc.working.Source;
import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;

class ReadinessTest {
  @Test
  void nothingMeasuredIsOneLineForEachSubject() {
    Readiness readiness = judge(SiteReadings.NONE);
    assertThat(readiness.judgements()).extracting(Judgement::code)
        .containsExactly("air-humidity", "subfloor-moisture", "boards-room-agreement", "flatness", "gap-wide-enough");
    assertThat(readiness.judgements()).allMatch(one -> one.outcome() == Outcome.NOT_MEASURED && one.found().isEmpty()
        && !one.advice().isEmpty() && !one.limit().isEmpty());
    assertThat(readiness.isReady()).isFalse();
    assertThat(readiness.outcome()).isEqualTo(Outcome.NOT_MEASURED);
    assertThat(readiness).hasToString("Study: not ready; 0 met, 0 not met, 5 not measured");
  }

  @Test
  void everyLimitKeptIsReady() {
    Readiness readiness = judge(READY);
    assertThat(readiness.judgements()).as("%s", readiness.judgements()).allMatch(Judgement::isMet);
    assertThat(readiness.isReady()).isTrue();
    assertThat(readiness.room()).isEqualTo("Study");
    // air now and in two seasons, subfloor, packs, days, agreement, three spans, gap, cover, pinned
    assertThat(readiness.judgements()).hasSize(3 + 1 + 3 + 3 + 3);
    assertThat(readiness.judgements(Outcome.MET)).hasSize(13);
  }

  /** German parquet practice: 1.8 CM-% on heated cement screed. */
  @Test
  void oneDampReadingFailsAndSaysWhatToDo() {
    Readiness readiness = judge(READY.withSubfloorMoisture(List.of(cm("1.6"), cm("1.9").named("by the window"))));
    assertThat(readiness.outcome()).isEqualTo(Outcome.NOT_MET);
    Judgement damp = only(readiness, "subfloor-moisture");
    assertThat(damp.outcome()).isEqualTo(Outcome.NOT_MET);
    assertThat(damp.where()).isEqualTo("by the window");
    assertThat(damp.found()).isEqualTo("1.9 CM-%, the highest of 2; mean 1.75 CM-%");
    assertThat(damp.limit()).isEqualTo("at most 1.8 CM-%");
    assertThat(damp.advice()).startsWith("do not lay");
  }

  @Test
  void aYearInTheRoomPassesNothing() {
    Readiness readiness = judge(SiteReadings.NONE.withDaysInRoom(new BigDecimal("365")).withPacksClosed());
    assertThat(only(readiness, "days-in-room").outcome()).isEqualTo(Outcome.NOT_MEASURED);
    assertThat(only(readiness, "boards-room-agreement").outcome()).isEqualTo(Outcome.NOT_MEASURED);
    assertThat(only(readiness, "packs-closed").outcome()).isEqualTo(Outcome.MET);
  }

  /** What is there shows, though the other half is missing. */
  @Test
  void boardsWithoutAirAreShownAndNotJudged() {
    Judgement boards = only(judge(SiteReadings.NONE.withBoardMoisture(percents("8.1", "8.5"))), "boards-room-agreement");
    assertThat(boards.found()).isEqualTo("boards 8.1 % to 8.5 %, mean 8.3 % of 2");
    assertThat(boards.outcome()).isEqualTo(Outcome.NOT_MEASURED);
    assertThat(boards.advice()).startsWith("measure the air of the room");
  }

  @Test
  void openedPacksAndDampBoardsFail() {
    Readiness readiness = judge(READY.withPacksOpened().withBoardMoisture(percents("12")));
    assertThat(only(readiness, "packs-closed").outcome()).isEqualTo(Outcome.NOT_MET);
    assertThat(only(readiness, "boards-room-agreement").outcome()).isEqualTo(Outcome.NOT_MET);
  }

  /** The wood settles at 9.5 % or less in 21 °C and 48 %: 8.1333 and 9 % are near enough, but a pack range may be narrower. */
  @Test
  void rangeOnThePackIsJudgedBesides() {
    BoardMoistureLimits pack = BoardMoistureLimits.of("pack", percents("8.2").get(0), percents("9").get(0), Source.GIVEN);
    Judgement judged = only(judge(READY.withBoardLimits(pack)), "board-moisture");
    assertThat(judged.outcome()).isEqualTo(Outcome.NOT_MET);
    assertThat(judged.limit()).isEqualTo("8.2 % to 9 %");
  }

  @Test
  void seasonsAreJudgedByTheSameRangeWithTheirOwnAdvice() {
    Readiness readiness = judge(READY.withSeasons(air("21 °C", "35"), air("23 °C", "60")));
    List<Judgement> airs = readiness.judgements().stream().filter(one -> one.code().equals("air-humidity")).toList();
    assertThat(airs).extracting(Judgement::where).containsExactly("", "driest season", "dampest season");
    assertThat(airs).extracting(Judgement::outcome)
        .containsExactly(Outcome.MET, Outcome.NOT_MET, Outcome.MET);
    assertThat(airs.get(1).advice()).contains("in that season");
  }

  /** NF DTU 51.2 has a range of temperatures too: still one line if nothing was measured, two if the air was. */
  @Test
  void otherRangeOfAir() {
    SiteReadings french = SiteReadings.NONE.withAirLimits(ClimateLimits.NF_DTU_51_2);
    Judgement open = judge(french).judgements().get(0);
    assertThat(open.limit()).isEqualTo("40 % to 60 %; 15 °C to 25 °C");
    assertThat(open.check()).isEqualTo("relative humidity and temperature of the air");
    assertThat(judge(french).judgements()).hasSize(5);
    Readiness cold = judge(french.withAir(air("12 °C", "50")));
    assertThat(only(cold, "air-temperature").outcome()).isEqualTo(Outcome.NOT_MET);
    assertThat(only(cold, "air-humidity").outcome()).isEqualTo(Outcome.MET);
  }

  @Test
  void chosenSubfloorLimitsCountTheReadings() {
    Readiness readiness = judge(READY.withSubfloorLimits(MoistureLimits.NWFA_GUIDELINES));
    assertThat(only(readiness, "subfloor-moisture").outcome()).as("no limit for CM").isEqualTo(Outcome.NOT_MEASURED);
    assertThat(only(readiness, "moisture-readings").outcome()).isEqualTo(Outcome.NOT_MEASURED);
    Readiness nothing = judge(SiteReadings.NONE.withSubfloorLimits(MoistureLimits.NWFA_GUIDELINES));
    assertThat(nothing.judgements()).hasSize(5);
  }

  /** Boards of 3 in and wider within 2 points of a wood subfloor: 8.2 against 11 % is 2.8 apart. */
  @Test
  void boardsAgainstAWoodSubfloor() {
    SiteFloor timber = FLOOR.withSubfloor(Substrate.TIMBER);
    SiteReadings readings = READY.withSubfloorMoisture(List.of(MoistureReading.of(MoistureMethod.METER, "11")));
    Judgement apart = only(Readiness.of(timber, readings).value(), "board-subfloor-difference");
    assertThat(apart.outcome()).isEqualTo(Outcome.NOT_MET);
    assertThat(apart.found()).startsWith("2.8 percentage points");
    Judgement half = only(Readiness.of(timber, SiteReadings.NONE.withSubfloorMoisture(readings.subfloorMoisture())).value(),
        "board-subfloor-difference");
    assertThat(half.outcome()).isEqualTo(Outcome.NOT_MEASURED);
    assertThat(half.found()).isEqualTo("subfloor 11 %");
    assertThat(Readiness.of(timber, SiteReadings.NONE).value().judgements()).hasSize(5);
  }

  /** Wood under a leak is far beyond what boards may have, and is a finding about the floor, not a refusal. */
  @Test
  void soakedSubfloor() {
    SiteReadings soaked = READY.withSubfloorMoisture(List.of(MoistureReading.of(MoistureMethod.METER, "38")));
    Judgement apart = only(Readiness.of(FLOOR.withSubfloor(Substrate.TIMBER), soaked).value(), "board-subfloor-difference");
    assertThat(apart.outcome()).isEqualTo(Outcome.NOT_MET);
    // 38 - (8.1 + 8.4 + 8.1) / 3 = 29.8
    assertThat(apart.found()).startsWith("29.8 percentage points");
  }

  @Test
  void movementOfEngineeredBoardsByRuleIsSaid() {
    Readiness readiness = judge(READY);
    assertThat(only(readiness, "gap-wide-enough").source()).isEqualTo(Coefficient.NF_DTU_MULTILAYER.source());
    assertThat(readiness.findings()).extracting(Finding::code).containsExactly("movement-by-rule");
    SiteFloor given = FLOOR.withCoefficient(Coefficient.ofPercent(new BigDecimal("0.05"), "pack", Source.GIVEN));
    assertThat(Readiness.of(given, READY).value().findings()).isEmpty();
  }

  /** Solid white oak, 0.365 %: 1.8 m from the middle, from 8.2 % to what 23 °C and 60 % ask for, 10.8 %: 17 mm, more than 10. */
  @Test
  void solidOakNeedsMoreThanTheGap() {
    Judgement gap = only(Readiness.of(SOLID, READY).value(), "gap-wide-enough");
    assertThat(gap.outcome()).isEqualTo(Outcome.NOT_MET);
    assertThat(gap.found()).isEqualTo("10 mm");
    assertThat(gap.limit()).startsWith("at least 17.");
  }

  @Test
  void whatMovementNeedsIsNamed() {
    Judgement open = only(judge(READY.withBoardMoisture(List.of())), "gap-wide-enough");
    assertThat(open.advice()).isEqualTo("measure the boards");
    assertThat(open.found()).contains("45 %").contains("a trim of 20 mm");
    BoardGoods unknown = BoardGoods.of(mm("2200"), mm("185"), mm("14"), 6).withConstruction(Construction.SOLID);
    SiteFloor without = SiteFloor.of("Study", Area.ofSquareMetres("15.2"), unknown);
    assertThat(only(Readiness.of(without, READY).value(), "gap-wide-enough").advice())
        .isEqualTo("say which wood the boards are, or give their maker's figure for movement;"
            + " measure the gap at the walls and at everything fixed");
    SiteFloor oak = SiteFloor.of("Study", Area.ofSquareMetres("15.2"), unknown.withSpecies("oak"))
        .withGaps(FLOOR.gaps());
    assertThat(only(Readiness.of(oak, READY).value(), "gap-wide-enough").advice()).contains("oak");
  }

  @Test
  void trimAndWhatHoldsTheFloor() {
    Readiness narrow = judge(READY.withTrimCover(mm("9")).withPinning(
        Pinning.found(List.of(new Pinning.Fixing(Pinning.FixedBy.PIPE, "by the radiator")))));
    assertThat(only(narrow, "gap-covered").outcome()).isEqualTo(Outcome.NOT_MET);
    assertThat(only(narrow, "floor-not-pinned").found()).isEqualTo("a tight pipe (by the radiator)");
    Readiness alone = judge(SiteReadings.NONE.withPinning(Pinning.found(List.of())));
    assertThat(only(alone, "floor-not-pinned").outcome()).isEqualTo(Outcome.MET);
    SiteFloor own = FLOOR.withGaps(List.of(GapPoint.of("door", mm("1800"), mm("10")).cover(mm("8"))));
    assertThat(only(Readiness.of(own, READY).value(), "gap-covered").where()).as("its own trim").isEqualTo("door");
  }

  /** In air of 100 % wood takes up more than 30 %, where movement ends: that is said, and is no refusal. */
  @Test
  void seasonBeyondTheMovement() {
    Readiness readiness = judge(READY.withSeasons(air("0 °C", "100"), air("0 °C", "100")));
    assertThat(readiness.isReady()).isFalse();
    assertThat(only(readiness, "gap-wide-enough").isMet()).isFalse();
  }

  @Test
  void heatingThatIsNotStatedLeavesTheLimitOpen() {
    SiteReadings between = READY.withSubfloorMoisture(List.of(cm("1.9")));
    assertThat(only(judge(between.withHeating(Heating.UNHEATED)), "subfloor-moisture").outcome()).isEqualTo(Outcome.MET);
    assertThat(only(judge(between.withHeating(Heating.HEATED)), "subfloor-moisture").outcome()).isEqualTo(Outcome.NOT_MET);
    assertThat(only(judge(between.withHeating(Heating.NOT_STATED)), "subfloor-moisture").outcome())
        .isEqualTo(Outcome.NOT_MEASURED);
  }

  @Test
  void impossibleReadingsAreRefusedAtOnce() {
    assertThatIllegalArgumentException().isThrownBy(() -> SiteReadings.NONE.withAir(air("120 °C", "50")));
    assertThatIllegalArgumentException().isThrownBy(() -> SiteReadings.NONE.withSeasons(air("20 °C", "50"), air("-30 °C", "50")));
    assertThatIllegalArgumentException().isThrownBy(() -> SiteReadings.NONE.withBoardMoisture(percents("31")));
    assertThatIllegalArgumentException().isThrownBy(() -> SiteReadings.NONE.withDaysInRoom(new BigDecimal("-1")));
    assertThatIllegalArgumentException().isThrownBy(() -> SiteReadings.NONE.withTrimCover(mm("-1")));
    assertThatIllegalArgumentException().isThrownBy(() -> SiteFloor.of("Study", Area.ZERO, Sites.BOARDS));
    assertThatIllegalArgumentException().isThrownBy(() -> new HeightLine(" ", List.of()));
  }

  @Test
  void readingsAreEqualIfAllTheyHoldIs() {
    assertThat(READY.withAir(air("21 °C", "48"))).isEqualTo(READY).hasSameHashCodeAs(READY);
    assertThat(READY.withAir(air("21 °C", "49"))).isNotEqualTo(READY);
    assertThat(READY).hasToString("5 readings of moisture, 31 of heights and gaps");
  }
}
