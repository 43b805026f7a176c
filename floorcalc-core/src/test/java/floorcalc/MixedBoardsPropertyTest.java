package floorcalc;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.boards.BoardGoods;
import floorcalc.boards.CuttingPlan;
import floorcalc.boards.Ends;
import floorcalc.boards.PackContent;
import floorcalc.boards.PieceWanted;
import floorcalc.boards.Run;
import floorcalc.boards.RunLayout;
import floorcalc.boards.SearchEffort;
import floorcalc.materials.PackOrder;
import floorcalc.measure.Length;
import floorcalc.outline.Direction;
import floorcalc.outline.Wkt;
import floorcalc.plan.DirectionChoice;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.Room;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleSet;
import floorcalc.working.Source;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** Packs of several lengths: fewest packs, among them fewest boards, against every way that the planner had to choose from. */
class MixedBoardsPropertyTest {
  private static final int WIDTH = 185;

  @Property(tries = 60)
  void noWayLookedAtTakesFewerPacksOrAsManyAndFewerBoards(@ForAll @IntRange(min = 1, max = 12) int rows,
      @ForAll @IntRange(min = 600, max = 7000) int length, @ForAll @IntRange(min = 1400, max = 2200) int longest,
      @ForAll @IntRange(min = 600, max = 1300) int shortest, @ForAll @IntRange(min = 1, max = 4) int longPerPack,
      @ForAll @IntRange(min = 0, max = 300) int minimum) {
    BoardGoods goods = BoardGoods.mixed(List.of(new PackContent(mm(longest), longPerPack), new PackContent(mm(shortest), 2)),
        mm(WIDTH), mm(14));
    LayingRules rules = RuleSet.COMMON_PRACTICE.forBoard(goods.thickness(), goods.coverWidth())
        .with(LayingRules.EXPANSION_GAP, mm(10), Source.GIVEN).with(LayingRules.MINIMUM_END_PIECE, mm(minimum), Source.GIVEN)
        .with(LayingRules.MINIMUM_JOINT_OFFSET, mm(minimum), Source.GIVEN);
    Room room = Room.of("Room", Wkt.parse(String.format(java.util.Locale.ROOT, "POLYGON ((0 0, %1$d 0, %1$d %2$d, 0 %2$d, 0 0))",
        length + 20, rows * WIDTH + 20)));
    FloorPlan plan = FloorPlanner.plan(FloorJob.of("Equal rows", goods).rules(rules)
        .direction(DirectionChoice.of(Direction.ALONG_X)).room(room).build());
    assertThat(plan.order().packsAtLeast()).isBetween(1, plan.order().packs());

    List<Run> runs = Run.equalRows(rows, mm(length));
    List<RunLayout> ways = new ArrayList<>(RunLayout.proposals(runs, goods, rules, SearchEffort.FULL));
    ways.add(RunLayout.habit(runs, goods, rules));
    for (RunLayout way : ways) {
      long breaches = plan.compromises().stream().filter(c -> !c.because().startsWith("the run is")).count();
      assertThat(breaches).isLessThanOrEqualTo(way.breaches());
      if (breaches == way.breaches()) {
        PackOrder other = order(goods, rules, CuttingPlan.of(pieces(runs, way, goods), goods, rules));
        assertThat(plan.order().packs()).isLessThanOrEqualTo(other.packs());
        if (plan.order().packs() == other.packs()) {
          assertThat(plan.order().boardsUsed()).isLessThanOrEqualTo(other.boardsUsed());
        }
      }
    }
  }

  private static PackOrder order(BoardGoods goods, LayingRules rules, CuttingPlan cutting) {
    Map<Length, Integer> used = new LinkedHashMap<>();
    for (int i = 0; i < goods.lengths().size(); i++) {
      used.put(goods.lengths().get(i), cutting.boardsPerLength()[i]);
    }
    return PackOrder.of(goods, used, rules.get(LayingRules.SPARE_SHARE)).value();
  }

  private static List<PieceWanted> pieces(List<Run> runs, RunLayout layout, BoardGoods goods) {
    List<PieceWanted> pieces = new ArrayList<>();
    for (int i = 0; i < runs.size(); i++) {
      long[] joints = layout.jointsOf(i);
      long from = runs.get(i).from();
      for (int k = 0; k <= joints.length; k++) {
        long to = k < joints.length ? joints[k] : runs.get(i).to();
        Ends ends = joints.length == 0 ? Ends.NONE : k == 0 ? Ends.HIGH : k == joints.length ? Ends.LOW : Ends.BOTH;
        pieces.add(PieceWanted.of(i, Length.ofNanometres(to - from), Length.ZERO, goods.laidPitch(), ends));
        from = to;
      }
    }
    return pieces;
  }

  private static Length mm(long millimetres) {
    return Length.ofMillimetres(millimetres);
  }
}
