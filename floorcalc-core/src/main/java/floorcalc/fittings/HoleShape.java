package floorcalc.fittings;

import floorcalc.measure.Length;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.operation.overlayng.OverlayNG;

/** A hole with round ends, and what it takes of pieces; round parts are polygons, places are nanometres from its first middle. */
final class HoleShape {
  /** Chords of a half circle. */
  private static final int HALF = 48;
  private static final PrecisionModel WHOLE = new PrecisionModel(1);
  private static final GeometryFactory FACTORY = new GeometryFactory();

  private final Point origin;
  private final double dx;
  private final double dy;
  final double radius;
  private final Geometry hole;

  HoleShape(Point from, Point to, Length width) {
    origin = from;
    dx = to.xNanometres() - from.xNanometres();
    dy = to.yNanometres() - from.yNanometres();
    radius = width.toNanometres() / 2.0;
    double turned = dx == 0 && dy == 0 ? 0 : StrictMath.atan2(dy, dx);
    Coordinate[] corners = new Coordinate[2 * HALF + 3];
    for (int i = 0; i <= HALF; i++) {
      double angle = turned + StrictMath.PI / 2 + StrictMath.PI * i / HALF;
      corners[i] = new Coordinate(radius * StrictMath.cos(angle), radius * StrictMath.sin(angle));
      corners[HALF + 1 + i] = new Coordinate(dx - radius * StrictMath.cos(angle), dy - radius * StrictMath.sin(angle));
    }
    corners[2 * HALF + 2] = corners[0];
    hole = FACTORY.createPolygon(corners);
  }

  /** The area of the hole as it is drawn, in square millimetres. */
  double area() {
    return hole.getArea() / 1e12;
  }

  Geometry of(BoardPiece piece) {
    return OverlayNG.overlay(hole, polygon(piece), OverlayNG.INTERSECTION, WHOLE);
  }

  /** What the hole takes of a piece when it is opened straight to a side that lies so far from its middle line. */
  Geometry opened(BoardPiece piece, BoardSide side, double reach) {
    double lowX = Math.min(0, dx) - (side.isEnd() ? 0 : radius);
    double highX = Math.max(0, dx) + (side.isEnd() ? 0 : radius);
    double lowY = Math.min(0, dy) - (side.isEnd() ? radius : 0);
    double highY = Math.max(0, dy) + (side.isEnd() ? radius : 0);
    double far = reach + radius;
    switch (side) {
      case START_END -> lowX -= far;
      case FAR_END -> highX += far;
      case START_EDGE -> lowY -= far;
      default -> highY += far;
    }
    Geometry way = FACTORY.createPolygon(new Coordinate[] {new Coordinate(lowX, lowY), new Coordinate(highX, lowY),
        new Coordinate(highX, highY), new Coordinate(lowX, highY), new Coordinate(lowX, lowY)});
    return OverlayNG.overlay(OverlayNG.overlay(hole, way, OverlayNG.UNION, WHOLE), polygon(piece), OverlayNG.INTERSECTION, WHOLE);
  }

  /** The least distance from the hole to the outline of a piece that holds it, nm. */
  double wood(BoardPiece piece) {
    Geometry line = FACTORY.createLineString(new Coordinate[] {new Coordinate(0, 0), new Coordinate(dx, dy)});
    return polygon(piece).getBoundary().distance(line) - radius;
  }

  private Geometry polygon(BoardPiece piece) {
    return FACTORY.createPolygon(ring(piece.outline()), piece.holes().stream().map(this::ring).toArray(LinearRing[]::new));
  }

  private LinearRing ring(Ring ring) {
    Coordinate[] corners = new Coordinate[ring.size() + 1];
    for (int i = 0; i < ring.size(); i++) {
      corners[i] = new Coordinate(ring.x(i) - origin.xNanometres(), ring.y(i) - origin.yNanometres());
    }
    corners[ring.size()] = corners[0];
    return FACTORY.createLinearRing(corners);
  }

  /** The outer rings of an area, measured from a place. */
  List<Ring> rings(Geometry area, Point from) {
    List<Ring> rings = new ArrayList<>();
    for (int i = 0; i < area.getNumGeometries(); i++) {
      if (area.getGeometryN(i) instanceof Polygon polygon && !polygon.isEmpty()) {
        Coordinate[] places = polygon.getExteriorRing().getCoordinates();
        List<Point> corners = new ArrayList<>();
        for (int k = 0; k + 1 < places.length; k++) {
          corners.add(Point.ofNanometres(origin.xNanometres() - from.xNanometres() + (long) StrictMath.rint(places[k].x),
              origin.yNanometres() - from.yNanometres() + (long) StrictMath.rint(places[k].y)));
        }
        rings.add(Ring.of(corners));
      }
    }
    return rings;
  }
}
