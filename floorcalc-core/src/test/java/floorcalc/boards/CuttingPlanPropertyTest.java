package floorcalc.boards;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.MoreTries;
import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleSet;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.lifecycle.AddLifecycleHook;

/** Any pieces, boards of 2000 by 200 mm, kerf 3 mm: cut rightly, and from few boards. */
@AddLifecycleHook(MoreTries.class)
class CuttingPlanPropertyTest {
  private static final long MM = 1_000_000;
  private static final BoardGoods GOODS =
      BoardGoods.of(Length.ofMillimetres(2000), Length.ofMillimetres(200), Length.ofMillimetres(14), 5);
  private static final LayingRules RULES = RuleSet.COMMON_PRACTICE.forBoard(GOODS.thickness(), GOODS.coverWidth());
  private static final Stock STOCK = new Stock(GOODS, RULES);

  /** Pieces of full width, strips of a first row, of a last row, and others. */
  @Provide
  Arbitrary<List<PieceWanted>> pieces() {
    Arbitrary<long[]> across = Arbitraries.frequencyOf(
        net.jqwik.api.Tuple.of(4, Arbitraries.just(new long[] {0, 200})),
        net.jqwik.api.Tuple.of(2, Arbitraries.longs().between(40, 190).map(to -> new long[] {0, to})),
        net.jqwik.api.Tuple.of(2, Arbitraries.longs().between(10, 160).map(from -> new long[] {from, 200})),
        net.jqwik.api.Tuple.of(1, Arbitraries.longs().between(10, 90).map(from -> new long[] {from, 200 - from})));
    return Combinators.combine(Arbitraries.longs().between(100, 2000), across, Arbitraries.of(Ends.values()))
        .as((length, place, ends) -> PieceWanted.ofNanometres(0, (ends == Ends.BOTH ? 2000 : length) * MM, place[0] * MM,
            place[1] * MM, ends)).list().ofMinSize(1).ofMaxSize(40);
  }

  @Provide
  Arbitrary<List<PieceWanted>> fewOfFullWidth() {
    return Combinators.combine(Arbitraries.longs().between(200, 1999), Arbitraries.of(Ends.NONE, Ends.NONE, Ends.LOW, Ends.HIGH))
        .as((length, ends) -> PieceWanted.ofNanometres(0, length * MM, 0, 200 * MM, ends)).list().ofMinSize(1).ofMaxSize(7);
  }

  @Property(tries = 300)
  void piecesLieInTheirBoardsAKerfApartAndNothingIsLost(@ForAll("pieces") List<PieceWanted> pieces) {
    CuttingPlan plan = CuttingPlan.of(pieces, GOODS, RULES);
    BigInteger cut = BigInteger.ZERO;
    for (int i = 0; i < pieces.size(); i++) {
      PieceWanted piece = pieces.get(i);
      Placement at = plan.placement(i);
      assertThat(at.alongTo().minus(at.alongFrom())).isEqualTo(piece.length());
      assertThat(at.acrossFrom().toNanometres()).isEqualTo(piece.low());
      assertThat(at.acrossTo().toNanometres()).isEqualTo(piece.high());
      assertThat(!piece.ends().low() || at.alongFrom().isZero()).isTrue();
      assertThat(!piece.ends().high() || at.alongTo().toNanometres() == 2000 * MM).isTrue();
      assertThat(plan.openedFor(at.board())).isLessThanOrEqualTo(i);
      for (int k = 0; k < i; k++) {
        assertThat(plan.placement(k).board() != at.board() || apart(plan.placement(k), at)).isTrue();
      }
      cut = cut.add(BigInteger.valueOf(piece.span()).multiply(BigInteger.valueOf(piece.high() - piece.low())));
    }
    Area left = plan.offcuts().stream().map(Offcut::area).reduce(Area.ZERO, Area::plus);
    assertThat(Area.ofSquareNanometres(cut).plus(plan.sawKerf()).plus(left))
        .isEqualTo(Area.ofSquareMillimetres(2000L * 200 * plan.boardCount()));
  }

  private static boolean apart(Placement a, Placement b) {
    long along = Math.max(a.alongFrom().toNanometres() - b.alongTo().toNanometres(),
        b.alongFrom().toNanometres() - a.alongTo().toNanometres());
    long across = Math.max(a.acrossFrom().toNanometres() - b.acrossTo().toNanometres(),
        b.acrossFrom().toNanometres() - a.acrossTo().toNanometres());
    return Math.max(along, across) >= 3 * MM;
  }

  @Property(tries = 300)
  void neverMoreBoardsThanTheShortestOffcutFirst(@ForAll("pieces") List<PieceWanted> pieces) {
    assertThat(CuttingPlan.of(pieces, GOODS, RULES).boardCount())
        .isLessThanOrEqualTo(CuttingPlan.shortestOffcutFirst(pieces, STOCK).boardCount())
        .isGreaterThanOrEqualTo(PiecesBound.of(pieces, STOCK));
  }

  /** All ways to share boards looked through. */
  @Property(tries = 300)
  void fewPiecesTakeAsFewBoardsAsCanBe(@ForAll("fewOfFullWidth") List<PieceWanted> pieces) {
    assertThat(CuttingPlan.of(pieces, GOODS, RULES).boardCount()).isEqualTo(fewest(pieces, 0, new ArrayList<>(), pieces.size()));
  }

  private static int fewest(List<PieceWanted> pieces, int next, List<long[]> boards, int best) {
    if (boards.size() >= best) {
      return best;
    }
    if (next == pieces.size()) {
      return boards.size();
    }
    PieceWanted piece = pieces.get(next);
    int found = best;
    for (int b = 0; b <= boards.size(); b++) {
      boolean fresh = b == boards.size();
      if (fresh) {
        boards.add(new long[] {2003 * MM, 0, 0});
      }
      long[] board = boards.get(b);
      int end = piece.ends() == Ends.LOW ? 1 : 2;
      boolean needs = piece.ends() != Ends.NONE;
      if (board[0] >= piece.span() + 3 * MM && !(needs && board[end] > 0)) {
        board[0] -= piece.span() + 3 * MM;
        board[end] += needs ? 1 : 0;
        found = Math.min(found, fewest(pieces, next + 1, boards, found));
        board[0] += piece.span() + 3 * MM;
        board[end] -= needs ? 1 : 0;
      }
      if (fresh) {
        boards.remove(b);
      }
    }
    return found;
  }
}
