package floorcalc.trims;

import java.util.ArrayList;
import java.util.List;

/** Tries all ways to cut a few pieces: each into every bar that is open, or into a new one of every kind. */
final class AllCuttings {
  private final List<Integer> lengths;
  private final int[] bars;
  private final int[] costs;
  private final int[] limits;
  private final int kerf;
  private final List<Integer> rests = new ArrayList<>();
  private long least = Long.MAX_VALUE;
  private long longest;

  AllCuttings(List<Integer> lengths, int[] bars, int[] costs, int[] limits, int kerf) {
    this.lengths = lengths;
    this.bars = bars;
    this.costs = costs;
    this.limits = limits.clone();
    this.kerf = kerf;
    place(0, 0);
  }

  private void place(int piece, long cost) {
    if (cost > least) {
      return;
    }
    if (piece == lengths.size()) {
      long left = 0;
      for (int rest : rests) {
        left = Math.max(left, rest);
      }
      longest = cost < least ? left : Math.max(longest, left);
      least = cost;
      return;
    }
    int length = lengths.get(piece);
    for (int b = 0; b < rests.size(); b++) {
      int before = rests.get(b);
      if (before >= length) {
        rests.set(b, Math.max(0, before - length - kerf));
        place(piece + 1, cost);
        rests.set(b, before);
      }
    }
    for (int kind = 0; kind < bars.length; kind++) {
      if (limits[kind] > 0 && bars[kind] >= length) {
        limits[kind]--;
        rests.add(Math.max(0, bars[kind] - length - kerf));
        place(piece + 1, cost + costs[kind]);
        rests.remove(rests.size() - 1);
        limits[kind]++;
      }
    }
  }

  long leastCost() {
    return least;
  }

  /** The longest single leftover of the cuttings that cost least. */
  long longestLeftover() {
    return longest;
  }
}
