package floorcalc;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.boards.BoardGoods;
import floorcalc.measure.Length;
import floorcalc.outline.Direction;
import floorcalc.outline.Wkt;
import floorcalc.plan.DirectionChoice;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.Room;
import floorcalc.rules.LayingRules;
import floorcalc.working.Finding;
import floorcalc.working.Source;
import org.junit.jupiter.api.Test;

/** Where walls stand so near to each other that their gaps meet, no floor lies, and no break parts it. */
class BreaksOverNoFloorTest {

  /** A slot 18 mm wide, less than two gaps of 10 mm, runs 400 mm beside a room that is 4 m wide. */
  private static FloorPlan plan(String slotTo) {
    return FloorPlanner.plan(FloorJob.of("Invented floor", BoardGoods.of(Length.ofMillimetres(2200), Length.ofMillimetres(185),
        Length.ofMillimetres(14), 6)).direction(DirectionChoice.of(Direction.ALONG_X)).room(Room.of("Room", Wkt.parse(
            "POLYGON ((0 3000, 3000 3000, 3000 2600, " + slotTo + " 2600, " + slotTo + " 3450, 6000 3450, 6000 7000, 0 7000, 0 3000))"))).build());
  }

  @Test
  void noProfileLiesAcrossASlotWithoutFloor() {
    FloorPlan plan = plan("3018");
    assertThat(plan.bays()).hasSize(1);
    assertThat(plan.breaks()).isEmpty();
    assertThat(plan.profiles()).isEmpty();
    assertThat(plan.findings()).extracting(Finding::code).contains("break-parts-no-floor");
  }

  /** A slot of 600 mm takes floor, which a break parts from the rest. */
  @Test
  void aSlotWithFloorIsParted() {
    FloorPlan plan = plan("3600");
    assertThat(plan.breaks()).isNotEmpty();
    assertThat(plan.findings()).extracting(Finding::code).doesNotContain("break-parts-no-floor");
  }

  /**
   * A hearth in the bar of an H: 22 mm above it, less than two gaps of 17 mm, lie no floor; 50 mm below it do. The line to its lower side parts
   * the floor alone, though it joins the hearth to one wall only.
   */
  @Test
  void aHearthWhoseGapMeetsThatOfTheWallIsPassedOnOneSideAlone() {
    FloorJob job = FloorJob.of("Invented floor", BoardGoods.of(Length.ofMillimetres(428), Length.ofMillimetres(132),
        Length.ofMillimetres(21), 10)).direction(DirectionChoice.of(Direction.fromDegrees(90))).room(Room.of("Room", Wkt.parse(
            "POLYGON ((0 4550, 400 4550, 400 2480, 2600 2480, 2600 4550, 2950 4550, 2950 0, 2600 0, 2600 2170, 400 2170, 400 0, 0 0, 0 4550),"
            + " (2140 2220, 2140 2458, 2710 2458, 2710 2220, 2140 2220))"))).build();
    FloorPlan plan = FloorPlanner.plan(job.withRules(job.rules().with(LayingRules.EXPANSION_GAP, Length.ofMillimetres(17), Source.GIVEN)
        .with(LayingRules.WIDEST_VOID, Length.ofMillimetres(909), Source.GIVEN)));
    assertThat(plan.findings()).extracting(Finding::code).contains("break-parts-no-floor");
    assertThat(plan.breaks()).hasSize(2);
    assertThat(plan.bays()).hasSize(3);
  }

  /**
   * Two rooms joined by a passage, a round column and a duct in the left one, boards at 12.25 degrees to the walls, up to 3555 mm across. The left room is 3345.7 cos 12.25° + 1543.9 sin 12.25° = 3597.1 mm
   * across, 18 mm more than 3555 and two gaps of 12 mm: a break that cuts off its upper corner, no wider than the two gaps, would be the shortest.
   */
  @Test
  void noBreakCutsOffACornerWithoutFloor() {
    FloorJob job = FloorJob.of("Invented floor", BoardGoods.of(Length.ofMillimetres(1393), Length.ofMillimetres(106), Length.ofMillimetres(9), 5))
        .direction(DirectionChoice.of(Direction.fromDegrees(347.75))).room(Room.of("Room", Wkt.parse("POLYGON ((0 0, 1543.9 0, 1543.9 1414.7, 3456.9 1414.7,"
            + " 3456.9 0, 4584.9 0, 4584.9 3345.7, 3456.9 3345.7, 3456.9 2134.7, 1543.9 2134.7, 1543.9 3345.7, 0 3345.7, 0 0),"
            + " (617.466992 280.455323, 553.61627 434.604601, 399.466992 498.455323, 245.317714 434.604601, 181.466992 280.455323, 245.317714 126.306045,"
            + " 399.466992 62.455323, 553.61627 126.306045, 617.466992 280.455323), (582.478691 408.943048, 646.478691 408.943048, 646.478691 516.633174,"
            + " 582.478691 516.633174, 582.478691 408.943048))"))).build();
    FloorPlan plan = FloorPlanner.plan(job.withRules(job.rules().with(LayingRules.EXPANSION_GAP, Length.ofMillimetres(12), Source.GIVEN)
        .with(LayingRules.MAXIMUM_RUN_ALONG, Length.ofMillimetres(4653), Source.GIVEN)
        .with(LayingRules.MAXIMUM_RUN_ACROSS, Length.ofMillimetres(3555), Source.GIVEN)
        .with(LayingRules.DEEPEST_RECESS, Length.ofMillimetres(2815), Source.GIVEN)));
    assertThat(plan.breaks()).isNotEmpty();
    assertThat(plan.findings()).extracting(Finding::code).doesNotContain("break-parts-no-floor");
  }

  /**
   * A column 35 mm beside a corner that the floor bends round, less than two gaps of 18 mm: the floor ends in a tip on either side of the line between them,
   * of which half a break of 40 mm would take some. The line parts no floor.
   */
  @Test
  void aBreakThatOnlyTouchesTipsBesideItIsLeftOut() {
    FloorJob job = FloorJob.of("Invented floor", BoardGoods.of(Length.ofMillimetres(1431), Length.ofMillimetres(173), Length.ofMillimetres(22), 6))
        .direction(DirectionChoice.of(Direction.ALONG_X)).room(Room.of("Room", Wkt.parse("POLYGON ((0 0, 2000 0, 2000 2000, 4000 2000, 4000 4000, 0 4000, 0 0),"
            + " (2000 2035, 2300 2300, 2000 2600, 1700 2300, 2000 2035))"))).build();
    FloorPlan plan = FloorPlanner.plan(job.withRules(job.rules().with(LayingRules.EXPANSION_GAP, Length.ofMillimetres(18), Source.GIVEN)
        .with(LayingRules.BREAK_GAP, Length.ofMillimetres(40), Source.GIVEN)));
    assertThat(plan.findings()).extracting(Finding::code).contains("break-parts-no-floor");
    assertThat(plan.breaks()).hasSize(1);
    assertThat(plan.bays()).hasSize(2);
  }
}
