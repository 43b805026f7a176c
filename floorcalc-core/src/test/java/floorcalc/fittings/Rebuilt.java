package floorcalc.fittings;

import floorcalc.outline.Ring;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** A piece put together again from its rectangle and the description of its notches, by a general geometry library. */
final class Rebuilt {
  private static final GeometryFactory FACTORY = new GeometryFactory();

  private Rebuilt() {}

  static Geometry polygon(Ring ring) {
    Coordinate[] corners = new Coordinate[ring.size() + 1];
    for (int i = 0; i < ring.size(); i++) {
      corners[i] = new Coordinate(ring.x(i), ring.y(i));
    }
    corners[ring.size()] = corners[0];
    return FACTORY.createPolygon(corners);
  }

  static Geometry less(Geometry from, List<Ring> parts) {
    Geometry left = from;
    for (Ring part : parts) {
      left = OverlayNGRobust.overlay(left, polygon(part), OverlayNG.DIFFERENCE);
    }
    return left;
  }

  /** By how much the rectangle less its notches differs from the piece, in square millimetres. */
  static double difference(PieceNotches shape) {
    Geometry rectangle = FACTORY.toGeometry(new org.locationtech.jts.geom.Envelope(0, shape.length().toNanometres(), 0,
        shape.width().toNanometres()));
    Geometry rebuilt = less(rectangle, shape.notches().stream().map(Notch::removed).toList());
    Ring outline = shape.piece().outline();
    Ring moved = outline.moved(shape.piece().origin().x().negated(), shape.piece().origin().y().negated());
    Geometry piece = less(polygon(moved), shape.piece().holes().stream()
        .map(hole -> hole.moved(shape.piece().origin().x().negated(), shape.piece().origin().y().negated())).toList());
    return OverlayNGRobust.overlay(rebuilt, piece, OverlayNG.SYMDIFFERENCE).getArea() / 1e12;
  }
}
