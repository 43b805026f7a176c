package floorcalc.outline;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;

/** Turns polygons on whole nanometres into outlines, each ring and the list in one fixed order. */
final class Pieces {
  /** The lower point first, of equally low ones the leftmost. */
  static final Comparator<Point> LOWEST =
      Comparator.comparingLong(Point::yNanometres).thenComparingLong(Point::xNanometres);

  private static final Comparator<Ring> BY_FIRST_CORNER = Comparator.comparing(ring -> ring.corners().get(0), LOWEST);

  private Pieces() {}

  static List<Outline> of(Geometry floor, long originX, long originY) {
    List<Outline> pieces = new ArrayList<>();
    for (int i = 0; i < floor.getNumGeometries(); i++) {
      if (floor.getGeometryN(i) instanceof Polygon polygon && !polygon.isEmpty()) {
        List<Ring> voids = new ArrayList<>();
        for (int v = 0; v < polygon.getNumInteriorRing(); v++) {
          voids.add(ring(polygon.getInteriorRingN(v), false, originX, originY));
        }
        voids.sort(BY_FIRST_CORNER.thenComparing(Ring::area));
        Outline piece = Outline.of(ring(polygon.getExteriorRing(), true, originX, originY), voids);
        if (!isThin(piece)) {
          pieces.add(piece);
        }
      }
    }
    pieces.sort(Comparator.comparing(Outline::shell, BY_FIRST_CORNER).thenComparing(Outline::area));
    return List.copyOf(pieces);
  }

  /** Returns a ring that starts at its lowest corner, without the corners that rounding left on a straight wall. */
  private static Ring ring(LinearRing line, boolean counterClockwise, long originX, long originY) {
    Coordinate[] places = line.getCoordinates();
    List<Point> corners = new ArrayList<>();
    for (int i = 0; i + 1 < places.length; i++) {
      corners.add(Point.ofNanometres(originX + (long) places[i].x, originY + (long) places[i].y));
    }
    Ring ring = Ring.of(corners);
    Ring turned = ring.signedArea().isPositive() == counterClockwise ? ring : ring.reversed();
    List<Point> list = turned.corners();
    return turned.startingAt(list.indexOf(Collections.min(list, LOWEST)));
  }

  /** Tells whether a piece is less than two nanometres wide on average: made by rounding, or as good as swallowed. */
  static boolean isThin(Outline piece) {
    BigInteger perimeter = BigInteger.valueOf(piece.perimeter().toNanometres());
    return piece.area().toHalfSquareNanometres().compareTo(perimeter.shiftLeft(1)) < 0;
  }

  /** Leaves out corners that lie exactly on a straight side. */
  static Ring straight(Ring ring) {
    List<Point> corners = new ArrayList<>();
    int n = ring.size();
    for (int i = 0; i < n; i++) {
      int before = (i + n - 1) % n;
      int after = (i + 1) % n;
      if (Exact.side(ring.x(before), ring.y(before), ring.x(after), ring.y(after), ring.x(i), ring.y(i)) != 0) {
        corners.add(Point.ofNanometres(ring.x(i), ring.y(i)));
      }
    }
    return corners.size() == n || corners.size() < 3 ? ring : Ring.of(corners);
  }
}
