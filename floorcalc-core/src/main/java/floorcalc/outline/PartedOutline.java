package floorcalc.outline;

import floorcalc.measure.Area;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.noding.NodedSegmentString;
import org.locationtech.jts.noding.OrientedCoordinateArray;
import org.locationtech.jts.noding.SegmentString;
import org.locationtech.jts.noding.snapround.SnapRoundingNoder;
import org.locationtech.jts.operation.polygonize.Polygonizer;

/**
 * An outline parted along straight lines from wall to wall, from wall to void or to one another. Immutable and thread-safe.
 * <p>
 * Where a line ends on a wall, and where two lines cross, a corner is made, rounded to the nearest nanometre. An end that
 * lies within two nanometres of a wall or another line is on it. A corner that comes to lie exactly on a straight side of a part
 * is left out of it. Parts of less than two nanometres in width on average are left out.
 *
 * @since 0.1
 */
public final class PartedOutline {
  private static final PrecisionModel NANOMETRES = new PrecisionModel(1);
  /** How far beside a wall or another line an end may lie, in nanometres, because it was rounded. */
  private static final double BESIDE = 2;
  /** What an end may stand over, in nanometres, because it was rounded. */
  private static final double ROUNDED = 3;
  private static final GeometryFactory FACTORY = new GeometryFactory(NANOMETRES);

  private final Outline whole;
  private final long originX;
  private final long originY;

  private PartedOutline(Outline whole) {
    this.whole = whole;
    this.originX = whole.shell().x(0);
    this.originY = whole.shell().y(0);
  }

  /**
   * Parts an outline.
   *
   * @param whole the outline, not null, sound by {@link OutlineCheck}
   * @param lines the lines, may be empty, not null
   * @return the parts in the order of their lowest corner, of equally low ones the leftmost first; not empty, not null
   * @throws IllegalArgumentException if a line leaves the floor, runs along a wall or ends on the open floor, with what to do
   */
  public static List<Outline> of(Outline whole, List<Line> lines) {
    Objects.requireNonNull(whole, "whole");
    return lines.isEmpty() ? List.of(whole) : new PartedOutline(whole).parts(lines);
  }

  private List<Outline> parts(List<Line> lines) {
    List<Coordinate> ends = new ArrayList<>();
    for (Line line : lines) {
      ends.add(place(line.from()));
      ends.add(place(line.to()));
    }
    List<SegmentString> given = new ArrayList<>();
    for (Ring ring : whole.rings()) {
      Coordinate[] places = new Coordinate[ring.size() + 1];
      for (int i = 0; i < places.length; i++) {
        places[i] = place(ring.x(i % ring.size()), ring.y(i % ring.size()));
      }
      given.add(new NodedSegmentString(withEnds(places, ends), Optional.empty()));
    }
    for (Line line : lines) {
      given.add(new NodedSegmentString(withEnds(new Coordinate[] {place(line.from()), place(line.to())}, ends),
          Optional.of(line)));
    }
    SnapRoundingNoder noder = new SnapRoundingNoder(NANOMETRES);
    noder.computeNodes(given);
    List<SegmentString> stretches = new ArrayList<>();
    for (Object item : noder.getNodedSubstrings()) {
      stretches.add((SegmentString) item);
    }
    Map<OrientedCoordinateArray, SegmentString> edges = new TreeMap<>();
    stretches.stream().filter(stretch -> line(stretch).isEmpty()).forEach(wall -> edges.put(key(wall), wall));
    for (SegmentString stretch : stretches) {
      line(stretch).ifPresent(line -> requireOnFloor(stretch, line, edges.getOrDefault(key(stretch), stretch)));
      edges.putIfAbsent(key(stretch), stretch);
    }
    Polygonizer polygonizer = new Polygonizer();
    edges.values().forEach(edge -> polygonizer.add(stretch(edge)));
    List<Geometry> polygons = new ArrayList<>();
    for (Object polygon : polygonizer.getPolygons()) {
      if (isFloor((Geometry) polygon)) {
        polygons.add((Geometry) polygon);
      }
    }
    List<Outline> parts = Pieces.of(FACTORY.buildGeometry(polygons), originX, originY).stream()
        .map(part -> part.map(Pieces::straight)).toList();
    requireAllCut(lines, parts, loose(polygonizer.getDangles()) + loose(polygonizer.getCutEdges()));
    return parts;
  }

  /** A path with each end of a line that lies beside one of its stretches made a corner of it. */
  private static Coordinate[] withEnds(Coordinate[] path, List<Coordinate> ends) {
    List<Coordinate> all = new ArrayList<>();
    all.add(path[0]);
    for (int i = 1; i < path.length; i++) {
      LineSegment stretch = new LineSegment(path[i - 1], path[i]);
      List<Coordinate> beside = new ArrayList<>();
      for (Coordinate end : ends) {
        if (stretch.distance(end) <= BESIDE && !beside.contains(end) && stretch.p0.distance(end) > BESIDE
            && stretch.p1.distance(end) > BESIDE) {
          beside.add(end);
        }
      }
      beside.sort(Comparator.comparingDouble(stretch::projectionFactor));
      all.addAll(beside);
      all.add(path[i]);
    }
    return all.toArray(Coordinate[]::new);
  }

  private static Geometry stretch(SegmentString edge) {
    Geometry stretch = FACTORY.createLineString(edge.getCoordinates());
    stretch.setUserData(line(edge).isPresent());
    return stretch;
  }

  /** The stretches of lines that part nothing. Of a wall a spur is left over where it folds back within a nanometre of itself: no floor lies in it. */
  private static int loose(Collection<?> edges) {
    int loose = 0;
    for (Object edge : edges) {
      loose += ((Geometry) edge).getLength() > ROUNDED && ((Geometry) edge).getUserData().equals(true) ? 1 : 0;
    }
    return loose;
  }

  private Coordinate place(long x, long y) {
    return new Coordinate(x - originX, y - originY);
  }

  private Coordinate place(Point point) {
    return place(point.xNanometres(), point.yNanometres());
  }

  /**
   * Voids come back from the parting as parts of their own. A place inside that lies in a part no wider than a few nanometres may be rounded out of
   * it: then one in its wide part is asked.
   */
  private boolean isFloor(Geometry polygon) {
    Geometry place = polygon.getInteriorPoint();
    if (polygon.getBoundary().distance(place) < BESIDE) {
      Geometry wide = polygon.buffer(-BESIDE);
      if (wide.isEmpty()) {
        return false;
      }
      place = wide.getInteriorPoint();
    }
    Coordinate inside = place.getCoordinate();
    return whole.locate(Point.ofNanometres(originX + Math.round(inside.x), originY + Math.round(inside.y))) != Containment.OUTSIDE;
  }

  private static OrientedCoordinateArray key(SegmentString stretch) {
    return new OrientedCoordinateArray(stretch.getCoordinates());
  }

  /** The line that a stretch is part of, none if it is part of a wall. */
  private static Optional<?> line(SegmentString stretch) {
    return (Optional<?>) stretch.getData();
  }

  /** A stretch of a line between two meetings lies on the floor as a whole or not at all. */
  private void requireOnFloor(SegmentString stretch, Object line, SegmentString first) {
    Coordinate[] ends = stretch.getCoordinates();
    if (ends[0].distance(ends[ends.length - 1]) <= ROUNDED) {
      return;
    }
    Point middle = Point.ofNanometres(originX + Math.round((ends[0].x + ends[1].x) / 2),
        originY + Math.round((ends[0].y + ends[1].y) / 2));
    if (line(first).isEmpty() || whole.locate(middle) == Containment.OUTSIDE) {
      throw new IllegalArgumentException("the line from " + line + " leaves the floor or runs along a wall near " + middle
          + "; let it run across the floor, from wall to wall");
    }
  }

  private void requireAllCut(List<Line> lines, List<Outline> parts, int loose) {
    if (loose > 0) {
      throw new IllegalArgumentException("of the lines " + lines + " at least one parts nothing: an end lies on the open"
          + " floor, or on a void that no other line joins to a wall; let both ends lie on a wall, on a void or on another line");
    }
    Area sum = parts.stream().map(Outline::area).reduce(Area.ZERO, Area::plus);
    Area off = whole.area().minus(sum).abs();
    // Each corner that is made moves a wall by at most a nanometre.
    BigInteger most = BigInteger.valueOf(whole.perimeter().toNanometres()).multiply(BigInteger.valueOf(2 + 2L * lines.size()));
    if (off.toHalfSquareNanometres().compareTo(most) > 0) {
      throw new IllegalStateException("parts of an outline miss " + off + " of it: " + Wkt.write(whole) + " along " + lines);
    }
  }
}
