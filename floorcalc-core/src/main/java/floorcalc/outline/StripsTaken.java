package floorcalc.outline;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.locationtech.jts.algorithm.Distance;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.noding.NodedSegmentString;
import org.locationtech.jts.noding.SegmentString;
import org.locationtech.jts.noding.snapround.SnapRoundingNoder;
import org.locationtech.jts.operation.overlayng.PrecisionReducer;
import org.locationtech.jts.operation.polygonize.Polygonizer;

/**
 * The gap by its definition, for rooms in which it swallows walls, splits the floor or joins a void to a wall: the room
 * less a strip along each wall, as wide as the gap and mitred at reflex corners.
 * <p>
 * The edges of room and strips, added up, leave one closed path for each ring: along every moved wall, and where two of
 * them cross before a corner, in to the corner and out again. The number of turns of these paths round a place is one
 * less the number of strips over it, for a place in the room; so the floor is where it is one.
 * <p>
 * Where the strips of two long walls overlap at a corner that juts out, the path goes straight by the point where the
 * moved walls meet. That counts the overlap once instead of twice, which is still enough: each strip gives up at most
 * the half of its length next to a corner, so of the strips over a place at least half still count.
 * <p>
 * Paths are laid out on a grid much finer than a nanometre and crossed there without error; only the floor that is left
 * is rounded to whole nanometres.
 */
final class StripsTaken {
  /** Bits of a coordinate on the fine grid: well within what a double holds exactly. */
  private static final int BITS = 48;
  /** The grid is at most so many halvings finer than a nanometre. */
  private static final int MOST_HALVINGS = 10;
  /** The paths lie within so many sizes of the room from its low corner: the gap is less than half a size. */
  private static final long REACH = 8;
  /** A place this near to the straight line between its neighbours, in nanometres, is no corner. */
  private static final double STRAIGHT = 1.0 / 512;
  private static final PrecisionModel WHOLE = new PrecisionModel(1);
  private static final GeometryFactory FACTORY = new GeometryFactory();

  private final long gap;
  private final long originX;
  private final long originY;
  private final double scale;
  private final List<Coordinate[]> paths = new ArrayList<>();

  private StripsTaken(List<Mitres> rings, long gap) {
    this.gap = gap;
    Extent extent = rings.get(0).ring.extent();
    originX = extent.low().xNanometres();
    originY = extent.low().yNanometres();
    long size = Math.max(extent.width().toNanometres(), extent.height().toNanometres()) * REACH;
    int bits = Long.SIZE - Long.numberOfLeadingZeros(size);
    scale = 1L << Math.min(MOST_HALVINGS, Math.max(0, BITS - bits));
    rings.forEach(ring -> paths.add(path(ring)));
  }

  /** Returns the pieces of the laid area, none if the gap swallows the room. */
  static List<Outline> inset(List<Mitres> rings, long gap) {
    StripsTaken taken = new StripsTaken(rings, gap);
    List<Geometry> floor = new ArrayList<>();
    for (Polygon face : taken.faces()) {
      if (taken.turnsRound(face.getInteriorPoint().getCoordinate()) == 1) {
        floor.add(taken.inNanometres(face));
      }
    }
    Geometry rounded = PrecisionReducer.reducePrecision(FACTORY.buildGeometry(floor), WHOLE);
    return Pieces.of(rounded, taken.originX, taken.originY);
  }

  private Coordinate[] path(Mitres ring) {
    List<Coordinate> path = new ArrayList<>();
    for (int i = 0; i < ring.size(); i++) {
      int before = ring.before(i);
      if (ring.isCutOff(i)) {
        double reach = ring.reach(i);
        path.add(place(ring, i, -ring.uy[before] + reach * ring.ux[before], ring.ux[before] + reach * ring.uy[before]));
        path.add(place(ring, i, -ring.uy[i] - reach * ring.ux[i], ring.ux[i] - reach * ring.uy[i]));
      } else if (meetsDirectly(ring, i)) {
        path.add(place(ring, i, ring.mitreX(i), ring.mitreY(i)));
      } else {
        path.add(place(ring, i, -ring.uy[before], ring.ux[before]));
        path.add(place(ring, i, 0, 0));
        path.add(place(ring, i, -ring.uy[i], ring.ux[i]));
      }
    }
    path.add(path.get(0).copy());
    return path.toArray(Coordinate[]::new);
  }

  private boolean meetsDirectly(Mitres ring, int corner) {
    double t = ring.tangent[corner];
    double overlap = 2 * gap * (2 * t / (1 + t * t)); // twice the gap times the sine of the turn
    return t <= 0 || t <= 1 && ring.length[ring.before(corner)] > overlap && ring.length[corner] > overlap;
  }

  /** A place on the fine grid, so many gaps from a corner. */
  private Coordinate place(Mitres ring, int corner, double x, double y) {
    return new Coordinate(
        (ring.ring.x(corner) - originX) * scale + Math.rint(gap * x * scale),
        (ring.ring.y(corner) - originY) * scale + Math.rint(gap * y * scale));
  }

  /** Returns the faces into which the paths divide the plane, those beyond all of them left out. */
  private List<Polygon> faces() {
    Map<Edge, Integer> edges = new TreeMap<>();
    List<SegmentString> lines = new ArrayList<>();
    paths.forEach(path -> lines.add(new NodedSegmentString(path, null)));
    SnapRoundingNoder noder = new SnapRoundingNoder(WHOLE);
    noder.computeNodes(lines);
    for (Object noded : noder.getNodedSubstrings()) {
      Coordinate[] places = ((SegmentString) noded).getCoordinates();
      for (int i = 0; i + 1 < places.length; i++) {
        boolean forward = places[i].compareTo(places[i + 1]) < 0;
        Edge edge = forward ? new Edge(places[i], places[i + 1]) : new Edge(places[i + 1], places[i]);
        edges.merge(edge, forward ? 1 : -1, Integer::sum);
      }
    }
    Polygonizer polygonizer = new Polygonizer();
    edges.forEach((edge, turns) -> {
      if (turns != 0) {
        polygonizer.add(FACTORY.createLineString(new Coordinate[] {edge.low, edge.high}));
      }
    });
    List<Polygon> faces = new ArrayList<>();
    for (Object face : polygonizer.getPolygons()) {
      faces.add((Polygon) face);
    }
    return faces;
  }

  /** Returns how often the paths run round a place, counter-clockwise. */
  private int turnsRound(Coordinate place) {
    int turns = 0;
    for (Coordinate[] path : paths) {
      for (int i = 0; i + 1 < path.length; i++) {
        boolean upward = path[i].y <= place.y && place.y < path[i + 1].y;
        boolean downward = path[i + 1].y <= place.y && place.y < path[i].y;
        if ((upward || downward)
            && Orientation.index(path[i], path[i + 1], place)
                == (upward ? Orientation.COUNTERCLOCKWISE : Orientation.CLOCKWISE)) {
          turns += upward ? 1 : -1;
        }
      }
    }
    return turns;
  }

  private Polygon inNanometres(Polygon face) {
    LinearRing[] holes = new LinearRing[face.getNumInteriorRing()];
    for (int i = 0; i < holes.length; i++) {
      holes[i] = inNanometres(face.getInteriorRingN(i));
    }
    return FACTORY.createPolygon(inNanometres(face.getExteriorRing()), holes);
  }

  /** Returns a ring in nanometres, without the places where another path only met a straight edge. */
  private LinearRing inNanometres(LinearRing ring) {
    Coordinate[] all = ring.getCoordinates();
    int n = all.length - 1;
    int first = 0; // the place of the least x and y is a true corner
    for (int i = 1; i < n; i++) {
      first = all[i].compareTo(all[first]) < 0 ? i : first;
    }
    List<Coordinate> corners = new ArrayList<>(List.of(all[first]));
    for (int i = 1; i < n; i++) {
      Coordinate place = all[(first + i) % n];
      double off = Distance.pointToLinePerpendicular(
          place, corners.get(corners.size() - 1), all[(first + i + 1) % n]);
      if (off > STRAIGHT * scale) {
        corners.add(place);
      }
    }
    corners.add(all[first]);
    return FACTORY.createLinearRing(
        corners.stream().map(c -> new Coordinate(c.x / scale, c.y / scale)).toArray(Coordinate[]::new));
  }

  record Edge(Coordinate low, Coordinate high) implements Comparable<Edge> {
    @Override
    public int compareTo(Edge other) {
      int byLow = low.compareTo(other.low);
      return byLow != 0 ? byLow : high.compareTo(other.high);
    }
  }
}
