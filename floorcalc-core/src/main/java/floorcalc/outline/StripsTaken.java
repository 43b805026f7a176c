package floorcalc.outline;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.geom.util.GeometryTransformer;
import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.UnaryUnionNG;

/**
 * The gap by its definition, for rooms in which it swallows walls, splits the floor or joins a void to a wall: the room
 * less a strip along each wall, as wide as the gap and mitred at reflex corners.
 * <p>
 * Strips are laid out on a grid much finer than a nanometre, taken off the room on that grid without error, and only
 * what is left is rounded to whole nanometres.
 */
final class StripsTaken {
  /** Bits of a coordinate on the fine grid: well within what a double holds exactly, so products stay exact in JTS. */
  private static final int BITS = 48;
  private static final int MOST_FINE_BITS = 10;
  private static final PrecisionModel WHOLE = new PrecisionModel(1);
  private static final GeometryFactory FACTORY = new GeometryFactory(WHOLE);

  private final List<Mitres> rings;
  private final long gap;
  private final long originX;
  private final long originY;
  private final double scale;

  private StripsTaken(List<Mitres> rings, long gap) {
    this.rings = rings;
    this.gap = gap;
    Extent extent = rings.get(0).ring.extent();
    originX = extent.low().xNanometres();
    originY = extent.low().yNanometres();
    long size = Math.max(extent.width().toNanometres(), extent.height().toNanometres()) * 8;
    int fine = Math.min(MOST_FINE_BITS, Math.max(0, BITS - (Long.SIZE - Long.numberOfLeadingZeros(size))));
    scale = 1L << fine;
  }

  /** Returns the pieces of the laid area, none if the gap swallows the room. */
  static List<Outline> inset(List<Mitres> rings, long gap) {
    return new StripsTaken(rings, gap).laid();
  }

  private List<Outline> laid() {
    LinearRing shell = null;
    List<LinearRing> voids = new ArrayList<>();
    List<Geometry> strips = new ArrayList<>();
    for (Mitres ring : rings) {
      List<Coordinate> corners = new ArrayList<>();
      for (int i = 0; i < ring.size(); i++) {
        corners.add(place(ring, i, 0, 0));
        strips.add(FACTORY.createPolygon(closed(strip(ring, i))));
      }
      if (shell == null) {
        shell = closed(corners);
      } else {
        voids.add(closed(corners));
      }
    }
    Geometry room = FACTORY.createPolygon(shell, voids.toArray(LinearRing[]::new));
    Geometry taken = UnaryUnionNG.union(strips, FACTORY, WHOLE);
    Geometry left = OverlayNG.overlay(room, taken, OverlayNG.DIFFERENCE, WHOLE);
    return pieces(UnaryUnionNG.union(inNanometres(left), WHOLE));
  }

  /** The strip along a wall: square at corners that jut out, half of the mitre at reflex corners. */
  private List<Coordinate> strip(Mitres ring, int wall) {
    int end = ring.after(wall);
    double nx = -ring.uy[wall];
    double ny = ring.ux[wall];
    List<Coordinate> corners = new ArrayList<>();
    corners.add(place(ring, wall, 0, 0));
    corners.add(place(ring, end, 0, 0));
    corners.addAll(tip(ring, end, nx, ny, ring.ux[wall], ring.uy[wall]));
    List<Coordinate> start = tip(ring, wall, nx, ny, -ring.ux[wall], -ring.uy[wall]);
    Collections.reverse(start);
    corners.addAll(start);
    return corners;
  }

  /** The corners of a strip at one end of its wall, from the room's corner to the moved wall. */
  private List<Coordinate> tip(Mitres ring, int corner, double nx, double ny, double alongX, double alongY) {
    List<Coordinate> tip = new ArrayList<>();
    if (ring.isCutOff(corner)) {
      double mitreX = ring.mitreX(corner);
      double mitreY = ring.mitreY(corner);
      double part = Mitres.LIMIT / Math.sqrt(mitreX * mitreX + mitreY * mitreY);
      double reach = ring.reach(corner);
      tip.add(place(ring, corner, mitreX * part, mitreY * part));
      tip.add(place(ring, corner, nx + reach * alongX, ny + reach * alongY));
    } else if (ring.isReflex(corner) || ring.tangent[corner] == 0) {
      tip.add(place(ring, corner, ring.mitreX(corner), ring.mitreY(corner)));
    } else {
      tip.add(place(ring, corner, nx, ny));
    }
    return tip;
  }

  /** A place on the fine grid, so many gaps from a corner. */
  private Coordinate place(Mitres ring, int corner, double x, double y) {
    return new Coordinate(
        (ring.ring.x(corner) - originX) * scale + Math.rint(gap * x * scale),
        (ring.ring.y(corner) - originY) * scale + Math.rint(gap * y * scale));
  }

  private static LinearRing closed(List<Coordinate> corners) {
    List<Coordinate> all = new ArrayList<>(corners);
    all.add(corners.get(0).copy());
    return FACTORY.createLinearRing(all.toArray(Coordinate[]::new));
  }

  private Geometry inNanometres(Geometry fine) {
    return new GeometryTransformer() {
      @Override
      protected CoordinateSequence transformCoordinates(CoordinateSequence places, Geometry parent) {
        CoordinateSequence copy = places.copy();
        for (int i = 0; i < copy.size(); i++) {
          copy.setOrdinate(i, 0, copy.getX(i) / scale);
          copy.setOrdinate(i, 1, copy.getY(i) / scale);
        }
        return copy;
      }
    }.transform(fine);
  }

  private List<Outline> pieces(Geometry floor) {
    List<Outline> pieces = new ArrayList<>();
    for (int i = 0; i < floor.getNumGeometries(); i++) {
      if (floor.getGeometryN(i) instanceof Polygon polygon && !polygon.isEmpty()) {
        List<Ring> voids = new ArrayList<>();
        for (int v = 0; v < polygon.getNumInteriorRing(); v++) {
          voids.add(ring(polygon.getInteriorRingN(v), false));
        }
        voids.sort(Comparator.comparing(ring -> ring.corners().get(0), LOWEST));
        Outline piece = Outline.of(ring(polygon.getExteriorRing(), true), voids);
        if (!isThin(piece)) {
          pieces.add(piece);
        }
      }
    }
    pieces.sort(Comparator.comparing(piece -> piece.shell().corners().get(0), LOWEST));
    return List.copyOf(pieces);
  }

  private static final Comparator<Point> LOWEST =
      Comparator.comparingLong(Point::yNanometres).thenComparingLong(Point::xNanometres);

  private Ring ring(LinearRing line, boolean counterClockwise) {
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
  private static boolean isThin(Outline piece) {
    BigInteger perimeter = BigInteger.valueOf(piece.perimeter().toNanometres());
    return piece.area().toHalfSquareNanometres().compareTo(perimeter.shiftLeft(1)) < 0;
  }
}
