package floorcalc.outline;

import floorcalc.measure.Area;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;

/**
 * A floor area: one ring of walls, with voids (columns, hearths, islands) inside. The shell runs counter-clockwise and
 * the voids clockwise, whichever way they were given. Immutable and thread-safe.
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
    List<Ring> inner = voids.stream().map(v -> v.signedArea().isNegative() ? v : v.reversed()).toList();
    return new Outline(outer, inner);
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
}
