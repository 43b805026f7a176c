package floorcalc.outline;

import floorcalc.measure.Area;
import floorcalc.measure.Length;
import java.io.Serializable;
import java.math.BigInteger;
import java.util.AbstractList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;

/**
 * A closed ring of straight walls between corners, listed once: the last corner is joined to the first.
 * <p>
 * People count from 1: wall 1 runs from corner 1 to corner 2, and so it is called in every message. Methods count from
 * 0, as lists do: index 0 is corner 1, and the wall of an index runs from that corner to the next. A ring may be
 * invalid (it may cross itself, or have no corner at all); {@link OutlineCheck} finds that. Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class Ring implements Serializable {
  private static final long serialVersionUID = 1L;

  private final long[] xs;
  private final long[] ys;

  private Ring(long[] xs, long[] ys) { // keeps the arrays
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
    Objects.requireNonNull(corners, "corners");
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
    return of(Arrays.asList(Objects.requireNonNull(corners, "corners")));
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

  /** {@return the number of corners, which is the number of walls} */
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

  /** {@return the corners in order, not null} */
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

  /** {@return the exact area by the shoelace formula, positive if the ring runs counter-clockwise, not null} */
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

  /** {@return the exact area, never negative for a ring that does not cross itself, not null} */
  public Area area() {
    return signedArea().abs();
  }

  /** {@return the ring with its corners in the opposite order, starting at the same corner, not null} */
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

  /**
   * Returns the length of a wall, rounded to the nearest nanometre.
   *
   * @param index the wall, from 0: it runs from the corner of this index to the next
   * @return the length, not negative
   * @throws ArithmeticException if the wall is longer than a length can hold
   */
  public Length wallLength(int index) {
    int next = next(index);
    return Length.ofNanometres(
        Exact.roundedLength(Math.subtractExact(xs[next], xs[index]), Math.subtractExact(ys[next], ys[index])));
  }

  /**
   * Returns the sum of the wall lengths. Each wall is rounded to the nearest nanometre, then they are added exactly; so
   * the sum is what a person gets who adds the walls up, and within half a nanometre per wall of the true perimeter.
   *
   * @return the perimeter, not negative
   * @throws ArithmeticException if it is longer than a length can hold
   */
  public Length perimeter() {
    Length sum = Length.ZERO;
    for (int i = 0; i < xs.length; i++) {
      sum = sum.plus(wallLength(i));
    }
    return sum;
  }

  /**
   * Returns the longest wall; of several equally long ones the first. Compared exactly, before any rounding.
   *
   * @return the index of the wall, from 0
   * @throws IllegalStateException if the ring has no corner
   */
  public int longestWall() {
    requireCorner();
    int longest = 0;
    BigInteger most = BigInteger.valueOf(-1);
    for (int i = 0; i < xs.length; i++) {
      int next = next(i);
      BigInteger square =
          Exact.squaredLength(Math.subtractExact(xs[next], xs[i]), Math.subtractExact(ys[next], ys[i]));
      if (square.compareTo(most) > 0) {
        longest = i;
        most = square;
      }
    }
    return longest;
  }

  /**
   * Returns the angle at a corner, on the left of the ring: the floor's own angle in every ring of an {@link Outline}.
   * <p>
   * Exactly 90, 180 and 270 degrees where the walls meet so exactly; otherwise the nearest {@code double} or one next
   * to it. Less than 180 at a corner that juts out of the floor, more than 180 at a reflex corner.
   *
   * @param index the corner, from 0
   * @return degrees, more than 0 and less than 360; 0 or 360 is given as 0 and means that the ring folds back
   */
  public double angleDegrees(int index) {
    int before = index == 0 ? xs.length - 1 : index - 1;
    int next = next(index);
    long ax = Math.subtractExact(xs[index], xs[before]);
    long ay = Math.subtractExact(ys[index], ys[before]);
    long bx = Math.subtractExact(xs[next], xs[index]);
    long by = Math.subtractExact(ys[next], ys[index]);
    double cross = Exact.differenceOfProducts(ax, by, ay, bx);
    double dot = Exact.differenceOfProducts(ax, bx, -ay, by);
    return 180 - StrictMath.toDegrees(StrictMath.atan2(cross, dot));
  }

  /**
   * Tells exactly whether a point lies inside the ring, on it or outside, whichever way the ring runs.
   *
   * @param point the point, not null
   * @return where it lies, not null
   */
  public Containment locate(Point point) {
    long px = point.xNanometres();
    long py = point.yNanometres();
    boolean inside = false;
    for (int i = 0; i < xs.length; i++) {
      int next = next(i);
      boolean upward = ys[i] < ys[next];
      long lowY = upward ? ys[i] : ys[next];
      long highY = upward ? ys[next] : ys[i];
      if (py < lowY || py > highY || px > Math.max(xs[i], xs[next])) {
        continue;
      }
      int side = Exact.side(xs[i], ys[i], xs[next], ys[next], px, py);
      if (side == 0 && px >= Math.min(xs[i], xs[next])) {
        return Containment.ON_EDGE;
      }
      // A ray to the right crosses the wall if the point is on its left side, seen upward; the high end does not count.
      if (py < highY && side == (upward ? 1 : -1)) {
        inside = !inside;
      }
    }
    return inside ? Containment.INSIDE : Containment.OUTSIDE;
  }

  /**
   * Returns the smallest upright rectangle that holds the ring.
   *
   * @return the extent, not null
   * @throws IllegalStateException if the ring has no corner
   */
  public Extent extent() {
    requireCorner();
    return new Extent(
        Point.ofNanometres(Arrays.stream(xs).min().getAsLong(), Arrays.stream(ys).min().getAsLong()),
        Point.ofNanometres(Arrays.stream(xs).max().getAsLong(), Arrays.stream(ys).max().getAsLong()));
  }

  /**
   * Returns the ring moved.
   *
   * @param dx how far to the right, not null, may be negative
   * @param dy how far up, not null, may be negative
   * @return the moved ring, corners in the same order; not null
   * @throws ArithmeticException if a coordinate leaves the range of a length
   */
  public Ring moved(Length dx, Length dy) {
    return new Ring(
        Arrays.stream(xs).map(x -> Math.addExact(x, dx.toNanometres())).toArray(),
        Arrays.stream(ys).map(y -> Math.addExact(y, dy.toNanometres())).toArray());
  }

  /**
   * Returns the mirror image: every x becomes its negative. The corners keep their order, so a counter-clockwise ring
   * becomes a clockwise one.
   *
   * @return the mirrored ring, not null
   */
  public Ring mirrored() {
    return new Ring(Arrays.stream(xs).map(Math::negateExact).toArray(), ys);
  }

  /**
   * Returns the same ring listed from another corner.
   *
   * @param index the corner to start at, from 0
   * @return the ring, not null
   * @throws IndexOutOfBoundsException if there is no such corner
   */
  public Ring startingAt(int index) {
    int n = xs.length;
    Objects.checkIndex(index, n);
    long[] rx = new long[n];
    long[] ry = new long[n];
    for (int i = 0; i < n; i++) {
      rx[i] = xs[(i + index) % n];
      ry[i] = ys[(i + index) % n];
    }
    return new Ring(rx, ry);
  }

  private int next(int index) {
    return index + 1 == xs.length ? 0 : index + 1;
  }

  private void requireCorner() {
    if (xs.length == 0) {
      throw new IllegalStateException("a ring without corners has no walls and no extent");
    }
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

  /** What was read is made anew, so that it keeps every check. */
  private Object readResolve() {
    return ofNanometres(xs, ys);
  }
}
