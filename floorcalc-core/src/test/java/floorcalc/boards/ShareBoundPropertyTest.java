package floorcalc.boards;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.MoreTries;
import floorcalc.measure.Length;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleSet;
import floorcalc.working.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.lifecycle.AddLifecycleHook;

/** Runs laid by chance, with pieces as long as the rules ask, never come from fewer boards than the bound by shares. */
@AddLifecycleHook(MoreTries.class)
class ShareBoundPropertyTest {
  private static final long MM = 1_000_000;

  @Property(tries = 300)
  void noWayMadeByChanceNeedsFewer(@ForAll @Size(min = 1, max = 8) List<@IntRange(min = 200, max = 4500) Integer> spans,
      @ForAll @IntRange(min = 900, max = 2400) int board, @ForAll @IntRange(min = 1, max = 700) int least,
      @ForAll @IntRange(min = 0, max = 5) int kerf, @ForAll Random random) {
    BoardGoods goods = BoardGoods.of(Length.ofMillimetres(board), Length.ofMillimetres(200), Length.ofMillimetres(14), 5);
    LayingRules rules = RuleSet.COMMON_PRACTICE.forBoard(goods.thickness(), goods.coverWidth())
        .with(LayingRules.SAW_KERF, Length.ofMillimetres(kerf), Source.GIVEN)
        .with(LayingRules.MINIMUM_END_PIECE, Length.ofMillimetres(least), Source.GIVEN);
    ShareBound bound = new ShareBound(new Stock(goods, rules));
    spans.forEach(span -> bound.add(span * MM));
    int boards = bound.reach(Integer.MAX_VALUE);
    for (int trial = 0; trial < 40; trial++) {
      List<PieceWanted> pieces = new ArrayList<>();
      boolean kept = true;
      for (int span : spans) {
        kept &= lay(span * MM, board * MM, least * MM, random, pieces);
      }
      if (kept) {
        assertThat(CuttingPlan.of(pieces, goods, rules).boardCount()).as(bound.way()).isGreaterThanOrEqualTo(boards);
      }
    }
  }

  private static boolean lay(long span, long board, long least, Random random, List<PieceWanted> pieces) {
    if (span <= board && random.nextInt(3) > 0) {
      pieces.add(PieceWanted.ofNanometres(0, span, 0, 200 * MM, Ends.NONE));
      return true;
    }
    // Half of the starts are tight: as short or as long as can be.
    long low = least + (random.nextBoolean() ? 0 : (long) (random.nextDouble() * (board - least)));
    long start = Math.min(random.nextInt(4) == 0 ? board : low, span - 1);
    long end = (span - start) % board;
    if (start < least && start < board || end > 0 && end < least) {
      return false;
    }
    pieces.add(PieceWanted.ofNanometres(0, start, 0, 200 * MM, start == board ? Ends.BOTH : Ends.HIGH));
    for (long place = start; place + board <= span; place += board) {
      pieces.add(PieceWanted.ofNanometres(0, board, 0, 200 * MM, Ends.BOTH));
    }
    if (end > 0) {
      pieces.add(PieceWanted.ofNanometres(0, end, 0, 200 * MM, Ends.LOW));
    }
    return true;
  }
}
