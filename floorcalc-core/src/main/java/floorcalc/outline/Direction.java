package floorcalc.outline;

import floorcalc.measure.PlainNumber;
import java.io.Serializable;
import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * The way the boards run: an angle anticlockwise from the x axis, held as whole billionths of a degree from 0 up to,
 * but not including, 360 degrees. Immutable and thread-safe.
 * <p>
 * Turning by a multiple of 90 degrees is exact. Any other angle is turned with sines and cosines that are the same on
 * every machine, and each coordinate is rounded to the nearest nanometre.
 *
 * @since 0.1
 */
public final class Direction implements Comparable<Direction>, Serializable {
  /** Along the x axis: 0 degrees. */
  public static final Direction ALONG_X = new Direction(0);

  private static final long serialVersionUID = 1L;
  private static final long NANO = 1_000_000_000L;
  private static final long FULL = 360 * NANO;
  private static final long QUARTER = 90 * NANO;

  private final long nanodegrees;

  private Direction(long nanodegrees) {
    this.nanodegrees = nanodegrees;
  }

  /**
   * Returns the direction nearest to an angle, in steps of a billionth of a degree.
   *
   * @param degrees the angle anticlockwise from the x axis, any finite value of at most a million degrees either way
   * @return the direction, turned into the range from 0 up to 360 degrees; not null
   * @throws IllegalArgumentException if the angle is not finite or too large
   */
  public static Direction fromDegrees(double degrees) {
    if (!(StrictMath.abs(degrees) <= 1_000_000)) {
      throw new IllegalArgumentException("direction must be within 1000000 degrees either way, but was " + PlainNumber.text(degrees));
    }
    long nano = new BigDecimal(degrees).movePointRight(9).setScale(0, RoundingMode.HALF_EVEN).longValueExact();
    return new Direction(Math.floorMod(nano, FULL));
  }

  /**
   * Returns the direction from one point towards another.
   *
   * @param from the first point, not null
   * @param to the second point, not null, different from the first
   * @return the direction, not null
   * @throws IllegalArgumentException if the points are the same
   */
  public static Direction fromPoints(Point from, Point to) {
    long dx = Math.subtractExact(to.xNanometres(), from.xNanometres());
    long dy = Math.subtractExact(to.yNanometres(), from.yNanometres());
    if (dx == 0 && dy == 0) {
      throw new IllegalArgumentException("a direction needs two different points, but both are " + from);
    }
    return fromDegrees(StrictMath.toDegrees(StrictMath.atan2((double) dy, (double) dx)));
  }

  /**
   * Returns the angle in degrees.
   *
   * @return from 0 up to, but not including, 360
   */
  public double degrees() {
    return toDecimal().doubleValue();
  }

  /**
   * Returns the angle in degrees, exactly.
   *
   * @return a decimal with at most nine places and no trailing zeros, not null
   */
  public BigDecimal toDecimal() {
    BigDecimal exact = BigDecimal.valueOf(nanodegrees, 9).stripTrailingZeros();
    return exact.scale() < 0 ? exact.setScale(0) : exact;
  }

  /**
   * Returns this direction turned anticlockwise.
   *
   * @param quarters the number of right angles, may be negative
   * @return the turned direction, not null
   */
  public Direction plusQuarterTurns(int quarters) {
    return new Direction(Math.floorMod(nanodegrees + Math.floorMod(quarters, 4) * QUARTER, FULL));
  }

  /**
   * Tells whether the direction is along x or y, so that turning is exact.
   *
   * @return true for 0, 90, 180 and 270 degrees
   */
  public boolean isAlongAxis() {
    return nanodegrees % QUARTER == 0;
  }

  /**
   * Turns a ring by minus this direction: from the room to the frame in which the boards run along x.
   *
   * @param ring a ring in room coordinates, not null
   * @return the ring in the frame of the boards, corners in the same order; not null
   */
  public Ring toFrame(Ring ring) {
    return turn(ring, Math.floorMod(-nanodegrees, FULL));
  }

  /**
   * Turns a ring by this direction: from the frame in which the boards run along x back to the room.
   *
   * @param ring a ring in the frame of the boards, not null
   * @return the ring in room coordinates, corners in the same order; not null
   */
  public Ring toRoom(Ring ring) {
    return turn(ring, nanodegrees);
  }

  /**
   * Turns an outline by minus this direction: from the room to the frame in which the boards run along x.
   *
   * @param outline an outline in room coordinates, not null
   * @return the outline in the frame of the boards, corners and voids in the same order; not null
   */
  public Outline toFrame(Outline outline) {
    return outline.map(this::toFrame);
  }

  /**
   * Turns an outline by this direction: from the frame in which the boards run along x back to the room.
   *
   * @param outline an outline in the frame of the boards, not null
   * @return the outline in room coordinates, corners and voids in the same order; not null
   */
  public Outline toRoom(Outline outline) {
    return outline.map(this::toRoom);
  }

  private static Ring turn(Ring ring, long angle) {
    int n = ring.size();
    long[] xs = new long[n];
    long[] ys = new long[n];
    long quarters = angle / QUARTER;
    boolean exact = angle % QUARTER == 0;
    double radians = StrictMath.toRadians(BigDecimal.valueOf(angle, 9).doubleValue());
    double cos = StrictMath.cos(radians);
    double sin = StrictMath.sin(radians);
    for (int i = 0; i < n; i++) {
      long x = ring.x(i);
      long y = ring.y(i);
      if (exact) {
        xs[i] = quarters == 0 ? x : quarters == 1 ? -y : quarters == 2 ? -x : y;
        ys[i] = quarters == 0 ? y : quarters == 1 ? x : quarters == 2 ? -y : -x;
      } else {
        xs[i] = (long) StrictMath.rint(x * cos - y * sin);
        ys[i] = (long) StrictMath.rint(x * sin + y * cos);
      }
    }
    return Ring.ofNanometres(xs, ys);
  }

  @Override
  public int compareTo(Direction other) {
    return Long.compare(nanodegrees, other.nanodegrees);
  }

  @Override
  public boolean equals(Object object) {
    return object instanceof Direction other && nanodegrees == other.nanodegrees;
  }

  @Override
  public int hashCode() {
    return Long.hashCode(nanodegrees);
  }

  /**
   * Returns the angle as text.
   *
   * @return for example {@code "37.5°"}, not null
   */
  @Override
  public String toString() {
    return toDecimal().toPlainString() + "°";
  }

  /** What was read is made anew, so that it keeps every check. */
  private Object readResolve() {
    return new Direction(Math.floorMod(nanodegrees, FULL));
  }
}
