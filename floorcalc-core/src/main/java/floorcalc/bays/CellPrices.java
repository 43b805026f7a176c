package floorcalc.bays;

import java.util.ArrayList;
import java.util.List;

/** Prices of cells such that the cells of no bay cost more together than the border of the bay: a bound for any choice of bays. */
final class CellPrices {
  private final List<BayFamily.Member> bays = new ArrayList<>();
  private final List<List<Integer>> holding = new ArrayList<>();

  CellPrices(List<List<BayFamily.Member>> byLowest) {
    byLowest.forEach(bays::addAll);
    for (int c = 0; c < byLowest.size(); c++) {
      holding.add(new ArrayList<>());
    }
    for (int b = 0; b < bays.size(); b++) {
      int bay = b;
      bays.get(b).cells().stream().forEach(c -> holding.get(c).add(bay));
    }
  }

  /** First each cell bears its share of the cheapest bay by cell; then each in turn is raised as far as the bays that hold it allow. */
  long[] prices() {
    long[] price = new long[holding.size()];
    for (int c = 0; c < price.length; c++) {
      price[c] = holding.get(c).stream().mapToLong(b -> bays.get(b).border() / bays.get(b).cells().cardinality()).min().orElse(0);
    }
    long[] left = new long[bays.size()];
    for (int b = 0; b < left.length; b++) {
      left[b] = bays.get(b).border() - bays.get(b).cells().stream().mapToLong(c -> price[c]).sum();
    }
    for (int c = 0; c < price.length; c++) {
      long raise = holding.get(c).stream().mapToLong(b -> left[b]).min().orElse(0);
      price[c] += raise;
      holding.get(c).forEach(b -> left[b] -= raise);
    }
    return price;
  }
}
