package floorcalc.boards;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.MoreTries;
import floorcalc.measure.Length;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleSet;
import floorcalc.working.Source;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.lifecycle.AddLifecycleHook;

/** Rows of several boards each, boards of 1800 mm, kerf 3 mm: moved for fewer cuts at no cost. */
@AddLifecycleHook(MoreTries.class)
class FewerCutsPropertyTest {
  private static final long MM = 1_000_000;
  private static final BoardGoods GOODS =
      BoardGoods.of(Length.ofMillimetres(1800), Length.ofMillimetres(185), Length.ofMillimetres(14), 6);

  @Property(tries = 200)
  void asManyCutsAreSavedAsItSaysAndNothingElseIsWorse(@ForAll @Size(min = 1, max = 20) List<@IntRange(min = 0, max = 400) Integer> lengths,
      @ForAll @IntRange(min = 1801, max = 6000) int least, @ForAll @IntRange(min = 0, max = 450) int offset) {
    List<Run> runs = new ArrayList<>();
    for (int k = 0; k < lengths.size(); k++) {
      long length = (least + lengths.get(k) / 100 * 40L) * MM;
      runs.add(k == 0 ? Run.of(0, 0, length)
          : Run.touching(k, 0, length, List.of(k - 1), List.of(new long[] {0, Math.min(length, runs.get(k - 1).span())})));
    }
    LayingRules rules = RuleSet.COMMON_PRACTICE.forBoard(GOODS.thickness(), GOODS.coverWidth())
        .with(LayingRules.MINIMUM_END_PIECE, Length.ofMillimetres(250), Source.GIVEN)
        .with(LayingRules.MINIMUM_JOINT_OFFSET, Length.ofMillimetres(offset), Source.GIVEN);
    Stock stock = new Stock(GOODS, rules);
    StartMoves moves = new StartMoves(new RunTable(runs, stock), stock, new PieceTally(stock, runs.size()));
    StartSearch search = new StartSearch(moves, 0, runs.size());
    if (!search.place(FirstPlacing.LIGHTEST, 0)) {
      return;
    }
    RunLayout before = layout(runs, stock, moves);
    CuttingPlan cutBefore = cut(runs, before, rules);
    assertThat(cutBefore.boardCount()).isEqualTo(search.boards());

    moves.offset = Math.min(before.smallestOffset(runs, stock), stock.longest());
    int saved = new FewerCuts(moves, search.boards()).save();

    RunLayout after = layout(runs, stock, moves);
    CuttingPlan cutAfter = cut(runs, after, rules);
    assertThat(saved).isNotNegative();
    assertThat(cutAfter.cuts()).isEqualTo(cutBefore.cuts() - saved);
    assertThat(cutAfter.boardCount()).isLessThanOrEqualTo(cutBefore.boardCount());
    assertThat(after.patterns()).isLessThanOrEqualTo(before.patterns());
    assertThat(after.smallestOffset(runs, stock)).isGreaterThanOrEqualTo(before.smallestOffset(runs, stock));
    JointRule rule = new JointRule(runs, stock);
    for (int k = 0; k < runs.size(); k++) {
      assertThat(rule.breaches(k, after.jointsOf(k), after::jointsOf)).isZero();
    }
  }

  private static RunLayout layout(List<Run> runs, Stock stock, StartMoves moves) {
    long[][] joints = new long[runs.size()][];
    for (int k = 0; k < joints.length; k++) {
      joints[k] = Joints.every(runs.get(k), moves.start[k], stock.longest());
    }
    return new RunLayout(runs, stock, joints, 0);
  }

  private static CuttingPlan cut(List<Run> runs, RunLayout layout, LayingRules rules) {
    List<PieceWanted> wanted = new ArrayList<>();
    for (int k = 0; k < runs.size(); k++) {
      long[] joints = layout.jointsOf(k);
      long from = 0;
      for (int i = 0; i <= joints.length; i++) {
        long to = i < joints.length ? joints[i] : runs.get(k).span();
        Ends ends = i == 0 ? Ends.HIGH : i == joints.length ? Ends.LOW : Ends.BOTH;
        wanted.add(PieceWanted.ofNanometres(k, to - from, 0, GOODS.laidPitch().toNanometres(), ends));
        from = to;
      }
    }
    return CuttingPlan.of(wanted, GOODS, rules);
  }
}
