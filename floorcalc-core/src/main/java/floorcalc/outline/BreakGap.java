package floorcalc.outline;

import floorcalc.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.UnaryUnionNG;

/**
 * The gaps of expansion breaks: a strip either side of each break's middle line, taken off the floor that the expansion gap
 * leaves. What remains falls apart into bays.
 * <p>
 * A strip ends square where its middle line ends. If it is no wider than two expansion gaps, its end lies off the floor; a wider one
 * steps back from a wall that goes on in its line, or meets it at a slant. Corners are rounded to the nearest nanometre, those of strips along x or y need no rounding; floor no more than a
 * micrometre wide counts as swallowed, as it does with {@link ExpansionGap}. Stateless and thread-safe.
 *
 * @since 0.1
 */
public final class BreakGap {
  private static final PrecisionModel WHOLE = new PrecisionModel(1);
  private static final GeometryFactory FACTORY = new GeometryFactory(WHOLE);

  private final ExpansionGap floor;
  private final double half;
  private final long originX;
  private final long originY;

  private BreakGap(ExpansionGap floor, Length gap) {
    this.floor = floor;
    this.half = gap.toNanometres() / 2.0;
    this.originX = floor.room().shell().x(0);
    this.originY = floor.room().shell().y(0);
  }

  /**
   * Takes the gaps of breaks off a floor.
   *
   * @param floor the floor that the expansion gap leaves, not null
   * @param breaks the middle lines of the breaks, from wall to wall, void or other break; may be empty, not null
   * @param gap the width of each break's gap in all, not null, more than zero
   * @return the bays in the order of their lowest corner, of equally low ones the leftmost first; without a break the floor as it
   *     is; not null
   * @throws IllegalArgumentException if the gap is not more than zero
   */
  public static List<Outline> taken(ExpansionGap floor, List<Line> breaks, Length gap) {
    Objects.requireNonNull(floor, "floor");
    if (!Objects.requireNonNull(gap, "gap").isPositive()) {
      throw new IllegalArgumentException("the gap of a break must be more than 0 mm, but was " + gap);
    }
    return breaks.isEmpty() ? floor.laid() : new BreakGap(floor, gap).bays(breaks);
  }

  private List<Outline> bays(List<Line> breaks) {
    List<Geometry> strips = new ArrayList<>();
    breaks.forEach(line -> strips.add(strip(line)));
    Geometry taken = UnaryUnionNG.union(strips, FACTORY, WHOLE);
    List<Geometry> rest = new ArrayList<>();
    for (Outline piece : floor.laid()) {
      rest.add(OverlayNG.overlay(polygon(piece), taken, OverlayNG.DIFFERENCE, WHOLE));
    }
    List<Geometry> polygons = new ArrayList<>();
    for (Geometry piece : rest) {
      for (int i = 0; i < piece.getNumGeometries(); i++) {
        polygons.add(piece.getGeometryN(i));
      }
    }
    return Necks.closed(Spurs.cutOff(Pieces.of(FACTORY.buildGeometry(polygons), originX, originY))).stream()
        .map(bay -> bay.map(Pieces::straight)).toList();
  }

  private Geometry strip(Line line) {
    double ax = line.from().xNanometres() - originX;
    double ay = line.from().yNanometres() - originY;
    double bx = line.to().xNanometres() - originX;
    double by = line.to().yNanometres() - originY;
    double length = Math.sqrt((bx - ax) * (bx - ax) + (by - ay) * (by - ay));
    double ux = (bx - ax) / length;
    double uy = (by - ay) / length;
    Coordinate[] corners = {place(ax + half * uy, ay - half * ux), place(bx + half * uy, by - half * ux),
        place(bx - half * uy, by + half * ux), place(ax - half * uy, ay + half * ux), place(ax + half * uy, ay - half * ux)};
    return FACTORY.createPolygon(corners);
  }

  private static Coordinate place(double x, double y) {
    return new Coordinate(Math.rint(x), Math.rint(y));
  }

  private Geometry polygon(Outline piece) {
    LinearRing[] voids = piece.voids().stream().map(this::ring).toArray(LinearRing[]::new);
    return FACTORY.createPolygon(ring(piece.shell()), voids);
  }

  private LinearRing ring(Ring ring) {
    Coordinate[] places = new Coordinate[ring.size() + 1];
    for (int i = 0; i < places.length; i++) {
      int corner = i % ring.size();
      places[i] = new Coordinate(ring.x(corner) - originX, ring.y(corner) - originY);
    }
    return FACTORY.createLinearRing(places);
  }
}
