package floorcalc;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.audit.PlanAudit;
import floorcalc.boards.BoardGoods;
import floorcalc.boards.SearchEffort;
import floorcalc.measure.Length;
import floorcalc.outline.Outline;
import floorcalc.outline.Ring;
import floorcalc.outline.Point;
import floorcalc.plan.FloorJob;
import floorcalc.plan.Room;
import floorcalc.rules.LayingRules;
import floorcalc.working.Source;
import java.util.List;
import org.junit.jupiter.api.Test;

class AlternativesTest {
  private static final BoardGoods PLANK = BoardGoods.of(Length.ofMillimetres(2200), Length.ofMillimetres(185),
      Length.ofMillimetres(14), 6);

  private static FloorJob room(long width, long depth) {
    return FloorJob.of("Test", PLANK).room(Room.of("Room", Outline.of(Ring.of(Point.ofMillimetres(0, 0),
        Point.ofMillimetres(width, 0), Point.ofMillimetres(width, depth), Point.ofMillimetres(0, depth))))).build();
  }

  @Test
  void widerOffsetsGoUpToHalfABoardInSevenStepsAtMost() {
    // From 300 to 1100 there are 800; a seventh is 114.3, so steps of 150: the first whole 50 beyond 300, then on.
    assertThat(Offsets.wider(Length.ofMillimetres(300), Length.ofMillimetres(2200)))
        .extracting(Length::toMillimetres).containsExactly(350.0, 500.0, 650.0, 800.0, 950.0, 1100.0);
    // 300 is half of 600 already.
    assertThat(Offsets.wider(Length.ofMillimetres(300), Length.ofMillimetres(600))).isEmpty();
  }

  @Test
  void noneIsBeatenAndEachKeepsToItsOffset() {
    FloorJob job = room(5200, 3000);
    List<Alternative> all = FloorPlanner.alternatives(job);
    assertThat(all).isNotEmpty();
    assertThat(all).extracting(Alternative::jointOffset).isSorted().doesNotHaveDuplicates();
    for (Alternative one : all) {
      assertThat(all).noneMatch(one::isBeatenBy);
      FloorJob asked = job.withRules(job.rules().with(LayingRules.MINIMUM_JOINT_OFFSET, one.jointOffset(), Source.GIVEN));
      assertThat(PlanAudit.of(asked, one.plan()).isClean()).isTrue();
      assertThat(one.plan().compromises()).isEmpty();
      long pieces = one.plan().bays().stream().flatMap(bay -> bay.rows().stream()).mapToLong(row -> row.pieces().size()).sum();
      assertThat((long) one.cutPieces()).isLessThanOrEqualTo(pieces);
    }
    assertThat(all).extracting(Alternative::boards).contains(FloorPlanner.plan(job).order().boardsUsed());
  }

  @Test
  void quickEffortKeepsTheRulesAndClaimsNoMoreThanItKnows() {
    FloorJob job = room(4210, 3620);
    var quick = FloorPlanner.plan(job.withEffort(SearchEffort.QUICK)).order();
    var full = FloorPlanner.plan(job).order();
    assertThat(quick.boardsUsed()).isGreaterThanOrEqualTo(full.boardsUsed());
    assertThat(quick.boardsAtLeast()).isLessThanOrEqualTo(full.boardsAtLeast());
    assertThat(full.provenFewest()).isTrue();
  }
}
