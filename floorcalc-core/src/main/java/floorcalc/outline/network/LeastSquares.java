package floorcalc.outline.network;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/**
 * Gauss-Newton steps over the coordinates that are not held. Exact observations are met by the shortest move; what they
 * leave free is moved by the others. Each step is halved as long as it makes the fit worse.
 */
final class LeastSquares {
  private static final int MOST_STEPS = 200;
  private static final int MOST_HALVINGS = 30;
  /** A step below this part of the network's size is rounding. */
  private static final double AT_REST = 1e-13;

  private final List<NetworkPoint> points;
  private final Equations equations;
  private final int[] exact;
  private final int[] measured;
  private final int[] free;
  private final double middleX;
  private final double middleY;
  private final double size;
  private final double[] place;

  LeastSquares(List<NetworkPoint> points, Equations equations) {
    this.points = points;
    this.equations = equations;
    exact = IntStream.range(0, equations.size()).filter(i -> equations.get(i).isExact()).toArray();
    measured = IntStream.range(0, equations.size()).filter(i -> !equations.get(i).isExact()).toArray();
    free = IntStream.range(0, 2 * points.size())
        .filter(i -> !(i % 2 == 0 ? points.get(i / 2).holdsX() : points.get(i / 2).holdsY())).toArray();
    middleX = points.stream().mapToDouble(NetworkPoint::x).average().orElseThrow();
    middleY = points.stream().mapToDouble(NetworkPoint::y).average().orElseThrow();
    place = new double[2 * points.size()];
    double reach = 0;
    for (int i = 0; i < points.size(); i++) {
      place[2 * i] = points.get(i).x() - middleX;
      place[2 * i + 1] = points.get(i).y() - middleY;
      reach = Math.max(reach, Math.max(StrictMath.abs(place[2 * i]), StrictMath.abs(place[2 * i + 1])));
    }
    size = reach == 0 ? 1 : reach;
  }

  Adjustment adjust() {
    double lastStep = Double.POSITIVE_INFINITY;
    boolean atRest = free.length == 0;
    for (int step = 0; step < MOST_STEPS && !atRest; step++) {
      double[] move = new Tangent().move();
      double length = take(move);
      atRest = length <= AT_REST * size || length < 1e-9 * size && length >= lastStep;
      lastStep = length;
    }
    return result(atRest);
  }

  /** Moves the points, by less if that fits better; returns how far the farthest went. */
  private double take(double[] move) {
    double[] start = place.clone();
    double before = misfit();
    double part = 1;
    for (int halving = 0; halving <= MOST_HALVINGS; halving++) {
      double length = 0;
      for (int j = 0; j < free.length; j++) {
        place[free[j]] = start[free[j]] + part * move[j];
        length = Math.max(length, StrictMath.abs(part * move[j]));
      }
      if (misfit() <= before || length < 1e-9 * size) {
        return length;
      }
      part /= 2;
    }
    System.arraycopy(start, 0, place, 0, place.length);
    return 0;
  }

  /** What a step must not make worse: the squares, and a heavy weight on what exact observations are off. */
  private double misfit() {
    double sum = 0;
    for (int i : measured) {
      double off = equations.misclosure(i, place) / equations.deviation(i);
      sum += off * off;
    }
    for (int i : exact) {
      double off = equations.misclosure(i, place);
      double scaled = equations.get(i).kind() == Observation.Kind.DISTANCE ? off / size : off;
      sum += 1e12 * scaled * scaled;
    }
    return sum;
  }

  private double[] row(int observation, double scale) {
    double[] all = equations.slopes(observation, place);
    double[] row = new double[free.length];
    for (int j = 0; j < free.length; j++) {
      row[j] = all[free[j]] * scale;
    }
    return row;
  }

  /** The observations as straight lines at the present places. */
  private final class Tangent {
    private final RealVector kept;
    private final RealMatrix ways;
    private final Linear fit;
    private final double[] off;

    Tangent() {
      double[][] rows = new double[exact.length][];
      double[] misclosures = new double[exact.length];
      for (int k = 0; k < exact.length; k++) {
        double scale = equations.get(exact[k]).kind() == Observation.Kind.DISTANCE ? 1 : size;
        rows[k] = row(exact[k], scale);
        misclosures[k] = equations.misclosure(exact[k], place) * scale;
      }
      Linear rules = Linear.of(rows, free.length);
      kept = rules.solve(misclosures);
      ways = rules.free() == 0 ? null : rules.leftFree();
      off = new double[measured.length];
      double[][] slopes = new double[measured.length][];
      RealMatrix way = ways == null ? new Array2DRowRealMatrix(free.length, 1) : ways;
      for (int k = 0; k < measured.length; k++) {
        double scale = 1 / equations.deviation(measured[k]);
        double[] row = row(measured[k], scale);
        off[k] = equations.misclosure(measured[k], place) * scale - dot(row, kept);
        slopes[k] = way.preMultiply(row);
      }
      fit = Linear.of(slopes, way.getColumnDimension());
    }

    double[] move() {
      return ways == null ? kept.toArray() : kept.add(ways.operate(fit.solve(off))).toArray();
    }

    /** Times its own transpose: the variances of the free coordinates. */
    RealMatrix root() {
      return ways == null ? new Array2DRowRealMatrix(free.length, 1) : ways.multiply(fit.rootOfVariances());
    }

    int moves() {
      return ways == null ? 0 : ways.getColumnDimension() - fit.rank();
    }

    /** Ways in which the points can move without any observation noticing, free coordinates down, one a column. */
    RealMatrix unnoticed() {
      return ways.multiply(fit.leftFree());
    }
  }

  private static double dot(double[] row, RealVector vector) {
    double sum = 0;
    for (int j = 0; j < row.length; j++) {
      sum += row[j] * vector.getEntry(j);
    }
    return sum;
  }

  private Adjustment result(boolean atRest) {
    Tangent tangent = free.length == 0 ? null : new Tangent();
    RealMatrix variances = new Array2DRowRealMatrix(place.length, place.length);
    if (tangent != null) {
      RealMatrix root = tangent.root();
      RealMatrix of = root.multiply(root.transpose());
      for (int i = 0; i < free.length; i++) {
        for (int j = 0; j < free.length; j++) {
          variances.setEntry(free[i], free[j], of.getEntry(i, j));
        }
      }
    }
    List<AdjustedObservation> adjusted = new ArrayList<>();
    double squares = 0;
    int position = 0;
    for (int i = 0; i < equations.size(); i++) {
      Observation observation = equations.get(i);
      double residual = -equations.misclosure(i, place);
      double unit = observation.kind() == Observation.Kind.DISTANCE ? 1 : StrictMath.toDegrees(1);
      double own = 1;
      double redundancy = 0;
      if (!observation.isExact()) {
        own = tangent == null || tangent.ways == null ? 0 : tangent.fit.ownShare(position);
        redundancy = Math.max(0, 1 - own);
        position++;
        squares += residual * residual / (equations.deviation(i) * equations.deviation(i));
      }
      adjusted.add(new AdjustedObservation(observation, observation.value() + residual * unit, residual * unit,
          observation.deviation() * StrictMath.sqrt(Math.min(1, own)), redundancy));
    }
    List<AdjustedPoint> places = new ArrayList<>();
    for (int i = 0; i < points.size(); i++) {
      places.add(new AdjustedPoint(points.get(i).name(),
          points.get(i).holdsX() ? points.get(i).x() : place[2 * i] + middleX,
          points.get(i).holdsY() ? points.get(i).y() : place[2 * i + 1] + middleY,
          root(variances.getEntry(2 * i, 2 * i)), root(variances.getEntry(2 * i + 1, 2 * i + 1)),
          variances.getEntry(2 * i, 2 * i + 1)));
    }
    int fitted = tangent == null || tangent.ways == null ? 0 : tangent.fit.rank();
    double missed = 0;
    for (int i : exact) {
      double off = StrictMath.abs(equations.misclosure(i, place));
      missed = Math.max(missed, equations.get(i).kind() == Observation.Kind.DISTANCE ? off / size : off);
    }
    double[][] loose = loose(tangent);
    return new Adjustment(places, adjusted, measured.length - fitted, squares, variances.getData(), loose,
        atRest && missed < 1e-9);
  }

  private static double root(double variance) {
    return StrictMath.sqrt(Math.max(0, variance));
  }

  /** How all coordinates move in each way that nothing notices, less the ways in which the network moves as a whole. */
  private double[][] loose(Tangent tangent) {
    if (tangent == null || tangent.moves() == 0) {
      return new double[0][];
    }
    RealMatrix unnoticed = tangent.unnoticed();
    List<double[]> ways = new ArrayList<>();
    for (int j = 0; j < unnoticed.getColumnDimension(); j++) {
      double[] way = new double[place.length];
      for (int i = 0; i < free.length; i++) {
        way[free[i]] = unnoticed.getEntry(i, j);
      }
      ways.add(way);
    }
    return WholeMoves.without(ways, place, size);
  }
}
