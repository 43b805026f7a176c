package floorcalc.laying;

import floorcalc.measure.Length;
import floorcalc.outline.Outline;
import floorcalc.outline.Ring;
import floorcalc.working.Finding;
import floorcalc.working.Severity;
import floorcalc.working.Source;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Tells whether a bay can move as one piece: a floor that bends round an inner corner pinches there.
 * <p>
 * The depth of a recess is how far an inner corner lies behind the line across the recess, from outer corner to outer corner. A recess up to a quarter of a metre
 * is let pass, as at door reveals and chimney breasts (common practice, no source).
 */
final class Freedom {
  private static final double DEEPEST_RECESS = 250e6;

  private Freedom() {}

  static Optional<Finding> of(String bay, Outline laid) {
    Ring shell = laid.shell();
    List<double[]> hull = hull(shell);
    int corners = 0;
    double deepest = 0;
    for (int i = 0; i < shell.size(); i++) {
      double depth = isInner(shell, i) ? depth(shell, i, hull) : 0;
      if (depth > DEEPEST_RECESS) {
        corners++;
        deepest = Math.max(deepest, depth);
      }
    }
    if (corners == 0) {
      return Optional.empty();
    }
    Length limit = Length.ofMillimetres(250);
    return Optional.of(new Finding("bay-must-be-split", Severity.SERIOUS, bay,
        bay + " bends round " + corners + (corners == 1 ? " inner corner" : " inner corners") + ", the deepest "
            + Length.ofMillimetres((long) (deepest / 1e6)) + " inside the line across (up to " + limit
            + " is let pass): a floor of this shape cannot move freely; split it with an expansion break at the inner "
            + (corners == 1 ? "corner" : "corners"),
        Source.COMMON_PRACTICE));
  }

  private static boolean isInner(Ring shell, int i) {
    int before = (i + shell.size() - 1) % shell.size();
    int after = (i + 1) % shell.size();
    return cross(shell.x(before), shell.y(before), shell.x(i), shell.y(i), shell.x(after), shell.y(after)) < 0;
  }

  private static double cross(double ax, double ay, double bx, double by, double cx, double cy) {
    return (bx - ax) * (cy - ay) - (by - ay) * (cx - ax);
  }

  /** The distance to the line across the recess: from the last corner on the hull before it to the first after it. */
  private static double depth(Ring shell, int inner, List<double[]> hull) {
    int from = inner;
    do {
      from = (from + shell.size() - 1) % shell.size();
    } while (!isOn(shell, from, hull));
    int to = inner;
    do {
      to = (to + 1) % shell.size();
    } while (!isOn(shell, to, hull));
    double dx = (double) shell.x(to) - shell.x(from);
    double dy = (double) shell.y(to) - shell.y(from);
    return StrictMath.abs(cross(shell.x(from), shell.y(from), shell.x(to), shell.y(to), shell.x(inner), shell.y(inner)))
        / StrictMath.sqrt(dx * dx + dy * dy);
  }

  private static boolean isOn(Ring shell, int i, List<double[]> hull) {
    return hull.stream().anyMatch(corner -> corner[0] == shell.x(i) && corner[1] == shell.y(i));
  }

  private static List<double[]> hull(Ring shell) {
    List<double[]> sorted = IntStream.range(0, shell.size())
        .mapToObj(i -> new double[] {shell.x(i), shell.y(i)})
        .sorted(Comparator.<double[]>comparingDouble(p -> p[0]).thenComparingDouble(p -> p[1])).toList();
    List<double[]> hull = new ArrayList<>();
    for (int pass = 0; pass < 2; pass++) {
      int base = hull.size();
      for (int k = 0; k < sorted.size(); k++) {
        double[] p = sorted.get(pass == 0 ? k : sorted.size() - 1 - k);
        while (hull.size() >= base + 2 && turnsRight(hull.get(hull.size() - 2), hull.get(hull.size() - 1), p)) {
          hull.remove(hull.size() - 1);
        }
        hull.add(p);
      }
      hull.remove(hull.size() - 1);
    }
    return hull;
  }

  private static boolean turnsRight(double[] a, double[] b, double[] c) {
    return cross(a[0], a[1], b[0], b[1], c[0], c[1]) <= 0;
  }
}
