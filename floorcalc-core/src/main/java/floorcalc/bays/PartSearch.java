package floorcalc.bays;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Finds the bays, each cell in one of them, whose borders cost least.
 * <p>
 * The lowest cell of a region lies in some bay. For each bay that it may lie in, the rest of the region falls into pieces that do not
 * touch, and each is a smaller region of its own: the least cost of a region is the least, over all bays with its lowest cell, of the
 * border of the bay and the least costs of what is left. What is known of a region is kept. A price is set on each cell, such that the
 * cells of no bay cost more together than its border; so a region costs no less than its cells, and a bay that is dearer than its
 * cells by more than there is to gain is dropped, with all that are dearer still. When more bays were tried than allowed, the first
 * that will do is taken from there on, and the result is not proven.
 */
final class PartSearch {
  /** Looking through so many cells for pieces takes about as long as trying a bay. */
  private static final int CELLS_A_STEP = 8;

  private final Mesh mesh;
  private final int[][] links;
  private final List<List<Priced>> byLowest = new ArrayList<>();
  private final long[] price;
  private final Map<BitSet, Found> known = new HashMap<>(); // only asked, never walked through
  private final boolean complete;
  private final long most;
  private long steps;

  /** A bay, and how much more its border costs than its cells. */
  private record Priced(BitSet cells, long dearer) {
  }

  /** The best of a region: how much more it costs than its cells, or that this is no less than a bound; and the bay of its lowest cell. */
  private record Found(long dearer, BitSet bay) {
    boolean isBound() {
      return bay == null;
    }
  }

  /**
   * Takes the cost of each edge, and of each edge whether a break lies there in any case.
   *
   * @param mostGrown how many sets of cells may be grown
   * @param mostTried how many bays may be tried
   */
  PartSearch(Mesh mesh, PartCheck check, long[] costs, boolean[] fixed, long mostGrown, long mostTried) {
    this.mesh = mesh;
    this.most = mostTried;
    links = new int[mesh.cells][];
    for (int c = 0; c < mesh.cells; c++) {
      links[c] = Arrays.stream(mesh.open[c]).filter(side -> !fixed[side / 2]).toArray();
    }
    BayFamily family = new BayFamily(mesh, check, links, costs, mostGrown);
    List<List<BayFamily.Member>> members = new ArrayList<>();
    for (int c = 0; c < mesh.cells; c++) {
      members.add(family.ofLowest(c));
    }
    complete = family.isComplete();
    price = new CellPrices(members).prices();
    for (List<BayFamily.Member> list : members) {
      byLowest.add(list.stream().map(member -> new Priced(member.cells(), member.border() - price(member.cells())))
          .sorted(Comparator.comparingLong(Priced::dearer)).toList());
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

  /** Tells whether all bays are known. */
  boolean isComplete() {
    return complete;
  }

  /** Tells whether all bays were known and the search was carried through. */
  boolean isProven() {
    return complete && steps <= most;
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

  private long price(BitSet cells) {
    long sum = 0;
    for (int c = cells.nextSetBit(0); c >= 0; c = cells.nextSetBit(c + 1)) {
      sum += price[c];
    }
    return sum;
  }

  /** How much more a region costs than its cells if that is less than a bound; else a number no less than the bound. */
  private long least(BitSet region, long bound) {
    Found found = known.get(region);
    if (found != null && (!found.isBound() || found.dearer() >= bound)) {
      return found.dearer();
    }
    long best = bound;
    BitSet bay = null;
    for (Priced candidate : byLowest.get(region.nextSetBit(0))) {
      if (candidate.dearer() >= best || bay != null && steps > most) {
        break;
      }
      steps++;
      BitSet rest = (BitSet) candidate.cells().clone();
      rest.andNot(region);
      if (!rest.isEmpty()) {
        continue;
      }
      rest.or(region);
      rest.andNot(candidate.cells());
      long total = candidate.dearer();
      steps += 1 + rest.cardinality() / CELLS_A_STEP;
      for (BitSet piece : pieces(rest)) {
        total += total < best ? least(piece, best - total) : 0;
      }
      if (total < best) {
        best = total;
        bay = candidate.cells();
      }
    }
    known.put(region, new Found(best, bay));
    return best;
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
}
