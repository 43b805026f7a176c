package floorcalc.recheck;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.Polygonal;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** Sums and differences of polygons. */
final class Overlay {
  private Overlay() {}

  static Geometry union(List<? extends Geometry> parts) {
    return parts.isEmpty() ? Shapes.GEOMETRY.createPolygon()
        : areas(OverlayNGRobust.union(parts.stream().map(part -> (Geometry) part).toList()));
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
    return areas(OverlayNGRobust.overlay(from, taken, OverlayNG.DIFFERENCE));
  }

  static double overlap(Geometry first, Geometry second) {
    return OverlayNGRobust.overlay(first, second, OverlayNG.INTERSECTION).getArea();
  }
}
