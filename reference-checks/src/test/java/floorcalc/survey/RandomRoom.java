package floorcalc.survey;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/**
 * A room made by chance, in millimetres, from 4 to 12 corners, the room on the left of its walls.
 *
 * @param corners its corners
 */
record RandomRoom(List<Coordinate> corners) {
  private static final GeometryFactory JTS = new GeometryFactory();
  /** No wall is shorter. */
  private static final double SHORTEST = 300;

  /** How the walls meet. */
  enum Kind {
    /** Square, and known to be. */
    SQUARE,
    /** Meant to be square, each corner off by some 20 mm. */
    OUT_OF_SQUARE,
    /** At any angle. */
    ANY_ANGLE
  }

  static RandomRoom of(SplittableRandom random, Kind kind) {
    while (true) {
      int corners = kind == Kind.ANY_ANGLE ? random.nextInt(4, 13) : 2 * random.nextInt(2, 7);
      List<Coordinate> made = kind == Kind.ANY_ANGLE ? star(random, corners) : steps(random, corners);
      if (kind == Kind.OUT_OF_SQUARE) {
        made.forEach(corner -> {
          corner.x += 20 * random.nextGaussian();
          corner.y += 20 * random.nextGaussian();
        });
      }
      RandomRoom room = new RandomRoom(made);
      if (made.size() == corners && room.isSound()) {
        return room;
      }
    }
  }

  private static List<Coordinate> star(SplittableRandom random, int corners) {
    List<Coordinate> made = new ArrayList<>();
    for (int i = 0; i < corners; i++) {
      double angle = 2 * Math.PI * (i + random.nextDouble(-0.35, 0.35)) / corners;
      double radius = random.nextDouble(1500, 4500);
      made.add(new Coordinate(radius * Math.cos(angle), radius * Math.sin(angle)));
    }
    return made;
  }

  /** A rectangle, then corners cut out of it or set on to it, two more corners each. */
  private static List<Coordinate> steps(SplittableRandom random, int corners) {
    double width = random.nextDouble(2500, 9000);
    double depth = random.nextDouble(2500, 7000);
    List<Coordinate> made = new ArrayList<>(List.of(new Coordinate(0, 0), new Coordinate(width, 0), new Coordinate(width, depth),
        new Coordinate(0, depth)));
    while (made.size() < corners) {
      int i = random.nextInt(made.size());
      Coordinate at = made.get(i);
      Coordinate before = made.get(Math.floorMod(i - 1, made.size()));
      Coordinate after = made.get((i + 1) % made.size());
      double back = random.nextDouble(0.15, 0.6);
      double on = random.nextDouble(0.15, 0.6);
      Coordinate one = new Coordinate(at.x + back * (before.x - at.x), at.y + back * (before.y - at.y));
      Coordinate other = new Coordinate(at.x + on * (after.x - at.x), at.y + on * (after.y - at.y));
      Coordinate inner = new Coordinate(one.x + other.x - at.x, one.y + other.y - at.y);
      made.set(i, one);
      made.add(i + 1, inner);
      made.add(i + 2, other);
    }
    return made;
  }

  private boolean isSound() {
    for (int i = 0; i < size(); i++) {
      if (distance(i, i + 1) < SHORTEST || Math.abs(Math.sin(turn(i))) < 0.2) {
        return false;
      }
    }
    Polygon polygon = polygon();
    return polygon.isValid() && polygon.buffer(-100).getNumGeometries() == 1 && polygon.getArea() > 3e6;
  }

  private Polygon polygon() {
    List<Coordinate> ring = new ArrayList<>(corners);
    ring.add(corners.get(0));
    return JTS.createPolygon(ring.toArray(Coordinate[]::new));
  }

  int size() {
    return corners.size();
  }

  private Coordinate at(int corner) {
    return corners.get(Math.floorMod(corner, size()));
  }

  /** The distance between two corners counted from 0. */
  double distance(int a, int b) {
    return at(a).distance(at(b));
  }

  /** Radians to the left at a corner. */
  double turn(int corner) {
    double in = Math.atan2(at(corner).y - at(corner - 1).y, at(corner).x - at(corner - 1).x);
    double on = Math.atan2(at(corner + 1).y - at(corner).y, at(corner + 1).x - at(corner).x);
    return Math.IEEEremainder(on - in, 2 * Math.PI);
  }

  /** The pairs of corners that see each other and are not the ends of a wall, counted from 0. */
  List<int[]> sights() {
    Geometry room = polygon().buffer(0.01);
    List<int[]> sights = new ArrayList<>();
    for (int a = 0; a < size(); a++) {
      for (int b = a + 2; b < size(); b++) {
        if (b - a < size() - 1 && room.covers(JTS.createLineString(new Coordinate[] {at(a), at(b)}))) {
          sights.add(new int[] {a, b});
        }
      }
    }
    return sights;
  }
}
