package floorcalc.boards;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;

/**
 * The most pairs of an end piece and a start piece that one board can give. Because a shorter piece fits wherever a longer
 * one does, taking the longest end piece first and giving it the longest start piece that fits is best.
 */
final class Pairs {
  private Pairs() {}

  /** For each piece the place of its partner, or -1. Only pieces of full width are paired. */
  static int[] of(List<PieceWanted> pieces, Stock stock) {
    List<Integer> ends = new ArrayList<>();
    List<Integer> starts = new ArrayList<>();
    for (int i = 0; i < pieces.size(); i++) {
      PieceWanted piece = pieces.get(i);
      if (piece.low() == 0 && piece.high() == stock.width) {
        if (piece.ends() == Ends.LOW) {
          ends.add(i);
        } else if (piece.ends() == Ends.HIGH) {
          starts.add(i);
        }
      }
    }
    ends.sort(Comparator.<Integer>comparingLong(i -> -pieces.get(i).span()).thenComparingInt(i -> i));
    starts.sort(Comparator.<Integer>comparingLong(i -> pieces.get(i).span()).thenComparingInt(i -> -i));
    int[] partners = new int[pieces.size()];
    Arrays.fill(partners, -1);
    Deque<Integer> fitting = new ArrayDeque<>();
    int next = 0;
    for (int end : ends) {
      long room = stock.longest() - stock.kerf - pieces.get(end).span();
      while (next < starts.size() && pieces.get(starts.get(next)).span() <= room) {
        fitting.push(starts.get(next++));
      }
      if (!fitting.isEmpty()) {
        int start = fitting.pop();
        partners[end] = start;
        partners[start] = end;
      }
    }
    return partners;
  }

  /** The most pairs of an end piece and a start piece that together are no longer than {@code fitting}. */
  static int most(long[] ends, long[] starts, long fitting) {
    Arrays.sort(ends);
    Arrays.sort(starts);
    int pairs = 0;
    int free = 0;
    int next = 0;
    for (int i = ends.length - 1; i >= 0; i--) {
      while (next < starts.length && starts[next] <= fitting - ends[i]) {
        free++;
        next++;
      }
      if (free > 0) {
        free--;
        pairs++;
      }
    }
    return pairs;
  }
}
