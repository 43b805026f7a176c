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
import floorcalc.working.Finding;
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
}
