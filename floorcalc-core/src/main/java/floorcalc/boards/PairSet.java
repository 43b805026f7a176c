package floorcalc.boards;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/** End pieces or start pieces by length, the shortest first. */
final class PairSet {
  private final List<PieceWanted> pieces;
  private int[] places;

  private PairSet(List<PieceWanted> pieces, int[] places) {
    this.pieces = pieces;
    this.places = places;
  }

  /** The pieces of one sort on some of the boards. */
  static PairSet of(CuttingPlan plan, boolean[] boards, Ends sort) {
    List<PieceWanted> pieces = plan.pieces();
    return new PairSet(pieces, IntStream.range(0, pieces.size())
        .filter(i -> pieces.get(i).ends() == sort && boards[plan.boardOf(i)]).boxed()
        .sorted(Comparator.<Integer>comparingLong(i -> pieces.get(i).span()).thenComparingInt(i -> i))
        .mapToInt(i -> i).toArray());
  }

  int count() {
    return places.length;
  }

  int piece(int index) {
    return places[index];
  }

  long span(int index) {
    return pieces.get(places[index]).span();
  }

  void keep(IntPredicate kept) {
    places = Arrays.stream(places).filter(kept).toArray();
  }

  /** The most pairs no longer than {@code fitting} without one end piece and one start piece, -1 for none. */
  static int most(PairSet ends, PairSet starts, int withoutEnd, int withoutStart, long fitting) {
    int pairs = 0;
    int free = 0;
    int next = 0;
    for (int end = ends.count() - 1; end >= 0; end--) {
      if (end == withoutEnd) {
        continue;
      }
      long room = fitting - ends.span(end);
      while (next < starts.count() && starts.span(next) <= room) {
        free += next++ == withoutStart ? 0 : 1;
      }
      if (free > 0) {
        free--;
        pairs++;
      }
    }
    return pairs;
  }
}
