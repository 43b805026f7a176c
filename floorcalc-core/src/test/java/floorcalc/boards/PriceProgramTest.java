package floorcalc.boards;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import floorcalc.MoreTries;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.lifecycle.AddLifecycleHook;
import org.apache.commons.math3.optim.linear.LinearConstraint;
import org.apache.commons.math3.optim.linear.LinearConstraintSet;
import org.apache.commons.math3.optim.linear.LinearObjectiveFunction;
import org.apache.commons.math3.optim.linear.NonNegativeConstraint;
import org.apache.commons.math3.optim.linear.Relationship;
import org.apache.commons.math3.optim.linear.SimplexSolver;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.junit.jupiter.api.Test;

@AddLifecycleHook(MoreTries.class)
class PriceProgramTest {

  @Test
  void oneWayIsPricedAtItsDearestRise() {
    PriceProgram program = new PriceProgram(3);
    program.add(new double[] {2, 5, 3});
    assertThat(program.limit()).isEqualTo(5);
    assertThat(program.prices()).containsExactly(0, 1, 0);
  }

  @Test
  void twoWaysAreMixedSoThatNeitherRiseIsDearer() {
    // x * 4 + (1 - x) * 1 = x * 2 + (1 - x) * 4 at x = 3/5: 2.8. Prices p, 1 - p with 4p + 2(1 - p) = p + 4(1 - p): p = 2/5.
    PriceProgram program = new PriceProgram(2);
    program.add(new double[] {4, 2});
    program.add(new double[] {1, 4});
    assertThat(program.limit()).isCloseTo(2.8, within(1e-12));
    assertThat(program.prices()[0]).isCloseTo(0.4, within(1e-12));
    assertThat(program.prices()[1]).isCloseTo(0.6, within(1e-12));
    assertThat(program.shared()).containsExactly(0, 1);
  }

  @Test
  void aWayThatIsDearerAtEveryRiseHasNoShare() {
    PriceProgram program = new PriceProgram(2);
    program.add(new double[] {1, 2});
    program.add(new double[] {2, 3});
    assertThat(program.limit()).isEqualTo(2);
    assertThat(program.shared()).containsExactly(0);
  }

  /** The same program by a general solver: the greatest v with v at most what each way costs at prices that are together 1. */
  private static double bySolver(List<double[]> ways) {
    int rises = ways.get(0).length;
    List<LinearConstraint> constraints = new ArrayList<>();
    for (double[] way : ways) {
      double[] row = new double[rises + 1];
      for (int j = 0; j < rises; j++) {
        row[j] = -way[j];
      }
      row[rises] = 1;
      constraints.add(new LinearConstraint(row, Relationship.LEQ, 0));
    }
    double[] one = new double[rises + 1];
    Arrays.fill(one, 0, rises, 1);
    constraints.add(new LinearConstraint(one, Relationship.EQ, 1));
    double[] goal = new double[rises + 1];
    goal[rises] = 1;
    return new SimplexSolver().optimize(new LinearObjectiveFunction(goal, 0), new LinearConstraintSet(constraints),
        GoalType.MAXIMIZE, new NonNegativeConstraint(true)).getValue();
  }

  @Property(tries = 200)
  void theLimitIsThatOfAGeneralSolver(@ForAll @IntRange(min = 1, max = 12) int rises,
      @ForAll @IntRange(min = 1, max = 15) int count, @ForAll int seed) {
    Random random = new Random(seed);
    PriceProgram program = new PriceProgram(rises);
    List<double[]> ways = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      ways.add(random.doubles(rises).map(cost -> Math.rint(10 * cost) / 2).toArray());
      program.add(ways.get(i));
    }
    assertThat(program.limit()).isCloseTo(bySolver(ways), within(1e-7));
    double[] prices = program.prices();
    assertThat(Arrays.stream(prices).sum()).isCloseTo(1, within(1e-12));
    for (double[] way : ways) {
      double cost = 0;
      for (int j = 0; j < rises; j++) {
        assertThat(prices[j]).isNotNegative();
        cost += prices[j] * way[j];
      }
      assertThat(cost).isGreaterThanOrEqualTo(program.limit() - 1e-7);
    }
  }
}
