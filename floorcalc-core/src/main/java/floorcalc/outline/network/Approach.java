package floorcalc.outline.network;

import java.util.stream.IntStream;

/**
 * Brings points near the least sum in many cheap steps, before few exact ones: Levenberg and Marquardt's way, by normal
 * equations. They are never solved without damping, so it does not matter what they do not tell.
 */
final class Approach {
  private static final int MOST_STEPS = 200;
  private static final double FIRST_DAMPING = 1e-3;
  private static final double LEAST_DAMPING = 1e-9;
  private static final double MOST_DAMPING = 1e6;
  /** A step that moves nothing by more than this part of the network's size, or lessens the sum by less, is the last. */
  private static final double NEAR = 1e-6;

  private final Equations equations;
  private final int[] free;
  private final double size;
  private final double[] place;

  private Approach(Equations equations, int[] free, double[] place, double size) {
    this.equations = equations;
    this.free = free;
    this.place = place;
    this.size = size;
  }

  /** Moves the free coordinates of some places; no observation may be exact. */
  static void of(Equations equations, int[] free, double[] place, double size) {
    new Approach(equations, free, place, size).go();
  }

  private void go() {
    double damping = FIRST_DAMPING;
    double before = squares();
    for (int step = 0; step < MOST_STEPS; step++) {
      double[][] normal = new double[free.length][free.length];
      double[] right = new double[free.length];
      equations(normal, right);
      double most = IntStream.range(0, free.length).mapToDouble(i -> normal[i][i]).max().orElse(0);
      if (most == 0) {
        return;
      }
      double[] from = place.clone();
      double now = Double.MAX_VALUE;
      double length = 0;
      while (now > before && damping <= MOST_DAMPING) {
        double[] move = solved(normal, right, damping * most);
        length = 0;
        for (int j = 0; j < free.length; j++) {
          place[free[j]] = from[free[j]] + move[j];
          length = Math.max(length, StrictMath.abs(move[j]));
        }
        now = squares();
        damping *= now > before ? 10 : 0.1;
      }
      if (!(now <= before)) {
        System.arraycopy(from, 0, place, 0, place.length);
        return;
      }
      damping = Math.max(damping, LEAST_DAMPING);
      if (length < NEAR * size || before - now < NEAR * before) {
        return;
      }
      before = now;
    }
  }

  private double squares() {
    double sum = 0;
    for (int i = 0; i < equations.size(); i++) {
      double off = equations.misclosure(i, place) / equations.deviation(i);
      sum += off * off;
    }
    return sum;
  }

  private void equations(double[][] normal, double[] right) {
    for (int i = 0; i < equations.size(); i++) {
      double scale = 1 / equations.deviation(i);
      double off = equations.misclosure(i, place) * scale;
      double[] slopes = equations.slopes(i, place);
      int[] told = IntStream.range(0, free.length).filter(j -> slopes[free[j]] != 0).toArray();
      for (int j : told) {
        double slope = slopes[free[j]] * scale;
        right[j] += slope * off;
        for (int k : told) {
          normal[j][k] += slope * slopes[free[k]] * scale;
        }
      }
    }
  }

  /** Solves normal equations with something added to their diagonal, by Cholesky's way. */
  private static double[] solved(double[][] normal, double[] right, double added) {
    int n = right.length;
    double[][] lower = new double[n][n];
    double[] result = new double[n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j <= i; j++) {
        double sum = normal[i][j] + (i == j ? added : 0);
        for (int k = 0; k < j; k++) {
          sum -= lower[i][k] * lower[j][k];
        }
        lower[i][j] = i == j ? StrictMath.sqrt(Math.max(sum, added * 1e-6)) : sum / lower[j][j];
      }
      double sum = right[i];
      for (int k = 0; k < i; k++) {
        sum -= lower[i][k] * result[k];
      }
      result[i] = sum / lower[i][i];
    }
    for (int i = n - 1; i >= 0; i--) {
      for (int k = i + 1; k < n; k++) {
        result[i] -= lower[k][i] * result[k];
      }
      result[i] /= lower[i][i];
    }
    return result;
  }
}
