package floorcalc.outline.network;

import java.util.List;
import java.util.Objects;

/**
 * A network after its adjustment. Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class Adjustment {
  private final List<AdjustedPoint> points;
  private final List<AdjustedObservation> observations;
  private final int redundancy;
  private final double squares;
  private final double[][] variances;
  private final double[][] loose;
  private final boolean atRest;

  Adjustment(List<AdjustedPoint> points, List<AdjustedObservation> observations, int redundancy, double squares,
      double[][] variances, double[][] loose, boolean atRest) {
    this.points = List.copyOf(points);
    this.observations = List.copyOf(observations);
    this.redundancy = redundancy;
    this.squares = squares;
    this.variances = variances;
    this.loose = loose;
    this.atRest = atRest;
  }

  /**
   * Returns the adjusted points in the order of the network.
   *
   * @return an unmodifiable list, not null
   */
  public List<AdjustedPoint> points() {
    return points;
  }

  /**
   * Returns a point by its name.
   *
   * @param name the name, not null
   * @return the adjusted point, not null
   * @throws IllegalArgumentException if there is no such point
   */
  public AdjustedPoint point(String name) {
    Objects.requireNonNull(name, "name");
    return points.stream().filter(point -> point.name().equals(name)).findFirst()
        .orElseThrow(() -> new IllegalArgumentException("the network has no point named " + name));
  }

  /**
   * Returns the observations in the order of the network.
   *
   * @return an unmodifiable list, not null
   */
  public List<AdjustedObservation> observations() {
    return observations;
  }

  /**
   * Returns how many observations there are beyond those that the shape needs.
   *
   * @return not negative
   */
  public int redundancy() {
    return redundancy;
  }

  /**
   * Returns the sum of the squares of the residuals, each divided by its standard deviation.
   *
   * @return not negative
   */
  public double squares() {
    return squares;
  }

  /**
   * Returns by what the standard deviations of the observations would have to be multiplied to fit what they are off:
   * near 1 if they were judged well.
   *
   * @return {@code sqrt(squares / redundancy)}; 1 if there is no redundancy, as nothing can be told
   */
  public double factor() {
    return redundancy == 0 ? 1 : StrictMath.sqrt(squares / redundancy);
  }

  /**
   * Returns the standard deviation of something that depends on the coordinates.
   *
   * @param slopes how it changes with x and y of each point in turn, two for each point; not null
   * @return the standard deviation, before it is scaled by {@link #factor()}; not negative
   * @throws IllegalArgumentException if there are not two slopes for each point
   */
  public double deviation(double[] slopes) {
    Objects.requireNonNull(slopes, "slopes");
    return StrictMath.sqrt(Math.max(0, covariance(slopes, slopes)));
  }

  /**
   * Returns the covariance of two things that depend on the coordinates.
   *
   * @param one how the first changes with x and y of each point in turn, two for each point; not null
   * @param other the same of the second, not null
   * @return the covariance, before it is scaled by the square of {@link #factor()}
   * @throws IllegalArgumentException if there are not two slopes for each point
   */
  public double covariance(double[] one, double[] other) {
    if (one.length != variances.length || other.length != variances.length) {
      throw new IllegalArgumentException("two slopes are needed for each of " + points.size() + " points, but were "
          + one.length + " and " + other.length);
    }
    double sum = 0;
    for (int i = 0; i < one.length; i++) {
      for (int j = 0; one[i] != 0 && j < other.length; j++) {
        sum += one[i] * variances[i][j] * other[j];
      }
    }
    return sum;
  }

  /**
   * Returns in how many ways the points can move against each other without any observation noticing.
   *
   * @return zero if the observations fix the shape
   */
  public int looseness() {
    return loose.length;
  }

  /**
   * Returns one of the ways in which the points can move against each other unnoticed.
   *
   * @param way which, from 0
   * @return how x and y of each point move, two for each point; of length 1 in all
   * @throws IndexOutOfBoundsException if there is no such way
   */
  public double[] looseWay(int way) {
    return loose[Objects.checkIndex(way, loose.length)].clone();
  }

  /**
   * Tells whether the adjustment came to rest with every exact observation kept.
   *
   * @return false if the exact observations contradict each other, or if the points were said to be too far from where
   *     they are
   */
  public boolean isAtRest() {
    return atRest;
  }
}
