package floorcalc.moisture;

import floorcalc.measure.Length;
import floorcalc.outline.Point;
import java.io.Serializable;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Objects;
import java.util.Optional;

/**
 * One reading of the moisture of a subfloor: the method, the value in the unit of the method, and where it was taken.
 * Immutable and thread-safe.
 * <pre>{@code
 * MoistureReading.of(MoistureMethod.CM, "1.8").at(Point.ofMillimetres(1200, 400)).depth(Length.parse("4 cm"));
 * }</pre>
 *
 * @since 0.1
 */
public final class MoistureReading implements Serializable {
  private static final long serialVersionUID = 1L;

  private final MoistureMethod method;
  private final BigDecimal value;
  private final String name;
  private final Point point;
  private final Length depth;

  private MoistureReading(MoistureMethod method, BigDecimal value, String name, Point point, Length depth) {
    this.method = method;
    this.value = value;
    this.name = name;
    this.point = point;
    this.depth = depth;
  }

  /**
   * Returns a reading without a place.
   *
   * @param method how it was taken, not null
   * @param value the value in {@link MoistureMethod#unit()}, not null
   * @return the reading, not null
   * @throws IllegalArgumentException if no such reading is possible with the method, or it has more than 9 decimals
   */
  public static MoistureReading of(MoistureMethod method, BigDecimal value) {
    Objects.requireNonNull(method, "method");
    Objects.requireNonNull(value, "value");
    if (value.compareTo(method.least()) < 0 || value.compareTo(method.most()) > 0 || value.scale() > 1000
        || Decimals.plain(value).scale() > 9) {
      throw new IllegalArgumentException("a reading by " + method.words() + " must be from " + method.text(method.least())
          + " to " + method.text(method.most()) + " with at most 9 decimals, but was " + value
          + "; check the method and the unit");
    }
    return new MoistureReading(method, Decimals.plain(value), "", null, null);
  }

  /**
   * Returns a reading without a place.
   *
   * @param method how it was taken, not null
   * @param decimal the value in {@link MoistureMethod#unit()} as a decimal number, not null
   * @return the reading, not null
   * @throws IllegalArgumentException if the text is no number, or as in {@link #of(MoistureMethod, BigDecimal)}
   */
  public static MoistureReading of(MoistureMethod method, String decimal) {
    Objects.requireNonNull(method, "method");
    Objects.requireNonNull(decimal, "decimal");
    return of(method, Decimals.read(decimal, "reading", "1.8"));
  }

  /**
   * Returns a reading by calcium chloride in grams from a square metre in 24 hours. That is another unit of the same
   * method: 1 lb/(1000 ft2 24 h) is 453.59237 g from 92.90304 m2.
   *
   * @param grams the water given off by a square metre in 24 hours, not null
   * @return the reading in lb/(1000 ft2 24 h), rounded half up to nine decimals, not null
   * @throws IllegalArgumentException if no such reading is possible
   */
  public static MoistureReading ofCalciumChlorideGrams(BigDecimal grams) {
    Objects.requireNonNull(grams, "grams");
    if (grams.precision() - (long) grams.scale() > 9 || grams.scale() > 1000) {
      throw new IllegalArgumentException("a reading by calcium chloride cannot be " + grams + " g/(m2 24 h)");
    }
    return of(MoistureMethod.CALCIUM_CHLORIDE, grams.multiply(new BigDecimal("92.90304"))
        .divide(new BigDecimal("453.59237"), 9, RoundingMode.HALF_UP));
  }

  /**
   * Returns the same reading with a place.
   *
   * @param place where it was taken, in the coordinates of the room, not null
   * @return the reading, not null
   */
  public MoistureReading at(Point place) {
    return new MoistureReading(method, value, name, Objects.requireNonNull(place, "place"), depth);
  }

  /**
   * Returns the same reading with a name for its place.
   *
   * @param place such as {@code "by the window"}, not null
   * @return the reading, not null
   */
  public MoistureReading named(String place) {
    return new MoistureReading(method, value, Objects.requireNonNull(place, "place"), point, depth);
  }

  /**
   * Returns the same reading with the depth that the sample or the probe came from.
   *
   * @param below how far below the surface, not null, from 0 to 1 m
   * @return the reading, not null
   * @throws IllegalArgumentException if the depth is out of bounds
   */
  public MoistureReading depth(Length below) {
    Objects.requireNonNull(below, "below");
    if (below.isNegative() || below.compareTo(Length.ofMillimetres(1000)) > 0) {
      throw new IllegalArgumentException("the depth of a reading must be from 0 mm to 1000 mm, but was " + below);
    }
    return new MoistureReading(method, value, name, point, below);
  }

  /**
   * Returns how the reading was taken.
   *
   * @return the method, not null
   */
  public MoistureMethod method() {
    return method;
  }

  /**
   * Returns the value.
   *
   * @return in the unit of the method, without trailing zeros, not null
   */
  public BigDecimal value() {
    return value;
  }

  /**
   * Returns where the reading was taken, if that was given.
   *
   * @return the place, may be empty, not null
   */
  public Optional<Point> point() {
    return Optional.ofNullable(point);
  }

  /**
   * Returns the depth, if it was given.
   *
   * @return how far below the surface, may be empty, not null
   */
  public Optional<Length> depth() {
    return Optional.ofNullable(depth);
  }

  /**
   * Returns the place in words.
   *
   * @return its name, or its coordinates, or an empty text, not null
   */
  public String place() {
    return !name.isEmpty() ? name : point != null ? point.toString() : "";
  }

  @Override
  public boolean equals(Object object) {
    return object instanceof MoistureReading other && method == other.method && value.equals(other.value)
        && name.equals(other.name) && Objects.equals(point, other.point) && Objects.equals(depth, other.depth);
  }

  @Override
  public int hashCode() {
    return Objects.hash(value, name, point, depth);
  }

  /**
   * Returns the reading as text.
   *
   * @return for example {@code "1.8 CM-%"}, not null
   */
  @Override
  public String toString() {
    return method.text(value);
  }

  /** What was read is made anew, so that it keeps every check. */
  private Object readResolve() {
    MoistureReading reading = of(method, value).named(name);
    reading = point == null ? reading : reading.at(point);
    return depth == null ? reading : reading.depth(depth);
  }
}
