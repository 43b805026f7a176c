package floorcalc.outline;

import floorcalc.measure.Area;
import floorcalc.measure.Length;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/**
 * A floor area: one ring of walls, with voids (columns, hearths, islands) inside. The shell runs counter-clockwise and
 * the voids clockwise, whichever way they were given, so the floor lies on the left of every wall.
 * <p>
 * A ring that has to be turned round keeps its first corner; its walls are then numbered the other way. To check what a
 * person gave, with their own numbers, use {@link OutlineCheck#faultsOf(Ring, List)} before making the outline. An outline is
 * not checked when it is made: what crosses itself has no meaningful area. Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class Outline implements Serializable {
  private static final long serialVersionUID = 1L;

  private final Ring shell;
  @SuppressWarnings("serial")
  private final List<Ring> voids;

  private Outline(Ring shell, List<Ring> voids) {
    this.shell = shell;
    this.voids = voids;
  }

  /**
   * Returns the outline without voids.
   *
   * @param shell the ring of walls, not null
   * @return the outline, not null
   */
  public static Outline of(Ring shell) {
    return of(shell, List.of());
  }

  /**
   * Returns the outline with voids.
   *
   * @param shell the ring of walls, not null
   * @param voids the fixed things inside, not null
   * @return the outline, not null
   */
  public static Outline of(Ring shell, List<Ring> voids) {
    Objects.requireNonNull(shell, "shell");
    Ring outer = shell.signedArea().isNegative() ? shell.reversed() : shell;
    List<Ring> inner = voids.stream().map(v -> v.signedArea().isPositive() ? v.reversed() : v).toList();
    return new Outline(outer, inner);
  }

  /**
   * Returns a room with four square corners: from (0, 0) along x and along y.
   *
   * @param alongX the length of the walls along x, not null, more than zero
   * @param alongY the length of the walls along y, not null, more than zero
   * @return the outline, not null
   * @throws IllegalArgumentException if a length is not more than zero
   */
  public static Outline rectangle(Length alongX, Length alongY) {
    Objects.requireNonNull(alongX, "alongX");
    Objects.requireNonNull(alongY, "alongY");
    if (!alongX.isPositive() || !alongY.isPositive()) {
      throw new IllegalArgumentException("the walls of a rectangle must be longer than 0 mm, but are " + alongX + " and " + alongY);
    }
    Length zero = Length.ZERO;
    return of(Ring.of(Point.of(zero, zero), Point.of(alongX, zero), Point.of(alongX, alongY), Point.of(zero, alongY)));
  }

  /**
   * Returns the ring of walls, counter-clockwise.
   *
   * @return the shell, not null
   */
  public Ring shell() {
    return shell;
  }

  /**
   * Returns the voids, each clockwise.
   *
   * @return an unmodifiable list, not null
   */
  public List<Ring> voids() {
    return voids;
  }

  /**
   * Returns the exact area: the shell less the voids.
   *
   * @return the area, not null
   */
  public Area area() {
    Area area = shell.area();
    for (Ring ring : voids) {
      area = area.minus(ring.area());
    }
    return area;
  }

  /**
   * Returns the length of all walls, those of the voids included: each rounded to the nearest nanometre, then added.
   *
   * @return the perimeter, not negative
   */
  public Length perimeter() {
    return voids.stream().map(Ring::perimeter).reduce(shell.perimeter(), Length::plus);
  }

  /**
   * Returns the number of corners, which is the number of walls, those of the voids included.
   *
   * @return the number of corners
   */
  public int size() {
    return voids.stream().mapToInt(Ring::size).reduce(shell.size(), Integer::sum);
  }

  /**
   * Tells exactly whether a point lies on the floor, on a wall or off the floor. Within a void is off the floor.
   *
   * @param point the point, not null
   * @return where it lies, not null
   */
  public Containment locate(Point point) {
    Containment place = shell.locate(point);
    for (int i = 0; place == Containment.INSIDE && i < voids.size(); i++) {
      place = switch (voids.get(i).locate(point)) {
        case INSIDE -> Containment.OUTSIDE;
        case ON_EDGE -> Containment.ON_EDGE;
        case OUTSIDE -> Containment.INSIDE;
      };
    }
    return place;
  }

  /**
   * Tells whether a point lies on the floor, on a wall, or off the floor by no more than a reach of the outer walls.
   *
   * @param point the point, not null
   * @param reach how far off it may be, not null, not negative; judged to within a millionth of it
   * @return true if it is as near
   */
  public boolean isNear(Point point, Length reach) {
    Objects.requireNonNull(reach, "reach");
    if (locate(point) != Containment.OUTSIDE) {
      return true;
    }
    for (int i = 0; i < shell.size(); i++) {
      int next = (i + 1) % shell.size();
      double dx = shell.x(next) - shell.x(i);
      double dy = shell.y(next) - shell.y(i);
      double px = point.xNanometres() - shell.x(i);
      double py = point.yNanometres() - shell.y(i);
      double share = Math.max(0, Math.min(1, (px * dx + py * dy) / (dx * dx + dy * dy)));
      if (StrictMath.hypot(px - share * dx, py - share * dy) <= reach.toNanometres()) {
        return true;
      }
    }
    return false;
  }

  /**
   * Returns the smallest upright rectangle that holds the outline.
   *
   * @return the extent of the shell, not null
   */
  public Extent extent() {
    return shell.extent();
  }

  /**
   * Returns the outline moved.
   *
   * @param dx how far to the right, not null, may be negative
   * @param dy how far up, not null, may be negative
   * @return the moved outline, corners and voids in the same order; not null
   */
  public Outline moved(Length dx, Length dy) {
    return map(ring -> ring.moved(dx, dy));
  }

  /**
   * Returns the mirror image: every x becomes its negative. Rings are turned round, so that the floor stays on the left
   * of each wall; the first corner of each stays the first.
   *
   * @return the mirrored outline, not null
   */
  public Outline mirrored() {
    return map(Ring::mirrored);
  }

  /**
   * Returns the same outline with its shell listed from another corner.
   *
   * @param index the corner of the shell to start at, from 0
   * @return the outline, not null
   * @throws IndexOutOfBoundsException if there is no such corner
   */
  public Outline startingAt(int index) {
    return new Outline(shell.startingAt(index), voids);
  }

  /** Returns this outline with each ring changed. */
  Outline map(UnaryOperator<Ring> change) {
    return of(change.apply(shell), voids.stream().map(change).toList());
  }

  /** Returns all rings: the shell, then the voids. */
  List<Ring> rings() {
    return Stream.concat(Stream.of(shell), voids.stream()).toList();
  }

  @Override
  public boolean equals(Object object) {
    return object instanceof Outline other && shell.equals(other.shell) && voids.equals(other.voids);
  }

  @Override
  public int hashCode() {
    return shell.hashCode() * 31 + voids.hashCode();
  }

  @Override
  public String toString() {
    return voids.isEmpty() ? shell.toString() : shell + " less " + voids;
  }

  /** What was read is made anew, so that it keeps every check. */
  private Object readResolve() {
    return of(shell, voids);
  }
}
