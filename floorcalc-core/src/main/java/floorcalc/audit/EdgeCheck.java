package floorcalc.audit;

import java.util.Arrays;

/** Finds where two neighbouring rows touch, and checks that only factory edges meet there. */
final class EdgeCheck {
  private final RowSketch below;
  private final RowSketch above;
  private int[] lower = new int[16];
  private int[] upper = new int[16];
  private int contacts;
  /** The stretches of the row line on which the rows touch, from low x to high x, not overlapping. */
  double[] from = new double[8];
  double[] to = new double[8];
  int stretches;

  private EdgeCheck(RowSketch below, RowSketch above) {
    this.below = below;
    this.above = above;
  }

  static EdgeCheck of(RowSketch below, RowSketch above, double slack) {
    EdgeCheck check = new EdgeCheck(below, above);
    int[] tops = below.tops.orderedByX();
    int[] bottoms = above.bottoms.orderedByX();
    // Edges of one row do not overlap along a row line; the bound only stops a row that is a heap.
    long patience = 100L * (tops.length + bottoms.length) + 1000;
    int first = 0;
    for (int t : tops) {
      while (first < bottoms.length && above.bottoms.x1[bottoms[first]] <= below.tops.x0[t]) {
        first++;
      }
      for (int k = first; k < bottoms.length && above.bottoms.x0[bottoms[k]] < below.tops.x1[t]
          && patience > 0; k++) {
        patience--;
        double low = Math.max(above.bottoms.x0[bottoms[k]], below.tops.x0[t]);
        double high = Math.min(above.bottoms.x1[bottoms[k]], below.tops.x1[t]);
        if (high - low > RowSketch.MEET) {
          check.add(low, high, below.tops.owner[t], above.bottoms.owner[bottoms[k]], slack);
        }
      }
    }
    return check;
  }

  private void add(double low, double high, int lowerPiece, int upperPiece, double slack) {
    if (contacts == lower.length) {
      lower = Arrays.copyOf(lower, 2 * contacts);
      upper = Arrays.copyOf(upper, 2 * contacts);
    }
    lower[contacts] = lowerPiece;
    upper[contacts++] = upperPiece;
    if (stretches > 0 && low - to[stretches - 1] <= slack) {
      to[stretches - 1] = Math.max(to[stretches - 1], high);
      return;
    }
    if (stretches == from.length) {
      from = Arrays.copyOf(from, 2 * stretches);
      to = Arrays.copyOf(to, 2 * stretches);
    }
    from[stretches] = low;
    to[stretches++] = high;
  }

  void check(CutList cuts, int firstLower, int firstUpper, long pitch, Breaches breaches) {
    boolean[] lowerSeen = new boolean[below.count];
    boolean[] upperSeen = new boolean[above.count];
    for (int c = 0; c < contacts; c++) {
      int a = lower[c];
      int b = upper[c];
      String first = below.pieces.get(a).piece();
      String second = above.pieces.get(b).piece();
      if (!lowerSeen[a] && cuts.acrossTo[firstLower + a] != pitch) {
        breaches.add(Code.SAWN_EDGE, first, "the upper edge of piece " + first + " meets piece " + second
            + ", but the piece ends " + Words.mm(cuts.acrossTo[firstLower + a]) + " across its board, whose edge is at "
            + Words.mm(pitch) + ", so that edge is sawn");
      }
      if (!upperSeen[b] && cuts.acrossFrom[firstUpper + b] != 0) {
        breaches.add(Code.SAWN_EDGE, second, "the lower edge of piece " + second + " meets piece " + first
            + ", but the piece begins " + Words.mm(cuts.acrossFrom[firstUpper + b])
            + " across its board, so that edge is sawn");
      }
      lowerSeen[a] = true;
      upperSeen[b] = true;
    }
  }
}
