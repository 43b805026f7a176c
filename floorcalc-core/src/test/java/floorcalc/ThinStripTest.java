package floorcalc;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.boards.BoardGoods;
import floorcalc.boards.PackContent;
import floorcalc.measure.Length;
import floorcalc.outline.Wkt;
import floorcalc.plan.DirectionChoice;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.Room;
import floorcalc.rules.LayingRules;
import floorcalc.working.Source;
import java.util.List;
import org.junit.jupiter.api.Test;

class ThinStripTest {
  /**
   * A row line falls a nanometre beside the gap of a column, and two joints lie on that strip: what is between them, 329.166608 mm by a nanometre, is
   * no piece, and no hole either.
   */
  @Test
  void aStripOfANanometreBesideAColumnIsNoHole() {
    BoardGoods boards = BoardGoods.mixed(List.of(new PackContent(Length.parse("1424 mm"), 2), new PackContent(Length.parse("1075.9 mm"), 4),
        new PackContent(Length.parse("678 mm"), 2), new PackContent(Length.parse("329.166608 mm"), 2)), Length.parse("181 mm"), Length.parse("22.4 mm"));
    FloorJob job = FloorJob.of("Column", boards).direction(DirectionChoice.FEWEST_BOARDS)
        .room(Room.of("Room", Wkt.parse("POLYGON ((0 0, 6208 0, 6208 3592, 0 3592, 0 0), (3403.561949 1796, 3403.561949 2380,"
            + " 4089.561949 2380, 4089.561949 1796, 3403.561949 1796))"))).build();
    LayingRules rules = job.rules().with(LayingRules.EXPANSION_GAP, Length.parse("12 mm"), Source.GIVEN)
        .with(LayingRules.WIDEST_VOID, Length.parse("1811.6 mm"), Source.GIVEN);

    FloorPlan plan = FloorPlanner.plan(job.withRules(rules));

    assertThat(plan.bays()).hasSize(1);
    assertThat(FloorPlanner.audit(job.withRules(rules), plan).isClean()).isTrue();
  }
}
