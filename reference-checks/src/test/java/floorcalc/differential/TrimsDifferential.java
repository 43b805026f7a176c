package floorcalc.differential;

import floorcalc.differential.BarsProgram.Bar;
import floorcalc.measure.Length;
import floorcalc.trims.TrimCutting;
import floorcalc.trims.TrimPiece;
import floorcalc.trims.TrimStock;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;

/** Trims cut from bars of one length: the fewest bars, and that no bound is above it; against an integer program. */
final class TrimsDifferential extends Comparison {
  TrimsDifferential(int cases) {
    super("fewest bars of one length, and the bound on them", Library.OJALGO, cases, TrimCutting.class);
  }

  @Override
  public String unit() {
    return "bars";
  }

  @Override
  public double tolerance() {
    return 0;
  }

  @Override
  public String argument() {
    return "both sides find the least number and prove it";
  }

  @Override
  void compare(int upTo, Answers answers, Worst worst) {
    SplittableRandom random = new SplittableRandom(301);
    int proven = 0;
    int aboveParts = 0;
    for (int k = 0; k < upTo; k++) {
      long bar = random.nextLong(1800, 5000);
      long kerf = random.nextLong(6);
      long[] lengths = lengths(random, bar);
      int[] counts = counts(random, lengths.length);
      TrimCutting cutting = TrimCutting.of(pieces(lengths, counts), List.of(TrimStock.sold(Length.ofMillimetres(bar))),
          Length.ofMillimetres(kerf)).value();
      BarsProgram program = new BarsProgram(lengths, counts, kerf, List.of(new Bar(bar, 1, 0)));
      double fewest = Math.rint(program.least());
      worst.nextCase();
      double mine = answers == Answers.AS_GIVEN ? cutting.barsBought() : Math.ceil(byLength(lengths, counts, bar));
      String what = bar + " kerf " + kerf + " " + Arrays.toString(lengths) + " x " + Arrays.toString(counts);
      worst.see(mine - fewest, () -> what + ": " + mine + ", " + fewest);
      worst.see(Math.max(0, cutting.leastBarsBought() - fewest), () -> "bound of " + what);
      worst.see(cutting.isLeast() == (cutting.leastBarsBought() == cutting.barsBought()) ? 0 : 1, () -> "proof of " + what);
      proven += cutting.isLeast() ? 1 : 0;
      aboveParts += fewest > Math.ceil(program.leastByParts() - 1e-6) ? 1 : 0;
    }
    worst.note(proven + " of " + upTo + " proven by the core, " + aboveParts + " above the bound by parts of bars");
  }

  static long[] lengths(SplittableRandom random, long bar) {
    return random.longs(random.nextInt(2, 7), bar / 8, bar * 9 / 10).distinct().toArray();
  }

  static int[] counts(SplittableRandom random, int different) {
    return random.ints(different, 1, 5).toArray();
  }

  static List<TrimPiece> pieces(long[] lengths, int[] counts) {
    List<TrimPiece> pieces = new ArrayList<>();
    for (int i = 0; i < lengths.length; i++) {
      pieces.add(TrimPiece.of("wall " + i, Length.ofMillimetres(lengths[i])).times(counts[i]));
    }
    return pieces;
  }

  /** A fault: all pieces laid end to end. */
  private static double byLength(long[] lengths, int[] counts, long bar) {
    double all = 0;
    for (int i = 0; i < lengths.length; i++) {
      all += lengths[i] * counts[i];
    }
    return all / bar;
  }
}
