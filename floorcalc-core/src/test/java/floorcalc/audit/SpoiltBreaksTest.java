package floorcalc.audit;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.FloorPlanner;
import floorcalc.bays.ExpansionBreak;
import floorcalc.boards.BoardGoods;
import floorcalc.measure.Length;
import floorcalc.outline.Outline;
import floorcalc.outline.Point;
import floorcalc.outline.Wkt;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.Room;
import floorcalc.plan.RoomBreak;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleSet;
import floorcalc.working.Finding;
import floorcalc.working.Source;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** A plan of an L with a break at its inner corner, and what is wrong when the break is not where or what it should be. */
class SpoiltBreaksTest {
  private static final BoardGoods BOARDS =
      BoardGoods.of(Length.parse("2.2 m"), Length.parse("185 mm"), Length.parse("14 mm"), 6);
  private static final Outline L = Wkt.parse("POLYGON ((0 0, 4000 0, 4000 2000, 2000 2000, 2000 3000, 0 3000, 0 0))");
  private static final ExpansionBreak AT_THE_CORNER = given(2000, 2000, 0, 2000);

  private static ExpansionBreak given(long x, long y, long tox, long toy) {
    return ExpansionBreak.given(Point.ofMillimetres(x, y), Point.ofMillimetres(tox, toy));
  }

  private static FloorJob job(int breakGap, ExpansionBreak... breaks) {
    LayingRules rules = RuleSet.COMMON_PRACTICE.forBoard(BOARDS.thickness(), BOARDS.coverWidth())
        .with(LayingRules.BREAK_GAP, Length.ofMillimetres(breakGap), Source.GIVEN);
    return FloorJob.of("L", BOARDS).rules(rules).room(Room.of("Room", L).withBreaks(List.of(breaks))).build();
  }

  private static Set<String> codes(FloorPlan plan, RoomBreak... breaks) {
    return PlanAudit.of(job(0, breaks.length == 0 ? new ExpansionBreak[0] : new ExpansionBreak[] {breaks[0].line()}),
        plan.withBreaks(List.of(breaks))).breaches().stream().map(Finding::code)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static RoomBreak in(String room, ExpansionBreak line, int gap) {
    return new RoomBreak(room, line, Length.ofMillimetres(gap));
  }

  @Test
  void whatIsWrongWithABreakIsFound() {
    FloorPlan plan = FloorPlanner.plan(job(0, AT_THE_CORNER));
    assertThat(plan.bays()).hasSize(2);
    assertThat(codes(plan, in("Room", AT_THE_CORNER, 20))).isEmpty();
    assertThat(codes(plan)).as("forgotten").containsExactly("laid-astray", "laid-missing");
    assertThat(codes(plan, in("Room", AT_THE_CORNER, 19))).as("narrower")
        .containsExactly("break-gap", "laid-astray", "laid-missing");
    assertThat(codes(plan, in("Room", AT_THE_CORNER, 21))).as("wider")
        .containsExactly("break-gap", "laid-astray", "laid-missing", "laid-too-near");
    assertThat(codes(plan, in("Room", given(2000, 2001, 0, 2001), 20))).as("a millimetre off")
        .containsExactly("laid-astray", "laid-missing", "laid-too-near");
    assertThat(codes(plan, in("Hall", AT_THE_CORNER, 20))).as("in another room")
        .containsExactly("breaks-given", "laid-astray", "laid-missing", "room-unknown");
  }

  @Test
  void aBreakMayBeNarrowerOrWiderThanTwoGaps() {
    for (int gap : new int[] {7, 12, 20, 30, 60}) {
      FloorJob job = job(gap, AT_THE_CORNER);
      FloorPlan plan = FloorPlanner.plan(job);
      assertThat(plan.bays()).hasSize(2);
      assertThat(plan.breaks()).containsExactly(in("Room", AT_THE_CORNER, gap));
    }
  }
}
