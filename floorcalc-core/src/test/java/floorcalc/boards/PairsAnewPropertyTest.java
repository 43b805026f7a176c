package floorcalc.boards;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.MoreTries;
import floorcalc.measure.Length;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleSet;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.lifecycle.AddLifecycleHook;

/** End and start pieces from boards of 2000 mm, kerf 3 mm, against all ways to pair them. */
@AddLifecycleHook(MoreTries.class)
class PairsAnewPropertyTest {
  private static final long MM = 1_000_000;
  private static final BoardGoods GOODS =
      BoardGoods.of(Length.ofMillimetres(2000), Length.ofMillimetres(200), Length.ofMillimetres(14), 5);
  private static final LayingRules RULES = RuleSet.COMMON_PRACTICE.forBoard(GOODS.thickness(), GOODS.coverWidth());

  /** Lengths by the hundred or what is left beside them, so that many pairs fill their board. */
  @Provide
  Arbitrary<List<PieceWanted>> pieces() {
    Arbitrary<Long> lengths = Arbitraries.oneOf(Arbitraries.longs().between(2, 19).map(n -> 100 * n),
        Arbitraries.longs().between(2, 17).map(n -> 1997 - 100 * n), Arbitraries.longs().between(100, 1999));
    return Combinators.combine(lengths, Arbitraries.of(Ends.LOW, Ends.HIGH)).as((length, ends) ->
        PieceWanted.ofNanometres(0, length * MM, 0, 200 * MM, ends)).list().ofMinSize(1).ofMaxSize(8);
  }

  /** Boards, cuts and the longest leftover, the better the smaller. */
  private record Found(int boards, int cuts, long leftover) implements Comparable<Found> {
    static Found of(CuttingPlan plan) {
      return new Found(plan.boardCount(), plan.cuts(), plan.longestLeftover().toNanometres());
    }

    @Override
    public int compareTo(Found other) {
      int order = Integer.compare(boards, other.boards);
      order = order == 0 ? Integer.compare(cuts, other.cuts) : order;
      return order == 0 ? Long.compare(other.leftover, leftover) : order;
    }
  }

  @Property(tries = 500)
  void asGoodAsTheBestOfAllPairings(@ForAll("pieces") List<PieceWanted> pieces) {
    List<Long> ends = lengths(pieces, Ends.LOW);
    List<Long> starts = lengths(pieces, Ends.HIGH);
    assertThat(Found.of(CuttingPlan.of(pieces, GOODS, RULES))).isEqualTo(best(ends, starts, 0, new Found(0, 0, 0)));
  }

  private static List<Long> lengths(List<PieceWanted> pieces, Ends ends) {
    List<Long> lengths = new ArrayList<>();
    pieces.stream().filter(piece -> piece.ends() == ends).forEach(piece -> lengths.add(piece.span()));
    return lengths;
  }

  /** Gives each end piece no partner or any that fits; starts that are left have a board each. */
  private static Found best(List<Long> ends, List<Long> starts, int next, Found so) {
    if (next == ends.size()) {
      Found found = so;
      for (long start : starts) {
        found = alone(found, start);
      }
      return found;
    }
    long end = ends.get(next);
    Found best = best(ends, starts, next + 1, alone(so, end));
    for (int i = 0; i < starts.size(); i++) {
      long over = 2000 * MM - end - starts.get(i) - 3 * MM;
      if (over >= 0) {
        List<Long> others = new ArrayList<>(starts);
        others.remove(i);
        Found other = best(ends, others, next + 1, new Found(so.boards + 1, so.cuts + (over == 0 ? 1 : 2),
            Math.max(so.leftover, over - 3 * MM)));
        best = other.compareTo(best) < 0 ? other : best;
      }
    }
    return best;
  }

  private static Found alone(Found so, long length) {
    return new Found(so.boards + 1, so.cuts + 1, Math.max(so.leftover, 2000 * MM - length - 3 * MM));
  }

  /** Single pieces, whole boards and strips among them: the boards they come from stay as they are, and all is well cut. */
  @Property(tries = 300)
  void neverWorseAndTheOtherBoardsAreAsBefore(@ForAll("pieces") List<PieceWanted> pieces, @ForAll("others") List<PieceWanted> others) {
    List<PieceWanted> all = new ArrayList<>(pieces);
    for (int i = 0; i < others.size(); i++) {
      all.add((i * 3) % (all.size() + 1), others.get(i));
    }
    CuttingPlan before = CuttingPlan.fewestBoards(all, GOODS, RULES);
    CuttingPlan after = CuttingPlan.of(all, GOODS, RULES);
    assertThat(Found.of(after)).isLessThanOrEqualTo(Found.of(before));
    for (int i = 0; i < all.size(); i++) {
      if (!isEndOrStart(all.get(i))) {
        assertThat(after.placement(i).alongFrom()).isEqualTo(before.placement(i).alongFrom());
        assertThat(sharing(after, i)).isEqualTo(sharing(before, i));
      }
    }
  }

  @Provide
  Arbitrary<List<PieceWanted>> others() {
    return Combinators.combine(Arbitraries.longs().between(100, 1990), Arbitraries.of(Ends.values()),
        Arbitraries.of(new long[] {0, 200}, new long[] {0, 80}, new long[] {120, 200}))
        .as((length, ends, place) -> PieceWanted.ofNanometres(0, (ends == Ends.BOTH ? 2000 : length) * MM, place[0] * MM,
            place[1] * MM, ends)).list().ofMaxSize(8);
  }

  private static boolean isEndOrStart(PieceWanted piece) {
    return piece.high() - piece.low() == 200 * MM && (piece.ends() == Ends.LOW || piece.ends() == Ends.HIGH);
  }

  private static List<Integer> sharing(CuttingPlan plan, int piece) {
    List<Integer> sharing = new ArrayList<>();
    for (int i = 0; i < plan.pieces().size(); i++) {
      if (plan.placement(i).board() == plan.placement(piece).board()) {
        sharing.add(i);
      }
    }
    return sharing;
  }
}
