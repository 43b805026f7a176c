package floorcalc.differential;

import floorcalc.outline.network.Held;
import floorcalc.outline.network.NetworkPoint;
import floorcalc.outline.network.Observation;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.hipparchus.analysis.differentiation.Gradient;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresFactory;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.util.Pair;

/**
 * The adjustment of a network by another library: Levenberg-Marquardt of Hipparchus, slopes by automatic differentiation,
 * variances by QR. A free network is worked out with as many coordinates held as it takes, laid on the approximate places
 * by the turn and the shift that leave the least squares between them, and its variances are carried over to the inner
 * constraints by their projection.
 */
final class OtherLeastSquares {
  private final List<NetworkPoint> points;
  private final List<Observation> observations;
  private final int[] free;
  private final boolean[] held;
  private final boolean laidOn;
  private final boolean turns;
  private double[] place;
  private final RealMatrix variances;
  private final RealMatrix slopes;
  private final RealMatrix ofFree;

  /** Works out a network of which no observation is exact. */
  OtherLeastSquares(List<NetworkPoint> points, List<Observation> observations) {
    this.points = points;
    this.observations = observations;
    place = new double[2 * points.size()];
    held = new boolean[place.length];
    for (int i = 0; i < points.size(); i++) {
      Held of = points.get(i).held();
      place[2 * i] = points.get(i).x();
      place[2 * i + 1] = points.get(i).y();
      held[2 * i] = of == Held.X || of == Held.BOTH;
      held[2 * i + 1] = of == Held.Y || of == Held.BOTH;
    }
    laidOn = IntStream.range(0, held.length).noneMatch(i -> held[i]);
    turns = observations.stream().noneMatch(o -> o.kind() == Observation.Kind.BEARING);
    if (laidOn) {
      holdEnough();
    }
    free = IntStream.range(0, place.length).filter(i -> !held[i]).toArray();
    fit();
    if (laidOn) {
      layOn();
    }
    slopes = jacobian(freeOf(place));
    RealMatrix root = inverseOfR(new QRDecomposition(slopes));
    ofFree = root.multiplyTransposed(root);
    RealMatrix all = MatrixUtils.createRealMatrix(place.length, place.length);
    for (int i = 0; i < free.length; i++) {
      for (int j = 0; j < free.length; j++) {
        all.setEntry(free[i], free[j], ofFree.getEntry(i, j));
      }
    }
    variances = laidOn ? innerConstraints(all) : all;
  }

  double[] place() {
    return place.clone();
  }

  double deviation(int coordinate) {
    return Math.sqrt(Math.max(0, variances.getEntry(coordinate, coordinate)));
  }

  double covariance(int one, int other) {
    return variances.getEntry(one, other);
  }

  /** The variance of an observation's adjusted value, in units of the variance of the observation. */
  double ownShare(int observation) {
    RealVector row = slopes.getRowVector(observation);
    return row.dotProduct(ofFree.operate(row));
  }

  /** Adjusted less observed, in units of the standard deviation. */
  double[] residuals() {
    return values(freeOf(place)).toArray();
  }

  double squares() {
    double sum = 0;
    for (double residual : residuals()) {
      sum += residual * residual;
    }
    return sum;
  }

  int redundancy() {
    return observations.size() - free.length;
  }

  /** Holds the first point and, if the network may turn, of the point farthest from it the coordinate that turns. */
  private void holdEnough() {
    held[0] = true;
    held[1] = true;
    if (turns) {
      int far = IntStream.range(1, points.size()).boxed().max((a, b) -> Double.compare(reach(a), reach(b))).orElseThrow();
      boolean across = Math.abs(place[2 * far] - place[0]) > Math.abs(place[2 * far + 1] - place[1]);
      held[2 * far + (across ? 1 : 0)] = true;
    }
  }

  private double reach(int i) {
    return StrictMath.hypot(place[2 * i] - place[0], place[2 * i + 1] - place[1]);
  }

  private double[] freeOf(double[] all) {
    return IntStream.of(free).mapToDouble(i -> all[i]).toArray();
  }

  private void fit() {
    RealVector start = new ArrayRealVector(freeOf(place));
    RealVector found = new LevenbergMarquardtOptimizer().optimize(LeastSquaresFactory.create(
        at -> new Pair<>(values(at.toArray()), jacobian(at.toArray())),
        new ArrayRealVector(observations.size()), start, null, 100_000, 100_000)).getPoint();
    found = polished(found);
    for (int j = 0; j < free.length; j++) {
      place[free[j]] = found.getEntry(j);
    }
  }

  /** Gauss-Newton steps, or parts of them, for as long as the next one becomes shorter. */
  private RealVector polished(RealVector start) {
    RealVector at = start;
    RealVector move = step(at);
    for (double part = 1; part > 1e-3;) {
      RealVector next = at.subtract(move.mapMultiply(part));
      RealVector nextMove = step(next);
      if (nextMove.getNorm() < move.getNorm()) {
        at = next;
        move = nextMove;
      } else {
        part /= 2;
      }
    }
    return at;
  }

  private RealVector step(RealVector at) {
    return new QRDecomposition(jacobian(at.toArray())).getSolver().solve(values(at.toArray()));
  }

  private RealVector values(double[] at) {
    return new ArrayRealVector(gradients(at).stream().mapToDouble(Gradient::getValue).toArray());
  }

  private RealMatrix jacobian(double[] at) {
    return new Array2DRowRealMatrix(gradients(at).stream().map(Gradient::getGradient).toArray(double[][]::new), false);
  }

  private List<Gradient> gradients(double[] at) {
    Gradient[] all = new Gradient[place.length];
    for (int i = 0; i < place.length; i++) {
      all[i] = Gradient.constant(at.length, place[i]);
    }
    for (int j = 0; j < free.length; j++) {
      all[free[j]] = Gradient.variable(at.length, j, at[j]);
    }
    List<Gradient> off = new ArrayList<>();
    for (Observation o : observations) {
      int a = index(o.at());
      int to = index(o.to());
      Gradient computed = switch (o.kind()) {
        case DISTANCE -> all[2 * to].subtract(all[2 * a]).hypot(all[2 * to + 1].subtract(all[2 * a + 1]))
            .subtract(o.value());
        case BEARING -> way(all, a, to).subtract(Math.toRadians(o.value()));
        case ANGLE -> way(all, a, to).subtract(way(all, a, index(o.from()))).subtract(Math.toRadians(o.value()));
      };
      if (o.kind() == Observation.Kind.DISTANCE) {
        off.add(computed.divide(o.deviation()));
      } else {
        double turnsTooMany = 2 * Math.PI * Math.rint(computed.getValue() / (2 * Math.PI));
        off.add(computed.subtract(turnsTooMany).divide(Math.toRadians(o.deviation())));
      }
    }
    return off;
  }

  private static Gradient way(Gradient[] all, int a, int b) {
    return all[2 * b + 1].subtract(all[2 * a + 1]).atan2(all[2 * b].subtract(all[2 * a]));
  }

  private int index(String name) {
    return IntStream.range(0, points.size()).filter(i -> points.get(i).name().equals(name)).findFirst().orElseThrow();
  }

  private static RealMatrix inverseOfR(QRDecomposition qr) {
    RealMatrix r = qr.getR();
    int n = r.getColumnDimension();
    return MatrixUtils.inverse(r.getSubMatrix(0, n - 1, 0, n - 1));
  }

  /** Shifts and turns the points so that the squares of their distances from the approximate places are least in sum. */
  private void layOn() {
    int n = points.size();
    double fromX = middle(0);
    double fromY = middle(1);
    double toX = points.stream().mapToDouble(NetworkPoint::x).average().orElseThrow();
    double toY = points.stream().mapToDouble(NetworkPoint::y).average().orElseThrow();
    double along = 0;
    double across = 0;
    for (int i = 0; turns && i < n; i++) {
      double x = place[2 * i] - fromX;
      double y = place[2 * i + 1] - fromY;
      double u = points.get(i).x() - toX;
      double v = points.get(i).y() - toY;
      along += x * u + y * v;
      across += x * v - y * u;
    }
    double turn = turns ? StrictMath.atan2(across, along) : 0;
    double[] laid = new double[2 * n];
    for (int i = 0; i < n; i++) {
      double x = place[2 * i] - fromX;
      double y = place[2 * i + 1] - fromY;
      laid[2 * i] = toX + x * StrictMath.cos(turn) - y * StrictMath.sin(turn);
      laid[2 * i + 1] = toY + x * StrictMath.sin(turn) + y * StrictMath.cos(turn);
    }
    place = laid;
  }

  private double middle(int axis) {
    return IntStream.range(0, points.size()).mapToDouble(i -> place[2 * i + axis]).average().orElseThrow();
  }

  /** S Q S' with S = I - N (N'N)^-1 N', N: shift along x, shift along y, turn about the middle. */
  private RealMatrix innerConstraints(RealMatrix q) {
    RealMatrix ways = MatrixUtils.createRealMatrix(place.length, turns ? 3 : 2);
    double size = IntStream.range(1, points.size()).mapToDouble(this::reach).max().orElseThrow();
    for (int i = 0; i < points.size(); i++) {
      ways.setEntry(2 * i, 0, 1);
      ways.setEntry(2 * i + 1, 1, 1);
      if (turns) {
        ways.setEntry(2 * i, 2, -(place[2 * i + 1] - middle(1)) / size);
        ways.setEntry(2 * i + 1, 2, (place[2 * i] - middle(0)) / size);
      }
    }
    RealMatrix inner = MatrixUtils.inverse(ways.transposeMultiply(ways));
    RealMatrix s = MatrixUtils.createRealIdentityMatrix(place.length)
        .subtract(ways.multiply(inner).multiplyTransposed(ways));
    return s.multiply(q).multiplyTransposed(s);
  }
}
