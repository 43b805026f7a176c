package floorcalc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import floorcalc.audit.PlanAudit;
import floorcalc.boards.BoardGoods;
import floorcalc.boards.SearchEffort;
import floorcalc.measure.Length;
import floorcalc.outline.Outline;
import floorcalc.outline.Ring;
import floorcalc.outline.Point;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.Order;
import floorcalc.plan.PlanFigures;
import floorcalc.plan.Room;
import floorcalc.rules.LayingRules;
import floorcalc.working.Source;
import java.util.List;
import java.util.Optional;
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
    assertThat(all).extracting(Alternative::offsetAsked).isSorted().doesNotHaveDuplicates();
    FloorPlan first = FloorPlanner.plan(job);
    assertThat(all).extracting(Alternative::boards).contains(first.order().boardsUsed());
    int packs = all.stream().mapToInt(Alternative::packs).min().orElseThrow();
    for (Alternative one : all) {
      assertThat(all).noneMatch(one::isBeatenBy);
      assertThat(all).filteredOn(one::isMatchedBy).containsExactly(one);
      FloorJob asked = job.withRules(job.rules().with(LayingRules.MINIMUM_JOINT_OFFSET, one.offsetAsked(), Source.GIVEN));
      assertThat(PlanAudit.of(asked, one.plan()).isClean()).isTrue();
      assertThat(one.plan().compromises()).isEmpty();
      assertThat(one.packsMore()).isEqualTo(one.packs() - packs);
      assertThat(one.isNoDearer()).isEqualTo(one.packs() <= packs);
      assertThat(one.figures().smallestOffset().orElseThrow()).isEqualTo(smallestOffset(one.plan()))
          .isGreaterThanOrEqualTo(one.offsetAsked());
      SawnBoards.of(asked, one.plan()).assertSameAs(one.figures());
    }
  }

  /** Boards run along x, so a piece's right edge but the last of its row is a joint; all rows are as long. */
  private static Length smallestOffset(FloorPlan plan) {
    List<List<Long>> rows = plan.bays().get(0).rows().stream().map(row -> row.pieces().stream()
        .map(piece -> piece.outline().corners().stream().mapToLong(corner -> corner.x().toNanometres()).max().getAsLong())
        .sorted().limit(row.pieces().size() - 1L).toList()).toList();
    long least = Long.MAX_VALUE;
    for (int row = 1; row < rows.size(); row++) {
      for (long joint : rows.get(row)) {
        for (long other : rows.get(row - 1)) {
          least = Math.min(least, Math.abs(joint - other));
        }
      }
    }
    return Length.ofNanometres(least);
  }

  /** The plan with other figures: boards, packs, offset and leftover in millimetres. */
  private static Alternative way(FloorPlan plan, int asked, int boards, int packs, int offset, int patterns, int cuts, int leftover) {
    FloorPlan other = new FloorPlan(plan.title(), plan.bays(), plan.boards(), new Order(boards, boards, 0, packs, 6 * packs),
        plan.ledger(), plan.materials(), plan.profiles(), plan.checks(), plan.compromises(), plan.findings(), plan.cautions(),
        plan.working(), Optional.of(new PlanFigures(Optional.of(Length.ofMillimetres(offset)), patterns, 0, cuts,
            Length.ofMillimetres(leftover))), List.of());
    return new Alternative(Length.ofMillimetres(asked), 0, other);
  }

  @Test
  void onlyWhatIsBeatenInAllIsLeftOut() {
    FloorPlan plan = FloorPlanner.plan(room(2000, 500));
    Alternative first = way(plan, 300, 40, 7, 310, 0, 60, 900);
    Alternative aBoardMoreForAWiderOffset = way(plan, 350, 41, 7, 360, 0, 60, 900);
    Alternative fewerCutsOnly = way(plan, 400, 41, 7, 310, 1, 59, 100);
    Alternative longerLeftoverOnly = way(plan, 450, 42, 8, 300, 2, 70, 901);
    Alternative asGoodAsTheFirst = way(plan, 500, 40, 7, 310, 0, 60, 900);
    Alternative onePatternMoreThanTheFirst = way(plan, 550, 40, 7, 310, 1, 60, 900);

    assertThat(Offsets.unbeaten(List.of(first, aBoardMoreForAWiderOffset, fewerCutsOnly, longerLeftoverOnly, asGoodAsTheFirst,
        onePatternMoreThanTheFirst)))
        .containsExactly(first, aBoardMoreForAWiderOffset, fewerCutsOnly, longerLeftoverOnly);
    assertThat(onePatternMoreThanTheFirst.isBeatenBy(first)).isTrue();
    assertThat(asGoodAsTheFirst.isBeatenBy(first)).isFalse();
  }

  @Test
  void aPlanWithoutFiguresIsRefused() {
    FloorPlan plan = FloorPlanner.plan(room(2000, 500));
    FloorPlan byHand = new FloorPlan(plan.title(), plan.bays(), plan.boards(), plan.order(), plan.ledger(), plan.materials(),
        plan.profiles(), plan.checks(), plan.compromises(), plan.findings(), plan.cautions(), plan.working());
    assertThatThrownBy(() -> new Alternative(Length.ofMillimetres(300), 0, byHand))
        .isInstanceOf(IllegalArgumentException.class).hasMessageContaining("has no figures");
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
