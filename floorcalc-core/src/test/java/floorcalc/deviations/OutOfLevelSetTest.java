package floorcalc.deviations;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import floorcalc.levels.Levels;
import floorcalc.levels.SpotLevel;
import floorcalc.measure.Length;
import floorcalc.outline.Point;
import floorcalc.working.Calculated;
import floorcalc.working.Judgement;
import floorcalc.working.Outcome;
import floorcalc.working.Source;
import floorcalc.working.StepChecks;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class OutOfLevelSetTest {
  /** Readings along x at a spacing, in two rows 1 m apart of the same heights. */
  private static Levels rows(int spacing, String... heights) {
    List<Length> row = Stream.of(heights).map(Length::ofMillimetres).toList();
    return Levels.ofGrid(Point.ofMillimetres(0, 0), Length.ofMillimetres(spacing), Length.ofMillimetres(1000), List.of(row, row));
  }

  private static Judgement judged(String set, Levels levels) {
    Calculated<List<Judgement>> judged = OutOfLevelSet.named(set).judge(levels);
    StepChecks.assertStepsHold(judged);
    return judged.value().get(0);
  }

  /** 3 mm for each metre: 12 mm over 4 m. */
  @Test
  void theEndsOfALineAcrossMayDifferByTheirDistance() {
    assertThat(judged("NHBC 9.1.5", rows(2000, "0", "30", "12")).outcome()).as("what lies between is not asked").isEqualTo(Outcome.MET);
    Judgement beyond = judged("NHBC 9.1.5", rows(2000, "0", "0", "12.1"));
    assertThat(beyond.outcome()).isEqualTo(Outcome.NOT_MET);
    assertThat(beyond.limit()).isEqualTo("at most 3 mm per m, floors up to 6000 mm across (here 12 mm)");
    assertThat(beyond.found()).isEqualTo("12.1 mm over 4000 mm");
    assertThat(beyond.where()).isEqualTo("line at y = 0 mm, from 0 mm to 4000 mm");
  }

  /** Over 6 m across 20 mm in all holds, and for the lines of 1 m the other way 3 mm. */
  @Test
  void aLongFloorHasOneLimitInAll() {
    Calculated<List<Judgement>> judged = OutOfLevelSet.named("NHBC 9.1.5").judge(rows(3500, "0", "0", "20"));
    assertThat(judged.value()).extracting(Judgement::outcome).containsExactly(Outcome.MET, Outcome.MET);
    assertThat(OutOfLevelSet.named("NHBC 9.1.5").judge(rows(3500, "0", "0", "20.5")).value()).extracting(Judgement::outcome)
        .containsExactly(Outcome.MET, Outcome.NOT_MET);
    assertThat(OutOfLevelSet.named("NHBC 9.1.5").judge(rows(3000, "0", "0", "18")).value()).as("6 m is not over 6 m").hasSize(1);
  }

  /** The same source's example: a joist of 4 m that hangs 12 mm in the middle, 6 mm a metre, more than 4 mm. */
  @Test
  void aFloorThatHangsInTheMiddleIsOutOfLevelOnEitherSide() {
    Judgement judgement = judged("LABC 1.4", rows(2000, "0", "-12", "0"));
    assertThat(judgement.outcome()).isEqualTo(Outcome.NOT_MET);
    assertThat(judgement.found()).isEqualTo("12 mm over 2000 mm");
    assertThat(judged("LABC 1.4", rows(2000, "0", "-8", "0")).outcome()).isEqualTo(Outcome.MET);
  }

  /**
   * A rule of 2 m on readings 1.5 m apart: from 0 to 2 m the heights are 0 and 6 + (0 - 6) * 0.5 / 1.5 = 4 mm; from 1 m, at 4 mm, to 3 m,
   * at 0 mm, likewise 4 mm. With 7.5 mm they are 5 mm, just allowed.
   */
  @Test
  void aRuleIsLaidAnywhereAlongALine() {
    assertThat(judged("NF DTU 51.1", rows(1500, "0", "6", "0")).found()).isEqualTo("4 mm over 2000 mm");
    assertThat(judged("NF DTU 51.1", rows(1500, "0", "7.5", "0")).outcome()).isEqualTo(Outcome.MET);
    assertThat(judged("NF DTU 51.1", rows(1500, "0", "7.6", "0")).outcome()).isEqualTo(Outcome.NOT_MET);
    assertThat(OutOfLevelSet.named("NF DTU 51.1").judge(rows(900, "0", "6", "0")).value().get(0).outcome()).as("1.8 m are too short")
        .isEqualTo(Outcome.NOT_MEASURED);
  }

  /** 0.2 % of 4 m is 8 mm, from the highest to the lowest; of 30 m 60 mm, but at most 50 mm. */
  @Test
  void aShareOfTheRoomIsAllowedUpToABound() {
    assertThat(judged("SNiP 3.04.01", rows(2000, "0", "-8", "0")).outcome()).isEqualTo(Outcome.MET);
    assertThat(judged("SNiP 3.04.01", rows(2000, "0", "-8", "0.1")).outcome()).isEqualTo(Outcome.NOT_MET);
    assertThat(judged("SNiP 3.04.01", rows(15_000, "0", "30", "50.1")).limit()).endsWith("(here 50 mm)");
    assertThat(judged("SNiP 3.04.01", rows(15_000, "0", "30", "50.1")).outcome()).isEqualTo(Outcome.NOT_MET);
  }

  @Test
  void theLevelLineHasToBeSaid() {
    Levels levels = rows(2000, "-15", "3", "14");
    OutOfLevelSet set = OutOfLevelSet.named("BS 8204 datum");
    assertThat(set.judge(levels).value()).singleElement().satisfies(one -> {
      assertThat(one.outcome()).isEqualTo(Outcome.NOT_MEASURED);
      assertThat(one.advice()).contains("level line");
    });
    Calculated<List<Judgement>> judged = set.judge(levels, Length.ZERO);
    assertThat(judged.value().get(0).outcome()).isEqualTo(Outcome.MET);
    StepChecks.assertStepsHold(judged);
    assertThat(set.judge(levels, Length.ofMillimetres("0.1")).value().get(0)).satisfies(one -> {
      assertThat(one.outcome()).isEqualTo(Outcome.NOT_MET);
      assertThat(one.found()).isEqualTo("15.1 mm");
    });
  }

  @Test
  void scatteredReadingsHaveNoLineAcross() {
    Levels scattered = Levels.of(IntStream.range(0, 5).mapToObj(i -> SpotLevel.of(Length.ofMillimetres(1000L * i),
        Length.ofMillimetres(700L * (i % 2) + 13L * i), Length.ZERO)).toList());
    assertThat(judgedOpen("NHBC 9.1.5", scattered)).extracting(Judgement::outcome).containsOnly(Outcome.NOT_MEASURED);
  }

  private static List<Judgement> judgedOpen(String set, Levels levels) {
    return OutOfLevelSet.named(set).judge(levels).value();
  }

  @Test
  void aLimitSaysWhatItIs() {
    assertThat(OutOfLevelSet.named("ACI 117 formed surfaces").limits().get(0).allowed(Length.ZERO)).isEqualTo(Length.ofMillimetres("9.144"));
    assertThatIllegalArgumentException().isThrownBy(() -> OutOfLevelLimit.perMetre(LevelMeasure.FROM_DATUM, Length.ofMillimetres(1), Source.GIVEN))
        .withMessageContaining("one length");
    assertThatIllegalArgumentException().isThrownBy(() -> OutOfLevelLimit.inAll(LevelMeasure.UNDER_RULE, Length.ofMillimetres(1), Source.GIVEN))
        .withMessageContaining("rule of more than 0 mm");
    assertThatIllegalArgumentException().isThrownBy(() -> OutOfLevelSet.named("x")).withMessageContaining("'NHBC 9.1.5'");
    assertThat(OutOfLevelSet.all()).allSatisfy(set -> assertThat(OutOfLevelSet.named(set.name())).isSameAs(set));
  }
}
