package floorcalc.rows;

import floorcalc.measure.Length;
import floorcalc.outline.Containment;
import floorcalc.outline.Direction;
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
import java.util.Optional;

/**
 * A line on the floor that rows are set out from: along a wall, through a corner, through two marks, at any angle.
 * <p>
 * Boards run along it. Places count along it from its first point, heights across it from the line to its left. Every position is
 * worked out from the line itself and rounded once, to the nearest nanometre; nothing is added up from rounded steps. Between two
 * points, and at multiples of 45 degrees, the line is exact; at another angle its direction is good to 16 digits. Immutable and
 * thread-safe.
 *
 * @since 0.1
 */
public final class ControlLine {
  static final MathContext ENOUGH = new MathContext(60);

  private final Point origin;
  private final BigDecimal ux;
  private final BigDecimal uy;

  /**
   * A place in rows that are set out from a control line.
   *
   * @param row the row: row 1 lies against the line on its left, row 0 against it on its right
   * @param fromRowLine the height over the row line that the row begins at, from zero up to, but not including, the pitch; not null
   * @param along the place along the line, from its first point; not null
   * @since 0.1
   */
  public record Place(long row, Length fromRowLine, Length along) {
    /** Checks that no part is null. */
    public Place {
      Objects.requireNonNull(fromRowLine, "fromRowLine");
      Objects.requireNonNull(along, "along");
    }
  }

  /**
   * A part of a line that lies in a room.
   *
   * @param from where it begins along the line, not null
   * @param to where it ends, not null, more than {@code from}
   * @since 0.1
   */
  public record Chord(Length from, Length to) {
    /** Checks that no part is null. */
    public Chord {
      Objects.requireNonNull(from, "from");
      Objects.requireNonNull(to, "to");
    }

    /**
     * Returns how long it is.
     *
     * @return more than zero, not null
     */
    public Length length() {
      return to.minus(from);
    }
  }

  private ControlLine(Point origin, BigDecimal ux, BigDecimal uy) {
    this.origin = origin;
    this.ux = ux;
    this.uy = uy;
  }

  /**
   * Returns the line through two points.
   *
   * @param from where places count from, not null
   * @param to where it goes on to, not null
   * @return the line, not null
   * @throws IllegalArgumentException if both points are the same
   */
  public static ControlLine of(Point from, Point to) {
    if (from.equals(to)) {
      throw new IllegalArgumentException("a line needs two different points, but both are " + from);
    }
    BigInteger dx = difference(to.xNanometres(), from.xNanometres());
    BigInteger dy = difference(to.yNanometres(), from.yNanometres());
    return along(from, new BigDecimal(dx), new BigDecimal(dy));
  }

  /**
   * Returns the line through a point at an angle.
   *
   * @param point where places count from, not null
   * @param boards the way that it goes on, not null
   * @return the line, not null
   */
  public static ControlLine through(Point point, Direction boards) {
    Objects.requireNonNull(point, "point");
    BigDecimal[] eighths = boards.toDecimal().divideAndRemainder(BigDecimal.valueOf(45));
    if (eighths[1].signum() == 0) {
      int eighth = eighths[0].intValueExact();
      return along(point, BigDecimal.valueOf(new int[] {1, 1, 0, -1, -1, -1, 0, 1}[eighth]),
          BigDecimal.valueOf(new int[] {0, 1, 1, 1, 0, -1, -1, -1}[eighth]));
    }
    double angle = StrictMath.toRadians(boards.degrees());
    return new ControlLine(Objects.requireNonNull(point, "point"), new BigDecimal(StrictMath.cos(angle)),
        new BigDecimal(StrictMath.sin(angle)));
  }

  /**
   * Returns the line through a corner of a room at an angle, such as an inner corner that both parts of a room are to share.
   *
   * @param room the room, not null
   * @param corner the corner, counted from 1
   * @param boards the way that it goes on, not null
   * @return the line, not null
   * @throws IllegalArgumentException if there is no such corner
   */
  public static ControlLine throughCorner(Outline room, int corner, Direction boards) {
    if (corner < 1 || corner > room.shell().size()) {
      throw new IllegalArgumentException("the room has corners 1 to " + room.shell().size() + ", but corner " + corner
          + " was asked for");
    }
    return through(room.shell().corners().get(corner - 1), boards);
  }

  private static ControlLine along(Point from, BigDecimal dx, BigDecimal dy) {
    BigDecimal length = dx.multiply(dx).add(dy.multiply(dy)).sqrt(ENOUGH);
    return new ControlLine(Objects.requireNonNull(from, "from"), dx.divide(length, ENOUGH), dy.divide(length, ENOUGH));
  }

  private static BigInteger difference(long a, long b) {
    return BigInteger.valueOf(a).subtract(BigInteger.valueOf(b));
  }

  static Length nearest(BigDecimal nanometres) {
    return Length.ofNanometres(nanometres.setScale(0, RoundingMode.HALF_EVEN).longValueExact());
  }

  /**
   * Returns the line square to this one through a point, turned to the left.
   *
   * @param point where its places count from, not null
   * @return the line, not null
   */
  public ControlLine squareThrough(Point point) {
    return new ControlLine(Objects.requireNonNull(point, "point"), uy.negate(), ux);
  }

  /**
   * Returns the line beside this one, so many to its left.
   *
   * @param height by how much, negative to the right; not null
   * @return the line, its first point rounded to the nearest nanometre; not null
   */
  public ControlLine beside(Length height) {
    return new ControlLine(pointAt(Length.ZERO, height), ux, uy);
  }

  /**
   * Returns the point at a place along the line and a height over it.
   *
   * @param along the place, not null
   * @param height the height to the left, not null
   * @return the point, rounded to the nearest nanometre; not null
   */
  public Point pointAt(Length along, Length height) {
    BigDecimal a = BigDecimal.valueOf(along.toNanometres());
    BigDecimal h = BigDecimal.valueOf(height.toNanometres());
    return Point.of(origin.x().plus(nearest(a.multiply(ux).subtract(h.multiply(uy)))),
        origin.y().plus(nearest(a.multiply(uy).add(h.multiply(ux)))));
  }

  /**
   * Returns the place of a point along the line.
   *
   * @param point the point, not null
   * @return the distance from the first point along the line, negative before it, rounded to the nearest nanometre; not null
   */
  public Length along(Point point) {
    return nearest(exactAlong(point.xNanometres(), point.yNanometres()));
  }

  /**
   * Returns the height of a point over the line.
   *
   * @param point the point, not null
   * @return the distance square to the line, to its left positive, rounded to the nearest nanometre; not null
   */
  public Length height(Point point) {
    return nearest(exactHeight(point.xNanometres(), point.yNanometres()));
  }

  private BigDecimal exactAlong(long x, long y) {
    return dx(x).multiply(ux).add(dy(y).multiply(uy));
  }

  private BigDecimal exactHeight(long x, long y) {
    return dy(y).multiply(ux).subtract(dx(x).multiply(uy));
  }

  private BigDecimal dx(long x) {
    return new BigDecimal(difference(x, origin.xNanometres()));
  }

  private BigDecimal dy(long y) {
    return new BigDecimal(difference(y, origin.yNanometres()));
  }

  /**
   * Returns the place of a point in rows set out from the line.
   *
   * @param point the point, such as the middle of a pipe, not null
   * @param pitch the laid pitch, not null, more than zero
   * @return its row, its height over the row line and its place along the row; not null
   * @throws IllegalArgumentException if the pitch is not more than zero
   */
  public Place placeOf(Point point, Length pitch) {
    Widths.requirePositive(pitch, "laid pitch", "give the width that a laid board covers");
    Length height = height(point);
    return new Place(height.dividedBy(pitch) + 1, height.remainder(pitch), along(point));
  }

  /**
   * Returns how far a point in a room is from the start of its row, along the boards.
   *
   * @param point the point, not null
   * @param room the room, or the floor in it less its gap, not null
   * @return the distance back along the line's direction to the wall or void where the row begins, rounded to the nearest nanometre;
   *     empty if the point is not inside; not null
   */
  public Optional<Length> fromStartOfRow(Point point, Outline room) {
    if (room.locate(point) != Containment.INSIDE) {
      return Optional.empty();
    }
    return new ControlLine(point, ux, uy).chords(room).stream()
        .filter(chord -> !chord.from().isPositive() && !chord.to().isNegative()).map(chord -> chord.from().negated()).findFirst();
  }

  /**
   * Returns the parts of the line that lie in a room, voids left out: how long a loose tongue along it is, in all.
   *
   * @param room the room, not null
   * @return the parts along the line, ends rounded to the nearest nanometre; parts along a wall are left out; empty if it misses
   *     the room; not null
   */
  public List<Chord> chords(Outline room) {
    List<BigDecimal> crossings = new ArrayList<>();
    addCrossings(room.shell(), crossings);
    room.voids().forEach(ring -> addCrossings(ring, crossings));
    List<BigDecimal> sorted = crossings.stream().sorted().toList();
    List<Chord> chords = new ArrayList<>();
    for (int i = 1; i < sorted.size(); i++) {
      Length from = nearest(sorted.get(i - 1));
      Length to = nearest(sorted.get(i));
      if (from.compareTo(to) < 0 && room.locate(pointAt(middle(from, to), Length.ZERO)) == Containment.INSIDE) {
        if (!chords.isEmpty() && chords.get(chords.size() - 1).to().equals(from)) {
          chords.set(chords.size() - 1, new Chord(chords.get(chords.size() - 1).from(), to));
        } else {
          chords.add(new Chord(from, to));
        }
      }
    }
    return List.copyOf(chords);
  }

  private static Length middle(Length from, Length to) {
    return from.plus(to.minus(from).dividedBy(2, RoundingMode.FLOOR));
  }

  private void addCrossings(Ring ring, List<BigDecimal> crossings) {
    for (int i = 0; i < ring.size(); i++) {
      int next = (i + 1) % ring.size();
      BigDecimal h0 = exactHeight(ring.x(i), ring.y(i));
      BigDecimal h1 = exactHeight(ring.x(next), ring.y(next));
      BigDecimal a0 = exactAlong(ring.x(i), ring.y(i));
      if (h0.signum() == 0) {
        crossings.add(a0);
      } else if (h0.signum() * h1.signum() < 0) {
        BigDecimal share = h0.divide(h0.subtract(h1), ENOUGH);
        crossings.add(a0.add(exactAlong(ring.x(next), ring.y(next)).subtract(a0).multiply(share)));
      }
    }
  }

  /**
   * Returns where places count from.
   *
   * @return the first point, not null
   */
  public Point origin() {
    return origin;
  }
}
