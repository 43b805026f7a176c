package floorcalc.outline.survey;

import floorcalc.measure.PlainNumber;
import java.io.Serializable;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * How the next wall turns at the end of a wall, seen by someone who walks along it with the room on the left.
 * Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class Turn implements Serializable {
  /** To the left, as at most corners; by how much was not measured. */
  public static final Turn LEFT = new Turn(Side.LEFT, Double.NaN);
  /** To the right, as at a corner that juts into the room; by how much was not measured. */
  public static final Turn RIGHT = new Turn(Side.RIGHT, Double.NaN);
  /** Not known. */
  public static final Turn UNKNOWN = new Turn(Side.UNKNOWN, Double.NaN);

  private static final long serialVersionUID = 1L;

  private final Side side;
  private final double degrees;

  private Turn(Side side, double degrees) {
    this.side = side;
    this.degrees = degrees;
  }

  /**
   * Returns a turn that was measured.
   *
   * @param degrees degrees to the left, between -180 and 180, both excluded; negative to the right
   * @return the turn, not null
   * @throws IllegalArgumentException if it is out of range
   */
  public static Turn ofDegrees(double degrees) {
    if (!(StrictMath.abs(degrees) < 180)) {
      throw new IllegalArgumentException("a turn must be between -180 and 180 degrees, but was " + PlainNumber.text(degrees)
          + "; give the degrees to the left by which the next wall leaves the straight line, negative to the right");
    }
    return new Turn(degrees > 0 ? Side.LEFT : degrees < 0 ? Side.RIGHT : Side.UNKNOWN, degrees);
  }

  /**
   * Returns the measured angle.
   *
   * @return degrees to the left; empty if it was not measured
   */
  public OptionalDouble degrees() {
    return isMeasured() ? OptionalDouble.of(degrees) : OptionalDouble.empty();
  }

  /**
   * Tells whether the angle was measured.
   *
   * @return true if it has degrees
   */
  public boolean isMeasured() {
    return !Double.isNaN(degrees);
  }

  /**
   * Returns the side to which it turns.
   *
   * @return the side, not null
   */
  public Side side() {
    return side;
  }

  /**
   * The side to which a wall turns.
   *
   * @since 0.1
   */
  public enum Side {
    /** To the left: the corner points away from the room. */
    LEFT,
    /** To the right: the corner juts into the room. */
    RIGHT,
    /** Not known. */
    UNKNOWN
  }

  @Override
  public boolean equals(Object object) {
    return object instanceof Turn other && side == other.side && Double.compare(degrees, other.degrees) == 0;
  }

  @Override
  public int hashCode() {
    return Objects.hash(side, degrees);
  }

  @Override
  public String toString() {
    return isMeasured() ? PlainNumber.text(degrees) + "°" : switch (side) {
      case LEFT -> "left";
      case RIGHT -> "right";
      case UNKNOWN -> "unknown";
    };
  }

  /** What was read is made anew, so that it keeps every check. */
  private Object readResolve() {
    return Double.isNaN(degrees) ? switch (side) {
      case LEFT -> LEFT;
      case RIGHT -> RIGHT;
      case UNKNOWN -> UNKNOWN;
    } : ofDegrees(degrees);
  }
}
