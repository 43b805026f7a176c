package floorcalc.recheck;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.Polygonal;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.UnaryUnionNG;

/**
 * Sums and differences of polygons, on a grid of nanometres: there lines are crossed without error. With floating places two boards that only
 * touch, along edges that lie on one line but for rounding, were once taken to lie on each other.
 */
final class Overlay {
  private static final PrecisionModel NANOMETRES = new PrecisionModel(1e6);

  private Overlay() {}

  static Geometry union(List<? extends Geometry> parts) {
    return parts.isEmpty() ? Shapes.GEOMETRY.createPolygon()
        : areas(UnaryUnionNG.union(parts.stream().map(part -> (Geometry) part).toList(), NANOMETRES));
  }

  /** Where polygons touch, an overlay may give lines and points beside areas: they are dropped. */
  private static Geometry areas(Geometry result) {
    if (result instanceof Polygonal) {
      return result;
    }
    List<Polygon> polygons = new ArrayList<>();
    for (int i = 0; i < result.getNumGeometries(); i++) {
      if (result.getGeometryN(i) instanceof Polygon polygon) {
        polygons.add(polygon);
      }
    }
    return Shapes.GEOMETRY.createMultiPolygon(polygons.toArray(new Polygon[0]));
  }

  static Geometry difference(Geometry from, Geometry taken) {
    return areas(OverlayNG.overlay(from, taken, OverlayNG.DIFFERENCE, NANOMETRES));
  }

  static double overlap(Geometry first, Geometry second) {
    return OverlayNG.overlay(first, second, OverlayNG.INTERSECTION, NANOMETRES).getArea();
  }
}
