package floorcalc.differential;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;

/**
 * Pieces from bars as an integer program: one variable for each way to fill a bar so full that no piece more goes in, and one
 * constraint for each length of piece. Solved by ojAlgo's branch and bound.
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
    ExpressionsBasedModel model = new ExpressionsBasedModel();
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
