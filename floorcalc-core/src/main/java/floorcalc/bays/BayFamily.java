package floorcalc.bays;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * All bays that could be made of the cells of a mesh, by their lowest cell. They are grown cell by cell, each set once: a neighbour is
 * taken in, or barred for good; what can never become a bay is dropped with all that would hold it. A cell that lies in no bay by itself
 * is taken as it is, at a cost that nothing else has.
 */
final class BayFamily {
  /** Costs more than all breaks together. */
  static final long NO_BAY = 1L << 52;

  private static final long FEW = 50;
  private static final int CELLS_A_STEP = 8;
  /** A part of fewer sides is one step; else rooms of thousands of corners would take minutes. */
  private static final int SIDES_A_STEP = 256;

  private final Mesh mesh;
  private final PartCheck check;
  private final PartGrowth growth;
  private final int[][] links;
  private final long[] costs;
  private final long most;
  private long steps;
  private long here;
  private boolean complete = true;

  /** One bay, and the cost of its border. */
  record Member(BitSet cells, long border) {
  }

  BayFamily(Mesh mesh, PartCheck check, int[][] links, long[] costs, long most) {
    this.mesh = mesh;
    this.check = check;
    this.growth = new PartGrowth(mesh);
    this.links = links;
    this.costs = costs;
    this.most = most;
  }

  /** The bays whose lowest cell this is. */
  List<Member> ofLowest(int cell) {
    List<Member> found = new ArrayList<>();
    BitSet region = new BitSet(mesh.cells);
    region.set(cell, mesh.cells);
    here = 0;
    BitSet seed = growth.with(new BitSet(mesh.cells), cell, region, new BitSet());
    if (seed != null) {
      grow(seed, new BitSet(mesh.cells), region, found);
    }
    BitSet single = new BitSet(mesh.cells);
    single.set(cell);
    if (found.stream().noneMatch(member -> member.cells().equals(single))) {
      found.add(new Member(single, border(single) + NO_BAY));
    }
    return found;
  }

  /** Tells whether no bay was left out for want of steps. */
  boolean isComplete() {
    return complete;
  }

  private void grow(BitSet part, BitSet barred, BitSet region, List<Member> found) {
    here++;
    steps += 1 + part.cardinality() / CELLS_A_STEP + part.stream().mapToLong(cell -> mesh.sidesOf[cell].length).sum() / SIDES_A_STEP;
    if (steps > most && here > FEW) { // past the bound each cell still gets its first bays
      complete = false;
      return;
    }
    PartCheck.Verdict verdict = check.judge(part);
    if (verdict == PartCheck.Verdict.NEVER) {
      return;
    }
    BitSet out = (BitSet) barred.clone();
    for (int next = neighbour(part, out, region); next >= 0; next = neighbour(part, out, region)) {
      BitSet wider = growth.with(part, next, region, out);
      if (wider != null) {
        grow(wider, out, region, found);
      }
      out.set(next);
    }
    if (verdict == PartCheck.Verdict.FREE) {
      found.add(new Member(part, border(part)));
    }
  }

  private int neighbour(BitSet part, BitSet out, BitSet region) {
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

  private long border(BitSet part) {
    long sum = 0;
    for (int c = part.nextSetBit(0); c >= 0; c = part.nextSetBit(c + 1)) {
      for (int side : links[c]) {
        sum += part.get(mesh.cell[side ^ 1]) ? 0 : costs[side / 2];
      }
    }
    return sum;
  }
}
