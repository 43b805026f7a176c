package floorcalc.movement;

import static floorcalc.working.StepChecks.assertStepsHold;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import floorcalc.measure.Length;
import floorcalc.moisture.Percent;
import floorcalc.movement.Pinning.FixedBy;
import floorcalc.movement.Pinning.Fixing;
import floorcalc.working.Calculated;
import floorcalc.working.Judgement;
import floorcalc.working.Outcome;
import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GapChecksTest {
  /** 8 % now, 6 % and 11 % in the seasons; 0.0025 a per cent: swells 7.5 mm and shrinks 5 mm on a metre. */
  private static final MovementForecast FORECAST = MovementForecast.of(Percent.of("8"), Percent.of("6"), Percent.of("11"),
      Coefficient.NF_DTU_SOLID);

  private static Length len(String text) {
    return Length.parse(text);
  }

  private static List<Judgement> judged(List<GapPoint> points, Pinning pinning) {
    Calculated<GapChecks> checks = GapChecks.judge(FORECAST, points, pinning);
    if (!points.isEmpty()) {
      assertStepsHold(checks);
    }
    return checks.value().judgements();
  }

  @Test
  void allThreeAreMet() {
    // 2 m from the middle: 15 mm of swelling, 10 mm of shrinkage; a gap of 15 mm opens to 25 mm
    List<GapPoint> points = GapPoint.bothSides(len("4 m"), len("15 mm")).stream().map(p -> p.cover(len("25 mm"))).toList();
    List<Judgement> judgements = judged(points, Pinning.found(List.of()));
    assertThat(judgements).extracting(Judgement::code)
        .containsExactly("gap-wide-enough", "gap-covered", "floor-not-pinned");
    assertThat(judgements).allMatch(Judgement::isMet);
    assertThat(judgements.get(0).limit()).isEqualTo("at least 15 mm");
    assertThat(judgements.get(1).limit()).isEqualTo("at least 25 mm (gap 15 mm, which opens 10 mm more)");
  }

  @Test
  void eachFailsByItself() {
    List<GapPoint> narrow = GapPoint.bothSides(len("4 m"), len("14.9 mm")).stream().map(p -> p.cover(len("30 mm"))).toList();
    assertThat(judged(narrow, Pinning.found(List.of()))).extracting(Judgement::outcome)
        .containsExactly(Outcome.NOT_MET, Outcome.MET, Outcome.MET);
    assertThat(judged(narrow, Pinning.found(List.of())).get(0).advice()).startsWith("0.1 mm more are needed there");
    List<GapPoint> bare = GapPoint.bothSides(len("4 m"), len("15 mm")).stream().map(p -> p.cover(len("24 mm"))).toList();
    assertThat(judged(bare, Pinning.found(List.of()))).extracting(Judgement::outcome)
        .containsExactly(Outcome.MET, Outcome.NOT_MET, Outcome.MET);
    assertThat(judged(bare, Pinning.found(List.of())).get(1).advice()).startsWith("the gap shows by 1 mm");
    Judgement pinned = judged(bare, Pinning.found(List.of(new Fixing(FixedBy.PIPE, "by the radiator"),
        new Fixing(FixedBy.ISLAND, "")))).get(2);
    assertThat(pinned.outcome()).isEqualTo(Outcome.NOT_MET);
    assertThat(pinned.found()).isEqualTo("a tight pipe (by the radiator), an island");
  }

  @Test
  void notMeasuredIsNeverAPass() {
    assertThat(judged(List.of(), Pinning.notLookedAt())).extracting(Judgement::outcome)
        .containsOnly(Outcome.NOT_MEASURED);
    // one of two places without a trim that is known
    List<GapPoint> points = GapPoint.bothSides(len("4 m"), len("15 mm"));
    Judgement covered = judged(List.of(points.get(0).cover(len("30 mm")), points.get(1)), Pinning.notLookedAt()).get(1);
    assertThat(covered.outcome()).isEqualTo(Outcome.NOT_MEASURED);
    assertThat(covered.where()).isEqualTo("finishing wall");
    // but a gap that shows elsewhere is a failure all the same
    assertThat(judged(List.of(points.get(0).cover(len("20 mm")), points.get(1)), Pinning.notLookedAt()).get(1).outcome())
        .isEqualTo(Outcome.NOT_MET);
  }

  @Test
  void theSmallestMarginGoverns() {
    List<GapPoint> points = List.of(GapPoint.of("window wall", len("2 m"), len("18 mm")),
        GapPoint.of("hearth", len("1 m"), len("8 mm")), GapPoint.of("column", len("500 mm"), len("5 mm")));
    // margins 18 - 15 = 3, 8 - 7.5 = 0.5, 5 - 3.75 = 1.25
    Judgement judgement = judged(points, Pinning.notLookedAt()).get(0);
    assertThat(judgement.where()).isEqualTo("hearth");
    assertThat(judgement.isMet()).isTrue();
    assertThat(GapChecks.judge(FORECAST, points, Pinning.notLookedAt()).value().places())
        .extracting(GapChecks.Place::narrowest).containsExactly(len("3 mm"), len("0.5 mm"), len("1.25 mm"));
  }

  /** 2 m across swell 15 mm: square to a wall at 60 degrees half of that, at 45 degrees 15 / 1.41421356 = 10.6066. */
  @ParameterizedTest
  @CsvSource({"0, 15", "60, 7.5", "90, 0", "45, 10.606602"})
  void aSlantedWallTakesTheComponentSquareToIt(String degrees, String swelling) {
    GapPoint point = GapPoint.of("slanted wall", len("2 m"), len("10 mm")).angle(WallAngle.of(new BigDecimal(degrees)));
    Calculated<GapChecks> checks = GapChecks.judge(FORECAST, List.of(point), Pinning.notLookedAt());
    assertStepsHold(checks);
    assertThat(checks.value().places().get(0).closes().minus(len(swelling + " mm")).toNanometres()).isBetween(0L, 1000L);
  }

  @Test
  void onTheFarSideOfAColumnShrinkageClosesTheGap() {
    // 1 m beyond the middle and facing it: swelling takes the floor 7.5 mm away from the column, shrinkage 5 mm nearer
    GapPoint far = GapPoint.of("far side of the column", len("-1 m"), len("4 mm")).cover(len("12 mm"));
    Calculated<GapChecks> checks = GapChecks.judge(FORECAST, List.of(far), Pinning.notLookedAt());
    assertStepsHold(checks);
    GapChecks.Place place = checks.value().places().get(0);
    assertThat(place.closes()).isEqualTo(len("5 mm"));
    assertThat(place.opens()).isEqualTo(len("7.5 mm"));
    assertThat(place.narrowest()).isEqualTo(len("-1 mm"));
    assertThat(place.widest()).isEqualTo(len("11.5 mm"));
    assertThat(place.overlap()).contains(len("0.5 mm"));
    assertThat(checks.value().judgements()).extracting(Judgement::outcome)
        .containsExactly(Outcome.NOT_MET, Outcome.MET, Outcome.NOT_MEASURED);
    assertThat(checks.value().judgements().get(0).advice()).startsWith("1 mm more are needed there");
  }

  @Test
  void boardsThatMoveAlongToo() {
    // plywood core, 0.0002 along: 5 m * 0.0002 * 3 = 3 mm at the end wall; at the corner post at 45 degrees
    // 2 m * 0.0075 * 0.7071 + 5 m * 0.0006 * 0.7071 = 10.6066 + 2.1213 = 12.7279
    MovementForecast both = FORECAST.along(Coefficient.PLYWOOD);
    List<GapPoint> points = List.of(
        GapPoint.of("end wall", len("2 m"), len("10 mm")).along(len("5 m")).angle(WallAngle.ACROSS_BOARDS),
        GapPoint.of("corner", len("2 m"), len("10 mm")).along(len("5 m")).angle(WallAngle.of(BigDecimal.valueOf(45)))
            .cover(len("30 mm")));
    Calculated<GapChecks> checks = GapChecks.judge(both, points, Pinning.notLookedAt());
    assertStepsHold(checks);
    assertThat(checks.value().places().get(0).closes()).isEqualTo(len("3 mm"));
    assertThat(checks.value().places().get(1).closes().toMillimetres()).isBetween(12.7279, 12.7280);
    assertThat(both.coefficientAlong()).contains(Coefficient.PLYWOOD);
  }

  /** At 45 degrees 1/4 in along the board is 0.18 in square to the wall: 6.35 / 1.41421356 = 4.4901 mm. */
  @Test
  void squareToTheWallOrAlongTheBoard() {
    WallAngle slanted = WallAngle.of(BigDecimal.valueOf(45));
    Calculated<Length> square = slanted.squareToWall(len("1/4 in"));
    assertThat(square.value().toMillimetres() / 25.4).isBetween(0.175, 0.185);
    assertThat(square.value().toMillimetres()).isBetween(4.4901, 4.4902);
    assertStepsHold(square);
    // 10 mm square at 30 degrees to the boards are 20 mm along the board
    Calculated<Length> along = WallAngle.of(BigDecimal.valueOf(30)).alongBoard(len("10 mm"));
    assertThat(along.value()).isEqualTo(len("20 mm"));
    assertStepsHold(along);
    assertThat(WallAngle.ACROSS_BOARDS.alongBoard(len("10 mm")).value()).isEqualTo(len("10 mm"));
    assertThat(WallAngle.ALONG_BOARDS.squareToWall(len("10 mm")).value()).isEqualTo(Length.ZERO);
    assertThatThrownBy(() -> WallAngle.ALONG_BOARDS.alongBoard(len("10 mm"))).hasMessageContaining("across the boards");
    assertThatThrownBy(() -> WallAngle.of(BigDecimal.valueOf(91))).hasMessageContaining("but was 91");
    assertThat(WallAngle.of(new BigDecimal("90.0"))).isEqualTo(WallAngle.ACROSS_BOARDS).hasToString("90 degrees")
        .hasSameHashCodeAs(WallAngle.ACROSS_BOARDS).isNotEqualTo(slanted);
  }

  @Test
  void wrongValuesAreRefused() {
    assertThatThrownBy(() -> GapPoint.of("wall", len("1 mm"), len("-1 mm"))).hasMessageContaining("gap must not");
    assertThatThrownBy(() -> GapPoint.of("wall", len("1 mm"), len("1 mm")).cover(len("-1 mm")))
        .hasMessageContaining("cover of the trim");
  }
}
