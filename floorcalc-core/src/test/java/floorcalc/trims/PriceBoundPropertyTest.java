package floorcalc.trims;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import net.jqwik.api.constraints.Size;

/** What prices prove holds for any prices, good or bad; the dearest filling is the dearest. */
class PriceBoundPropertyTest {

  @Property(tries = 300)
  void noPricesProveTooMuch(@ForAll @Size(min = 1, max = 6) List<@IntRange(min = 1, max = 20) Integer> lengths,
      @ForAll @Size(20) List<@LongRange(max = 50) Long> price, @ForAll @IntRange(min = 8, max = 19) int shorter,
      @ForAll @IntRange(min = 1, max = 25) int cost, @ForAll @IntRange(min = 1, max = 8) int offcut,
      @ForAll @LongRange(min = 1, max = 60) long natural) {
    int[] bars = {20, shorter, offcut};
    int[] costs = {20, cost, 0};
    int[] limits = {Problem.NO_LIMIT, 1, 2};
    TreeSet<Integer> distinct = new TreeSet<>(lengths);
    long[] sizes = distinct.descendingSet().stream().mapToLong(Integer::longValue).toArray();
    int[] wanted = distinct.descendingSet().stream()
        .mapToInt(length -> (int) lengths.stream().filter(length::equals).count()).toArray();
    Problem problem = new Problem(sizes, wanted, Arrays.stream(bars).asLongStream().toArray(),
        Arrays.stream(costs).asLongStream().toArray(), limits);
    long[] prices = Arrays.stream(sizes).map(size -> price.get((int) size - 1)).toArray();
    Filling filling = new Filling(problem);
    filling.price(prices, wanted, new Budget(Long.MAX_VALUE));
    long[] ceilings = {filling.ceiling(0), filling.ceiling(1), filling.ceiling(2)};

    PriceBound bound = PriceBound.of(problem, wanted, limits, prices, ceilings, natural);

    AllCuttings all = new AllCuttings(lengths, bars, costs, new int[] {99, 1, 2}, 0);
    assertThat(bound.least()).isLessThanOrEqualTo(all.leastCost());
  }

  @Property(tries = 300)
  void theDearestFillingByTableAndByBranches(@ForAll @Size(min = 1, max = 8) List<@IntRange(min = 1, max = 30) Integer> lengths,
      @ForAll @Size(30) List<@LongRange(max = 1000) Long> price, @ForAll @IntRange(min = 30, max = 90) int room) {
    TreeSet<Integer> distinct = new TreeSet<>(lengths);
    long[] sizes = distinct.descendingSet().stream().mapToLong(Integer::longValue).toArray();
    int[] wanted = distinct.descendingSet().stream()
        .mapToInt(length -> (int) lengths.stream().filter(length::equals).count()).toArray();
    long[] prices = Arrays.stream(sizes).map(size -> price.get((int) size - 1)).toArray();
    Problem coarse = problem(sizes, wanted, room, 1);
    Problem fine = problem(sizes, wanted, room, 10_000_000);
    Filling byTable = new Filling(coarse);
    Filling byBranches = new Filling(fine);
    byTable.price(prices, wanted, new Budget(Long.MAX_VALUE));
    byBranches.price(prices, wanted, new Budget(Long.MAX_VALUE));

    assertThat(byTable.leastRoomFor(0)).isZero();
    assertThat(byBranches.leastRoomFor(0)).isEqualTo(-1);
    assertThat(byTable.found(0)).isEqualTo(byBranches.found(0)).isEqualTo(byBranches.ceiling(0))
        .isEqualTo(worth(byTable.counts(0), prices)).isEqualTo(worth(byBranches.counts(0), prices))
        .isEqualTo(dearest(sizes, wanted, prices, 0, room));
    assertThat(new Load(0, byTable.counts(0), 1).filled(coarse)).isLessThanOrEqualTo(room);
    assertThat(new Load(0, byBranches.counts(0), 1).filled(fine)).isLessThanOrEqualTo(room * 10_000_000L);
  }

  private static Problem problem(long[] sizes, int[] wanted, long room, long scale) {
    return new Problem(Arrays.stream(sizes).map(size -> size * scale).toArray(), wanted, new long[] {room * scale},
        new long[] {1}, new int[] {Problem.NO_LIMIT});
  }

  private static long worth(int[] counts, long[] prices) {
    long worth = 0;
    for (int i = 0; i < counts.length; i++) {
      worth += counts[i] * prices[i];
    }
    return worth;
  }

  private static long dearest(long[] sizes, int[] wanted, long[] prices, int from, long room) {
    if (from == sizes.length) {
      return 0;
    }
    long best = 0;
    for (int number = 0; number <= wanted[from] && number * sizes[from] <= room; number++) {
      best = Math.max(best,
          number * prices[from] + dearest(sizes, wanted, prices, from + 1, room - number * sizes[from]));
    }
    return best;
  }
}
