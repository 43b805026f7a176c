package floorcalc.boards;

import java.util.Arrays;
import java.util.List;
import java.util.function.IntPredicate;

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
    // Length first, then place: both in one number, which is far from too large.
    int count = pieces.size();
    long[] keys = new long[count];
    int found = 0;
    for (int i = 0; i < count; i++) {
      PieceWanted piece = pieces.get(i);
      if (piece.ends() == sort && boards[plan.boardOf(i)]) {
        keys[found++] = Math.addExact(Math.multiplyExact(piece.span(), count), i);
      }
    }
    Arrays.sort(keys, 0, found);
    return new PairSet(pieces, Arrays.stream(keys, 0, found).mapToInt(key -> (int) (key % count)).toArray());
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
