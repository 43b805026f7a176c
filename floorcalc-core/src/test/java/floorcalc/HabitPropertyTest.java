package floorcalc;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.boards.BoardGoods;
import floorcalc.boards.CuttingPlan;
import floorcalc.boards.Ends;
import floorcalc.boards.PieceWanted;
import floorcalc.boards.Run;
import floorcalc.boards.RunLayout;
import floorcalc.measure.Length;
import floorcalc.outline.Direction;
import floorcalc.outline.Outline;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import floorcalc.plan.DirectionChoice;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.Room;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleSet;
import floorcalc.working.Source;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** A plan breaks no more rules and, where it breaks as many, opens no more boards than the habit laid and cut likewise. */
class HabitPropertyTest {
  private static final int WIDTH = 185;
  private static final Length GAP = Length.ofMillimetres(10);

  @Property(tries = 150)
  void neverWorseThanTheHabit(@ForAll @IntRange(min = 1, max = 14) int rows,
      @ForAll @IntRange(min = 250, max = 9000) int length, @ForAll @IntRange(min = 600, max = 2400) int board,
      @ForAll @IntRange(min = 0, max = 500) int minimum) {
    BoardGoods goods = BoardGoods.of(mm(board), mm(WIDTH), mm(14), 6);
    LayingRules rules = RuleSet.COMMON_PRACTICE.forBoard(goods.thickness(), goods.coverWidth())
        .with(LayingRules.EXPANSION_GAP, GAP, Source.GIVEN)
        .with(LayingRules.MINIMUM_END_PIECE, mm(minimum), Source.GIVEN)
        .with(LayingRules.MINIMUM_JOINT_OFFSET, mm(minimum), Source.GIVEN);
    List<Run> runs = Run.equalRows(rows, mm(length));
    RunLayout habit = RunLayout.habit(runs, goods, rules);
    List<PieceWanted> wanted = pieces(runs, habit, goods);

    FloorPlan plan = FloorPlanner.plan(FloorJob.of("Equal rows", goods).rules(rules)
        .direction(DirectionChoice.of(Direction.ALONG_X)).room(Room.of("Room", box(length + 20, rows * WIDTH + 20))).build());

    long breaches = plan.compromises().stream().filter(c -> !c.because().startsWith("the run is")).count();
    assertThat(breaches).isLessThanOrEqualTo(habit.breaches());
    if (breaches == habit.breaches()) {
      assertThat(plan.order().boardsUsed()).isLessThanOrEqualTo(CuttingPlan.of(wanted, goods, rules).boardCount());
    }
    assertThat(plan.order().boardsAtLeast()).isLessThanOrEqualTo(plan.order().boardsUsed());
  }

  private static List<PieceWanted> pieces(List<Run> runs, RunLayout layout, BoardGoods goods) {
    List<PieceWanted> pieces = new ArrayList<>();
    for (int i = 0; i < runs.size(); i++) {
      Run run = runs.get(i);
      long[] joints = layout.jointsOf(i);
      long from = run.from();
      for (int k = 0; k <= joints.length; k++) {
        long to = k < joints.length ? joints[k] : run.to();
        Ends ends = joints.length == 0 ? Ends.NONE : k == 0 ? Ends.HIGH : k == joints.length ? Ends.LOW : Ends.BOTH;
        pieces.add(PieceWanted.of(i, Length.ofNanometres(to - from), Length.ZERO, goods.laidPitch(), ends));
        from = to;
      }
    }
    return pieces;
  }

  private static Outline box(long width, long height) {
    return Outline.of(Ring.of(List.of(Point.ofMillimetres(0, 0), Point.ofMillimetres(width, 0),
        Point.ofMillimetres(width, height), Point.ofMillimetres(0, height))));
  }

  private static Length mm(long millimetres) {
    return Length.ofMillimetres(millimetres);
  }
}
