package floorcalc.differential;

import floorcalc.outline.Outline;
import floorcalc.outline.Ring;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** JTS, in floating precision. */
final class JtsPlane implements Plane {
  private static final GeometryFactory FACTORY = new GeometryFactory();

  @Override
  public Library library() {
    return Library.JTS;
  }

  @Override
  public double area(Outline outline) {
    return polygon(outline).getArea();
  }

  @Override
  public double perimeter(Outline outline) {
    return polygon(outline).getLength();
  }

  @Override
  public double areaOfUnion(List<Outline> pieces) {
    return union(pieces).getArea();
  }

  @Override
  public double areaInOneAlone(List<Outline> some, List<Outline> others) {
    return OverlayNGRobust.overlay(union(some), union(others), OverlayNG.SYMDIFFERENCE).getArea();
  }

  static Geometry union(List<Outline> pieces) {
    return OverlayNGRobust.union(FACTORY.createGeometryCollection(
        pieces.stream().map(JtsPlane::polygon).toArray(Geometry[]::new)));
  }

  static Polygon polygon(Outline outline) {
    return FACTORY.createPolygon(ring(outline.shell()),
        outline.voids().stream().map(JtsPlane::ring).toArray(LinearRing[]::new));
  }

  /** {@return the shell and the voids} */
  static List<Ring> rings(Outline outline) {
    return Stream.concat(Stream.of(outline.shell()), outline.voids().stream()).toList();
  }

  /** {@return all rings of all pieces} */
  static Geometry walls(List<Outline> pieces) {
    return together(pieces.stream().flatMap(piece -> rings(piece).stream()).map(JtsPlane::ring).toList());
  }

  static Geometry together(List<? extends Geometry> lines) {
    return FACTORY.createGeometryCollection(lines.toArray(Geometry[]::new));
  }

  /** {@return the ring through these corners; empty if there are fewer than three} */
  static Geometry closed(List<Coordinate> corners) {
    if (corners.size() < 3) {
      return FACTORY.createLineString();
    }
    List<Coordinate> ring = new ArrayList<>(corners);
    ring.add(corners.get(0));
    return FACTORY.createLineString(ring.toArray(Coordinate[]::new));
  }

  private static LinearRing ring(Ring ring) {
    Coordinate[] corners = new Coordinate[ring.size() + 1];
    for (int i = 0; i < corners.length; i++) {
      corners[i] = new Coordinate(ring.x(i % ring.size()), ring.y(i % ring.size()));
    }
    return FACTORY.createLinearRing(corners);
  }
}
