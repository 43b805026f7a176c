package floorcalc.outline;

import floorcalc.measure.Length;
import java.io.Serializable;

/**
 * A place on the floor: x to the right, y up, whole nanometres. Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class Point implements Comparable<Point>, Serializable {
  private static final long serialVersionUID = 1L;

  private final long x;
  private final long y;

  private Point(long x, long y) {
    this.x = x;
    this.y = y;
  }

  /**
   * Returns the point with the given coordinates.
   *
   * @param x the distance to the right of the origin, not null, may be negative
   * @param y the distance up from the origin, not null, may be negative
   * @return the point, not null
   */
  public static Point of(Length x, Length y) {
    return new Point(x.toNanometres(), y.toNanometres());
  }

  /**
   * Returns the point with the given coordinates in whole nanometres.
   *
   * @param x nanometres to the right of the origin
   * @param y nanometres up from the origin
   * @return the point, not null
   */
  public static Point ofNanometres(long x, long y) {
    return new Point(x, y);
  }

  /**
   * Returns the point with the given coordinates in whole millimetres.
   *
   * @param x millimetres to the right of the origin
   * @param y millimetres up from the origin
   * @return the point, not null
   * @throws ArithmeticException if a coordinate does not fit into a {@code long} of nanometres
   */
  public static Point ofMillimetres(long x, long y) {
    return new Point(Math.multiplyExact(x, 1_000_000L), Math.multiplyExact(y, 1_000_000L));
  }

  /**
   * Returns the distance to the right of the origin.
   *
   * @return x, not null
   */
  public Length x() {
    return Length.ofNanometres(x);
  }

  /**
   * Returns the distance up from the origin.
   *
   * @return y, not null
   */
  public Length y() {
    return Length.ofNanometres(y);
  }

  /**
   * Returns x in whole nanometres.
   *
   * @return x in nanometres
   */
  public long xNanometres() {
    return x;
  }

  /**
   * Returns y in whole nanometres.
   *
   * @return y in nanometres
   */
  public long yNanometres() {
    return y;
  }

  /**
   * Returns how far another point is away.
   *
   * @param other the other point, not null, at most 4600 km away along x and along y
   * @return the distance, rounded to the nearest nanometre; not negative
   */
  public Length distanceTo(Point other) {
    return Length.ofNanometres(Exact.roundedLength(Math.subtractExact(other.x, x), Math.subtractExact(other.y, y)));
  }

  /** Orders by x, then by y. */
  @Override
  public int compareTo(Point other) {
    int byX = Long.compare(x, other.x);
    return byX != 0 ? byX : Long.compare(y, other.y);
  }

  @Override
  public boolean equals(Object object) {
    return object instanceof Point other && x == other.x && y == other.y;
  }

  @Override
  public int hashCode() {
    return Long.hashCode(x) * 31 + Long.hashCode(y);
  }

  /**
   * Returns the point as text.
   *
   * @return for example {@code "(3100 mm, 840 mm)"}, not null
   */
  @Override
  public String toString() {
    return "(" + x() + ", " + y() + ")";
  }
}
