package floorcalc.outline.network;

import floorcalc.measure.PlainNumber;
import java.io.Serializable;
import java.util.Objects;

/**
 * A point of a network.
 *
 * @param name its name, not null, not blank
 * @param x about how far it lies to the right, finite; exactly if it is held
 * @param y about how far it lies up, finite; exactly if it is held
 * @param held which coordinates stay as they are, not null
 * @since 0.1
 */
public record NetworkPoint(String name, double x, double y, Held held) implements Serializable {
  /**
   * Checks that the point has a name and a place.
   *
   * @throws IllegalArgumentException if the name is blank or a coordinate is not finite
   */
  public NetworkPoint {
    if (Objects.requireNonNull(name, "name").isBlank()) {
      throw new IllegalArgumentException("a point of a network needs a name that is not blank");
    }
    if (!Double.isFinite(x) || !Double.isFinite(y)) {
      throw new IllegalArgumentException("point " + name + " must have finite coordinates, but was at (" + PlainNumber.text(x) + ", " + PlainNumber.text(y) + ")");
    }
    Objects.requireNonNull(held, "held");
  }

  /**
   * Returns a point that is to be worked out.
   *
   * @param name its name, not null, not blank
   * @param x about how far it lies to the right, finite
   * @param y about how far it lies up, finite
   * @return the point, not null
   * @throws IllegalArgumentException if the name is blank or a coordinate is not finite
   */
  public static NetworkPoint about(String name, double x, double y) {
    return new NetworkPoint(name, x, y, Held.NONE);
  }

  /**
   * Returns a point that stays where it is.
   *
   * @param name its name, not null, not blank
   * @param x how far it lies to the right, finite
   * @param y how far it lies up, finite
   * @return the point, not null
   * @throws IllegalArgumentException if the name is blank or a coordinate is not finite
   */
  public static NetworkPoint held(String name, double x, double y) {
    return new NetworkPoint(name, x, y, Held.BOTH);
  }

  boolean holdsX() {
    return held == Held.X || held == Held.BOTH;
  }

  boolean holdsY() {
    return held == Held.Y || held == Held.BOTH;
  }
}
