package floorcalc.compare;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.compare.ExactBars.Bars;
import floorcalc.measure.Length;
import floorcalc.trims.TrimCutting;
import floorcalc.trims.TrimPiece;
import floorcalc.trims.TrimStock;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalLong;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Trims cut from bars: the core buys as little as the constraint solver proves to be the least, and its bound is never above it. */
class ExactBarsTest {
  private static final int WORKERS = 2;
  private static final int CASES = (int) (40 * Double.parseDouble(System.getProperty("floorcalc.cases", "1")));

  /** Three pieces of 1290 and one of 520 from 2400 with a kerf of 3: no two of 1290 share a bar, so three bars. */
  @Test
  void theModelIsRightByHand() {
    ExactBars exact = new ExactBars(new long[] {1290, 520}, new int[] {3, 1}, 3);

    assertThat(exact.least(List.of(new Bars(2400, 1, 4)), WORKERS, 20)).hasValue(3);
    assertThat(exact.least(List.of(new Bars(2400, 2400, 4), new Bars(1300, 1300, 4)), WORKERS, 20)).hasValue(2 * 1300 + 2400);
  }

  @Test
  void fewestBarsOfOneLength() {
    SplittableRandom random = new SplittableRandom(331);
    int proven = 0;
    for (int k = 0; k < CASES; k++) {
      long bar = random.nextLong(1800, 5000);
      long kerf = random.nextLong(6);
      long[] lengths = random.longs(random.nextInt(3, 10), bar / 8, bar * 9 / 10).distinct().toArray();
      int[] counts = random.ints(lengths.length, 1, 5).toArray();
      String what = bar + " kerf " + kerf + " " + Arrays.toString(lengths) + " x " + Arrays.toString(counts);

      TrimCutting cutting = TrimCutting.of(pieces(lengths, counts), List.of(TrimStock.sold(mm(bar))), mm(kerf)).value();

      OptionalLong fewest = new ExactBars(lengths, counts, kerf).least(List.of(new Bars(bar, 1, cutting.barsBought())), WORKERS, 8);
      if (fewest.isPresent()) {
        proven++;
        assertThat((long) cutting.barsBought()).as(what).isEqualTo(fewest.getAsLong());
        assertThat(cutting.leastBarsBought()).as(what).isLessThanOrEqualTo(fewest.getAsLong());
      }
    }
    assertThat(proven).as("settled by the solver in time").isGreaterThan(CASES / 2);
  }

  @Test
  void leastLengthOfTwoLengthsAndBarsOnHand() {
    SplittableRandom random = new SplittableRandom(337);
    int proven = 0;
    for (int k = 0; k < CASES; k++) {
      long bar = random.nextLong(2400, 5000);
      long shorter = bar * 2 / 3;
      long onHand = random.nextLong(bar / 3, bar);
      long kerf = random.nextLong(6);
      long[] lengths = random.longs(random.nextInt(2, 5), bar / 8, bar * 9 / 10).distinct().toArray();
      int[] counts = random.ints(lengths.length, 1, 4).toArray();
      String what = bar + ", " + shorter + ", on hand " + onHand + " kerf " + kerf + " " + Arrays.toString(lengths) + " x "
          + Arrays.toString(counts);

      TrimCutting cutting = TrimCutting.of(pieces(lengths, counts),
          List.of(TrimStock.sold(mm(bar)), TrimStock.sold(mm(shorter)), TrimStock.onHand(mm(onHand), 1)), mm(kerf)).value();

      int most = Arrays.stream(counts).sum();
      OptionalLong least = new ExactBars(lengths, counts, kerf)
          .least(List.of(new Bars(bar, bar, most), new Bars(shorter, shorter, most), new Bars(onHand, 0, 1)), WORKERS, 8);
      if (least.isPresent()) {
        proven++;
        assertThat(cutting.lengthBought()).as(what).isEqualTo(mm(least.getAsLong()));
        assertThat(cutting.leastLengthBought().orElseThrow()).as(what).isLessThanOrEqualTo(mm(least.getAsLong()));
      }
    }
    assertThat(proven).as("settled by the solver in time").isGreaterThan(CASES / 2);
  }

  private static List<TrimPiece> pieces(long[] lengths, int[] counts) {
    List<TrimPiece> pieces = new ArrayList<>();
    for (int i = 0; i < lengths.length; i++) {
      pieces.add(TrimPiece.of("wall " + i, mm(lengths[i])).times(counts[i]));
    }
    return pieces;
  }

  private static Length mm(long millimetres) {
    return Length.ofMillimetres(millimetres);
  }
}
