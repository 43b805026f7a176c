package floorcalc.bays;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import floorcalc.bays.ExpansionBreak.Reason;
import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.outline.Direction;
import floorcalc.outline.Outline;
import floorcalc.outline.Point;
import floorcalc.outline.Wkt;
import floorcalc.rules.AtDoorways;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleSet;
import floorcalc.working.Calculated;
import floorcalc.working.Source;
import floorcalc.working.StepChecks;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Rooms whose least breaks are plain to see, in millimetres. Runs are 12 m along and 8 m across, recesses up to 500 mm need no break. */
class BaySplitTest {
  private static final LayingRules RULES = RuleSet.COMMON_PRACTICE.forBoard(Length.parse("14 mm"), Length.parse("185 mm"));

  private static BaySplit split(String wkt, double degrees, LayingRules rules, Opening... openings) {
    Outline room = Wkt.parse(wkt);
    Calculated<BaySplit> split = BaySplit.of(room, Direction.fromDegrees(degrees), List.of(openings), rules);
    StepChecks.assertStepsHold(split);
    assertThat(split.value().parts().stream().map(Outline::area).reduce(Area.ZERO, Area::plus)).isEqualTo(room.area());
    assertThat(split.value().isProvenLeast()).isTrue();
    return split.value();
  }

  private static String lines(BaySplit split) {
    return String.join("; ", split.breaks().stream().map(line -> line.from() + " to " + line.to() + " " + line.reason()).toList());
  }

  @Test
  void aPlainRoomNeedsNone() {
    BaySplit split = split("POLYGON ((0 0, 5000 0, 5000 4000, 0 4000, 0 0))", 0, RULES);
    assertThat(split.breaks()).isEmpty();
    assertThat(split.parts()).containsExactly(split.room());
    assertThat(split.length()).isEqualTo(Length.ZERO);
  }

  @Test
  void anLIsSplitAtItsInnerCornerTheShorterWay() {
    // From (2500, 3000) it is 2500 to the left and 3000 down.
    BaySplit split = split("POLYGON ((0 0, 6000 0, 6000 3000, 2500 3000, 2500 7000, 0 7000, 0 0))", 0, RULES);
    assertThat(lines(split)).isEqualTo("(0 mm, 3000 mm) to (2500 mm, 3000 mm) INNER_CORNER");
    // The line across runs from (6000, 3000) to (2500, 7000): 3500 and 4000 from the corner, 3500 * 4000 / sqrt(3500² + 4000²) = 2634.
    assertThat(split.breaks().get(0).because()).isEqualTo("without it the corner at (2500 mm, 3000 mm) would lie 2634 mm inside"
        + " the line across its recess; up to 500 mm needs no break");
  }

  @Test
  void aShallowRecessNeedsNone() {
    // The chimney breast stands 450 mm into the room; both its corners lie 450 mm inside the line across.
    String room = "POLYGON ((0 0, 5000 0, 5000 4000, 3500 4000, 3500 3550, 2000 3550, 2000 4000, 0 4000, 0 0))";
    assertThat(split(room, 0, RULES).breaks()).isEmpty();
    // With 400 mm as the limit both corners need a break: on to the side walls, 2000 and 1500; down to the lower wall 3550 each.
    LayingRules strict = RULES.with(LayingRules.DEEPEST_RECESS, Length.ofMillimetres(400), Source.GIVEN);
    assertThat(split(room, 0, strict).length()).isEqualTo(Length.ofMillimetres(3500));
  }

  @Test
  void aTWithArmsOfOneDepthIsCutBetweenItsInnerCorners() {
    BaySplit split = split("POLYGON ((0 3000, 2000 3000, 2000 0, 4000 0, 4000 3000, 6000 3000, 6000 5000, 0 5000, 0 3000))", 90, RULES);
    assertThat(lines(split)).isEqualTo("(2000 mm, 3000 mm) to (4000 mm, 3000 mm) INNER_CORNER");
  }

  @Test
  void aUIsCutTwice() {
    BaySplit split = split("POLYGON ((0 0, 7000 0, 7000 5000, 5500 5000, 5500 1800, 1500 1800, 1500 5000, 0 5000, 0 0))", 0, RULES);
    assertThat(lines(split)).isEqualTo("(0 mm, 1800 mm) to (1500 mm, 1800 mm) INNER_CORNER; "
        + "(5500 mm, 1800 mm) to (7000 mm, 1800 mm) INNER_CORNER");
  }

  @Test
  void anHIsCutWhereItsBarMeetsTheLegs() {
    BaySplit split = split("POLYGON ((0 0, 2500 0, 2500 2000, 4500 2000, 4500 0, 7000 0, 7000 6000, 4500 6000, 4500 3500,"
        + " 2500 3500, 2500 6000, 0 6000, 0 0))", 0, RULES);
    // Two cuts of 1500 across the bar; across the four legs it would be four of 2500.
    assertThat(lines(split)).isEqualTo("(2500 mm, 2000 mm) to (2500 mm, 3500 mm) INNER_CORNER; "
        + "(4500 mm, 2000 mm) to (4500 mm, 3500 mm) INNER_CORNER");
  }

  @Test
  void aPlusIsCutAlongOneOfItsBars() {
    BaySplit split = split("POLYGON ((2000 0, 5000 0, 5000 2000, 7000 2000, 7000 4000, 5000 4000, 5000 6000, 2000 6000, 2000 4000,"
        + " 0 4000, 0 2000, 2000 2000, 2000 0))", 0, RULES);
    // Two of 2000 from top to bottom of the bar that lies; two of 3000 the other way.
    assertThat(lines(split)).isEqualTo("(2000 mm, 2000 mm) to (2000 mm, 4000 mm) INNER_CORNER; "
        + "(5000 mm, 2000 mm) to (5000 mm, 4000 mm) INNER_CORNER");
  }

  @Test
  void aBreakMayEndOnAnother() {
    // Inner corners at (3000, 2000) and (4000, 3000). Down from both: 2000 + 3000; down from the lower, to the right from the upper:
    // 2000 + 3500; down from the upper, and from the lower to the right until it meets that: 3000 + 1000.
    BaySplit split = split("POLYGON ((0 0, 7500 0, 7500 4500, 4000 4500, 4000 3000, 3000 3000, 3000 2000, 0 2000, 0 0))", 0, RULES);
    assertThat(lines(split)).isEqualTo("(4000 mm, 0 mm) to (4000 mm, 3000 mm) INNER_CORNER; "
        + "(3000 mm, 2000 mm) to (4000 mm, 2000 mm) INNER_CORNER");
    assertThat(split.parts()).hasSize(3);
  }

  @Test
  void fourBreaksMayStopAtEachOther() {
    // Four arms round a middle square from (3000, 3000) to (5000, 5000), each 400 wider at its end. Across the necks it is 4400 each;
    // from each corner of a neck past the middle until the next stops it, 4000 each, and none of the four can be laid before the others.
    BaySplit split = split("POLYGON ((600 -2000, 5000 -2000, 5000 1000, 6000 1000, 6000 600, 10000 600, 10000 5000, 7000 5000,"
        + " 7000 6000, 7400 6000, 7400 10000, 3000 10000, 3000 7000, 2000 7000, 2000 7400, -2000 7400, -2000 3000, 1000 3000,"
        + " 1000 2000, 600 2000, 600 -2000))", 0, RULES.with(LayingRules.MAXIMUM_RUN_ACROSS, Length.ofMillimetres(12_000), Source.GIVEN));
    assertThat(lines(split)).isEqualTo("(5000 mm, 1000 mm) to (5000 mm, 5000 mm) INNER_CORNER; "
        + "(1000 mm, 3000 mm) to (5000 mm, 3000 mm) INNER_CORNER; (3000 mm, 3000 mm) to (3000 mm, 7000 mm) INNER_CORNER; "
        + "(3000 mm, 5000 mm) to (7000 mm, 5000 mm) INNER_CORNER");
    assertThat(split.parts()).hasSize(5);
  }

  @Test
  void aFrameRoundALargeIslandIsCutFourTimes() {
    BaySplit split = split("POLYGON ((0 0, 6000 0, 6000 5000, 0 5000, 0 0), (2000 1500, 4000 1500, 4000 3500, 2000 3500, 2000 1500))",
        0, RULES);
    // Each corner of the island needs a cut: 1500 up or down, or 2000 to a side.
    assertThat(split.length()).isEqualTo(Length.ofMillimetres(6000));
    assertThat(split.breaks()).hasSize(4).allSatisfy(line -> assertThat(line.reason()).isEqualTo(Reason.VOID));
    assertThat(split.parts()).hasSize(4);
  }

  @Test
  void aColumnNeedsNone() {
    assertThat(split("POLYGON ((0 0, 6000 0, 6000 5000, 0 5000, 0 0), (2000 2000, 2400 2000, 2400 3000, 2000 3000, 2000 2000))", 0,
        RULES).breaks()).isEmpty();
  }

  @Test
  void aLongRoomIsDividedEqually() {
    BaySplit split = split("POLYGON ((0 0, 25000 0, 25000 4000, 0 4000, 0 0))", 0, RULES);
    // 25 m at 12 m and two gaps of 10 mm is three bays, of 25000 / 3 = 8333 1/3.
    assertThat(lines(split)).isEqualTo("(8333.333333 mm, 0 mm) to (8333.333333 mm, 4000 mm) RUN_ALONG; "
        + "(16666.666667 mm, 0 mm) to (16666.666667 mm, 4000 mm) RUN_ALONG");
    assertThat(split.breaks().get(0).because()).isEqualTo("without it the floor would be 16647 mm long along the boards; a bay may be"
        + " up to 12000 mm");
  }

  @Test
  void theRunIsThatOfTheLaidFloor() {
    // 12020 less a gap of 10 at either end is 12000.
    assertThat(split("POLYGON ((0 0, 12020 0, 12020 4000, 0 4000, 0 0))", 0, RULES).breaks()).isEmpty();
    assertThat(split("POLYGON ((0 0, 12021 0, 12021 4000, 0 4000, 0 0))", 0, RULES).breaks()).hasSize(1);
    // Across the boards the limit is 8000.
    assertThat(split("POLYGON ((0 0, 12020 0, 12020 4000, 0 4000, 0 0))", 90, RULES).breaks().get(0).reason())
        .isEqualTo(Reason.RUN_ACROSS);
  }

  private static final String TWO_ROOMS = "POLYGON ((0 0, 4000 0, 4000 1500, 4100 1500, 4100 0, 8000 0, 8000 4000, 4100 4000,"
      + " 4100 2400, 4000 2400, 4000 4000, 0 4000, 0 0))";
  private static final Opening DOOR = new Opening("D1", Point.ofMillimetres(4050, 1500), Point.ofMillimetres(4050, 2400));

  @Test
  void everyDoorwayHasABreakWhereTheRulesSaySo() {
    BaySplit split = split(TWO_ROOMS, 0, RULES, DOOR);
    assertThat(lines(split)).isEqualTo("(4050 mm, 1500 mm) to (4050 mm, 2400 mm) DOORWAY");
    assertThat(split.breaks().get(0).because()).isEqualTo("doorway D1: the rules ask for a break at each doorway");
  }

  @Test
  void aDoorwayIsPreferredToOtherBreaksOfItsLength() {
    LayingRules through = RULES.with(LayingRules.AT_DOORWAYS, AtDoorways.RUN_THROUGH, Source.GIVEN);
    // Any of three lines of 900 would do: either face of the wall, or the doorway in its middle.
    BaySplit split = split(TWO_ROOMS, 0, through, DOOR);
    assertThat(lines(split)).isEqualTo("(4050 mm, 1500 mm) to (4050 mm, 2400 mm) INNER_CORNER");
    assertThat(split.breaks().get(0).because()).startsWith("in doorway D1: without it the corner at ");
  }

  @Test
  void anOpeningThatDoesNotCrossTheFloorIsRefused() {
    Opening loose = new Opening("D2", Point.ofMillimetres(4050, 1500), Point.ofMillimetres(4050, 2000));
    assertThatThrownBy(() -> split(TWO_ROOMS, 0, RULES, loose)).isInstanceOf(IllegalArgumentException.class)
        .hasMessage("opening 'D2' must end on walls, but (4050 mm, 2000 mm) lies on none; give its two jambs");
    Opening alongWall = new Opening("D3", Point.ofMillimetres(1000, 0), Point.ofMillimetres(2000, 0));
    assertThatThrownBy(() -> split(TWO_ROOMS, 0, RULES, alongWall)).isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("must lie across the floor");
  }

  @Test
  void boardsAskewToTheWallsAreCutAlongThemWhereThatIsNotMuchLonger() {
    // Boards at 30 degrees in an L: from (2000, 2000) square to them to the wall at the left, 2000 / cos 30° = 2309.4.
    BaySplit split = split("POLYGON ((0 0, 6000 0, 6000 2000, 2000 2000, 2000 6000, 0 6000, 0 0))", 30, RULES);
    assertThat(split.length().toMillimetres()).isEqualTo(2000 / Math.cos(Math.toRadians(30)), org.assertj.core.data.Offset.offset(1e-6));
  }
}
