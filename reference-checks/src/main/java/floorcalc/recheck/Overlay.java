package floorcalc.recheck;

import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** Sums and differences of polygons. */
final class Overlay {
  private Overlay() {}

  static Geometry union(List<? extends Geometry> parts) {
    return parts.isEmpty() ? Shapes.GEOMETRY.createPolygon()
        : OverlayNGRobust.union(parts.stream().map(part -> (Geometry) part).toList());
  }

  static Geometry difference(Geometry from, Geometry taken) {
    return OverlayNGRobust.overlay(from, taken, OverlayNG.DIFFERENCE);
  }

  static double overlap(Geometry first, Geometry second) {
    return OverlayNGRobust.overlay(first, second, OverlayNG.INTERSECTION).getArea();
  }
}
