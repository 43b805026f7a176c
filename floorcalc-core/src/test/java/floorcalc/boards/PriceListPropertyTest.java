package floorcalc.boards;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import floorcalc.MoreTries;
import floorcalc.measure.Length;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleSet;
import floorcalc.working.Source;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.lifecycle.AddLifecycleHook;

/** The bound is true if no board gives more than one board's worth, and if no way to lay a run costs less than its cell says. */
@AddLifecycleHook(MoreTries.class)
class PriceListPropertyTest {
  private static final double ROUNDING = 1e-9;
  private static final Length WIDTH = Length.ofMillimetres(185);

  private static Stock stock(int board, int least, int kerf) {
    BoardGoods goods = BoardGoods.of(Length.ofMillimetres(board), WIDTH, Length.ofMillimetres(14), 6);
    return new Stock(goods, RuleSet.COMMON_PRACTICE.forBoard(Length.ofMillimetres(14), WIDTH)
        .with(LayingRules.MINIMUM_END_PIECE, Length.ofMillimetres(least), Source.GIVEN)
        .with(LayingRules.MINIMUM_JOINT_OFFSET, Length.ofMillimetres(least), Source.GIVEN)
        .with(LayingRules.SAW_KERF, Length.ofMillimetres(kerf), Source.GIVEN));
  }

  /** Prices whose rises are by chance, many of them nothing. */
  private static PriceList prices(Stock stock, Random random) {
    Knots knots = Knots.every(stock, random.nextInt(3) == 0 ? 0 : 1e6 * random.nextInt(2000), 1 + random.nextInt(40));
    double[] rises = new double[knots.rises()];
    double sum = 0;
    for (int i = 0; i < rises.length; i++) {
      rises[i] = random.nextInt(3) == 0 ? random.nextDouble() : 0;
      sum += rises[i];
    }
    rises[random.nextInt(rises.length)] += sum == 0 ? 1 : 0;
    for (int i = 0; i < rises.length; i++) {
      rises[i] /= sum == 0 ? 1 : sum;
    }
    return new PriceList(stock, knots, rises);
  }

  /** A length from 1 to a bound, often at either end. */
  private static long upTo(long most, Random random) {
    return switch (random.nextInt(4)) {
      case 0 -> most;
      case 1 -> Math.max(1, most - random.nextInt(3));
      default -> 1 + (long) (random.nextDouble() * (most - 1));
    };
  }

  @Property(tries = 400)
  void noBoardGivesMoreThanOneBoardsWorth(@ForAll @IntRange(min = 700, max = 2400) int board,
      @ForAll @IntRange(min = 0, max = 320) int least, @ForAll @IntRange(min = 0, max = 6) int kerf, @ForAll int seed) {
    Stock stock = stock(board, least, kerf);
    Random random = new Random(seed);
    PriceList prices = prices(stock, random);
    long shortest = Math.max(1, stock.minimumPiece);
    for (int i = 0; i < 50; i++) {
      // From the left: perhaps an end piece, some single pieces, perhaps a start piece, a kerf between each two.
      long place = 0;
      double worth = 0;
      if (random.nextInt(4) > 0) {
        long end = shortest - 1 + upTo(stock.longest() - 1 - shortest + 1, random);
        place = end + stock.kerf;
        worth += prices.endPiece(end);
      }
      for (int k = random.nextInt(3); k > 0 && stock.longest() - place > 1; k--) {
        long single = upTo(stock.longest() - place, random);
        place += single + stock.kerf;
        worth += prices.singlePiece(single);
      }
      if (stock.longest() - place >= shortest && random.nextInt(4) > 0) {
        worth += place == 0 && random.nextBoolean() ? 1
            : prices.startPiece(Math.min(stock.longest() - 1, shortest - 1 + upTo(stock.longest() - place - shortest + 1, random)));
      }
      assertThat(worth).isLessThanOrEqualTo(1 + ROUNDING);
    }
  }

  @Property(tries = 200)
  void noWayToLayARunCostsLessThanItsCell(@ForAll @IntRange(min = 700, max = 2400) int board,
      @ForAll @IntRange(min = 0, max = 320) int least, @ForAll @IntRange(min = 0, max = 6) int kerf,
      @ForAll @IntRange(min = 300, max = 9000) int length, @ForAll @IntRange(min = -3000, max = 3000) int from,
      @ForAll int seed) {
    Stock stock = stock(board, least, kerf);
    Random random = new Random(seed);
    PriceList prices = prices(stock, random);
    // Cells are told from the low end of the first run.
    Run first = Run.of(0, 0, 1_000_000L);
    Run run = Run.touching(1, from * 1_000_000L, (from + length) * 1_000_000L, List.of(0), List.of(new long[] {0, 1_000_000L}));
    RunTable table = new RunTable(List.of(first, run), stock);
    PhaseCosts costs = new PhaseCosts(List.of(first, run), stock);
    costs.priceAt(prices);
    double[] cells = costs.of(1);
    for (int i = 0; i < 200; i++) {
      long start = upTo(stock.longest(), random);
      if (!table.fits(1, start) || !table.hasJoint(1, start)) {
        continue;
      }
      long cutStart = table.cutStart(start);
      long cutEnd = table.cutEnd(1, start);
      double cost = table.whole(1, start) + (cutStart == 0 ? 0 : prices.startPiece(cutStart))
          + (cutEnd == 0 ? 0 : prices.endPiece(cutEnd));
      int cell = (int) Math.min(PhaseCosts.CELLS - 1.0,
          Math.floorMod(run.from() + start, stock.longest()) / costs.cellLength());
      assertThat(cells[cell]).isLessThanOrEqualTo(cost + ROUNDING);
    }
  }

  /** Beyond the last knot an end piece costs the same up to the longest that can have a partner: 700 - 1 = 699 mm, at a start piece of 25 mm. */
  @Example
  void noWayCostsLessWhereTheLastKnotIsShortOfTheLongestPiece() {
    noWayToLayARunCostsLessThanItsCell(700, 1, 0, 724, 0, 132716);
  }

  @Property(tries = 400)
  void whatAPieceCostsIsWhatItPaysForEachRise(@ForAll @IntRange(min = 700, max = 2400) int board,
      @ForAll @IntRange(min = 0, max = 320) int least, @ForAll @IntRange(min = 0, max = 6) int kerf, @ForAll int seed) {
    Stock stock = stock(board, least, kerf);
    Random random = new Random(seed);
    Knots knots = Knots.every(stock, 1e6 * random.nextInt(2000), 1 + random.nextInt(40));
    double[] rises = random.doubles(knots.rises()).toArray();
    double sum = Arrays.stream(rises).sum();
    Arrays.setAll(rises, i -> rises[i] / sum);
    PriceList prices = new PriceList(stock, knots, rises);
    for (int i = 0; i < 50; i++) {
      long piece = Math.max(stock.minimumPiece, upTo(stock.longest() - 1, random));
      double[] paid = new double[knots.rises()];
      knots.addEndPiece(piece, 1, paid);
      assertThat(cost(rises, paid)).isCloseTo(prices.endPiece(piece), within(ROUNDING));
      Arrays.fill(paid, 0);
      knots.addStartPiece(piece, paid);
      assertThat(cost(rises, paid)).isCloseTo(prices.startPiece(piece), within(ROUNDING));
      long single = upTo(stock.longest(), random);
      Arrays.fill(paid, 0);
      prices.addSinglePiece(single, paid);
      assertThat(cost(rises, paid)).isCloseTo(prices.singlePiece(single), within(ROUNDING));
    }
  }

  private static double cost(double[] rises, double[] paid) {
    double cost = 0;
    for (int j = 0; j < rises.length; j++) {
      cost += rises[j] * paid[j];
    }
    return cost;
  }
}
