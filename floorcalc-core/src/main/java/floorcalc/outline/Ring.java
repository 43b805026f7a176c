package floorcalc.outline;

import floorcalc.measure.Area;
import java.io.Serializable;
import java.math.BigInteger;
import java.util.AbstractList;
import java.util.Arrays;
import java.util.List;

/**
 * A closed ring of straight walls between corners, listed once: the last corner is joined to the first.
 * Wall 1 runs from corner 1 to corner 2. Immutable and thread-safe. A ring may be invalid (it may cross itself);
 * {@link Outline} checks that.
 */
public final class Ring implements Serializable {
  private static final long serialVersionUID = 1L;

  private final long[] xs;
  private final long[] ys;

  private Ring(long[] xs, long[] ys) {
    this.xs = xs;
    this.ys = ys;
  }

  /**
   * Returns the ring with the given corners.
   *
   * @param corners the corners in order, not null
   * @return the ring, not null
   */
  public static Ring of(List<Point> corners) {
    long[] xs = new long[corners.size()];
    long[] ys = new long[corners.size()];
    for (int i = 0; i < xs.length; i++) {
      xs[i] = corners.get(i).xNanometres();
      ys[i] = corners.get(i).yNanometres();
    }
    return new Ring(xs, ys);
  }

  /**
   * Returns the ring with the given corners.
   *
   * @param corners the corners in order, not null
   * @return the ring, not null
   */
  public static Ring of(Point... corners) {
    return of(Arrays.asList(corners));
  }

  /**
   * Returns the ring with corners in whole nanometres.
   *
   * @param xs the x of each corner in nanometres, not null
   * @param ys the y of each corner in nanometres, not null, of the same length
   * @return the ring, not null
   * @throws IllegalArgumentException if the arrays differ in length
   */
  public static Ring ofNanometres(long[] xs, long[] ys) {
    if (xs.length != ys.length) {
      throw new IllegalArgumentException("xs and ys must be of one length, but have " + xs.length + " and " + ys.length);
    }
    return new Ring(xs.clone(), ys.clone());
  }

  /**
   * Returns the number of corners, which is the number of walls.
   *
   * @return the number of corners
   */
  public int size() {
    return xs.length;
  }

  /**
   * Returns the x of a corner in nanometres.
   *
   * @param index the corner, from 0
   * @return x in nanometres
   */
  public long x(int index) {
    return xs[index];
  }

  /**
   * Returns the y of a corner in nanometres.
   *
   * @param index the corner, from 0
   * @return y in nanometres
   */
  public long y(int index) {
    return ys[index];
  }

  /**
   * Returns the corners in order.
   *
   * @return an unmodifiable list, not null
   */
  public List<Point> corners() {
    return new AbstractList<>() {
      @Override
      public Point get(int index) {
        return Point.ofNanometres(xs[index], ys[index]);
      }

      @Override
      public int size() {
        return xs.length;
      }
    };
  }

  /**
   * Returns the exact area by the shoelace formula, positive if the ring runs counter-clockwise.
   *
   * @return the signed area, not null
   */
  public Area signedArea() {
    BigInteger twice = BigInteger.ZERO;
    for (int i = 1; i + 1 < xs.length; i++) {
      long ax = Math.subtractExact(xs[i], xs[0]);
      long ay = Math.subtractExact(ys[i], ys[0]);
      long bx = Math.subtractExact(xs[i + 1], xs[0]);
      long by = Math.subtractExact(ys[i + 1], ys[0]);
      twice = twice.add(BigInteger.valueOf(ax).multiply(BigInteger.valueOf(by)))
          .subtract(BigInteger.valueOf(bx).multiply(BigInteger.valueOf(ay)));
    }
    return Area.ofHalfSquareNanometres(twice);
  }

  /**
   * Returns the exact area, never negative for a ring that does not cross itself.
   *
   * @return the area, not null
   */
  public Area area() {
    return signedArea().abs();
  }

  /**
   * Returns the ring with its corners in the opposite order, starting at the same corner.
   *
   * @return the reversed ring, not null
   */
  public Ring reversed() {
    int n = xs.length;
    long[] rx = new long[n];
    long[] ry = new long[n];
    for (int i = 0; i < n; i++) {
      rx[i] = xs[(n - i) % n];
      ry[i] = ys[(n - i) % n];
    }
    return new Ring(rx, ry);
  }

  @Override
  public boolean equals(Object object) {
    return object instanceof Ring other && Arrays.equals(xs, other.xs) && Arrays.equals(ys, other.ys);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(xs) * 31 + Arrays.hashCode(ys);
  }

  /**
   * Returns the corners in order.
   *
   * @return for example {@code "(0 mm, 0 mm), (4000 mm, 0 mm), (4000 mm, 3000 mm)"}, not null
   */
  @Override
  public String toString() {
    String list = corners().toString();
    return list.substring(1, list.length() - 1);
  }
}
