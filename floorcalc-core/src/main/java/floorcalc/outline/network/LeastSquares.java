package floorcalc.outline.network;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * Gauss-Newton steps over the coordinates that are not held. Exact observations are met by the shortest move; what they
 * leave free is moved by the others. A step that makes the fit worse is damped or shortened, whichever helps most.
 */
final class LeastSquares {
  private static final int MOST_STEPS = 200;
  private static final double LEAST_PART = 1e-9;
  private static final int MOST_RETURNS = 20;
  /** A step below this part of the network's size may change the fit by less than its rounding. */
  private static final double SHORT = 1e-8;
  /** Parts of the most that the observations tell about any way to move: what is told less is moved less. */
  private static final double[] DAMPINGS = {1e-6, 1e-5, 1e-4, 1e-3, 1e-2, 0.1, 1, 10, 100};
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
  private final double[] start;
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
    start = place.clone();
  }

  Adjustment adjust() {
    if (exact.length == 0) {
      Approach.of(equations, free, place, size);
    }
    double lastStep = Double.POSITIVE_INFINITY;
    boolean atRest = free.length == 0;
    for (int step = 0; step < MOST_STEPS && !atRest; step++) {
      double length = take(tangent());
      atRest = length <= AT_REST * size || length < SHORT * size && length >= lastStep;
      lastStep = length;
    }
    if (isFree()) {
      WholeMoves.layOn(place, start, has(Observation.Kind.DISTANCE) ? WholeMoves.Apart.MEASURED : WholeMoves.Apart.FREE);
    }
    return result(atRest);
  }

  /** Each step moves the points least, but many do not turn them least: that is made good at the end. */
  private boolean isFree() {
    return free.length == place.length && !has(Observation.Kind.BEARING);
  }

  private boolean has(Observation.Kind kind) {
    return IntStream.range(0, equations.size()).anyMatch(i -> equations.get(i).kind() == kind);
  }

  private Tangent tangent() {
    return new Tangent(equations, exact, measured, free, place, size);
  }

  /** Moves the points, by less if that fits better; returns how far the farthest went, 0 if no way fits better. */
  private double take(Tangent tangent) {
    double[] from = place.clone();
    double before = misfit();
    double[] whole = tangent.move(0);
    double length = go(tangent, from, whole, 1);
    if (misfit() <= before || length < SHORT * size) {
      return length;
    }
    double least = before;
    double[] best = from;
    for (double damping : DAMPINGS) {
      go(tangent, from, tangent.move(damping), 1);
      if (misfit() < least) {
        least = misfit();
        best = place.clone();
      }
    }
    for (double part = 0.5; part > LEAST_PART; part /= 2) {
      go(tangent, from, whole, part);
      if (misfit() < least) {
        least = misfit();
        best = place.clone();
      }
    }
    System.arraycopy(best, 0, place, 0, place.length);
    return IntStream.of(free).mapToDouble(i -> StrictMath.abs(place[i] - from[i])).max().orElse(0);
  }

  /** Takes a part of a step, then what brings exact observations back; returns how far the step took the farthest. */
  private double go(Tangent tangent, double[] from, double[] move, double part) {
    double length = 0;
    for (int j = 0; j < free.length; j++) {
      place[free[j]] = from[free[j]] + part * move[j];
      length = Math.max(length, StrictMath.abs(part * move[j]));
    }
    double before = Double.POSITIVE_INFINITY;
    for (int again = 0; again < MOST_RETURNS; again++) {
      double missed = missed();
      if (missed <= AT_REST || missed >= before) { // no nearer any more: too long a step
        break;
      }
      before = missed;
      double[] back = tangent.back(place);
      for (int j = 0; j < free.length; j++) {
        place[free[j]] += back[j];
      }
    }
    return length;
  }

  /** How far exact observations are off: angles in radians, distances as parts of the network's size. */
  private double missed() {
    double missed = 0;
    for (int i : exact) {
      double off = StrictMath.abs(equations.misclosure(i, place));
      missed = Math.max(missed, equations.get(i).kind() == Observation.Kind.DISTANCE ? off / size : off);
    }
    return missed;
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

  private Adjustment result(boolean atRest) {
    Tangent tangent = free.length == 0 ? null : tangent();
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
        own = tangent == null || tangent.isFixed() ? 0 : tangent.ownShare(position);
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
    int fitted = tangent == null || tangent.isFixed() ? 0 : tangent.rank();
    double[][] loose = loose(tangent);
    return new Adjustment(places, adjusted, measured.length - fitted, squares, variances.getData(), loose,
        atRest && missed() < 1e-9);
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
