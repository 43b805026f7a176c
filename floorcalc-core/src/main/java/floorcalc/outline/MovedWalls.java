package floorcalc.outline;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The gap by moving each wall inward and joining neighbours at their corners: right as long as no wall is swallowed and
 * no two parts of the room come together.
 * <p>
 * Then the strips between each wall and its moved self fill the space between room and laid area exactly once, which
 * is why the three conditions tested here are enough: no moved wall turns round, no moved walls meet but neighbours, and
 * no moved wall comes nearer than the gap to any wall of the room.
 */
final class MovedWalls {
  /** A moved wall shorter than this, in nanometres, counts as swallowed: rounding could turn it round. */
  private static final double SHORTEST = 2;

  private MovedWalls() {}

  /** Returns the laid area, or nothing if it has to be found by {@link StripsTaken}. */
  static Optional<Outline> inset(List<Mitres> rings, long gap) {
    List<Ring> moved = new ArrayList<>();
    for (Mitres ring : rings) {
      if (!keepsEveryWall(ring, gap)) {
        return Optional.empty();
      }
      moved.add(moved(ring, gap));
    }
    Ring shell = moved.get(0);
    List<Ring> voids = moved.subList(1, moved.size());
    if (!shell.signedArea().isPositive() || !OutlineCheck.isApart(moved) || !areInPlace(shell, voids)) {
      return Optional.empty();
    }
    Outline laid = Outline.of(shell, voids);
    return !Pieces.isThin(laid) && Clearance.isKept(rings.stream().map(ring -> ring.ring).toList(), List.of(laid), gap)
        ? Optional.of(laid) : Optional.empty();
  }

  private static boolean keepsEveryWall(Mitres ring, long gap) {
    for (int i = 0; i < ring.size(); i++) {
      if (!(ring.length[i] + gap * (ring.reach(i) + ring.reach(ring.after(i))) >= SHORTEST)) {
        return false;
      }
    }
    return true;
  }

  private static Ring moved(Mitres ring, long gap) {
    List<Point> corners = new ArrayList<>(ring.size());
    for (int i = 0; i < ring.size(); i++) {
      if (ring.isCutOff(i)) {
        int before = ring.before(i);
        double reach = ring.reach(i);
        Point first = corner(ring, i, gap, -ring.uy[before] + reach * ring.ux[before],
            ring.ux[before] + reach * ring.uy[before]);
        Point second = corner(ring, i, gap, -ring.uy[i] - reach * ring.ux[i], ring.ux[i] - reach * ring.uy[i]);
        corners.add(first);
        if (!first.equals(second)) {
          corners.add(second);
        }
      } else {
        corners.add(corner(ring, i, gap, ring.mitreX(i), ring.mitreY(i)));
      }
    }
    return Ring.of(corners);
  }

  private static Point corner(Mitres ring, int index, long gap, double x, double y) {
    return Point.ofNanometres(
        ring.ring.x(index) + (long) Math.rint(gap * x), ring.ring.y(index) + (long) Math.rint(gap * y));
  }

  private static boolean areInPlace(Ring shell, List<Ring> voids) {
    for (Ring ring : voids) {
      Point corner = ring.corners().get(0);
      boolean clear = voids.stream().allMatch(other -> other == ring || other.locate(corner) == Containment.OUTSIDE);
      if (!clear || shell.locate(corner) != Containment.INSIDE) {
        return false;
      }
    }
    return true;
  }
}
