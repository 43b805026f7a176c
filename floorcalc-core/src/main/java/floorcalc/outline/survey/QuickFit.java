package floorcalc.outline.survey;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.exception.MathIllegalStateException;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresOptimizer.Optimum;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.fitting.leastsquares.MultivariateJacobianFunction;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.util.Pair;

/**
 * Fits corners to lengths and measured turns from a place that may be far off, quickly and without standard deviations: to sort
 * shapes before they are adjusted. Corner 1 stays at the origin, corner 2 on the x axis.
 */
final class QuickFit {
  private static final int MOST_STEPS = 100;
  private static final double CLOSE = 1e-10;

  private final int n;
  private final List<double[]> lengths = new ArrayList<>();
  private final List<double[]> turns = new ArrayList<>();

  QuickFit(Survey survey) {
    n = survey.size();
    for (int i = 0; i < n; i++) {
      var length = survey.walls().get(i).length();
      lengths.add(new double[] {i, (i + 1) % n, length.toMillimetres(), survey.uncertainty().ofLength(length)});
      Turn turn = survey.walls().get(i).turn();
      if (turn.isMeasured()) {
        turns.add(new double[] {(i + 1) % n, StrictMath.toRadians(turn.degrees().getAsDouble()),
            StrictMath.toRadians(survey.uncertainty().turnDegrees())});
      }
    }
    for (Tie tie : survey.ties()) {
      lengths.add(new double[] {tie.from() - 1, tie.to() - 1, tie.length().toMillimetres(),
          survey.uncertainty().ofLength(tie.length())});
    }
  }

  /** The fit that is found from a place, its misfit the sum of squares; nothing if none is found. */
  Optional<Layout> from(Layout about) {
    double[] start = new double[2 * n - 3];
    for (int k = 0; k < start.length; k++) {
      start[k] = about.place()[coordinate(k)];
    }
    try {
      Optimum best = new LevenbergMarquardtOptimizer().withCostRelativeTolerance(CLOSE).withParameterRelativeTolerance(CLOSE)
          .optimize(new LeastSquaresBuilder().start(start).target(new double[lengths.size() + turns.size()])
              .model(model()).maxEvaluations(MOST_STEPS).maxIterations(MOST_STEPS).build());
      RealVector point = best.getPoint();
      double[] place = place(point.getEntry(0) < 0 ? point.mapMultiply(-1) : point);
      double cost = best.getCost() * best.getCost();
      return Double.isFinite(cost) ? Optional.of(new Layout(place, cost)) : Optional.empty();
    } catch (MathIllegalStateException tooManySteps) {
      return Optional.empty();
    }
  }

  /** The free coordinates are all but those of corner 1 and y of corner 2. */
  private static int coordinate(int k) {
    return k == 0 ? 2 : k + 3;
  }

  private double[] place(RealVector free) {
    double[] place = new double[2 * n];
    for (int k = 0; k < free.getDimension(); k++) {
      place[coordinate(k)] = free.getEntry(k);
    }
    return place;
  }

  private MultivariateJacobianFunction model() {
    return free -> {
      Layout layout = new Layout(place(free), 0);
      double[] off = new double[lengths.size() + turns.size()];
      double[][] slopes = new double[off.length][];
      for (int i = 0; i < lengths.size(); i++) {
        double[] one = lengths.get(i);
        int a = (int) one[0];
        int b = (int) one[1];
        double distance = Math.max(1e-6, layout.distance(a, b));
        off[i] = (distance - one[2]) / one[3];
        double[] row = new double[2 * n];
        double dx = (layout.x(b) - layout.x(a)) / distance / one[3];
        double dy = (layout.y(b) - layout.y(a)) / distance / one[3];
        row[2 * b] += dx;
        row[2 * b + 1] += dy;
        row[2 * a] -= dx;
        row[2 * a + 1] -= dy;
        slopes[i] = row;
      }
      for (int i = 0; i < turns.size(); i++) {
        double[] one = turns.get(i);
        int corner = (int) one[0];
        off[lengths.size() + i] = StrictMath.IEEEremainder(StrictMath.toRadians(layout.turn(corner)) - one[1],
            2 * StrictMath.PI) / one[2];
        double[] row = new double[2 * n];
        swing(row, layout, corner, Math.floorMod(corner + 1, n), 1 / one[2]);
        swing(row, layout, Math.floorMod(corner - 1, n), corner, -1 / one[2]);
        slopes[lengths.size() + i] = row;
      }
      return new Pair<>(new ArrayRealVector(off, false), new Array2DRowRealMatrix(freeColumns(slopes), false));
    };
  }

  private static void swing(double[] row, Layout layout, int a, int b, double times) {
    double dx = layout.x(b) - layout.x(a);
    double dy = layout.y(b) - layout.y(a);
    double square = Math.max(1e-12, dx * dx + dy * dy);
    row[2 * b] -= times * dy / square;
    row[2 * b + 1] += times * dx / square;
    row[2 * a] += times * dy / square;
    row[2 * a + 1] -= times * dx / square;
  }

  private double[][] freeColumns(double[][] slopes) {
    double[][] free = new double[slopes.length][2 * n - 3];
    for (int i = 0; i < slopes.length; i++) {
      for (int k = 0; k < free[i].length; k++) {
        free[i][k] = slopes[i][coordinate(k)];
      }
    }
    return free;
  }
}
