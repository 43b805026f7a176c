package floorcalc.outline;

import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;

/**
 * The widest circle that lies on a floor, clear of all walls and voids: how wide the room is where it is widest, and where that is. A work table
 * or a turning place fits there if it fits anywhere.
 * <p>
 * The centre lies on a whole nanometre and the radius is its exact distance from the nearest wall, rounded down. It falls short of the widest circle
 * by no more than 3 nm, see {@link #radiusAtMost()}. Where many places are as good, as along a corridor, it is one of them, the same on every
 * machine. Immutable and thread-safe. See {@code docs/outline.md}.
 *
 * @since 0.1
 */
public final class InscribedCircle {
  /** What rounding the centre can take, and a nanometre. */
  private static final long SHORT_BY = 2;
  private static final int MOST_WALLS_SHOWN = 4;

  private final Point centre;
  private final Length radius;
  private final Length radiusAtMost;

  private InscribedCircle(Point centre, Length radius, Length radiusAtMost) {
    this.centre = centre;
    this.radius = radius;
    this.radiusAtMost = radiusAtMost;
  }

  /**
   * Finds the widest circle on a floor. As with {@link Outline#area()}, the outline is not checked: walls may touch, but on one that crosses itself
   * the circle means little.
   *
   * @param outline the walls and voids, not null
   * @return the circle with its working: the steps {@code centre-x} and {@code centre-y}, the distance from each wall that it touches, its
   *     width {@code widest-circle}, and {@code widest-at-most}; not null
   * @throws IllegalArgumentException if the outline holds no floor
   */
  public static Calculated<InscribedCircle> of(Outline outline) {
    if (outline.shell().size() == 0) {
      throw new IllegalArgumentException("an outline without walls holds no floor; give at least three corners");
    }
    Extent extent = outline.extent();
    long middleX = Math.floorDiv(Math.addExact(extent.low().xNanometres(), extent.high().xNanometres()), 2);
    long middleY = Math.floorDiv(Math.addExact(extent.low().yNanometres(), extent.high().yNanometres()), 2);
    RoundSearch search = new RoundSearch(outline.rings(), middleX, middleY);
    search.search(Math.max(extent.width().toNanometres(), extent.height().toNanometres()) / 2.0 + 1);
    if (!search.isFound()) {
      throw new IllegalArgumentException("the outline holds no floor: " + Wkt.write(outline));
    }
    Point centre = Point.ofNanometres(middleX + (long) StrictMath.rint(search.x()), middleY + (long) StrictMath.rint(search.y()));
    List<Distance> distances = new ArrayList<>();
    for (int r = 0; r <= outline.voids().size(); r++) {
      Ring ring = outline.rings().get(r);
      for (int i = 0; i < ring.size(); i++) {
        distances.add(Distance.of(centre, ring, i, r));
      }
    }
    long radius = distances.stream().mapToLong(Distance::nanometres).min().orElse(0);
    Length atMost = Length.ofNanometres(Math.max(radius, (long) StrictMath.ceil(search.most())));
    InscribedCircle circle = new InscribedCircle(centre, Length.ofNanometres(radius), atMost);
    return Calculated.of(circle, circle.steps(distances.stream().filter(one -> one.nanometres() <= radius + SHORT_BY)
        .limit(MOST_WALLS_SHOWN).toList()));
  }

  private List<Step> steps(List<Distance> touched) {
    List<Step> steps = new ArrayList<>();
    String stated = "value as stated";
    steps.add(step("centre-x", "Which place is farthest from all walls? Along x:", stated, List.of(), centre.x()));
    steps.add(step("centre-y", "And along y:", stated, List.of(), centre.y()));
    List<Term> terms = new ArrayList<>();
    StringBuilder formula = new StringBuilder("w = 2 * min(");
    for (int k = 0; k < touched.size(); k++) {
      Distance one = touched.get(k);
      steps.add(one.step("d" + (k + 1), centre));
      terms.add(Term.of("d" + (k + 1), "distance from " + one.name(), Length.ofNanometres(one.nanometres())));
      formula.append(k == 0 ? "" : ", ").append("d").append(k + 1);
    }
    steps.add(step("widest-circle", "How wide is the circle that touches the nearest of all walls?", formula.append(')').toString(), terms,
        radius.multipliedBy(2)));
    steps.add(step("widest-at-most", "How wide is no circle on this floor, as no square it was divided into can hold the centre of a wider one?",
        stated, List.of(), radiusAtMost.multipliedBy(2)));
    return steps;
  }

  private static Step step(String id, String question, String formula, List<Term> terms, Length result) {
    return new Step(id, question, formula, terms, result, Source.DEFINITION);
  }

  /** A wall and how far it is from the centre, rounded down; at its corner if the foot of the perpendicular is beyond its ends. */
  private record Distance(String name, Point from, Point to, boolean isAtCorner, long nanometres) {
    static Distance of(Point centre, Ring ring, int wall, int ringNumber) {
      Point from = Point.ofNanometres(ring.x(wall), ring.y(wall));
      int next = (wall + 1) % ring.size();
      Point to = Point.ofNanometres(ring.x(next), ring.y(next));
      BigInteger dx = difference(to.xNanometres(), from.xNanometres());
      BigInteger dy = difference(to.yNanometres(), from.yNanometres());
      BigInteger px = difference(centre.xNanometres(), from.xNanometres());
      BigInteger py = difference(centre.yNanometres(), from.yNanometres());
      BigInteger along = px.multiply(dx).add(py.multiply(dy));
      BigInteger square = dx.multiply(dx).add(dy.multiply(dy));
      String of = ringNumber == 0 ? "" : " of void " + ringNumber;
      String name = "wall " + (wall + 1) + of;
      if (along.signum() > 0 && along.compareTo(square) < 0) {
        BigInteger cross = dx.multiply(py).subtract(dy.multiply(px));
        return new Distance(name, from, to, false, cross.multiply(cross).divide(square).sqrt().longValueExact());
      }
      boolean atStart = along.signum() <= 0;
      Point corner = atStart ? from : to;
      BigInteger root = Exact.squaredLength(Math.subtractExact(centre.xNanometres(), corner.xNanometres()),
          Math.subtractExact(centre.yNanometres(), corner.yNanometres())).sqrt();
      return new Distance("corner " + ((atStart ? wall : next) + 1) + of, corner, corner, true, root.longValueExact());
    }

    private static BigInteger difference(long a, long b) {
      return BigInteger.valueOf(Math.subtractExact(a, b));
    }

    Step step(String symbol, Point centre) {
      List<Term> terms = new ArrayList<>(List.of(Term.of("x1", "corner, along x", from.x()), Term.of("y1", "corner, along y", from.y()),
          Term.of("x", "centre, along x", centre.x()), Term.of("y", "centre, along y", centre.y())));
      String formula = "sqrt((x - x1) * (x - x1) + (y - y1) * (y - y1))";
      if (!isAtCorner) {
        terms.add(Term.of("x2", "next corner, along x", to.x()));
        terms.add(Term.of("y2", "next corner, along y", to.y()));
        formula = "abs((x2 - x1) * (y - y1) - (y2 - y1) * (x - x1)) / sqrt((x2 - x1) * (x2 - x1) + (y2 - y1) * (y2 - y1))";
      }
      return InscribedCircle.step("distance-from-" + name.replace(' ', '-'), "How far is the centre from " + name + "?", symbol + " = " + formula
          + ", rounded down to a whole nanometre", terms, Length.ofNanometres(nanometres));
    }
  }

  /**
   * Returns the centre of the circle.
   *
   * @return a place on the floor, to the nanometre, not null
   */
  public Point centre() {
    return centre;
  }

  /**
   * Returns the radius: the distance from the centre to the nearest wall.
   *
   * @return the radius, rounded down to a whole nanometre, not negative
   */
  public Length radius() {
    return radius;
  }

  /**
   * Returns a radius that no circle on this floor exceeds: at most 3 nm more than {@link #radius()}, unless the outline is so intricate that the
   * search was ended.
   *
   * @return the bound, not less than the radius
   */
  public Length radiusAtMost() {
    return radiusAtMost;
  }

  /** Returns the circle in words. */
  @Override
  public String toString() {
    return "radius " + radius + " round " + centre;
  }
}
