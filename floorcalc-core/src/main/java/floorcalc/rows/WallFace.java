package floorcalc.rows;

import floorcalc.measure.Length;
import floorcalc.outline.Outline;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * The face of a wall as distances from a straight line, such as a string pulled along it: straight from one place to the next.
 * <p>
 * Places count along the line. Distances are square to it and grow away from the floor; a wall that comes nearer than the line
 * has a negative one. Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class WallFace {
  private static final MathContext ENOUGH = new MathContext(60);

  private final List<Offset> offsets;

  /**
   * How far the wall is from the line at one place.
   *
   * @param at the place along the line, not null
   * @param distance the distance from the line to the wall, square to the line, not null; negative if the wall comes nearer to the
   *     floor than the line
   * @since 0.1
   */
  public record Offset(Length at, Length distance) {
    /** Checks that no part is null. */
    public Offset {
      Objects.requireNonNull(at, "at");
      Objects.requireNonNull(distance, "distance");
    }
  }

  private WallFace(List<Offset> offsets) {
    this.offsets = List.copyOf(offsets);
  }

  /**
   * Returns the face of a wall measured from a string line.
   *
   * @param offsets at least two, at places that rise, not null
   * @return the face, not null
   * @throws IllegalArgumentException if there are fewer than two, or a place does not lie beyond the one before it
   */
  public static WallFace of(List<Offset> offsets) {
    if (offsets.size() < 2) {
      throw new IllegalArgumentException("the face of a wall needs distances at two places at least, but has "
          + offsets.size());
    }
    for (int i = 1; i < offsets.size(); i++) {
      if (offsets.get(i).at().compareTo(offsets.get(i - 1).at()) <= 0) {
        throw new IllegalArgumentException("the places along the line must rise, but " + offsets.get(i - 1).at()
            + " is followed by " + offsets.get(i).at() + "; give each place once, in order");
      }
    }
    return new WallFace(offsets);
  }

  /**
   * Returns the face of neighbouring walls of a room, seen from a line.
   *
   * @param room the room, not null
   * @param firstWall the first of the walls, counted from 1; wall i runs from corner i to the next
   * @param lastWall the last of the walls, as {@code firstWall} or after it; past the last wall it goes on with the first
   * @param from the place 0 of the line, not null
   * @param to a point that the line goes on to, the floor on its left as on that of the walls; not null
   * @return the face, places and distances rounded to the nearest nanometre; not null
   * @throws IllegalArgumentException if there is no such wall, both points are the same, or a wall runs back along the line
   */
  public static WallFace of(Outline room, int firstWall, int lastWall, Point from, Point to) {
    Ring walls = room.shell();
    if (firstWall < 1 || firstWall > walls.size() || lastWall < 1 || lastWall > walls.size()) {
      throw new IllegalArgumentException("the room has walls 1 to " + walls.size() + ", but " + firstWall + " to " + lastWall
          + " were asked for");
    }
    if (from.equals(to)) {
      throw new IllegalArgumentException("a line needs two different points, but both are " + from);
    }
    List<Offset> found = new ArrayList<>();
    int corners = Math.floorMod(lastWall - firstWall, walls.size()) + 2;
    for (int i = 0; i < corners; i++) {
      int corner = (firstWall - 1 + i) % walls.size();
      found.add(offset(from, to, walls.x(corner), walls.y(corner)));
    }
    return of(found);
  }

  private static Offset offset(Point from, Point to, long x, long y) {
    BigInteger dx = difference(to.xNanometres(), from.xNanometres());
    BigInteger dy = difference(to.yNanometres(), from.yNanometres());
    BigInteger px = difference(x, from.xNanometres());
    BigInteger py = difference(y, from.yNanometres());
    BigDecimal length = new BigDecimal(dx.multiply(dx).add(dy.multiply(dy))).sqrt(ENOUGH);
    return new Offset(nearest(px.multiply(dx).add(py.multiply(dy)), length),
        nearest(px.multiply(dy).subtract(py.multiply(dx)), length));
  }

  private static BigInteger difference(long a, long b) {
    return BigInteger.valueOf(a).subtract(BigInteger.valueOf(b));
  }

  private static Length nearest(BigInteger product, BigDecimal length) {
    return Length.ofNanometres(new BigDecimal(product).divide(length, ENOUGH).setScale(0, RoundingMode.HALF_EVEN)
        .longValueExact());
  }

  /** Returns the whole number nearest to a * b / c, a tie to the even one. */
  static long share(long a, long b, long c) {
    return new BigDecimal(BigInteger.valueOf(a).multiply(BigInteger.valueOf(b)))
        .divide(BigDecimal.valueOf(c), 0, RoundingMode.HALF_EVEN).longValueExact();
  }

  /**
   * Returns the distance at a place, on the straight line between the places measured.
   *
   * @param at the place, from the first to the last of those measured, not null
   * @return the distance, rounded to the nearest nanometre; not null
   * @throws IllegalArgumentException if the place is outside
   */
  public Length distanceAt(Length at) {
    Objects.requireNonNull(at, "at");
    for (int i = 1; i < offsets.size(); i++) {
      Offset before = offsets.get(i - 1);
      Offset after = offsets.get(i);
      if (before.at().compareTo(at) <= 0 && at.compareTo(after.at()) <= 0) {
        return before.distance().plus(Length.ofNanometres(share(after.distance().minus(before.distance()).toNanometres(),
            at.minus(before.at()).toNanometres(), after.at().minus(before.at()).toNanometres())));
      }
    }
    throw new IllegalArgumentException("the wall was measured from " + offsets.get(0).at() + " to "
        + offsets.get(offsets.size() - 1).at() + ", but " + at + " was asked for");
  }

  /**
   * Returns where the wall comes nearest to the floor.
   *
   * @return the first of the places with the least distance, not null
   */
  public Offset nearest() {
    return offsets.stream().min((a, b) -> a.distance().compareTo(b.distance())).orElseThrow();
  }

  /**
   * Returns where the wall goes farthest from the floor.
   *
   * @return the first of the places with the greatest distance, not null
   */
  public Offset farthest() {
    Offset farthest = offsets.get(0);
    for (Offset offset : offsets) {
      farthest = offset.distance().compareTo(farthest.distance()) > 0 ? offset : farthest;
    }
    return farthest;
  }

  /**
   * Returns by how much the distance varies.
   *
   * @return the greatest less the least distance, zero if the wall is straight and parallel to the line; not null
   */
  public Length variation() {
    return farthest().distance().minus(nearest().distance());
  }

  /**
   * Returns the distances.
   *
   * @return an unmodifiable list, places rising, at least two; not null
   */
  public List<Offset> offsets() {
    return offsets;
  }
}
