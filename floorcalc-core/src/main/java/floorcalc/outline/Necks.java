package floorcalc.outline;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.noding.NodedSegmentString;
import org.locationtech.jts.noding.SegmentString;
import org.locationtech.jts.noding.snapround.SnapRoundingNoder;
import org.locationtech.jts.operation.overlayng.CoverageUnion;
import org.locationtech.jts.operation.polygonize.Polygonizer;

/**
 * Closes necks: floor no more than a micrometre wide, as is left where a neck of the room is as wide as both its gaps
 * and its corners were rounded. Nobody can lay such floor, and whether it is there at all hangs on a nanometre.
 * <p>
 * From each corner that lies so near to a wall that does not end there, a line is drawn across to it. The lines divide the
 * floor into parts; those that are thin are left out, the others are put together again.
 */
final class Necks {
  /** Floor this wide, in nanometres, and no wider is closed. */
  static final long WIDTH = 1_000;
  /** A part no longer than this either way, in nanometres, is left out as well. */
  private static final long SPECK = 100_000;
  private static final PrecisionModel WHOLE = new PrecisionModel(1);
  private static final GeometryFactory FACTORY = new GeometryFactory(WHOLE);

  private final Outline piece;
  private final Point origin;
  private final Walls walls;
  /** Lines across, each from a corner to a place on a wall. */
  private final List<Coordinate[]> across = new ArrayList<>();

  private Necks(Outline piece) {
    this.piece = piece;
    this.origin = piece.extent().low();
    this.walls = Walls.of(piece.rings());
    walls.sweep(WIDTH, (first, second) -> {
      if (walls.next[first] != second) {
        look(walls.bx[first], walls.by[first], second);
        look(walls.ax[second], walls.ay[second], first);
      }
      if (walls.next[second] != first) {
        look(walls.ax[first], walls.ay[first], second);
        look(walls.bx[second], walls.by[second], first);
      }
      return true;
    });
  }

  /** Returns the same list if there is nothing to close. */
  static List<Outline> closed(List<Outline> pieces) {
    List<Outline> open = new ArrayList<>();
    boolean changed = false;
    for (Outline piece : pieces) {
      List<Outline> parts = closed(piece);
      changed |= parts.size() != 1 || parts.get(0) != piece;
      open.addAll(parts);
    }
    return changed ? List.copyOf(open) : pieces;
  }

  private static List<Outline> closed(Outline piece) {
    if (isThin(piece) || isSpeck(piece)) {
      return List.of();
    }
    Necks necks = new Necks(piece);
    return necks.across.isEmpty() ? List.of(piece) : necks.parts();
  }

  /** Draws a line from a corner to a wall if it is short; it ends in the wall's corner if that is nearly as near. */
  private void look(long x, long y, int wall) {
    if (Clearance.distance(walls, wall, x, y) > WIDTH) {
      return;
    }
    double dx = (double) walls.bx[wall] - walls.ax[wall];
    double dy = (double) walls.by[wall] - walls.ay[wall];
    double length = Math.sqrt(dx * dx + dy * dy);
    double along = ((x - walls.ax[wall]) * dx + (y - walls.ay[wall]) * dy) / length;
    long px = walls.ax[wall];
    long py = walls.ay[wall];
    if (along > length - 2 * WIDTH && along > length / 2) {
      px = walls.bx[wall];
      py = walls.by[wall];
    } else if (along > 2 * WIDTH) {
      px += (long) Math.rint(dx * (along / length));
      py += (long) Math.rint(dy * (along / length));
    }
    if (px != x || py != y) {
      across.add(new Coordinate[] {place(x, y), place(px, py)});
    }
  }

  private Coordinate place(long x, long y) {
    return new Coordinate(x - origin.xNanometres(), y - origin.yNanometres());
  }

  private List<Outline> parts() {
    List<Geometry> kept = new ArrayList<>();
    boolean changed = false;
    IndexedPointInAreaLocator floor = new IndexedPointInAreaLocator(polygon());
    for (Polygon face : faces()) {
      if (floor.locate(face.getInteriorPoint().getCoordinate()) != Location.EXTERIOR) {
        boolean thin = Pieces.of(face, 0, 0).stream().allMatch(part -> isThin(part) || isSpeck(part));
        changed |= thin;
        if (!thin) {
          kept.add(face);
        }
      }
    }
    if (!changed) {
      return List.of(piece);
    }
    List<Outline> parts = Pieces.of(CoverageUnion.union(FACTORY.buildGeometry(kept)), origin.xNanometres(), origin.yNanometres());
    return parts.stream().allMatch(part -> OutlineCheck.isApart(part.rings())) ? parts : List.of(piece);
  }

  private static boolean isSpeck(Outline outline) {
    Extent extent = outline.extent();
    return Math.max(extent.width().toNanometres(), extent.height().toNanometres()) <= SPECK;
  }

  /** Tells whether a piece is no more than the width of a neck wide on average. */
  static boolean isThin(Outline outline) {
    BigInteger perimeter = BigInteger.valueOf(outline.perimeter().toNanometres());
    return outline.area().toHalfSquareNanometres().compareTo(perimeter.multiply(BigInteger.valueOf(WIDTH))) <= 0;
  }

  /** The parts into which the lines divide the plane, those beyond the outline left out. */
  private List<Polygon> faces() {
    List<SegmentString> lines = new ArrayList<>();
    for (Ring ring : piece.rings()) {
      lines.add(new NodedSegmentString(places(ring), null));
    }
    across.forEach(line -> lines.add(new NodedSegmentString(line, null)));
    SnapRoundingNoder noder = new SnapRoundingNoder(WHOLE);
    noder.computeNodes(lines);
    Set<StripsTaken.Edge> edges = new TreeSet<>();
    for (Object noded : noder.getNodedSubstrings()) {
      Coordinate[] places = ((SegmentString) noded).getCoordinates();
      for (int i = 0; i + 1 < places.length; i++) {
        int order = places[i].compareTo(places[i + 1]);
        if (order != 0) {
          edges.add(new StripsTaken.Edge(places[order < 0 ? i : i + 1], places[order < 0 ? i + 1 : i]));
        }
      }
    }
    Polygonizer polygonizer = new Polygonizer();
    edges.forEach(edge -> polygonizer.add(FACTORY.createLineString(new Coordinate[] {edge.low(), edge.high()})));
    List<Polygon> faces = new ArrayList<>();
    for (Object face : polygonizer.getPolygons()) {
      faces.add((Polygon) face);
    }
    return faces;
  }

  private Polygon polygon() {
    return FACTORY.createPolygon(FACTORY.createLinearRing(places(piece.shell())),
        piece.voids().stream().map(ring -> FACTORY.createLinearRing(places(ring))).toArray(LinearRing[]::new));
  }

  private Coordinate[] places(Ring ring) {
    Coordinate[] places = new Coordinate[ring.size() + 1];
    for (int i = 0; i < ring.size(); i++) {
      places[i] = place(ring.x(i), ring.y(i));
    }
    places[ring.size()] = places[0].copy();
    return places;
  }
}
