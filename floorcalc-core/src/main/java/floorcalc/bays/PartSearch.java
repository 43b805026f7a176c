package floorcalc.bays;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Finds the partition of a mesh into bays whose borders cost least.
 * <p>
 * The lowest cell of a region lies in some bay. For each bay that it may lie in, the rest of the region falls into pieces that do not
 * touch, and each is a smaller region of its own: the least cost of a region is the least, over all bays with its lowest cell, of the
 * border of the bay within the region and the least costs of what is left. Costs of regions are kept, and what cannot beat the best so far
 * is dropped. Bays are grown cell by cell, each set once: a neighbour is taken in, or barred for good. When more steps were taken
 * than allowed, the first bay that will do is taken from there on, and the result is not proven.
 */
final class PartSearch {
  private static final long NO_BAY = 1L << 56;

  private final Mesh mesh;
  private final PartCheck check;
  private final PartGrowth growth;
  private final long[] costs;
  private final int[][] links;
  private final Map<BitSet, Found> known = new HashMap<>(); // only asked, never walked through
  private long steps;
  private final long most;

  /** The best of a region: its cost, or a lower bound where that was enough; and the bay with its lowest cell. */
  private record Found(long cost, BitSet bay) {
    boolean isBound() {
      return bay == null;
    }
  }

  /** Takes the cost of each edge, and of each edge whether a break lies there in any case. */
  PartSearch(Mesh mesh, PartCheck check, long[] costs, boolean[] fixed, long most) {
    this.mesh = mesh;
    this.check = check;
    this.growth = new PartGrowth(mesh);
    this.costs = costs;
    this.most = most;
    links = new int[mesh.cells][];
    for (int c = 0; c < mesh.cells; c++) {
      links[c] = Arrays.stream(mesh.open[c]).filter(side -> !fixed[side / 2]).toArray();
    }
  }

  /** Returns the bays of the whole mesh. */
  List<BitSet> bays() {
    BitSet all = new BitSet(mesh.cells);
    all.set(0, mesh.cells);
    List<BitSet> bays = new ArrayList<>();
    for (BitSet region : pieces(all)) {
      least(region, Long.MAX_VALUE);
      collect(region, bays);
    }
    return bays;
  }

  boolean isProven() {
    return steps <= most;
  }

  long steps() {
    return steps;
  }

  private void collect(BitSet region, List<BitSet> bays) {
    BitSet bay = known.get(region).bay();
    bays.add(bay);
    BitSet rest = (BitSet) region.clone();
    rest.andNot(bay);
    for (BitSet piece : pieces(rest)) {
      collect(piece, bays);
    }
  }

  /** The least cost of a region if it is less than a bound; else a number that is no less than the bound and no more than the cost. */
  private long least(BitSet region, long bound) {
    Found found = known.get(region);
    if (found != null && (!found.isBound() || found.cost() >= bound)) {
      return found.cost();
    }
    if (check.judge(region) == PartCheck.Verdict.FREE) {
      known.put(region, new Found(0, region));
      return 0;
    }
    Region search = new Region(region, bound);
    search.run();
    Found result = search.bay == null ? new Found(bound, null) : new Found(search.best, search.bay);
    known.put(region, result);
    return result.cost();
  }

  private List<BitSet> pieces(BitSet cells) {
    List<BitSet> pieces = new ArrayList<>();
    BitSet left = (BitSet) cells.clone();
    int[] stack = new int[cells.cardinality()];
    for (int start = left.nextSetBit(0); start >= 0; start = left.nextSetBit(start)) {
      BitSet piece = new BitSet(mesh.cells);
      int size = 0;
      stack[size++] = start;
      left.clear(start);
      while (size > 0) {
        int c = stack[--size];
        piece.set(c);
        for (int side : links[c]) {
          int other = mesh.cell[side ^ 1];
          if (left.get(other)) {
            left.clear(other);
            stack[size++] = other;
          }
        }
      }
      pieces.add(piece);
    }
    return pieces;
  }

  /** The search for the best bay round the lowest cell of one region. */
  private final class Region {
    private final BitSet region;
    private long best;
    private BitSet bay;
    private long late;

    Region(BitSet region, long bound) {
      this.region = region;
      this.best = bound;
    }

    void run() {
      BitSet barred = new BitSet(mesh.cells);
      int lowest = region.nextSetBit(0);
      BitSet single = growth.with(new BitSet(mesh.cells), lowest, region, barred);
      if (single != null) {
        grow(single, barred, 0);
      }
      if (bay == null) {
        alone(lowest);
      }
    }

    /** Where no bay will do, the cell is taken as it is, at a cost that nothing else has. */
    private void alone(int lowest) {
      BitSet single = new BitSet(mesh.cells);
      single.set(lowest);
      BitSet others = (BitSet) region.clone();
      others.clear(lowest);
      finish(single, border(single, others) + NO_BAY);
    }

    private void grow(BitSet part, BitSet barred, long cost) {
      steps++;
      if (cost >= best || isLate()) {
        return;
      }
      PartCheck.Verdict verdict = check.judge(part);
      if (verdict == PartCheck.Verdict.NEVER) {
        return;
      }
      BitSet out = (BitSet) barred.clone();
      long paid = cost;
      for (int next = neighbour(part, out); next >= 0; next = neighbour(part, out)) {
        BitSet wider = growth.with(part, next, region, out);
        if (wider != null) {
          grow(wider, out, border(wider, out));
          if (isLate()) {
            return;
          }
        }
        out.set(next);
        paid = border(part, out);
        if (paid >= best) {
          return;
        }
      }
      if (verdict == PartCheck.Verdict.FREE) {
        finish(part, paid);
      }
    }

    /** Past the bound the first bay is as good as any, and none is looked for too long. */
    private boolean isLate() {
      return steps > most && (bay != null || ++late > 40L * mesh.cells);
    }

    private int neighbour(BitSet part, BitSet out) {
      for (int c = part.nextSetBit(0); c >= 0; c = part.nextSetBit(c + 1)) {
        for (int side : links[c]) {
          int other = mesh.cell[side ^ 1];
          if (region.get(other) && !part.get(other) && !out.get(other)) {
            return other;
          }
        }
      }
      return -1;
    }

    private long border(BitSet part, BitSet out) {
      long sum = 0;
      for (int c = out.nextSetBit(0); c >= 0; c = out.nextSetBit(c + 1)) {
        for (int side : links[c]) {
          sum += part.get(mesh.cell[side ^ 1]) ? costs[side / 2] : 0;
        }
      }
      return sum;
    }

    private void finish(BitSet part, long cost) {
      BitSet rest = (BitSet) region.clone();
      rest.andNot(part);
      long total = cost;
      for (BitSet piece : pieces(rest)) {
        if (total >= best) {
          return;
        }
        total += least(piece, best - total);
      }
      if (total < best) {
        best = total;
        bay = part;
      }
    }
  }
}
