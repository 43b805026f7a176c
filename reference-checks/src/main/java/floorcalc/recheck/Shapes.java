package floorcalc.recheck;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;

/** Rings of corners as polygons, in millimetres. */
final class Shapes {
  static final GeometryFactory GEOMETRY = new GeometryFactory();

  private Shapes() {}

  /** Reads a ring of three corners or more; too few are a fault. */
  static List<Coordinate> corners(Cursor ring, Function<Cursor, Coordinate> point) {
    List<Coordinate> corners = new ArrayList<>();
    ring.items().forEach(corner -> corners.add(point.apply(corner)));
    if (ring.isThere() && corners.size() < 3) {
      ring.fault(Rule.FORMAT, corners.size() + " corners", "a ring has three or more");
    }
    return corners;
  }

  static Polygon polygon(List<Coordinate> shell, List<List<Coordinate>> holes) {
    return GEOMETRY.createPolygon(ring(shell), holes.stream().filter(hole -> hole.size() >= 3).map(Shapes::ring).toArray(LinearRing[]::new));
  }

  private static LinearRing ring(List<Coordinate> corners) {
    if (corners.size() < 3) {
      return GEOMETRY.createLinearRing();
    }
    Coordinate[] closed = new Coordinate[corners.size() + 1];
    for (int i = 0; i < corners.size(); i++) {
      closed[i] = new Coordinate(corners.get(i));
    }
    closed[corners.size()] = closed[0].copy();
    return GEOMETRY.createLinearRing(closed);
  }

  static Polygon turned(Polygon polygon, double degrees) {
    double cos = StrictMath.cos(StrictMath.toRadians(degrees));
    double sin = StrictMath.sin(StrictMath.toRadians(degrees));
    return (Polygon) new AffineTransformation(cos, -sin, 0, sin, cos, 0).transform(polygon);
  }

  /** The edges, each with the polygon on its left, ring by ring. */
  static List<List<LineSegment>> edges(Polygon polygon) {
    List<List<LineSegment>> rings = new ArrayList<>();
    rings.add(edges(polygon.getExteriorRing(), true));
    for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
      rings.add(edges(polygon.getInteriorRingN(i), false));
    }
    return rings;
  }

  private static List<LineSegment> edges(LinearRing ring, boolean counterClockwise) {
    Coordinate[] at = ring.getCoordinates();
    List<LineSegment> edges = new ArrayList<>();
    if (at.length < 4) {
      return edges;
    }
    boolean asWanted = Orientation.isCCW(at) == counterClockwise;
    for (int i = 1; i < at.length; i++) {
      edges.add(asWanted ? new LineSegment(at[i - 1], at[i]) : new LineSegment(at[at.length - i], at[at.length - 1 - i]));
    }
    return edges;
  }
}
