package floorcalc.outline.network;

import java.io.Serializable;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * Points and what was measured between them. Immutable and thread-safe.
 * <pre>{@code
 * Network square = Network.of(
 *     List.of(NetworkPoint.held("1", 0, 1000), NetworkPoint.held("2", 1000, 1000), NetworkPoint.about("3", 0, 0)),
 *     List.of(Observation.distance("1", "3", 1000.02, 0.01), Observation.distance("2", "3", 1414.24, 0.01)));
 * Adjustment adjusted = square.adjust();
 * }</pre>
 * A network of which no point is held is free: of all places that fit equally well its points get the ones that are
 * moved least from where they were said to be about, and standard deviations count from the middle of all points.
 *
 * @since 0.1
 */
public final class Network implements Serializable {
  /** The most points of a network. */
  public static final int MOST_POINTS = 200;

  private static final long serialVersionUID = 1L;

  @SuppressWarnings("serial")
  private final List<NetworkPoint> points;
  @SuppressWarnings("serial")
  private final List<Observation> observations;

  private Network(List<NetworkPoint> points, List<Observation> observations) {
    this.points = points;
    this.observations = observations;
  }

  /**
   * Returns a network.
   *
   * @param points its points, no two of one name, not empty, at most {@value #MOST_POINTS}
   * @param observations what was measured between them, not null
   * @return the network, not null
   * @throws IllegalArgumentException if there is no point or too many, a name comes twice, or an observation names a
   *     point that there is not or lies between points that were said to be at one place
   */
  public static Network of(List<NetworkPoint> points, List<Observation> observations) {
    Objects.requireNonNull(observations, "observations");
    if (points.isEmpty() || points.size() > MOST_POINTS) {
      throw new IllegalArgumentException("a network needs from 1 to " + MOST_POINTS + " points, but has " + points.size());
    }
    Network network = new Network(List.copyOf(points), List.copyOf(observations));
    Map<String, Integer> index = network.index();
    new Equations(network.observations, index);
    for (Observation observation : network.observations) {
      network.requireApart(observation, index.get(observation.at()), index.get(observation.to()));
      if (observation.kind() == Observation.Kind.ANGLE) {
        network.requireApart(observation, index.get(observation.at()), index.get(observation.from()));
      }
    }
    return network;
  }

  private void requireApart(Observation observation, int one, int other) {
    if (points.get(one).x() == points.get(other).x() && points.get(one).y() == points.get(other).y()) {
      throw new IllegalArgumentException(observation.name() + " is between points that are said to be at one place; say"
          + " about where each of them is");
    }
  }

  private Map<String, Integer> index() {
    Map<String, Integer> index = new HashMap<>();
    for (NetworkPoint point : points) {
      if (index.putIfAbsent(point.name(), index.size()) != null) {
        throw new IllegalArgumentException("there are two points named " + point.name() + "; give each a name of its own");
      }
    }
    return index;
  }

  /**
   * Returns the points as they were given.
   *
   * @return an unmodifiable list, not null
   */
  public List<NetworkPoint> points() {
    return points;
  }

  /**
   * Returns what was measured.
   *
   * @return an unmodifiable list, not null
   */
  public List<Observation> observations() {
    return observations;
  }

  /**
   * Adjusts the network by least squares: {@code sum (v / s)^2} of all residuals {@code v} with their standard deviations
   * {@code s} becomes least, exact observations are kept. The observations are taken as straight lines in the coordinates,
   * again and again from the better places, until no point moves by more than the rounding of its coordinates.
   *
   * @return the adjustment, not null; it says whether all points are fixed and whether it came to rest
   */
  public Adjustment adjust() {
    return new LeastSquares(points, new Equations(observations, index())).adjust();
  }

  /** What was read is made anew, so that it keeps every check. */
  private Object readResolve() {
    return of(points, observations);
  }

  @Override
  public boolean equals(Object object) {
    return object instanceof Network other && parts().equals(other.parts());
  }

  @Override
  public int hashCode() {
    return parts().hashCode();
  }

  private List<Object> parts() {
    return Arrays.asList(points, observations);
  }
}
