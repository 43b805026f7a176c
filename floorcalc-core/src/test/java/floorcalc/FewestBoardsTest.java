package floorcalc;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.boards.BoardGoods;
import floorcalc.measure.Length;
import floorcalc.outline.Direction;
import floorcalc.outline.Wkt;
import floorcalc.plan.DirectionChoice;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorJobBuilder;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.Room;
import floorcalc.plan.Row;
import floorcalc.rows.RowWay;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleSet;
import floorcalc.working.Source;
import floorcalc.working.Step;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Where the rows begin, chosen for fewest boards. Boards of 2000 by 200 mm, no gap, kerf 3 mm, rows at least 70 mm; the room is 5 m long
 * and 2 m wide but for a bay of 1 m by 100 mm at the starting wall.
 * <pre>
 *       +-----------------------------+  2100
 *       |                             |
 *       |      +----------------------+  100
 *       +------+                         0
 *       0    1000                   5000
 * </pre>
 * A full first row leaves 1900 mm: 9 rows and 100 mm. That is 11 rows of 5 m, and the two strips of 100 mm do not fit beside a
 * kerf in 200 mm: 55 m, 28 boards at least. A first row of 100 mm lies in the bay alone, and 10 rows of 5 m follow: with the
 * piece of 1 m 51 m, 26 boards.
 */
class FewestBoardsTest {
  private static final BoardGoods GOODS =
      BoardGoods.of(Length.parse("2 m"), Length.parse("200 mm"), Length.parse("14 mm"), 6);
  private static final Room ROOM = Room.of("Workroom",
      Wkt.parse("POLYGON ((0 0, 1000 0, 1000 100, 5000 100, 5000 2100, 0 2100, 0 0))"));
  private static final LayingRules RULES = RuleSet.COMMON_PRACTICE.forBoard(GOODS.thickness(), GOODS.coverWidth())
      .with(LayingRules.EXPANSION_GAP, Length.ZERO, Source.GIVEN);

  private static FloorJobBuilder job() {
    return FloorJob.of("Invented floor", GOODS).rules(RULES).room(ROOM);
  }

  private static FloorJobBuilder alongX() {
    return job().direction(DirectionChoice.of(Direction.ALONG_X));
  }

  private static List<String> rows(FloorPlan plan) {
    return plan.bays().get(0).rows().stream().map(Row::coverWidth).map(Length::toString).toList();
  }

  @Test
  void aFullFirstRowTakesElevenRows() {
    FloorPlan plan = FloorPlanner.plan(alongX().build());
    assertThat(rows(plan)).hasSize(11).startsWith("200 mm").endsWith("100 mm");
    assertThat(plan.order().boardsUsed()).isGreaterThanOrEqualTo(28);
  }

  @Test
  void aFirstRowInTheBayAloneSavesARow() {
    FloorPlan plan = FloorPlanner.plan(alongX().rowWay(RowWay.FEWEST_BOARDS).build());
    assertThat(rows(plan)).hasSize(11).startsWith("100 mm", "200 mm").endsWith("200 mm");
    assertThat(plan.order().boardsUsed()).isEqualTo(26);
    assertThat(plan.order().provenFewest()).isTrue();
    assertThat(plan.compromises()).isEmpty();
  }

  @Test
  void directionForFewestBoardsChoosesTheRowsToo() {
    FloorPlan plan = FloorPlanner.plan(job().direction(DirectionChoice.FEWEST_BOARDS).build());
    assertThat(plan.order().boardsUsed()).isLessThanOrEqualTo(26);
  }

  @Test
  void anotherWayIsKept() {
    FloorPlan plan = FloorPlanner.plan(job().direction(DirectionChoice.FEWEST_BOARDS).rowWay(RowWay.LEAST_CUT).build());
    Direction direction = plan.bays().get(0).direction();
    FloorPlan same = FloorPlanner.plan(job().direction(DirectionChoice.of(direction)).rowWay(RowWay.LEAST_CUT).build());
    assertThat(rows(plan)).isEqualTo(rows(same));
  }

  @Test
  void sayWhatWasCompared() {
    FloorPlan plan = FloorPlanner.plan(alongX().rowWay(RowWay.FEWEST_BOARDS).build());
    Step step = plan.working().stream().flatMap(part -> part.steps().stream())
        .filter(one -> one.id().equals("rows-compared")).findFirst().orElseThrow();
    assertThat(step.question()).contains("first row of 100 mm");
    assertThat(step.result()).isEqualTo(26);
    assertThat(step.terms()).anySatisfy(term -> {
      assertThat(term.meaning()).contains("first row of 200 mm").contains("by the search that was asked for");
      assertThat((Integer) term.value()).isGreaterThanOrEqualTo(28);
    });
  }

  /** 1900 mm is 9 rows and 100: a full first row and one of 150 mm take ten rows alike; 150 mm is the wider narrowest strip. */
  @Test
  void asManyBoardsButAWiderStrip() {
    Room plain = Room.of("Plain", Wkt.parse("POLYGON ((0 0, 5000 0, 5000 1900, 0 1900, 0 0))"));
    FloorPlan plan = FloorPlanner.plan(FloorJob.of("Invented floor", GOODS).rules(RULES).room(plain)
        .direction(DirectionChoice.of(Direction.ALONG_X)).rowWay(RowWay.FEWEST_BOARDS).build());
    assertThat(rows(plan)).hasSize(10).startsWith("150 mm").endsWith("150 mm");
  }
}
