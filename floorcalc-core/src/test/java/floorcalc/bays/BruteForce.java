package floorcalc.bays;

import floorcalc.outline.Outline;
import floorcalc.outline.Ring;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.polygonize.Polygonizer;
import org.locationtech.jts.operation.union.UnaryUnionOp;

/**
 * The least breaks of a small right-angled room without voids, in millimetres, by trying all sets of pieces of the lines from its inner
 * corners along x and y to the walls. Shares nothing with the search: lines, cells, unions and hulls are made by a geometry library.
 */
final class BruteForce {
  private static final GeometryFactory FACTORY = new GeometryFactory();

  private final Polygon room;
  private final double deepest;
  private final List<Polygon> cells = new ArrayList<>();
  private final List<int[]> edges = new ArrayList<>();
  private final List<Double> lengths = new ArrayList<>();
  private final Map<Integer, Boolean> free = new HashMap<>();

  BruteForce(Outline outline, double deepestMillimetres) {
    room = polygon(outline);
    deepest = deepestMillimetres;
    List<Geometry> lines = new ArrayList<>();
    lines.add(room.getExteriorRing());
    Coordinate[] corners = room.getExteriorRing().getCoordinates();
    for (int i = 0; i + 1 < corners.length; i++) {
      if (isInner(corners, i)) {
        for (double[] way : new double[][] {{1, 0}, {-1, 0}, {0, 1}, {0, -1}}) {
          ray(corners[i], way[0], way[1]).ifPresent(lines::add);
        }
      }
    }
    Polygonizer polygonizer = new Polygonizer();
    polygonizer.add(UnaryUnionOp.union(lines));
    for (Object cell : polygonizer.getPolygons()) {
      cells.add((Polygon) cell);
    }
    for (int i = 0; i < cells.size(); i++) {
      for (int j = 0; j < i; j++) {
        double length = cells.get(i).intersection(cells.get(j)).getLength();
        if (length > 1e-6) {
          edges.add(new int[] {i, j});
          lengths.add(length);
        }
      }
    }
  }

  /** How many pieces of lines there are; all sets of them are tried. */
  int pieces() {
    return edges.size();
  }

  static Polygon polygon(Outline outline) {
    Ring shell = outline.shell();
    Coordinate[] ring = new Coordinate[shell.size() + 1];
    for (int i = 0; i < ring.length; i++) {
      ring[i] = new Coordinate(shell.x(i % shell.size()) / 1e6, shell.y(i % shell.size()) / 1e6);
    }
    return FACTORY.createPolygon(ring);
  }

  private static boolean isInner(Coordinate[] ring, int i) {
    int n = ring.length - 1;
    return Orientation.index(ring[(i + n - 1) % n], ring[i], ring[(i + 1) % n]) == Orientation.CLOCKWISE;
  }

  private java.util.Optional<Geometry> ray(Coordinate from, double dx, double dy) {
    LineString line = FACTORY.createLineString(new Coordinate[] {from, new Coordinate(from.x + 1e6 * dx, from.y + 1e6 * dy)});
    Geometry inside = line.intersection(room);
    for (int k = 0; k < inside.getNumGeometries(); k++) {
      Geometry part = inside.getGeometryN(k);
      boolean starts = part.getLength() > 1e-6 && part.getCoordinates()[0].distance(from) < 1e-9
          || part.getLength() > 1e-6 && part.getCoordinates()[part.getNumPoints() - 1].distance(from) < 1e-9;
      if (starts && part.intersection(room.getBoundary()).getLength() < 1e-6) {
        return java.util.Optional.of(part);
      }
    }
    return java.util.Optional.empty();
  }

  /** The least length, trying every set of pieces as breaks. */
  double least() {
    double best = Double.MAX_VALUE;
    for (int set = 0; set < 1 << edges.size(); set++) {
      double length = 0;
      int[] part = new int[cells.size()];
      java.util.Arrays.setAll(part, i -> i);
      for (int e = 0; e < edges.size(); e++) {
        if ((set >> e & 1) == 1) {
          length += lengths.get(e);
        } else {
          join(part, edges.get(e)[0], edges.get(e)[1]);
        }
      }
      if (length < best && allFree(part)) {
        best = length;
      }
    }
    return best;
  }

  private static void join(int[] part, int a, int b) {
    int from = part[a];
    int to = part[b];
    for (int i = 0; i < part.length; i++) {
      part[i] = part[i] == from ? to : part[i];
    }
  }

  private boolean allFree(int[] part) {
    for (int p = 0; p < part.length; p++) {
      int mask = 0;
      for (int i = 0; i < part.length; i++) {
        mask |= part[i] == p ? 1 << i : 0;
      }
      if (mask != 0 && !free.computeIfAbsent(mask, this::isFree)) {
        return false;
      }
    }
    return true;
  }

  private boolean isFree(int mask) {
    List<Geometry> list = new ArrayList<>();
    for (int i = 0; i < cells.size(); i++) {
      if ((mask >> i & 1) == 1) {
        list.add(cells.get(i));
      }
    }
    Geometry union = UnaryUnionOp.union(list);
    return union instanceof Polygon part && part.getNumInteriorRing() == 0 && bendsAtCornersOfTheRoom(part)
        && deepestRecess(part) <= deepest + 1e-3;
  }

  private boolean bendsAtCornersOfTheRoom(Polygon part) {
    Coordinate[] ring = part.norm().getCoordinates(); // clockwise
    int n = ring.length - 1;
    for (int i = 0; i < n; i++) {
      Coordinate corner = ring[i];
      if (Orientation.index(ring[(i + n - 1) % n], corner, ring[(i + 1) % n]) == Orientation.COUNTERCLOCKWISE
          && java.util.Arrays.stream(room.getCoordinates()).noneMatch(other -> other.distance(corner) < 1e-6)) {
        return false;
      }
    }
    return true;
  }

  /** The greatest distance of a corner of a pocket from the side of the convex hull that closes the pocket. */
  static double deepestRecess(Polygon part) {
    Geometry hull = part.convexHull();
    Geometry pockets = hull.difference(part);
    double deepest = 0;
    for (int k = 0; k < pockets.getNumGeometries(); k++) {
      Coordinate[] ring = pockets.getGeometryN(k).getCoordinates();
      Coordinate[] sides = hull.getCoordinates();
      for (int h = 0; h + 1 < sides.length; h++) {
        LineSegment side = new LineSegment(sides[h], sides[h + 1]);
        boolean closes = pockets.getGeometryN(k).getBoundary().intersection(side.toGeometry(FACTORY)).getLength() > 1e-3;
        for (int i = 0; closes && i < ring.length; i++) {
          deepest = Math.max(deepest, side.distancePerpendicular(ring[i]));
        }
      }
    }
    return deepest;
  }
}
