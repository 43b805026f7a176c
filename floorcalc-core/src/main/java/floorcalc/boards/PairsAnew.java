package floorcalc.boards;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntPredicate;

/**
 * Pairs end pieces and start pieces anew: of all ways to take the same pieces from as few boards, one with the fewest cuts, and
 * of these one with the longest leftover.
 * <p>
 * Boards of which only an end piece, only a start piece or one of each is cut, all of full width, are paired anew; other
 * boards stay as they are. A pair that fills its board but for one kerf needs one cut, any other two, a piece without a partner
 * one. A shorter piece fits wherever a longer one does, so:
 * <ul>
 * <li>There is a way with the most pairs that has all filling pairs there can be: exchange partners, and nothing is longer
 * than before.</li>
 * <li>If a piece can do without a partner in such a way, so can each longer one of its sort: the shortest is found by
 * halving. It leaves the longest offcut.</li>
 * <li>If an end and a start piece can share a board, so can longer ones that fit. The shortest two are found in one walk.</li>
 * </ul>
 */
final class PairsAnew {
  /** So many times the pairs are counted, at most, to find the two pieces that leave most between them. */
  private static final int MOST_COUNTS = 300;

  private final Stock stock;
  private final List<PieceWanted> pieces;
  /** Whether a board is paired anew. */
  private final boolean[] plain;
  private final PairSet ends;
  private final PairSet starts;
  private final long fitting;
  /** For each piece its partner, -1 if it has none or keeps its board. */
  private final int[] partners;
  private long leftElsewhere;
  private int pairsBefore;
  private int fillingBefore;
  private long leftBefore;

  private PairsAnew(CuttingPlan plan, Stock stock) {
    this.stock = stock;
    this.pieces = plan.pieces();
    this.fitting = stock.longest() - stock.kerf;
    int count = pieces.size();
    long[] taken = new long[plan.boardCount()];
    int[] on = new int[taken.length];
    plain = new boolean[taken.length];
    Arrays.fill(plain, true);
    for (int i = 0; i < count; i++) {
      PieceWanted piece = pieces.get(i);
      int board = plan.boardOf(i);
      taken[board] += piece.span();
      on[board]++;
      plain[board] &= piece.low() == 0 && piece.high() == stock.width && piece.span() <= fitting
          && (piece.ends() == Ends.LOW || piece.ends() == Ends.HIGH);
    }
    for (int board = 0; board < taken.length; board++) {
      if (plain[board]) {
        boolean pair = on[board] == 2;
        pairsBefore += pair ? 1 : 0;
        fillingBefore += pair && taken[board] == fitting ? 1 : 0;
        leftBefore = Math.max(leftBefore, stock.longest() - taken[board] - on[board] * stock.kerf);
      }
    }
    for (Offcut offcut : plan.offcuts()) {
      if (!plain[offcut.board()] && offcut.acrossTo - offcut.acrossFrom == stock.width) {
        leftElsewhere = Math.max(leftElsewhere, offcut.span());
      }
    }
    ends = PairSet.of(plan, plain, Ends.LOW);
    starts = PairSet.of(plan, plain, Ends.HIGH);
    partners = new int[count];
    Arrays.fill(partners, -1);
  }

  /** The same pieces from no more boards, with fewer cuts or as many and a longer leftover, where there is such a way. */
  static CuttingPlan of(CuttingPlan plan, Stock stock) {
    PairsAnew anew = new PairsAnew(plan, stock);
    return anew.isBetter() ? PairsCut.of(plan, stock, anew.plain, anew.partners) : plan;
  }

  private boolean isBetter() {
    if (ends.count() == 0 || starts.count() == 0) {
      return false;
    }
    int filling = pairFilling();
    int most = PairSet.most(ends, starts, -1, -1, fitting);
    long left = leaveMost(most);
    int pairs = filling + most;
    return pairs > pairsBefore || pairs == pairsBefore
        && (filling > fillingBefore || filling == fillingBefore && left > Math.max(leftBefore, leftElsewhere));
  }

  private void pair(int end, int start) {
    partners[end] = start;
    partners[start] = end;
  }

  /** Pairs all that fill a board but for a kerf, and takes them out of the sets. */
  private int pairFilling() {
    int count = 0;
    int start = starts.count() - 1;
    for (int end = 0; end < ends.count(); end++) {
      while (start >= 0 && starts.span(start) > fitting - ends.span(end)) {
        start--;
      }
      if (start >= 0 && starts.span(start) == fitting - ends.span(end)) {
        pair(ends.piece(end), starts.piece(start--));
        count++;
      }
    }
    ends.keep(piece -> partners[piece] < 0);
    starts.keep(piece -> partners[piece] < 0);
    return count;
  }

  /** Pairs as many of the rest as can be so that one board leaves as much as can be; returns the longest leftover. */
  private long leaveMost(int most) {
    int aloneEnd = shortestAlone(ends, i -> PairSet.most(ends, starts, i, -1, fitting) == most, most);
    int aloneStart = shortestAlone(starts, i -> PairSet.most(ends, starts, -1, i, fitting) == most, most);
    long leftOfEnd = aloneEnd < 0 ? 0 : fitting - ends.span(aloneEnd);
    long leftOfStart = aloneStart < 0 ? 0 : fitting - starts.span(aloneStart);
    long left = Math.max(leftElsewhere, Math.max(leftOfEnd, leftOfStart));
    int[] two = shortestPair(most, left);
    if (two.length > 0) {
      pair(ends.piece(two[0]), starts.piece(two[1]));
      left = fitting - ends.span(two[0]) - starts.span(two[1]) - stock.kerf;
      pairRest(two[0], two[1]);
    } else if (leftOfEnd >= leftOfStart) {
      pairRest(aloneEnd, -1);
    } else {
      pairRest(-1, aloneStart);
    }
    return left;
  }

  private static int shortestAlone(PairSet set, IntPredicate canBeAlone, int most) {
    if (set.count() == most) {
      return -1;
    }
    int low = 0;
    int high = set.count() - 1;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (canBeAlone.test(middle)) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    return low;
  }

  /** The end and the start piece that share a board and leave most between them, if that is more than {@code left}. */
  private int[] shortestPair(int most, long left) {
    int[] best = {};
    long longest = fitting - stock.kerf - left;
    int counts = 0;
    int start = starts.count();
    for (int end = 0; end < ends.count() && most > 0 && ends.span(end) + starts.span(0) < longest; end++) {
      while (start > 0 && counts++ < MOST_COUNTS && PairSet.most(ends, starts, end, start - 1, fitting) >= most - 1) {
        start--;
      }
      if (start < starts.count() && ends.span(end) + starts.span(start) < longest) {
        longest = ends.span(end) + starts.span(start);
        best = new int[] {end, start};
      }
    }
    return best;
  }

  /** The longest end piece first, with the longest start piece that fits beside it; all but those left out. */
  private void pairRest(int withoutEnd, int withoutStart) {
    List<Integer> fits = new ArrayList<>();
    int next = 0;
    for (int end = ends.count() - 1; end >= 0; end--) {
      while (next < starts.count() && starts.span(next) <= fitting - ends.span(end)) {
        if (next != withoutStart) {
          fits.add(next);
        }
        next++;
      }
      if (end != withoutEnd && !fits.isEmpty()) {
        pair(ends.piece(end), starts.piece(fits.remove(fits.size() - 1)));
      }
    }
  }
}
