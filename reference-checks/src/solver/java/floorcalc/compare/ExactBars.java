package floorcalc.compare;

import com.google.ortools.Loader;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;

/**
 * Pieces cut from bars as an exact model for a general-purpose constraint solver (CP-SAT): how many of each piece come from each bar. It shares
 * nothing with the library, nor with the integer program over ways to fill a bar.
 */
final class ExactBars {
  private final long[] lengths;
  private final int[] counts;
  private final long kerf;

  ExactBars(long[] lengths, int[] counts, long kerf) {
    this.lengths = lengths;
    this.counts = counts;
    this.kerf = kerf;
  }

  /**
   * Bars of one kind.
   *
   * @param length the length of a bar
   * @param cost what a bar costs
   * @param number how many there are
   */
  record Bars(long length, long cost, int number) {}

  /** {@return the least cost; empty if it was not proven in the time given} */
  OptionalLong least(List<Bars> stock, int workers, double seconds) {
    Loader.loadNativeLibraries();
    CpModel model = new CpModel();
    LinearExprBuilder cost = LinearExpr.newBuilder();
    List<LinearExprBuilder> cut = new ArrayList<>();
    for (int i = 0; i < lengths.length; i++) {
      cut.add(LinearExpr.newBuilder());
    }
    for (Bars bars : stock) {
      IntVar before = null;
      for (int b = 0; b < bars.number(); b++) {
        IntVar used = model.newBoolVar("used");
        LinearExprBuilder taken = LinearExpr.newBuilder().addTerm(used, -(bars.length() + kerf));
        for (int i = 0; i < lengths.length; i++) {
          IntVar pieces = model.newIntVar(0, counts[i], "pieces");
          taken.addTerm(pieces, lengths[i] + kerf);
          cut.get(i).add(pieces);
        }
        model.addLessOrEqual(taken, 0);
        cost.addTerm(used, bars.cost());
        if (before != null) {
          model.addLessOrEqual(used, before); // bars of a kind are alike: those used come first
        }
        before = used;
      }
    }
    for (int i = 0; i < lengths.length; i++) {
      model.addEquality(cut.get(i), counts[i]);
    }
    model.minimize(cost);
    CpSolver solver = new CpSolver();
    solver.getParameters().setNumWorkers(workers).setMaxTimeInSeconds(seconds).setRandomSeed(1);
    return solver.solve(model) == CpSolverStatus.OPTIMAL ? OptionalLong.of(Math.round(solver.objectiveValue())) : OptionalLong.empty();
  }
}
