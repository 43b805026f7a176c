package floorcalc.outline.network;

import java.util.Objects;

/**
 * A point after the adjustment. Standard deviations follow from those of the observations, before they are scaled by
 * {@link Adjustment#factor()}.
 *
 * @param name its name, not null
 * @param x how far it lies to the right
 * @param y how far it lies up
 * @param deviationX standard deviation of x, not negative, zero if it is held
 * @param deviationY standard deviation of y, not negative, zero if it is held
 * @param covariance covariance of x and y
 * @since 0.1
 */
public record AdjustedPoint(String name, double x, double y, double deviationX, double deviationY, double covariance) {
  /** Checks that it has a name. */
  public AdjustedPoint {
    Objects.requireNonNull(name, "name");
  }

  /**
   * Returns the standard deviation in the way in which the point is least sure: the longer half axis of its error ellipse.
   *
   * @return in the unit of the network, not negative
   */
  public double greatestDeviation() {
    return StrictMath.sqrt(Math.max(0, middle() + radius()));
  }

  /**
   * Returns the standard deviation in the way in which the point is surest: the shorter half axis of its error ellipse.
   *
   * @return in the unit of the network, not negative
   */
  public double leastDeviation() {
    return StrictMath.sqrt(Math.max(0, middle() - radius()));
  }

  /**
   * Returns the way in which the point is least sure.
   *
   * @return degrees anticlockwise from the x axis, from -90 to 90; 0 if it is equally sure in all
   */
  public double leastSureDegrees() {
    return StrictMath.toDegrees(
        StrictMath.atan2(2 * covariance, deviationX * deviationX - deviationY * deviationY)) / 2;
  }

  private double middle() {
    return (deviationX * deviationX + deviationY * deviationY) / 2;
  }

  private double radius() {
    double half = (deviationX * deviationX - deviationY * deviationY) / 2;
    return StrictMath.sqrt(half * half + covariance * covariance);
  }
}
