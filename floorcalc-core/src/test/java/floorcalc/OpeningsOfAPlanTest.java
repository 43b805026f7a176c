package floorcalc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import floorcalc.bays.ExpansionBreak.Reason;
import floorcalc.bays.Opening;
import floorcalc.boards.BoardGoods;
import floorcalc.measure.Length;
import floorcalc.outline.Direction;
import floorcalc.outline.Outline;
import floorcalc.outline.Point;
import floorcalc.outline.Wkt;
import floorcalc.plan.Beyond;
import floorcalc.plan.DirectionChoice;
import floorcalc.plan.Door;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.Room;
import floorcalc.plan.UnsoundJobException;
import floorcalc.rules.AtDoorways;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleSet;
import floorcalc.working.Source;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Two rooms in one outline: 4 m by 5 m each, a wall of 100 mm between them and in it a doorway of 800 mm. */
class OpeningsOfAPlanTest {
  private static final BoardGoods BOARDS =
      BoardGoods.of(Length.parse("2.2 m"), Length.parse("185 mm"), Length.parse("14 mm"), 6);
  private static final Outline TWO_ROOMS = Wkt.parse("POLYGON ((0 0, 4000 0, 4000 2000, 4100 2000, 4100 0, 8100 0, 8100 5000,"
      + " 4100 5000, 4100 2800, 4000 2800, 4000 5000, 0 5000, 0 0))");
  private static final Opening DOORWAY = new Opening("D1", Point.ofMillimetres(4000, 2000), Point.ofMillimetres(4000, 2800));

  private static FloorJob job(AtDoorways at, Length acrossBoards, Length deepestRecess) {
    LayingRules rules = RuleSet.COMMON_PRACTICE.forBoard(BOARDS.thickness(), BOARDS.coverWidth())
        .with(LayingRules.AT_DOORWAYS, at, Source.GIVEN).with(LayingRules.MAXIMUM_RUN_ACROSS, acrossBoards, Source.GIVEN)
        .with(LayingRules.DEEPEST_RECESS, deepestRecess, Source.GIVEN);
    return FloorJob.of("Two rooms", BOARDS).rules(rules).direction(DirectionChoice.of(Direction.fromDegrees(90)))
        .room(Room.of("Flat", TWO_ROOMS).withOpenings(List.of(DOORWAY))).build();
  }

  @Test
  void aDoorwayHasItsBreakWhereTheRulesAskForIt() {
    FloorPlan plan = FloorPlanner.plan(job(AtDoorways.BREAK, Length.parse("20 m"), Length.parse("100 m")));
    assertThat(plan.breaks()).singleElement().satisfies(line -> {
      assertThat(line.line().reason()).isEqualTo(Reason.DOORWAY);
      assertThat(line.line().length()).isEqualTo(Length.ofMillimetres(800));
    });
    assertThat(plan.bays()).hasSize(2);
  }

  /** The boards run up, so the width is counted from x = 0 to 8100, through the doorway: more than 8 m though each room has 4 m. */
  @Test
  void widthIsSummedThroughTheDoorwayAndTheBreakLiesThere() {
    FloorPlan through = FloorPlanner.plan(job(AtDoorways.RUN_THROUGH, Length.parse("8.2 m"), Length.parse("100 m")));
    assertThat(through.breaks()).isEmpty();
    FloorPlan tooWide = FloorPlanner.plan(job(AtDoorways.RUN_THROUGH, Length.parse("8 m"), Length.parse("100 m")));
    assertThat(tooWide.breaks()).singleElement().satisfies(line -> {
      assertThat(line.line().length()).isEqualTo(Length.ofMillimetres(800));
      assertThat(line.line().reason()).isIn(Reason.RUN_ACROSS, Reason.DOORWAY);
    });
  }

  @Test
  void anOpeningThatIsNoDoorwayIsRefused() {
    FloorJob job = job(AtDoorways.BREAK, Length.parse("8 m"), Length.parse("500 mm"));
    Opening across = new Opening("D2", Point.ofMillimetres(4000, 1000), Point.ofMillimetres(4100, 1000));
    FloorJob odd = job.withRooms(List.of(job.rooms().get(0).withOpenings(List.of(across))));
    assertThatThrownBy(() -> FloorPlanner.plan(odd)).isInstanceOf(UnsoundJobException.class)
        .hasMessageContaining("Flat: opening 'D2': the line from (4000 mm, 1000 mm) to (4100 mm, 1000 mm) leaves the floor");
  }

  @Test
  void roomsWithOutlinesOfTheirOwnAreNotLaidThrough() {
    Door door = new Door("D1", Point.ofMillimetres(4000, 2000), Point.ofMillimetres(4000, 2800), "Other", Beyond.UNKNOWN);
    FloorJob job = job(AtDoorways.RUN_THROUGH, Length.parse("8 m"), Length.parse("500 mm")).withRooms(List.of(
        Room.of("One", Wkt.parse("POLYGON ((0 0, 4000 0, 4000 5000, 0 5000, 0 0))")).withDoors(List.of(door)),
        Room.of("Other", Wkt.parse("POLYGON ((4100 0, 8100 0, 8100 5000, 4100 5000, 4100 0))"))));
    assertThat(FloorPlanner.plan(job).findings()).filteredOn(finding -> finding.code().equals("doorway-not-run-through"))
        .singleElement().satisfies(finding -> assertThat(finding.message()).contains("at door D1", "into Other"));
    FloorJob broken = job.withRules(job.rules().with(LayingRules.AT_DOORWAYS, AtDoorways.BREAK, Source.GIVEN));
    assertThat(FloorPlanner.plan(broken).findings()).noneMatch(finding -> finding.code().equals("doorway-not-run-through"));
  }
}
