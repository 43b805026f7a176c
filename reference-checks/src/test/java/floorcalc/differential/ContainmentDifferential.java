package floorcalc.differential;

import floorcalc.differential.RandomOutlines.Place;
import floorcalc.outline.Containment;
import floorcalc.outline.Extent;
import floorcalc.outline.Outline;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import floorcalc.outline.Wkt;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.locationtech.jts.algorithm.locate.SimplePointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Location;

/** Where a point lies: anywhere, at a corner, in the middle of a wall, and a nanometre beside it. JTS decides in 106 bits. */
final class ContainmentDifferential extends Comparison {
  private static final int POINTS = 12;

  ContainmentDifferential(int cases) {
    super("whether a point is inside, on a wall or outside", Library.JTS, cases, Containment.class, Outline.class, Ring.class);
  }

  @Override
  public String unit() {
    return "points told otherwise";
  }

  @Override
  public double tolerance() {
    return 0;
  }

  @Override
  public String argument() {
    return "both sides decide on which side of a wall a point lies without rounding";
  }

  @Override
  void compare(int upTo, Answers answers, Worst worst) {
    SplittableRandom random = new SplittableRandom(271);
    RandomOutlines outlines = new RandomOutlines(272);
    int[] told = new int[Containment.values().length];
    for (int k = 0; k < upTo; k++) {
      Outline outline = outlines.next(k % 2 == 0 ? Place.NEAR : Place.FAR);
      worst.nextCase();
      for (Point point : points(outline, random)) {
        Containment mine = outline.locate(point);
        told[mine.ordinal()]++;
        Containment said = answers == Answers.WITH_FAULT && mine == Containment.ON_EDGE ? Containment.INSIDE : mine;
        int theirs = SimplePointInAreaLocator.locate(new Coordinate(point.xNanometres(), point.yNanometres()), JtsPlane.polygon(outline));
        worst.see(said == expected(theirs) ? 0 : 1, () -> point + " in " + Wkt.write(outline) + " is " + said);
      }
    }
    worst.note(told[Containment.INSIDE.ordinal()] + " points inside, " + told[Containment.ON_EDGE.ordinal()] + " on a wall, "
        + told[Containment.OUTSIDE.ordinal()] + " outside");
  }

  private static Containment expected(int location) {
    return location == Location.INTERIOR ? Containment.INSIDE
        : location == Location.BOUNDARY ? Containment.ON_EDGE : Containment.OUTSIDE;
  }

  private static List<Point> points(Outline outline, SplittableRandom random) {
    List<Point> points = new ArrayList<>();
    Extent extent = outline.extent();
    List<Ring> rings = JtsPlane.rings(outline);
    for (int i = 0; i < POINTS; i++) {
      Ring ring = rings.get(random.nextInt(rings.size()));
      int corner = random.nextInt(ring.size());
      int next = (corner + 1) % ring.size();
      if (i % 3 == 0) {
        points.add(Point.ofNanometres(random.nextLong(extent.low().xNanometres(), extent.high().xNanometres() + 1),
            random.nextLong(extent.low().yNanometres(), extent.high().yNanometres() + 1)));
      } else {
        long x = i % 3 == 1 ? ring.x(corner) : (ring.x(corner) + ring.x(next)) / 2;
        long y = i % 3 == 1 ? ring.y(corner) : (ring.y(corner) + ring.y(next)) / 2;
        points.add(Point.ofNanometres(x + random.nextLong(-1, 2), y + random.nextLong(-1, 2)));
        points.add(Point.ofNanometres(x, y));
      }
    }
    return points;
  }
}
