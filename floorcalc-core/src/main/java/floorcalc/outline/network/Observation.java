package floorcalc.outline.network;

import floorcalc.measure.PlainNumber;
import java.io.Serializable;
import java.util.Objects;

/**
 * Something measured between points of a network, with its standard deviation; a standard deviation of zero makes it
 * exact: the adjustment keeps it. Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class Observation implements Serializable {
  private static final long serialVersionUID = 1L;

  private final Kind kind;
  private final String at;
  private final String from;
  private final String to;
  private final double value;
  private final double deviation;

  private Observation(Kind kind, String at, String from, String to, double value, double deviation) {
    this.kind = kind;
    this.at = Objects.requireNonNull(at, "at");
    this.from = Objects.requireNonNull(from, "from");
    this.to = Objects.requireNonNull(to, "to");
    this.value = value;
    this.deviation = deviation;
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("the value of " + name() + " must be finite, but was " + PlainNumber.text(value));
    }
    if (!(deviation >= 0) || !Double.isFinite(deviation)) {
      throw new IllegalArgumentException("the standard deviation of " + name() + " must be 0 (exact) or more, but was "
          + PlainNumber.text(deviation));
    }
    if (from.equals(to) || kind == Kind.ANGLE && (at.equals(from) || at.equals(to))) {
      throw new IllegalArgumentException(name() + " must be between different points");
    }
  }

  /**
   * What can be observed.
   *
   * @since 0.1
   */
  public enum Kind {
    /** The distance between two points. */
    DISTANCE,
    /** The angle at a point, from the way to one point anticlockwise to the way to another. */
    ANGLE,
    /** The angle of the way from one point to another, anticlockwise from the x axis. */
    BEARING
  }

  /**
   * Returns a distance between two points.
   *
   * @param from the name of one point, not null
   * @param to the name of the other, not null
   * @param value the distance in the unit of the network, more than zero
   * @param deviation its standard deviation in the same unit, not negative; zero if it is exact
   * @return the observation, not null
   * @throws IllegalArgumentException if a value is out of range or both points are one
   */
  public static Observation distance(String from, String to, double value, double deviation) {
    Objects.requireNonNull(from, "from");
    if (!(value > 0)) {
      throw new IllegalArgumentException("the distance from " + from + " to " + to + " must be more than 0, but was " + PlainNumber.text(value));
    }
    return new Observation(Kind.DISTANCE, from, from, to, value, deviation);
  }

  /**
   * Returns an angle at a point.
   *
   * @param at the name of the point, not null
   * @param from the name of the point sighted first, not null
   * @param to the name of the point sighted second, not null
   * @param degrees the angle from the first anticlockwise to the second, finite; whole turns more or less do not matter
   * @param deviation its standard deviation in degrees, not negative; zero if it is exact
   * @return the observation, not null
   * @throws IllegalArgumentException if a value is out of range or two of the points are one
   */
  public static Observation angle(String at, String from, String to, double degrees, double deviation) {
    return new Observation(Kind.ANGLE, at, from, to, degrees, deviation);
  }

  /**
   * Returns a bearing.
   *
   * @param from the name of one point, not null
   * @param to the name of the point sighted from it, not null
   * @param degrees the angle of the way there, anticlockwise from the x axis, finite
   * @param deviation its standard deviation in degrees, not negative; zero if it is exact
   * @return the observation, not null
   * @throws IllegalArgumentException if a value is out of range or both points are one
   */
  public static Observation bearing(String from, String to, double degrees, double deviation) {
    Objects.requireNonNull(from, "from");
    return new Observation(Kind.BEARING, from, from, to, degrees, deviation);
  }

  /**
   * Returns what was observed.
   *
   * @return the kind, not null
   */
  public Kind kind() {
    return kind;
  }

  /**
   * Returns the point at which it was observed: of a distance or a bearing its first point.
   *
   * @return the name, not null
   */
  public String at() {
    return at;
  }

  /**
   * Returns the first point, of an angle the one sighted first.
   *
   * @return the name, not null
   */
  public String from() {
    return from;
  }

  /**
   * Returns the second point.
   *
   * @return the name, not null
   */
  public String to() {
    return to;
  }

  /**
   * Returns what was read.
   *
   * @return a distance in the unit of the network, or degrees
   */
  public double value() {
    return value;
  }

  /**
   * Returns the standard deviation.
   *
   * @return in the unit of the value, zero if it is exact
   */
  public double deviation() {
    return deviation;
  }

  /**
   * Tells whether the adjustment must keep it.
   *
   * @return true if its standard deviation is zero
   */
  public boolean isExact() {
    return deviation == 0;
  }

  /**
   * Returns what it is, in words.
   *
   * @return for example {@code "the distance from A to B"}, not null
   */
  public String name() {
    return switch (kind) {
      case DISTANCE -> "the distance from " + from + " to " + to;
      case ANGLE -> "the angle at " + at + " from " + from + " to " + to;
      case BEARING -> "the bearing from " + from + " to " + to;
    };
  }

  @Override
  public boolean equals(Object object) {
    return object instanceof Observation other && kind == other.kind && at.equals(other.at) && from.equals(other.from)
        && to.equals(other.to) && Double.compare(value, other.value) == 0
        && Double.compare(deviation, other.deviation) == 0;
  }

  @Override
  public int hashCode() {
    return Objects.hash(kind, at, from, to, value, deviation);
  }

  @Override
  public String toString() {
    return name() + ": " + PlainNumber.text(value) + " +- " + PlainNumber.text(deviation);
  }

  /** What was read is made anew, so that it keeps every check. */
  private Object readResolve() {
    return kind == Kind.DISTANCE ? distance(at, to, value, deviation) : new Observation(Objects.requireNonNull(kind, "kind"), at, from, to,
        value, deviation);
  }
}
