package floorcalc.differential;

import com.esri.core.geometry.Geometry.Type;
import com.esri.core.geometry.GeometryEngine;
import com.esri.core.geometry.Point;
import com.esri.core.geometry.Polygon;
import floorcalc.outline.Outline;
import floorcalc.outline.Ring;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/**
 * The room less a strip along each wall and a kite at each reflex corner, by Esri's own boolean operations.
 * <p>
 * Its ready-made offset is of no use here: it leaves walls that cross where a wall is swallowed, and its limit of a mitre is another.
 */
final class EsriInset implements Inset {
  /** A mitre longer than so many gaps is cut off square there. */
  private static final double LONGEST_MITRE = 10;

  @Override
  public Library library() {
    return Library.ESRI_GEOMETRY;
  }

  @Override
  public String rooms() {
    return "rooms with voids, by strips and kites taken off";
  }

  @Override
  public String remark() {
    return "the library's own grid is far finer";
  }

  @Override
  public Geometry walls(Outline room, long gap) {
    List<com.esri.core.geometry.Geometry> taken = new ArrayList<>();
    for (Ring ring : JtsPlane.rings(room)) {
      for (int i = 0; i < ring.size(); i++) {
        addTo(taken, ring, i, gap);
      }
    }
    com.esri.core.geometry.Geometry all = GeometryEngine.union(taken.toArray(com.esri.core.geometry.Geometry[]::new), null);
    com.esri.core.geometry.Geometry left = GeometryEngine.difference(EsriPlane.polygon(room), all, null);
    return left.getType() == Type.Polygon ? walls((Polygon) left) : JtsPlane.closed(List.of());
  }

  private static void addTo(List<com.esri.core.geometry.Geometry> taken, Ring ring, int i, long gap) {
    int next = (i + 1) % ring.size();
    double[] in = inward(ring, i);
    double[] a = {ring.x(i), ring.y(i)};
    double[] b = {ring.x(next), ring.y(next)};
    taken.add(polygon(a, b, moved(b, in, gap), moved(a, in, gap)));
    double turn = Inset.turnAtReflex(ring, next);
    if (turn > 0) {
      double[] other = inward(ring, next);
      double half = StrictMath.cos(turn / 2);
      double[] middle = {(in[0] + other[0]) / (2 * half), (in[1] + other[1]) / (2 * half)};
      if (1 / half <= LONGEST_MITRE) {
        taken.add(polygon(b, moved(b, other, gap), moved(b, middle, gap / half), moved(b, in, gap)));
      } else {
        // Where the mitre is cut square: so far along each moved wall from the end of its strip.
        double along = (LONGEST_MITRE - half) / StrictMath.sin(turn / 2) * gap;
        double[] ahead = {in[1], -in[0]};
        double[] back = {-other[1], other[0]};
        taken.add(polygon(b, moved(b, other, gap), moved(moved(b, other, gap), back, along),
            moved(moved(b, in, gap), ahead, along), moved(b, in, gap)));
      }
    }
  }

  private static double[] inward(Ring ring, int i) {
    int next = (i + 1) % ring.size();
    double x = ring.x(next) - ring.x(i);
    double y = ring.y(next) - ring.y(i);
    double length = StrictMath.hypot(x, y);
    return new double[] {-y / length, x / length};
  }

  private static double[] moved(double[] from, double[] way, double distance) {
    return new double[] {from[0] + way[0] * distance, from[1] + way[1] * distance};
  }

  private static Polygon polygon(double[]... corners) {
    Polygon polygon = new Polygon();
    polygon.startPath(corners[0][0], corners[0][1]);
    for (int i = 1; i < corners.length; i++) {
      polygon.lineTo(corners[i][0], corners[i][1]);
    }
    polygon.closePathWithLine();
    return polygon;
  }

  private static Geometry walls(Polygon polygon) {
    List<Geometry> rings = new ArrayList<>();
    for (int path = 0; path < polygon.getPathCount(); path++) {
      List<Coordinate> corners = new ArrayList<>();
      for (int i = polygon.getPathStart(path); i < polygon.getPathEnd(path); i++) {
        Point corner = polygon.getPoint(i);
        corners.add(new Coordinate(corner.getX(), corner.getY()));
      }
      rings.add(JtsPlane.closed(corners));
    }
    return JtsPlane.together(rings);
  }
}
