package floorcalc.outline;

import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;

/**
 * The least width of a shape: how far apart the two nearest parallel lines are that hold all of it. It is what the shape needs to pass between two
 * walls, or to lie on a strip.
 * <p>
 * One of the lines lies along a side of the convex hull, so each side is tried with the corner farthest from it. Immutable and thread-safe. See
 * {@code docs/outline.md}.
 *
 * @param width the width, rounded to the nearest nanometre, not null, not negative
 * @param along which way the parallels run, not null
 * @since 0.1
 */
public record LeastWidth(Length width, Direction along) {
  /** Checks that no part is null. */
  public LeastWidth {
    Objects.requireNonNull(width, "width");
    Objects.requireNonNull(along, "along");
  }

  /**
   * Measures an outline; voids make no difference.
   *
   * @param outline the outline, not null
   * @return the width with its working: the step {@code least-width}; not null
   * @throws IllegalArgumentException if there are not at least two different corners
   */
  public static Calculated<LeastWidth> of(Outline outline) {
    List<Point> hull = hull(outline.shell().corners());
    if (hull.size() < 2) {
      throw new IllegalArgumentException("a width needs at least two different corners, but the outline is " + outline);
    }
    int best = 0;
    Point farthest = hull.get(0);
    double least = Double.MAX_VALUE;
    int far = 1;
    for (int i = 0; i < hull.size(); i++) {
      Point from = hull.get(i);
      Point to = hull.get((i + 1) % hull.size());
      while (cross(from, to, hull.get((far + 1) % hull.size())) > cross(from, to, hull.get(far))) {
        far = (far + 1) % hull.size();
      }
      double width = cross(from, to, hull.get(far)) / StrictMath.sqrt(Exact.squaredLength(
          to.xNanometres() - from.xNanometres(), to.yNanometres() - from.yNanometres()).doubleValue());
      if (width < least) {
        least = width;
        best = i;
        farthest = hull.get(far);
      }
    }
    Point from = hull.get(best);
    Point to = hull.get((best + 1) % hull.size());
    Length width = Length.ofNanometres((long) StrictMath.rint(least));
    Step step = new Step("least-width", "How far apart are the nearest two parallels that hold the outline, one along its outermost corners 1 and 2, the"
        + " other through corner 3?", "w = abs((x2 - x1) * (y3 - y1) - (y2 - y1) * (x3 - x1)) / sqrt((x2 - x1) * (x2 - x1) + (y2 - y1) * (y2 - y1)),"
            + " rounded to the nearest nanometre",
        List.of(Term.of("x1", "corner 1, along x", from.x()), Term.of("y1", "corner 1, along y", from.y()),
            Term.of("x2", "corner 2, along x", to.x()), Term.of("y2", "corner 2, along y", to.y()),
            Term.of("x3", "corner 3, along x", farthest.x()), Term.of("y3", "corner 3, along y", farthest.y())), width, Source.DEFINITION);
    return Calculated.of(new LeastWidth(width, Direction.fromPoints(from, to)), List.of(step));
  }

  private static double cross(Point a, Point b, Point c) {
    return Exact.differenceOfProducts(Math.subtractExact(b.xNanometres(), a.xNanometres()), Math.subtractExact(c.yNanometres(), a.yNanometres()),
        Math.subtractExact(b.yNanometres(), a.yNanometres()), Math.subtractExact(c.xNanometres(), a.xNanometres()));
  }

  /** The corners of the hull, counter-clockwise from the leftmost, none on a straight side. */
  private static List<Point> hull(List<Point> corners) {
    List<Point> sorted = corners.stream().distinct()
        .sorted(Comparator.comparingLong(Point::xNanometres).thenComparingLong(Point::yNanometres)).toList();
    List<Point> hull = new ArrayList<>();
    for (int pass = 0; pass < 2 && sorted.size() > 2; pass++) {
      int fixed = hull.size();
      for (int i = 0; i < sorted.size(); i++) {
        Point next = sorted.get(pass == 0 ? i : sorted.size() - 1 - i);
        while (hull.size() >= fixed + 2 && turn(hull.get(hull.size() - 2), hull.get(hull.size() - 1), next) <= 0) {
          hull.remove(hull.size() - 1);
        }
        hull.add(next);
      }
      hull.remove(hull.size() - 1);
    }
    return sorted.size() > 2 ? hull : sorted;
  }

  private static int turn(Point a, Point b, Point c) {
    return Exact.side(a.xNanometres(), a.yNanometres(), b.xNanometres(), b.yNanometres(), c.xNanometres(), c.yNanometres());
  }
}
