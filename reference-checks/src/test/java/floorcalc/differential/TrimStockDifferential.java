package floorcalc.differential;

import floorcalc.differential.BarsProgram.Bar;
import floorcalc.measure.Length;
import floorcalc.measure.Price;
import floorcalc.trims.TrimCutting;
import floorcalc.trims.TrimStock;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;

/** Trims cut from bars of several lengths, some on hand, with and without prices: the least that can be bought, against an integer program. */
final class TrimStockDifferential extends Comparison {
  TrimStockDifferential(int cases) {
    super("least length or price of bars of several lengths", Library.OJALGO, cases, TrimCutting.class, TrimStock.class);
  }

  @Override
  public String unit() {
    return "mm bought, or cents";
  }

  @Override
  public double tolerance() {
    return 0;
  }

  @Override
  public String argument() {
    return "both sides find the least whole number and prove it";
  }

  @Override
  void compare(int upTo, Answers answers, Worst worst) {
    SplittableRandom random = new SplittableRandom(305);
    int proven = 0;
    for (int k = 0; k < upTo; k++) {
      long longest = random.nextLong(2400, 5000);
      long kerf = random.nextLong(6);
      boolean priced = random.nextBoolean();
      List<TrimStock> stock = new ArrayList<>();
      List<Bar> bars = new ArrayList<>();
      for (long length : new long[] {longest, longest * 3 / 4 + random.nextLong(100), longest / 2 + random.nextLong(100)}) {
        long price = priced ? random.nextLong(300, 4000) : length;
        TrimStock sold = TrimStock.sold(Length.ofMillimetres(length));
        stock.add(priced ? sold.at(new Price(BigDecimal.valueOf(price, 2), "EUR")) : sold);
        bars.add(new Bar(length, price, 0));
      }
      if (random.nextBoolean()) {
        long length = random.nextLong(longest / 3, longest);
        int number = random.nextInt(1, 3);
        stock.add(TrimStock.onHand(Length.ofMillimetres(length), number));
        bars.add(new Bar(length, 0, number));
      }
      long[] lengths = random.longs(random.nextInt(2, 5), longest / 8, longest * 9 / 10).distinct().toArray();
      int[] counts = TrimsDifferential.counts(random, lengths.length);
      TrimCutting cutting = TrimCutting.of(TrimsDifferential.pieces(lengths, counts), stock, Length.ofMillimetres(kerf)).value();
      double least = Math.rint(new BarsProgram(lengths, counts, kerf, bars).least());
      worst.nextCase();
      double mine = priced ? cents(cutting.price().orElseThrow()) : cutting.lengthBought().toMillimetres();
      double bound = priced ? cents(cutting.leastPrice().orElseThrow()) : cutting.leastLengthBought().orElseThrow().toMillimetres();
      double said = answers == Answers.AS_GIVEN ? mine : cutting.bars().stream().mapToDouble(b -> b.stock().length().toMillimetres()).sum();
      String what = bars + " kerf " + kerf + " " + Arrays.toString(lengths) + " x " + Arrays.toString(counts);
      worst.see(said - least, () -> what + ": " + mine + ", " + least);
      worst.see(Math.max(0, bound - least), () -> "bound " + bound + ", least " + least + " of " + what);
      proven += cutting.isLeast() ? 1 : 0;
    }
    worst.note(proven + " of " + upTo + " proven by the core");
  }

  private static double cents(Price price) {
    return price.amount().movePointRight(2).doubleValue();
  }
}
