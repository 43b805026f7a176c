package floorcalc.differential;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;
import org.ojalgo.optimisation.integer.IntegerStrategy;

/**
 * Pieces from bars as an integer program: one variable for each way to fill a bar so full that no piece more goes in, and one
 * constraint for each length of piece. Solved by ojAlgo's branch and bound.
 * <p>
 * A limit of ojAlgo: version 57.1.0 calls 7 bars optimal for 4 x 722, 2618, 4 x 1809 and 3 x 1216 from bars of 3769 with a kerf of 3,
 * where 5 do (2618 + 722, twice 1809 + 1809, 3 x 1216, 3 x 722), and gives up on others; 56.2.1 recurses until the stack is full on some.
 * Version 55.2.0 solved all of 11 000 programs, each to the same number as the core.
 */
final class BarsProgram {
  private final long[] lengths;
  private final int[] counts;
  private final long kerf;
  private final List<Bar> bars;

  /**
   * A kind of bar.
   *
   * @param length its length
   * @param cost what one costs
   * @param limit how many there are at most; 0 if there is no limit
   */
  record Bar(long length, long cost, int limit) {}

  BarsProgram(long[] lengths, int[] counts, long kerf, List<Bar> bars) {
    this.lengths = lengths;
    this.counts = counts;
    this.kerf = kerf;
    this.bars = bars;
  }

  /** {@return the least cost; NaN if the program was not solved to its end} */
  double least() {
    return solve(Numbers.WHOLE);
  }

  /** {@return the least cost if parts of bars could be bought} */
  double leastByParts() {
    return solve(Numbers.ANY);
  }

  private enum Numbers { WHOLE, ANY }

  private double solve(Numbers numbers) {
    QuietOjalgo.beQuiet();
    ExpressionsBasedModel model = new ExpressionsBasedModel();
    // One thread and no clock: several threads, and limits on time, may give another answer on a busy machine.
    model.options.integer(IntegerStrategy.DEFAULT.withParallelism(() -> 1));
    model.options.time_suffice = Long.MAX_VALUE;
    model.options.time_abort = Long.MAX_VALUE;
    Expression[] wanted = new Expression[lengths.length];
    for (int i = 0; i < wanted.length; i++) {
      wanted[i] = model.addExpression("piece " + i).lower(counts[i]);
    }
    for (int k = 0; k < bars.size(); k++) {
      Bar bar = bars.get(k);
      Expression number = bar.limit() > 0 ? model.addExpression("bars " + k).upper(bar.limit()) : null;
      for (int[] filling : fillings(bar.length())) {
        Variable variable = model.addVariable().lower(0).weight(bar.cost());
        if (numbers == Numbers.WHOLE) {
          variable.integer();
        }
        for (int i = 0; i < wanted.length; i++) {
          if (filling[i] > 0) {
            wanted[i].set(variable, filling[i]);
          }
        }
        if (number != null) {
          number.set(variable, 1);
        }
      }
    }
    Optimisation.Result result = model.minimise();
    return result.getState().isOptimal() ? result.getValue() : Double.NaN;
  }

  private List<int[]> fillings(long bar) {
    List<int[]> all = new ArrayList<>();
    fill(all, new int[lengths.length], 0, bar + kerf);
    return all;
  }

  private void fill(List<int[]> all, int[] filling, int from, long room) {
    if (from == lengths.length) {
      for (int i = 0; i < filling.length; i++) {
        if (filling[i] < counts[i] && lengths[i] + kerf <= room) {
          return; // another one of these goes in
        }
      }
      if (Arrays.stream(filling).sum() > 0) {
        all.add(filling.clone());
      }
      return;
    }
    for (int k = 0; k <= counts[from] && k * (lengths[from] + kerf) <= room; k++) {
      filling[from] = k;
      fill(all, filling, from + 1, room - k * (lengths[from] + kerf));
    }
    filling[from] = 0;
  }
}
