package floorcalc;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.boards.BoardGoods;
import floorcalc.boards.SearchEffort;
import floorcalc.measure.Length;
import floorcalc.outline.Direction;
import floorcalc.outline.Outline;
import floorcalc.outline.Ring;
import floorcalc.plan.Bay;
import floorcalc.plan.DirectionChoice;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.Room;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleSet;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.lifecycle.AddLifecycleHook;

/**
 * Whatever the size of a room, its bays are so long and so wide that their movement fits their gaps. By NF DTU 51.11 clause 8.2 a floor
 * asks for a gap of 0.15 % of its largest dimension; the rules of that set leave the gap of the largest bay that they allow.
 */
@AddLifecycleHook(MoreTries.class)
class BayMovementPropertyTest {
  private static final BoardGoods BOARDS =
      BoardGoods.of(Length.parse("2.2 m"), Length.parse("185 mm"), Length.parse("14 mm"), 6);
  private static final LayingRules RULES = RuleSet.NF_DTU_51_11.forBoard(BOARDS.thickness(), BOARDS.coverWidth());

  @Property(tries = 25)
  void theMovementOfEveryBayFitsItsGaps(@ForAll @IntRange(min = 3000, max = 32_000) int width,
      @ForAll @IntRange(min = 2000, max = 20_000) int depth, @ForAll @IntRange(max = 3) int quarters,
      @ForAll @IntRange(max = 80) int notchWide, @ForAll @IntRange(max = 80) int notchDeep) {
    int x = width - width * notchWide / 100;
    int y = depth - depth * notchDeep / 100;
    Ring shell = notchWide == 0 || notchDeep == 0 ? ring(0, 0, width, 0, width, depth, 0, depth)
        : ring(0, 0, width, 0, width, y, x, y, x, depth, 0, depth);
    FloorPlan plan = FloorPlanner.plan(FloorJob.of("Any size", BOARDS).rules(RULES).effort(SearchEffort.QUICK)
        .direction(DirectionChoice.of(Direction.ALONG_X.plusQuarterTurns(quarters))).room(Room.of("Room", Outline.of(shell)))
        .build());
    double gap = RULES.value(LayingRules.EXPANSION_GAP).toMillimetres();
    for (Bay bay : plan.bays()) {
      double largest = Math.max(bay.laid().extent().width().toMillimetres(), bay.laid().extent().height().toMillimetres());
      assertThat(0.0015 * largest).as(bay.bay()).isLessThanOrEqualTo(gap);
    }
    assertThat(plan.breaks()).allMatch(line -> line.gap().toMillimetres() == 2 * gap);
  }

  private static Ring ring(long... millimetres) {
    long[] xs = new long[millimetres.length / 2];
    long[] ys = new long[xs.length];
    for (int i = 0; i < xs.length; i++) {
      xs[i] = millimetres[2 * i] * 1_000_000;
      ys[i] = millimetres[2 * i + 1] * 1_000_000;
    }
    return Ring.ofNanometres(xs, ys);
  }
}
