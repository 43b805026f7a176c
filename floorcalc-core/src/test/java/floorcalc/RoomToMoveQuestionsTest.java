package floorcalc;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.measure.Length;
import floorcalc.measure.TapeNotation;
import floorcalc.moisture.Percent;
import floorcalc.movement.Coefficient;
import floorcalc.movement.GapChecks;
import floorcalc.movement.GapPoint;
import floorcalc.movement.MovementForecast;
import floorcalc.movement.Pinning;
import floorcalc.movement.WallAngle;
import floorcalc.outline.ExpansionGap;
import floorcalc.outline.Outline;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import floorcalc.working.Judgement;
import floorcalc.working.Outcome;
import floorcalc.working.Source;
import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What people ask about the room that a floor needs to move: which gap is meant, and whether it is enough everywhere. */
class RoomToMoveQuestionsTest {
  private static Length mm(String decimal) {
    return Length.ofMillimetres(decimal);
  }

  /** 0.25 % of the width for 1 %: from 8 % to 9 % in the damp season, to 6 % in the dry one. */
  private static MovementForecast oak() {
    return MovementForecast.of(Percent.of("8"), Percent.of("6"), Percent.of("9"),
        Coefficient.ofPercent(new BigDecimal("0.25"), "oak", Source.GIVEN));
  }

  /** A gap of 1/2 in "in total" is 1/4 in on each side; a gap of 10 mm on each side takes 20 mm from a room of 4 m. */
  @Test
  void isAGapMeantOnOneSideOrInTotal() {
    List<GapPoint> sides = GapPoint.bothSides(mm("4000"), mm("10"));
    assertThat(sides).hasSize(2).allSatisfy(side -> {
      // each side moves from the middle: half of 4 m
      assertThat(side.across()).isEqualTo(mm("2000"));
      assertThat(side.gap()).isEqualTo(mm("10"));
    });
    Outline room = Outline.of(Ring.of(Point.ofMillimetres(0, 0), Point.ofMillimetres(4000, 0), Point.ofMillimetres(4000, 3000),
        Point.ofMillimetres(0, 3000)));
    Outline laid = ExpansionGap.inset(room, mm("10")).value().laid().get(0);
    assertThat(laid.extent().width()).isEqualTo(mm("3980"));
    assertThat(laid.extent().height()).isEqualTo(mm("2980"));
    // 4 m swell 4000 x 0.0025 = 10 mm in total, 5 mm on each side: a gap of 5 mm on each side just takes it, 4.9 mm does not
    assertThat(judgement(GapChecks.judge(oak(), GapPoint.bothSides(mm("4000"), mm("5")), Pinning.notLookedAt()).value(), 0).outcome())
        .isEqualTo(Outcome.MET);
    assertThat(judgement(GapChecks.judge(oak(), GapPoint.bothSides(mm("4000"), mm("4.9")), Pinning.notLookedAt()).value(), 0).outcome())
        .isEqualTo(Outcome.NOT_MET);
  }

  /** At 45 degrees 1/4 in along the board is 0.25 / 1.41421 = 0.1768 in square to the wall; 1/4 in square to it is 0.3536 in along. */
  @Test
  void isAGapMeantSquareToTheWallOrAlongTheBoard() {
    WallAngle slanted = WallAngle.of(BigDecimal.valueOf(45));
    Length quarter = Length.ofInches(0, 1, 4);
    assertThat(inches(slanted.squareToWall(quarter).value())).isEqualTo("0.177");
    assertThat(inches(slanted.alongBoard(quarter).value())).isEqualTo("0.354");
    // where the boards end at the wall both are the same
    assertThat(WallAngle.ACROSS_BOARDS.squareToWall(quarter).value()).isEqualTo(quarter);
    assertThat(TapeNotation.inches(16).format(slanted.squareToWall(quarter).value())).isEqualTo("3/16\"");
  }

  private static String inches(Length length) {
    return new BigDecimal(length.toNanometres()).divide(new BigDecimal(25_400_000), 3, java.math.RoundingMode.HALF_UP).toPlainString();
  }

  /**
   * A floor 6 m wide swells 6000 x 0.0025 = 15 mm and shrinks 30 mm: 7.5 mm and 15 mm on each side. At the window 9 mm are left, at the
   * radiator 6 mm; a skirting reaches 16 mm over the wall.
   */
  @Test
  void isTheGapWideEnoughCoveredAndFreeEverywhereAndWhichPlaceDecides() {
    List<GapPoint> places = List.of(GapPoint.of("window", mm("3000"), mm("9")).cover(mm("25")),
        GapPoint.of("radiator", mm("3000"), mm("6")).cover(mm("25")), GapPoint.of("door", mm("3000"), mm("9")).cover(mm("16")));
    GapChecks found = GapChecks.judge(oak(), places, Pinning.found(List.of(new Pinning.Fixing(Pinning.FixedBy.values()[0], "at the island")))).value();
    assertThat(found.judgements()).extracting(Judgement::code).containsExactly("gap-wide-enough", "gap-covered", "floor-not-pinned");
    assertThat(judgement(found, 0)).satisfies(one -> {
      assertThat(one.outcome()).isEqualTo(Outcome.NOT_MET);
      assertThat(one.where()).isEqualTo("radiator");
      assertThat(one.limit()).isEqualTo("at least 7.5 mm");
    });
    // at the door 9 mm open by 15 mm to 24 mm: the skirting of 16 mm leaves 8 mm bare; at the radiator 6 + 15 = 21 mm are covered
    assertThat(judgement(found, 1)).satisfies(one -> {
      assertThat(one.outcome()).isEqualTo(Outcome.NOT_MET);
      assertThat(one.where()).isEqualTo("door");
      assertThat(one.advice()).startsWith("the gap shows by 8 mm");
    });
    assertThat(judgement(found, 2)).satisfies(one -> {
      assertThat(one.outcome()).isEqualTo(Outcome.NOT_MET);
      assertThat(one.found()).contains("at the island");
    });
  }

  private static Judgement judgement(GapChecks checks, int which) {
    return checks.judgements().get(which);
  }
}
