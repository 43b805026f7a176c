package floorcalc.bays;

import java.util.ArrayList;
import java.util.List;

/** Prices of cells such that the cells of no bay cost more together than the border of the bay: a bound for any choice of bays. */
final class CellPrices {
  private final List<List<BayFamily.Member>> holding = new ArrayList<>();
  private final List<BayFamily.Member> all = new ArrayList<>();
  private final int cells;

  CellPrices(List<List<BayFamily.Member>> byLowest) {
    cells = byLowest.size();
    for (int c = 0; c < cells; c++) {
      holding.add(new ArrayList<>());
    }
    for (List<BayFamily.Member> members : byLowest) {
      for (BayFamily.Member member : members) {
        all.add(member);
        member.cells().stream().forEach(c -> holding.get(c).add(member));
      }
    }
  }

  long[] prices() {
    long[] price = new long[cells];
    for (int c = 0; c < cells; c++) {
      long least = Long.MAX_VALUE;
      for (BayFamily.Member member : holding.get(c)) {
        least = Math.min(least, member.border() / member.cells().cardinality());
      }
      price[c] = least;
    }
    raise(price);
    return price;
  }

  /** Raises the price of each cell as far as the bays that hold it allow. */
  private void raise(long[] price) {
    for (int c = 0; c < cells; c++) {
      long slack = Long.MAX_VALUE;
      for (BayFamily.Member member : holding.get(c)) {
        slack = Math.min(slack, member.border() - member.cells().stream().mapToLong(i -> price[i]).sum());
      }
      price[c] += slack;
    }
  }
}
